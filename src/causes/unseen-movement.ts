import { itemById } from '../exam/catalogue/catalogue.ts';
import { lowerFirst } from '../exam/describe.ts';
import { rememberedWith } from '../kernel/remembered.ts';
import { makesTheCause, shareOfDenial } from './denial.ts';
import type { ExamQuery } from './exam-query.ts';
import type { Modifier } from './modifier.ts';
import { missing } from './reasons.ts';
import type { SignRatio } from './table/cause.ts';

/** Complaints by which an unwilled movement is told; the examiner has not said which one it is. */
const toldAsMovement: ReadonlySet<string> = new Set([
  ...['involuntary-movements', 'tremor', 'twitching', 'stiffness', 'cramps', 'clumsiness', 'only-in-one-task'],
  ...['seizure', 'ongoing-seizure', 'fluctuating-symptoms', 'behaviour-change'],
]);

/**
 * Who describes one unwilled movement has looked at them all: a chorea that is not named beside a dystonia was not seen.
 * Nor is it overlooked where it makes the disease and nobody speaks of any: a weak hand and much sugar are no chorea of
 * much sugar. Less than a plain no.
 */
export function unseenMovement({ items, absent }: SignRatio, query: ExamQuery): readonly Modifier[] {
  if (absent >= 1 || !items.every((item) => item.startsWith('involuntary-movements/'))) return [];
  const isOverlooked = absent > makesTheCause || query.exam.findings.length === 0 || isTold(query);
  if (isOverlooked && !movesUnwilled(query)) return [];
  const [first = ''] = items;
  const label = itemById.get(first)?.label ?? first;
  return [{ ratio: absent ** shareOfDenial, reason: () => missing(`${lowerFirst(label)} was not described`) }];
}

const isTold = rememberedWith(({ exam }: ExamQuery) =>
  exam.history.some(({ present, key, kind }) => present && kind === 'symptom' && toldAsMovement.has(key)),
);

const movesUnwilled = rememberedWith(
  ({ abnormalWhere }: ExamQuery) => abnormalWhere(({ item }) => item.section === 'involuntaryMovements').length > 0,
);
