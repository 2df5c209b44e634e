import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';

const withoutWaking: ReadonlySet<string> = new Set(['coma', 'stupor']);
/** Reflexes that are tested in who does not wake; each has its centre in the brainstem. */
const ofTheBrainstem: ReadonlySet<string> = new Set([
  'unreactive-pupil',
  'dilated-pupil',
  'absent-corneal-reflex',
  'absent-oculocephalic-reflex',
  'absent-gag-reflex',
  'gaze-palsy',
]);

/** Odds where reflexes of the brainstem have gone on both sides in coma, of nerves outside it and of the base of the skull. Judged. */
const nervesInComa = 0.04;
const outside = kinds('cranial-nerve', 'visual-pathway');
const base = sites('basal-meningeal-process', 'bulbar-motor-nuclei');

function isOfBothSides(found: readonly Finding[]): boolean {
  const sides = new Set(found.map(({ side }) => side));
  return sides.has('midline') || sides.size > 1;
}

/**
 * Pupils, corneas and eyes that no longer answer in coma have lost their centres, and not nerve after nerve at the base: what takes the
 * centres takes wakefulness with them, and what takes the nerves leaves it (Plum and Posner, recalled).
 */
function lostReflexShifts(coma: Finding, { findings }: Exam): readonly Shift[] {
  const lost = findings.filter(({ abnormal, item }) => abnormal && ofTheBrainstem.has(item.key));
  if (lost.length === 0 || !isOfBothSides(lost)) return [];
  const because = 'reflexes of the brainstem that are lost on both sides in coma are lost in the brainstem';
  return [
    shiftBy(coma, { applies: outside, factor: nervesInComa, because }),
    shiftBy(coma, { applies: base, factor: nervesInComa, because }),
  ];
}

/** Odds of one place of the hemispheres in coma without a sign of one half. Judged. */
const oneHemisphere = 0.25;

/** One hemisphere alone does not take away wakefulness, and shows itself by the other half of the body (Plum and Posner, recalled). */
function noSideShift(coma: Finding, { findings }: Exam): readonly Shift[] {
  const bySide = (side: string): readonly string[] =>
    findings.filter((one) => one.abnormal && one.side === side).map(({ item, place }) => `${item.key} ${place?.key}`);
  const [left, right] = [new Set(bySide('left')), new Set(bySide('right'))];
  const isLopsided = [...left].some((one) => !right.has(one)) || [...right].some((one) => !left.has(one));
  const because = 'a lesion of the cortex takes away wakefulness only by pressure, and shows on one half of the body';
  return isLopsided ? [] : [shiftBy(coma, { applies: kinds('hemisphere'), factor: oneHemisphere, because })];
}

/** What coma says of its place together with the reflexes of the brainstem and the halves of the body. */
export function comaPatternShifts(exam: Exam): readonly Shift[] {
  const coma = exam.findings.find(({ abnormal, item }) => abnormal && withoutWaking.has(item.key));
  if (coma === undefined) return [];
  return [...lostReflexShifts(coma, exam), ...(coma.item.key === 'coma' ? noSideShift(coma, exam) : [])];
}
