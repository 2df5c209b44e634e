import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
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
    shiftBy(impulse, { applies: ear, factor: soundImpulse.ear, because }),
    shiftBy(impulse, { applies: cerebellum, factor: soundImpulse.cerebellum, because }),
  ];
}

/**
 * Odds where vertigo of a sudden comes with a walk that is ataxic in the old or the sick of artery, and where nobody can stand alone: with
 * neuritis most walk, veering (Carmona 2016, recalled: trunk that cannot be held in 6 % of neuritis and two thirds of strokes). Judged.
 */
const walk = { ear: 0.5, earWhoCannotStand: 0.3, hindbrain: 1.4 } as const;
const cannotStand: ReadonlySet<string> = new Set(['unable-to-stand', 'unable-to-walk', 'standing-balance']);
const atRisk: ReadonlySet<string> = new Set([
  ...['hypertension', 'diabetes-mellitus', 'atrial-fibrillation', 'stroke', 'transient-ischaemic-attack'],
  ...['ischaemic-heart-disease', 'peripheral-arterial-disease'],
]);
/** From this age an artery is likelier to be at fault. Judged. */
const old = 60;

function ataxicWalkShifts({ findings, history, onset, person }: Exam): readonly Shift[] {
  if (!cameFast(onset) || !tells(history, spinning)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ item }) => item.key === 'abnormal-head-impulse' || inTheHangingHead.has(item.key))) return [];
  const falls = wrong.find(({ item }) => cannotStand.has(item.key));
  const sways = wrong.find(({ item }) => item.key === 'ataxic');
  const sign = falls ?? sways;
  const isAtRisk = (person.ageYears ?? 0) >= old || tells(history, atRisk);
  if (sign === undefined || (falls === undefined && !isAtRisk)) return [];
  const because = 'with an ear that fails most still stand and walk, though they veer';
  return [
    shiftBy(sign, { applies: ear, factor: falls === undefined ? walk.ear : walk.earWhoCannotStand, because }),
    shiftBy(sign, { applies: hindbrain, factor: walk.hindbrain, because }),
  ];
}

/** What vertigo says of its place together with limbs and eyes. */
export function vertigoPatternShifts(exam: Exam): readonly Shift[] {
  return [...limbBesideVertigoShift(exam), ...soundImpulseShifts(exam), ...ataxicWalkShifts(exam)];
}
