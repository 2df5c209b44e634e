import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';

const ofExcitableNerves: ReadonlySet<string> = new Set(['carpopedal-spasm', 'chvostek-or-trousseau']);

/** What says that a nerve, root or tract has lost something. */
const isDeficit = ({ item: { section, key }, value }: Finding): boolean =>
  section !== 'autonomic' && !ofExcitableNerves.has(key) && !(section === 'reflexes' && isBrisk(value));

/** Odds of a lesion of nerve, root or cord where nothing but excitable nerves was found, and of none. Judged. */
const onlyExcitable = { lesion: 0.1, none: 3 } as const;
const lesions = anyOf(
  kinds('nerve', 'plexus', 'root', 'cauda-equina', 'cord', 'cranial-nerve'),
  sites('oculosympathetic-chain'),
);

/**
 * Hands and feet in spasm, or a nerve that answers a tap or a cuff, and no strength, feeling or jerk lost: nerves that are whole
 * fire for want of calcium, magnesium or carbon dioxide. An operation took the parathyroids, not a nerve. Source: Adams and
 * Victor, tetany (recalled).
 */
export function tetanyShifts({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong.filter(({ item }) => ofExcitableNerves.has(item.key));
  if (first === undefined || wrong.some(isDeficit)) return [];
  const because = 'nerves fire too readily, and nothing that one of them does is lost';
  return [
    shiftBy(first, { applies: lesions, factor: onlyExcitable.lesion, because }),
    shiftBy(first, { applies: sites('no-lesion'), factor: onlyExcitable.none, because }),
  ];
}
