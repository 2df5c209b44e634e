import { movementTable } from '../../anatomy/movements.ts';
import { isNearTheTrunk } from '../../anatomy/near-the-trunk.ts';
import { describeFinding } from '../../exam/describe.ts';
import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import type { BodySide } from '../../kernel/side.ts';
import { cervicalCord, cervicalRoots, kinds, lumbarRoots, sites } from './history/history-weight.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/** What a finding says, with the finding that says it. */
export function shiftBy(finding: Finding, says: Pick<Shift, 'applies' | 'factor' | 'because'>): Shift {
  return {
    ...says,
    pointer: finding.pointer,
    text: describeFinding(finding),
    abnormal: finding.abnormal,
    id: finding.id,
  };
}

/** Nerves that can be felt where they run under the skin, by the part of the body. Source: Adams and Victor, leprous neuritis (recalled). */
const nervesFeltAt: Readonly<Record<string, readonly string[]>> = {
  neck: ['great-auricular-nerve', 'supraclavicular-nerves'],
  elbow: ['ulnar-nerve-elbow', 'ulnar-nerve-upper-arm'],
  wrist: ['median-nerve-wrist', 'ulnar-nerve-wrist', 'superficial-radial-nerve'],
  knee: ['common-fibular-nerve', 'tibial-nerve-popliteal-fossa', 'saphenous-nerve'],
  ankle: ['tibial-nerve-tarsal-tunnel', 'sural-nerve', 'saphenous-nerve', 'superficial-fibular-nerve-ankle'],
};

/** Odds of a nerve that runs where one was felt to be thick, on the same side. Judged. */
const feltThere = 4;

function thickNerveShifts({ findings }: Exam): readonly Shift[] {
  const thick = findings.filter(({ abnormal, item, place }) => abnormal && item.key === 'thickened-nerve' && place);
  const [named] = thick;
  if (named === undefined) return [];
  const felt = new Set(thick.flatMap(({ place, side }) => (nervesFeltAt[place?.key ?? ''] ?? []).map(on(side))));
  const applies: Applies = ({ key, side }) => felt.has(on(side)(key));
  return [shiftBy(named, { applies, factor: feltThere, because: 'the thick nerve was felt there' })];
}

const on =
  (side: string | null) =>
  (key: string): string =>
    `${key} ${side}`;

/** Movements of shoulder, elbow, hip and knee, whose muscles have no stretch of cortex or tract to themselves as hand and foot do. */
const nearJoints = new Set(['shoulder', 'elbow', 'hip', 'knee']);
const above = kinds('hemisphere', 'brainstem', 'cord');

/** How many neighbours in the limb must have been found strong, and the odds of what lies in brain and cord then. Judged. */
const strongNeighbours = 3;
const oneMovementFromAbove = 0.25;

/**
 * One weak movement near the trunk among strong neighbours is of a muscle and its nerve: brain and cord weaken a limb by
 * groups of movements, its far end first. Source: Brazis, monoparesis (recalled).
 */
function oneMovementShift({ findings }: Exam): readonly Shift[] {
  const tested = findings.flatMap((finding) => {
    const movement =
      finding.item.probe.kind === 'movement' ? movementTable.get(finding.item.probe.movement) : undefined;
    return movement === undefined || finding.value === null ? [] : [{ finding, movement }];
  });
  const weak = tested.filter(({ finding }) => finding.abnormal);
  const [one] = weak;
  if (one === undefined || weak.length > 1 || !nearJoints.has(one.movement.bodyPart)) return [];
  const { side } = one.finding;
  const strong = tested.filter(
    ({ finding, movement }) => !finding.abnormal && finding.side === side && movement.region === one.movement.region,
  );
  if (strong.length < strongNeighbours) return [];
  const because = 'brain and cord weaken a limb by groups of movements, not one among strong neighbours';
  return [shiftBy(one.finding, { applies: above, factor: oneMovementFromAbove, because })];
}

/** Signs that name a nerve: who looks for them has found the muscles of that nerve alone to fail. */
const signsOfOneNerve = new Set(['pinch-sign', 'froment', 'ulnar-claw', 'claw-hand', 'hand-of-benediction']);
const signOfOneNerveFromAbove = 0.4;

function oneNerveShift({ findings }: Exam): readonly Shift[] {
  const named = findings.find(({ abnormal, item }) => abnormal && signsOfOneNerve.has(item.key)) ?? roundO(findings);
  if (named === undefined) return [];
  const because = 'the sign is that of muscles of one nerve that fail beside others that pull';
  return [shiftBy(named, { applies: kinds('hemisphere', 'brainstem'), factor: signOfOneNerveFromAbove, because })];
}

