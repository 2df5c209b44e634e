import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import { complaintsOfTheHead } from './head-patterns.ts';
import { kinds } from './history/history-weight.ts';
import type { Shift } from './shift.ts';
import { shiftsOfTold } from './told.ts';

/** Odds of limb nerves and roots where all that is told and found is of the head. Judged. */
const limbsUntold = 0.04;

/** What is told of the person as a whole, and speaks of no part. */
const ofNoPart: ReadonlySet<string> = new Set([
  ...['fatigue', 'weight-loss', 'insomnia', 'fluctuating-symptoms', 'similar-attacks-before', 'altered-sweating'],
  ...['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis', 'rash', 'syncope'],
]);
const sectionsOfTheHead: ReadonlySet<string> = new Set(['cranialNerves', 'higherFunction', 'autonomic']);
const ofTheLimbs = kinds('nerve', 'multiple-nerves', 'plexus', 'root', 'cauda-equina', 'polyneuropathy');

const told = shiftsOfTold('head-alone');

/**
 * An operation, a birth or diabetes makes nerves of limbs fail, and these are felt or seen in a limb: who tells of the head and nothing
 * else has no such nerve to look for (common practice).
 */
export function headAloneShifts({ findings, history }: Exam): readonly Shift[] {
  const complaints = history.filter(({ kind, present }) => kind === 'symptom' && present);
  const first = complaints.find(isOfTheHead);
  if (first === undefined || complaints.some((one) => !isOfTheHead(one) && !ofNoPart.has(one.key))) return [];
  const isElsewhere = findings.some(
    ({ abnormal, item }) => abnormal && item.region !== 'head' && !sectionsOfTheHead.has(item.section),
  );
  if (isElsewhere) return [];
  return [told(first, ofTheLimbs, limbsUntold, 'nothing is told or seen of a limb or of the trunk')];
}

const isOfTheHead = ({ key }: HistoryStatement): boolean => complaintsOfTheHead.has(key);
