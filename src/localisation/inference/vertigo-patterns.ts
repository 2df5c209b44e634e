import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

const ear = sites('vestibular-nerve', 'cochlear-nerve');
const cerebellum = kinds('cerebellum');

const spinning: ReadonlySet<string> = new Set(['vertigo', 'continuous-vertigo', 'positional-vertigo']);
const inTheHangingHead: ReadonlySet<string> = new Set(['dix-hallpike', 'supine-roll']);

/** Odds of the ear alone beside a limb of one half that fails, and of what lies around the fourth ventricle. Judged. */
const limbBeside = { ear: 0.05, fourthVentricle: 2 } as const;
const tonsils = sites('foramen-magnum');
const hindbrain = kinds('cerebellum', 'brainstem');
const fourthVentricle: Applies = (site) => hindbrain(site) && !tonsils(site);
const besideTheVentricle = 'balance and the tracts of a limb meet around the fourth ventricle';
const ofAnUpperTract: ReadonlySet<string> = new Set([
  'pronator-drift',
  'leg-drift',
  'forearm-rolling',
  'plantar-response',
]);

/** A limb that misses its aim, sinks, is weak or stiff: by cerebellum or tracts, where no ear reaches. */
function isOfALimb({ item: { key, probe }, value, side }: Finding): boolean {
  if (side === 'midline') return false;
  if (probe.kind === 'cerebellar') return value !== 'impaired-by-weakness';
  return probe.kind === 'movement' || probe.kind === 'tone' || ofAnUpperTract.has(key);
}

/**
 * Vertigo with a limb of one half that fails is of brainstem or cerebellum until shown otherwise, though it comes on turning over:
 * masses and infarcts beside the fourth ventricle imitate loose stones (common practice).
 */
function limbBesideVertigoShift({ findings, history, onset }: Exam): readonly Shift[] {
  if (onset.pace === 'chronic') return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (!tells(history, spinning) && !wrong.some(({ item }) => inTheHangingHead.has(item.key))) return [];
  const limbs = wrong.filter(isOfALimb);
  const [limb] = limbs;
  if (limb === undefined || new Set(limbs.map(({ side }) => side)).size > 1) return [];
  const because = 'no ear makes a limb miss its aim, sink or stiffen';
  return [
    shiftBy(limb, { applies: ear, factor: limbBeside.ear, because }),
    shiftBy(limb, { applies: fourthVentricle, factor: limbBeside.fourthVentricle, because: besideTheVentricle }),
  ];
}

/**
 * Eyes that beat at rest while the head impulse is sound on both sides: the nerve that would make them beat works. Of those with
 * acute vertigo and nystagmus a normal impulse leaves a labyrinth in few (Kattah 2009, recalled). Odds judged, the observation
 * counts beside them.
 */
const soundImpulse = { ear: 0.3, cerebellum: 1.5 } as const;
const beating: ReadonlySet<string> = new Set(['nystagmus', 'gaze-evoked-nystagmus', 'torsional-nystagmus']);

function soundImpulseShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (onset.pace === 'chronic' || onset.pace === 'subacute' || !tells(history, spinning)) return [];
  const eyes = findings.some(({ abnormal, item }) => abnormal && beating.has(item.key));
  const impulses = findings.filter(({ item }) => item.key === 'abnormal-head-impulse');
  const [impulse] = impulses;
  if (!eyes || impulse === undefined || impulses.some(({ abnormal }) => abnormal)) return [];
  if (findings.some(({ abnormal, item }) => abnormal && inTheHangingHead.has(item.key))) return [];
  const because = 'the eyes beat, though the head impulse shows that the nerve of the ear works';
  return [
    { ...shiftBy(impulse, { applies: ear, factor: soundImpulse.ear, because }), abnormal: false },
    { ...shiftBy(impulse, { applies: cerebellum, factor: soundImpulse.cerebellum, because }), abnormal: false },
  ];
}

/** What vertigo says of its place together with limbs and eyes. */
export function vertigoPatternShifts(exam: Exam): readonly Shift[] {
  return [...limbBesideVertigoShift(exam), ...soundImpulseShifts(exam)];
}
