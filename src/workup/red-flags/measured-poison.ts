import type { BedsideFacts } from '../bedside-facts.ts';
import { isAtLeast } from './thresholds.ts';

/** Limit in mmol/L from which lithium in the blood poisons. Source: adams-victor, lithium, recalled. */
const toxicLithium = 2;

/** Whether a level of lithium was measured that poisons by itself. */
export function hasToxicLithium({ query }: Pick<BedsideFacts, 'query'>): boolean {
  const level = query.quantity('lithium-level', 'mmol/L');
  return level !== undefined && isAtLeast(level, toxicLithium);
}
