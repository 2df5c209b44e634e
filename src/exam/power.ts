import type { Finding } from './finding.ts';
import { scales } from './scales.ts';

const ordinals = new Map<string, number>(scales['mrc-power'].grades.map((grade) => [grade.key, grade.ordinal]));

/** MRC grade of a power finding as an order-preserving number; null when not tested. */
export const powerOf = ({ value }: Pick<Finding, 'value'>): number | null =>
  value === null ? null : (ordinals.get(String(value)) ?? null);