/** Odds of a root where the shoulder blade wings: three share the serratus. Source: Brazis, long thoracic nerve (recalled). Judged. */
const wingingFromARoot = 0.5;

function wingingShift({ findings }: Exam): readonly Shift[] {
  const winging = findings.find(({ abnormal, item }) => abnormal && item.key === 'scapular-winging');
  if (winging === undefined) return [];
  return [
    shiftBy(winging, { applies: kinds('root'), factor: wingingFromARoot, because: 'three roots share the serratus' }),
  ];
}

/** The tips of thumb and index finger alone are weak: the same as the sign of the round O. */
function roundO(findings: readonly Finding[]): Finding | undefined {
  const weak = weakMovements(findings);
  const tips = new Set(['thumb-flexion', 'index-distal-flexion']);
  return new Set(weak.map(({ item }) => item.key)).size === tips.size && weak.every(({ item }) => tips.has(item.key))
    ? weak[0]
    : undefined;
}

/**
 * Pain that runs from the spine into a limb comes from a root though nothing is found: a third or more of those with a disc on
 * a root have full strength, feeling and reflexes. Source: Vroomen 2002 (recalled). Odds judged.
 */
const painAlone = { root: 4, noLesion: 0.4 } as const;

function painAloneShifts({ findings, history }: Exam): readonly Shift[] {
  if (findings.some(({ abnormal }) => abnormal)) return [];
  return history
    .filter(({ present, key }) => present && (key === 'radicular-leg-pain' || key === 'radicular-arm-pain'))
    .flatMap(({ key, pointer, label, kind }) => {
      const says = { pointer, text: label, abnormal: true, id: `history/${kind}/${key}`, because: rootsHurtFirst };
      const roots = key === 'radicular-leg-pain' ? lowRoots : cervicalRoots;
      return [
        { ...says, applies: roots, factor: painAlone.root },
        { ...says, applies: kinds('none'), factor: painAlone.noLesion },
      ];
    });
}

const rootsHurtFirst = 'an irritated root hurts before it fails';
const lowRoots: Applies = (site) =>
  lumbarRoots(site) && site.kind === 'root' && site.level !== 'S2' && site.level !== 'S3';

/**
 * Arm and leg of one half fail and the neck hurts, and nothing is wrong above it: blood or pus outside the dura of the neck
 * hurts in nearly all and is taken for a stroke, of which few hurt in the neck. Source: Groen 2004 (from memory). Odds judged.
 */
const neckWithOneHalf = { cord: 4, above: 0.6 } as const;
const wholeBodyBelowTheFace: Applies = (site) => cervicalCord(site) && site.key !== 'spinal-cord-posterior';
const ofTheHead: ReadonlySet<string> = new Set(['cranialNerves', 'higherFunction']);

/** Skin or joints that feel less than they should. */
export const lostFeeling = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ abnormal, modality }) => abnormal && modality !== undefined);

export const hasSignOfTheHead = (findings: readonly Finding[]): boolean =>
  findings.some(({ abnormal, item }) => abnormal && ofTheHead.has(item.section));

function neckAndOneHalfShifts({ findings, history }: Exam): readonly Shift[] {
  if (!history.some(({ present, key }) => present && key === 'neck-pain')) return [];
  if (hasSignOfTheHead(findings)) return [];
  const first = weakHalf(findings);
  if (first === undefined) return [];
  const because = 'the neck hurts, and arm and leg of one half fail with nothing wrong above it';
  return [
    shiftBy(first, { applies: wholeBodyBelowTheFace, factor: neckWithOneHalf.cord, because }),
    shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: neckWithOneHalf.above, because }),
  ];
}

export const weakMovements = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ abnormal, item }) => abnormal && item.probe.kind === 'movement');

/** A grade of power in whole numbers: 4 for 4- and 4+. */
const gradeOf = (value: Finding['value']): number => Number.parseInt(String(value), 10);

/** The first weak movement where arm and leg of one half of the body are weak, and nothing of the other. */
function weakHalf(findings: readonly Finding[]): Finding | undefined {
  const weak = weakMovements(findings);
  const regions = new Set(weak.map(({ item }) => item.region));
  const isOfArmAndLeg = regions.has('upper-limbs') && regions.has('lower-limbs');
  return isOfArmAndLeg && sidesOf(weak).size === 1 ? weak[0] : undefined;
}

