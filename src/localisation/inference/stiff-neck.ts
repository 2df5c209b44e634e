import type { Exam } from '../../exam/exam.ts';
import { kinds } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/** What inflamed or bloodstained meninges bring beside a stiff neck. */
const toldOfMeninges: ReadonlySet<string> = new Set([
  'headache',
  'new-headache',
  'thunderclap-headache',
  'morning-headache',
  'photophobia',
  'vomiting',
  'fever',
  'night-sweats',
  'rash',
  'seizure',
  'loss-of-consciousness',
]);
const signsOfMeninges: ReadonlySet<string> = new Set([
  'fever',
  'kernig',
  'brudzinski',
  'non-blanching-rash',
  'drowsiness',
  'stupor',
  'coma',
  'confusion',
  'disorientation',
  'seizure-seen',
  'optic-disc-swelling',
]);
/** Odds of the meninges where a neck is stiff and nothing else of theirs is told or seen. Judged. */
const stiffNeckAlone = 0.25;

/**
 * A stiff neck without fever, headache, vomiting or a clouded mind is more often guarded: a tumour, blood or pus at the cord
 * of the neck, bone that has slipped, or muscles in spasm. Source: Adams and Victor, pain in the neck (recalled).
 */
export function stiffNeckShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const stiff = wrong.find(({ item }) => item.key === 'neck-stiffness');
  if (stiff === undefined || wrong.some(({ item }) => signsOfMeninges.has(item.key))) return [];
  if (!history.some(({ present, kind }) => present && kind === 'symptom') || tells(history, toldOfMeninges)) return [];
  const because = 'the neck is stiff without fever, headache or a clouded mind';
  return [shiftBy(stiff, { applies: kinds('meninges'), factor: stiffNeckAlone, because })];
}