export const sidesOf = (findings: readonly Finding[]): ReadonlySet<string> =>
  new Set(findings.map(({ side }): BodySide | 'midline' => side));

/**
 * Odds of a disorder of junctions, muscles or all roots where arm and leg of one half alone are weak: these weaken both
 * halves, if not alike. Judged.
 */
const oneHalfOfTheBody = { junctionOrMuscle: 0.2, roots: 0.3 } as const;

function hemiparesisShifts({ findings }: Exam): readonly Shift[] {
  const first = weakHalf(findings);
  if (first === undefined) return [];
  const because = 'arm and leg of one half are weak, and junctions, muscles and roots fail on both';
  return [
    shiftBy(first, { applies: kinds('junction', 'muscle'), factor: oneHalfOfTheBody.junctionOrMuscle, because }),
    shiftBy(first, { applies: kinds('polyradiculoneuropathy'), factor: oneHalfOfTheBody.roots, because }),
  ];
}

/** The same, and all the more a process of nerves or junctions, where limbs are ataxic on one half alone. Judged. */
const ataxiaOfOneHalf = 0.3;

function hemiataxiaShifts({ findings }: Exam): readonly Shift[] {
  const ataxic = findings.filter(
    ({ abnormal, item }) => abnormal && item.probe.kind === 'cerebellar' && item.probe.part !== 'midline',
  );
  const [first] = ataxic;
  if (first === undefined || sidesOf(ataxic).size > 1 || first.side === 'midline') return [];
  const because = 'limbs of one half are ataxic, and what robs nerves and junctions robs both';
  return [shiftBy(first, { applies: kinds('junction', 'polyradiculoneuropathy'), factor: ataxiaOfOneHalf, because })];
}

/** Grades of power, of 5, by which a leg must be weaker than the arm of its side. Judged. */
const legWorseBy = 1.5;
/** The inner face of the hemisphere moves the leg, its outer face arm and face. Brazis, monoparesis (recalled). Odds judged. */
const outerFace = sites('cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'cortex-hand-area');
const legFromOuterFace = 0.2;

function legBeforeArmShifts({ findings }: Exam): readonly Shift[] {
  const weak = weakMovements(findings);
  const mean = (region: string): number => {
    const grades = weak
      .filter(({ item }) => item.region === region)
      .map(({ value }) => gradeOf(value))
      .filter((grade) => Number.isFinite(grade));
    return grades.reduce((sum, grade) => sum + grade, 0) / grades.length;
  };
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size > 1 || !(mean('upper-limbs') - mean('lower-limbs') >= legWorseBy))
    return [];
  const because = 'the leg is far weaker than the arm, and the outer face of the hemisphere moves the arm';
  return [shiftBy(first, { applies: outerFace, factor: legFromOuterFace, because })];
}

/** Grade of power up to which a movement of the thigh counts as lost, and the odds of the cauda equina without pain. Judged. */
const lostThighs = { grade: 2, cauda: 0.3 } as const;
const ofTheThigh: ReadonlySet<string> = new Set(['hip-flexion', 'knee-extension']);
const weakThighs = (findings: readonly Finding[]): readonly Finding[] =>
  weakMovements(findings).filter(({ item: { probe } }) => probe.kind === 'movement' && ofTheThigh.has(probe.movement));
const ofTheKnee: ReadonlySet<string> = new Set(['knee-extension']);
const painOfRoots: ReadonlySet<string> = new Set([
  'back-pain',
  'night-spinal-pain',
  'radicular-leg-pain',
  'bilateral-leg-pain',
  'leg-pain',
  'thigh-pain',
  'neurogenic-claudication',
]);

/**
 * Both thighs are paralysed, or one within hours, and nothing hurts: what takes the cauda equina up to the roots of the thighs hurts in back and
 * legs, while a cord that is struck may be limp and painless. Source: Brazis, cauda equina and conus (recalled).
 */
function painlessParaplegiaShifts({ findings, history, onset }: Exam): readonly Shift[] {
  const lost = weakThighs(findings).filter(({ value }) => gradeOf(value) <= lostThighs.grade);
  const [first] = lost;
  if (first === undefined || (sidesOf(lost).size < 2 && onset?.pace !== 'hyperacute')) return [];
  if (history.length === 0 || tells(history, painOfRoots)) return [];
  const because = 'a thigh is paralysed without pain, and roots torn or pressed as high as that hurt';
  return [shiftBy(first, { applies: kinds('cauda-equina'), factor: lostThighs.cauda, because })];
}

/** Grade of power up to which the thighs count as gone, and the odds of the cauda equina where that took hours, with pain or without. Judged. */
const goneThighs = { grade: 1, cauda: 0.5 } as const;

/**
 * Within hours no movement of either thigh is left: blood that stops in the cord, or a mass that presses on it, does that; a
 * disc on the cauda equina takes the feet first and spares the hips. Source: Brazis, cauda equina and conus (recalled).
 */
function thighsGoneInHoursShifts({ findings, onset }: Exam): readonly Shift[] {
  if (onset.pace !== 'hyperacute') return [];
  const thighs = weakThighs(findings);
  const [first] = thighs;
  const areGone = thighs.every(({ value }) => gradeOf(value) <= goneThighs.grade);
  if (first === undefined || sidesOf(thighs).size < 2 || !areGone) return [];
  const because = 'both thighs are gone within hours, and a cauda equina under pressure loses the feet first';
  return [shiftBy(first, { applies: kinds('cauda-equina'), factor: goneThighs.cauda, because })];
}

/** Odds where both legs alone have grown weak within three months under a spine that hurts. Judged. */
const legsUnderAPainfulSpine = { days: 92, motorCells: 0.35, muscle: 0.35, longAxons: 0.6 } as const;
const painOfTheSpine: ReadonlySet<string> = new Set([
  'back-pain',
  'thoracic-back-pain',
  'night-spinal-pain',
  'pain-on-straining',
  'tight-band',
]);
const weakElsewhere: ReadonlySet<string> = new Set([
  'arm-weakness',
  'muscle-pain',
  'fatigable-weakness',
  'twitching',
  'muscle-thinning',
  'ascending-weakness',
]);
const motorCells = kinds('motor-neuron-system', 'anterior-horn');
export const longAxons = sites('motor-polyneuropathy', 'length-dependent-polyneuropathy', 'sensory-polyneuropathy');

/**
 * Diseases of muscle and of motor cells do not hurt in the spine, nor do they take the legs in weeks and leave the arms; what
 * presses on cord and cauda does both. Of those with cancer in the spine 95 of 100 have pain there before the legs fail (NICE
 * NG234, recalled). Odds judged.
 */
function legsUnderAPainfulSpineShifts({ findings, history, onset }: Exam): readonly Shift[] {
  const { pace, durationDays = 0 } = onset;
  if (pace === 'chronic' || (pace === undefined && durationDays === 0)) return [];
  if (durationDays > legsUnderAPainfulSpine.days) return [];
  if (!tells(history, painOfTheSpine) || tells(history, weakElsewhere) || hasSignOfTheHead(findings)) return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2) return [];
  if (!weak.every(({ item: { region } }) => region === 'lower-limbs')) return [];
  const because = 'the spine hurts, and both legs alone fail within weeks';
  return [
    shiftBy(first, { applies: motorCells, factor: legsUnderAPainfulSpine.motorCells, because }),
    shiftBy(first, { applies: kinds('muscle', 'junction'), factor: legsUnderAPainfulSpine.muscle, because }),
    shiftBy(first, { applies: longAxons, factor: legsUnderAPainfulSpine.longAxons, because }),
  ];
}

/** Odds of the cord, and of the leg's cortex, where one leg alone is weak and feels everything. Judged. */
const legThatFeels = { cord: 0.6, cortex: 1.5 } as const;
const legCortex: Applies = (site) =>
  site.key === 'cortex-anterior-cerebral' || site.key === 'cortex-parasagittal' || site.key === 'cortex-frontal';
const stiffGaits: ReadonlySet<string> = new Set(['spastic', 'hemiplegic', 'scissoring']);

/** Whether a sign says that the tract above the motor cells has let go. */
function isFreed({ item: { section, key }, value }: Finding): boolean {
  if (section === 'reflexes') return isBrisk(value);
  return section === 'clonus' || value === 'extensor' || value === 'spastic' || stiffGaits.has(key);
}

/**
 * Half a cord takes pain from the other leg and position from its own; a leg that is weak from above, with every quality of
 * feeling kept in both, is more often of the cortex. Source: Brazis, monoparesis (recalled).
 */
function oneLegShifts({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size > 1) return [];
  if (!weak.every(({ item: { region } }) => region === 'lower-limbs')) return [];
  if (!wrong.some(isFreed) || wrong.some(({ modality }) => modality !== undefined)) return [];
  if (!findings.some(({ modality, abnormal, value }) => modality !== undefined && !abnormal && value !== null))
    return [];
  const because = 'one leg is weak from above and feels everything';
  return [
    shiftBy(first, { applies: kinds('cord'), factor: legThatFeels.cord, because }),
    shiftBy(first, { applies: legCortex, factor: legThatFeels.cortex, because }),
  ];
}

/** From this age on, in years, and what the pattern does to the odds of its own myopathy and of what lies above the muscles. Judged. */
const gripAndThighs = { fromAge: 40, myopathy: 3, cord: 0.4 } as const;
const ofTheGrip: ReadonlySet<string> = new Set([
  'finger-flexion',
  'finger-flexion-superficial',
  'index-distal-flexion',
  'middle-finger-distal-flexion',
  'little-finger-distal-flexion',
  'thumb-flexion',
]);

/**
 * Long flexors of the fingers and quadriceps of both sides fail over months in somebody past forty, and nothing is brisk or
 * numb: no root, nerve or tract has just these, and one myopathy picks them out. Source: Lloyd 2014 (recalled). Odds judged.
 */
function gripAndThighShifts({ findings, onset, person: { ageYears = gripAndThighs.fromAge } }: Exam): readonly Shift[] {
  const weak = weakMovements(findings);
  const isWeak = (keys: ReadonlySet<string>): boolean =>
    sidesOf(weak.filter(({ item: { probe } }) => probe.kind === 'movement' && keys.has(probe.movement))).size === 2;
  const [first] = weak;
  if (first === undefined || ageYears < gripAndThighs.fromAge) return [];
  if (cameFast(onset)) return [];
  if (!isWeak(ofTheGrip) || !isWeak(ofTheKnee)) return [];
  if (lostFeeling(findings).length > 0 || findings.some((finding) => finding.abnormal && isFreed(finding))) return [];
  const because = 'long flexors of the fingers and quadriceps fail on both sides, and nothing is brisk or numb';
  return [
    shiftBy(first, { applies: sites('finger-flexor-quadriceps-myopathy'), factor: gripAndThighs.myopathy, because }),
    shiftBy(first, { applies: kinds('cord'), factor: gripAndThighs.cord, because }),
  ];
}

/** Odds of the cord where both girdles alone are found weak, slowly. Judged. */
const girdlesAlone = 0.4;

/**
 * Shoulders and hips of both sides fail over weeks and months, far movements are not complained of, and nothing is brisk, numb or
 * painful: tracts take hand and foot first, muscles and junctions what is near.
 */
function girdlesShift({ findings, history, onset }: Exam): readonly Shift[] {
  if (onset.pace !== 'subacute' && onset.pace !== 'chronic') return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || !weak.every(({ item: { probe } }) => isNearTheTrunk(probe))) return [];
  const areBoth = (['upper-limbs', 'lower-limbs'] as const).every(
    (limb) => sidesOf(weak.filter(({ item }) => item.region === limb)).size === 2,
  );
  if (!areBoth || lostFeeling(findings).length > 0 || tells(history, notOfMuscle)) return [];
  if (findings.some((finding) => finding.abnormal && (isFreed(finding) || finding.item.section === 'sphincters')))
    return [];
  const because = 'hips and shoulders alone fail on both sides, and nothing is brisk, numb or painful';
  return [shiftBy(first, { applies: kinds('cord'), factor: girdlesAlone, because })];
}

const notOfMuscle: ReadonlySet<string> = new Set([
  'back-pain',
  'thoracic-back-pain',
  'neck-pain',
  'night-spinal-pain',
  'radicular-arm-pain',
  'radicular-leg-pain',
  'numbness',
  'paraesthesiae',
  'tight-band',
  'unsteadiness',
  'clumsiness',
  'bladder-disturbance',
]);

/** How patterns of the limbs that no single finding makes shift the odds of sites. */
export function limbPatternShifts(exam: Exam): readonly Shift[] {
  return [
    ...thickNerveShifts(exam),
    ...oneMovementShift(exam),
    ...oneNerveShift(exam),
    ...wingingShift(exam),
    ...painAloneShifts(exam),
    ...neckAndOneHalfShifts(exam),
    ...hemiparesisShifts(exam),
    ...hemiataxiaShifts(exam),
    ...legBeforeArmShifts(exam),
    ...painlessParaplegiaShifts(exam),
    ...thighsGoneInHoursShifts(exam),
    ...legsUnderAPainfulSpineShifts(exam),
    ...oneLegShifts(exam),
    ...gripAndThighShifts(exam),
    ...girdlesShift(exam),
  ];
}
