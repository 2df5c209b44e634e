import type { Exam } from '../../exam/exam.ts';
import { farMovement, overNervesOfTheHand } from '../../exam/far-along-the-limb.ts';
import type { Finding } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import { daysPerYear } from '../../kernel/days.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { hasSignOfTheHead, lostFeeling, shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import { showsTracts } from './nerve-patterns.ts';
import type { Shift } from './shift.ts';
import { onEachSide } from './signs/sign-weight.ts';
import { tells } from './told.ts';

const ofTheWrist: ReadonlySet<string> = new Set([
  ...['wrist-drop', 'wrist-extension', 'wrist-extension-radial', 'wrist-extension-ulnar', 'elbow-extension'],
]);
/** Odds of the radial nerve above its branches to the wrist, where the fingers alone are said to hang. Judged. */
const wristStands = 0.3;
const aboveTheWrist = sites('radial-nerve-spiral-groove', 'radial-nerve-axilla', 'posterior-cord');

/** Odds of a root or the plexus there, where neither neck nor arm hurts and no skin is numb. Judged. */
const painlessRoot = 0.5;
const painOfTheArm: ReadonlySet<string> = new Set([
  ...['neck-pain', 'radicular-arm-pain', 'arm-pain', 'shoulder-pain', 'hand-pain', 'numbness', 'paraesthesiae'],
]);

/** Who names the fingers and not the wrist has seen the wrist stand. */
function fingersAloneShift({ findings, history }: Exam): readonly Shift[] {
  const hanging = findings.find(({ abnormal, item }) => abnormal && item.key === 'finger-drop');
  if (hanging === undefined) return [];
  const isOfTheWrist = ({ abnormal, item, side }: Finding): boolean =>
    abnormal && side === hanging.side && ofTheWrist.has(item.key);
  if (findings.some(isOfTheWrist)) return [];
  const because =
    'the fingers hang and the wrist is not said to, whose branches leave the radial nerve above the elbow';
  const painless = 'a root that lets the fingers hang hurts or numbs, and neither is said';
  const isPainless = history.length > 0 && !tells(history, painOfTheArm) && lostFeeling(findings).length === 0;
  return [
    shiftBy(hanging, { applies: aboveTheWrist, factor: wristStands, because }),
    ...(isPainless
      ? [shiftBy(hanging, { applies: kinds('root', 'plexus'), factor: painlessRoot, because: painless })]
      : []),
  ];
}

/** Parts of the hand whose muscles are of the median nerve and of the ulnar; `hand` means both. */
const ofTheMedian = 'thenar-eminence';
const ofTheUlnar: ReadonlySet<string> = new Set(['hypothenar-eminence', 'first-web-space']);
const thinParts: ReadonlySet<string> = new Set([ofTheMedian, ...ofTheUlnar, 'hand', 'forearm']);
const nervesOfTheHand = onEachSide(({ kind, key }) => kind === 'nerve' && /^(median|ulnar|deep-branch)/.test(key));
const mixedNerves = onEachSide(({ kind, key }) => kind === 'nerve' && /^(median|ulnar)-nerve/.test(key));
const motorCellsOfTheArm = anyOf(kinds('anterior-horn'), sites('spinal-cord-anterior'));
/** Odds of a single nerve where muscles of two have wasted in one hand. Judged. */
const bothNerves = { single: 0.4, motorCells: 1.5 } as const;

/** Ball of the thumb and ball of the little finger have two nerves, and one segment, T1. */
function twoNervesShifts({ findings }: Exam): readonly Shift[] {
  const thin = findings.filter(({ abnormal, item }) => abnormal && item.key === 'wasting');
  return (['left', 'right'] as const).flatMap((side) => {
    const own = thin.filter((one) => one.side === side);
    const [first] = own;
    const parts = new Set(own.map(({ place }) => place?.key ?? ''));
    const isOfTwo = parts.has(ofTheMedian) && [...ofTheUlnar].some((part) => parts.has(part));
    if (first === undefined || !isOfTwo) return [];
    const because = 'muscles of the median nerve and of the ulnar have wasted in one hand, which share a segment';
    return [
      shiftBy(first, { applies: nervesOfTheHand[side], factor: bothNerves.single, because }),
      shiftBy(first, { applies: motorCellsOfTheArm, factor: bothNerves.motorCells, because }),
    ];
  });
}

const ofSkin: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae', 'nocturnal-hand-paraesthesiae']);
const pressesNerves: ReadonlySet<string> = new Set(['elbow-leaning', 'trauma', 'limb-fracture-or-dislocation']);
const signsOfPressure: ReadonlySet<string> = new Set(overNervesOfTheHand);
/**
 * Odds of a mixed nerve where muscles of the hand have wasted slowly and the skin was found to feel, or is not complained of; the
 * latter says more where both hands or a forearm have wasted. Few with an ulnar nerve that has wasted its muscles at the elbow
 * feel everything. From memory; judged.
 */
const thinAndFeeling = { found: 0.35, untold: 0.5, untoldOfTheHand: 0.8 } as const;

/** A mixed nerve that is pressed until its muscles waste has numbed its skin before. */
function thinAndFeelingShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (onset.pace !== 'chronic' && onset.pace !== 'subacute') return [];
  if (lostFeeling(findings).length > 0 || tells(history, pressesNerves)) return [];
  if (findings.some(({ abnormal, item }) => abnormal && signsOfPressure.has(item.key))) return [];
  const isDenied = history.some(({ key, present }) => !present && ofSkin.has(key));
  const isFelt = isDenied || findings.some(({ modality, value }) => modality !== undefined && value !== null);
  if (!isFelt && (history.length < 2 || tells(history, ofSkin))) return [];
  const thin = findings.filter(
    ({ abnormal, item, place }) => abnormal && item.key === 'wasting' && thinParts.has(place?.key ?? ''),
  );
  const because = 'muscles of the hand have wasted and the skin feels, which a nerve under pressure numbs first';
  const isWide = sidesOf(thin).size > 1 || thin.some(({ place }) => place?.key === 'forearm');
  const untold = isWide ? thinAndFeeling.untold : thinAndFeeling.untoldOfTheHand;
  const factor = isFelt ? thinAndFeeling.found : untold;
  const [any] = thin;
  if (any === undefined) return [];
  const cavity =
    'muscles of the hand have wasted and the skin feels, and a cavity in the cord takes pain and warmth first';
  return [
    shiftBy(any, { applies: sites('spinal-cord-central'), factor, because: cavity }),
    ...(['left', 'right'] as const).flatMap((side) => {
      const [first] = thin.filter((one) => one.side === side);
      return first === undefined ? [] : [shiftBy(first, { applies: mixedNerves[side], factor, because })];
    }),
  ];
}

/** Age in years at which it begins, and what the pattern does to the odds. Judged. */
const thinArmOfTheYoung = { from: 12, to: 30, days: 60, motorCells: 3, none: 0.4 } as const;
const partsOfTheArm: ReadonlySet<string> = new Set([...thinParts, 'upper-limb', 'upper-arm']);

/**
 * One arm of somebody in the teens or twenties thins over months, and nothing tingles or hurts: the cord is pressed flat when the
 * neck bends, and its motor cells die (Hirayama 2000, recalled).
 */
function thinArmOfTheYoungShifts({ findings, history, onset, person }: Exam): readonly Shift[] {
  const { pace, durationDays = 0 } = onset;
  const began = (person.ageYears ?? 0) - durationDays / daysPerYear;
  const isSlow = pace === 'chronic' || (pace === 'subacute' && durationDays >= thinArmOfTheYoung.days);
  if (!isSlow || began < thinArmOfTheYoung.from || began > thinArmOfTheYoung.to) return [];
  if (tells(history, painOfTheArm) || tells(history, pressesNerves)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const thin = wrong.filter(({ item, place }) => item.key === 'wasting' && partsOfTheArm.has(place?.key ?? ''));
  const [first] = thin;
  if (first === undefined || sidesOf(thin).size > 1 || lostFeeling(findings).length > 0) return [];
  if (weakMovements(wrong).some(({ item }) => item.region !== 'upper-limbs') || hasSignOfTheHead(findings)) return [];
  const because = 'one arm of a young person has thinned over months and nothing tingles or hurts';
  return [
    shiftBy(first, { applies: motorCellsOfTheArm, factor: thinArmOfTheYoung.motorCells, because }),
    shiftBy(first, { applies: kinds('none'), factor: thinArmOfTheYoung.none, because }),
  ];
}

const thumbOfTheMedian: ReadonlySet<string> = new Set(['thumb-abduction', 'thumb-opposition']);
const skinOfTheMedian: ReadonlySet<string> = new Set([
  ...['thumb', 'index-finger', 'middle-finger', 'ring-finger-radial-half', 'median-nerve', 'fingertips'],
]);
const pointsToTheWrist: ReadonlySet<string> = new Set(['tinel-wrist', 'phalen', 'carpal-compression']);
/** Odds of what lies above where all that fails in both hands is of the median nerves. Judged. */
const medianFromAbove = 0.3;
/** The same of what takes many nerves, motor cells or muscles, which are hardly ever lost in the ball of the thumb alone. Judged. */
const medianOfMany = 0.4;
const takesMany = kinds('polyneuropathy', 'anterior-horn', 'muscle', 'motor-neuron-system');
const above = kinds('hemisphere', 'brainstem', 'cord', 'root', 'plexus');

/**
 * Muscles of the thumb alone, and skin of the first fingers alone, in both hands: a cord that is ill weakens the other small muscles
 * of T1 as well. The tunnels of both wrists are narrow in more than half of those who have it (Padua 1998, recalled).
 */
function bothMedianShift(exam: Exam): readonly Shift[] {
  const { findings } = exam;
  if (showsTracts(exam) || hasSignOfTheHead(findings)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || sidesOf(wrong).size < 2) return [];
  const isOfTheMedian = ({ item, place, modality }: Finding): boolean => {
    if (modality !== undefined) return skinOfTheMedian.has(place?.key ?? '');
    return (
      thumbOfTheMedian.has(item.key) ||
      pointsToTheWrist.has(item.key) ||
      (item.key === 'wasting' && place?.key === ofTheMedian)
    );
  };
  const isMotor = weakMovements(wrong).length > 0 || wrong.some(({ item }) => item.key === 'wasting');
  if (!isMotor || !wrong.every(isOfTheMedian)) return [];
  const because = 'all that fails in both hands is of the median nerves, and other muscles of the same segments work';
  return [
    shiftBy(first, { applies: above, factor: medianFromAbove, because }),
    shiftBy(first, { applies: takesMany, factor: medianOfMany, because }),
  ];
}

const pressed: ReadonlySet<string> = new Set(['external-pressure', 'surgical-positioning', 'prolonged-immobility']);
const ofTheSpine: ReadonlySet<string> = new Set(['neck-trauma', 'neck-pain', 'back-pain', 'spinal-fracture']);
const ends: ReadonlySet<string> = new Set(['wrist-drop', 'finger-drop', 'foot-drop']);
/** Odds where several limbs fail at their ends after something pressed on them. Judged. */
const severalPressed = { several: 10, cord: 0.2, roots: 0.4 } as const;

/** What lies on limbs for hours, a cuff, a table or the body's own weight, presses a nerve in each. */
function severalPressedShifts(exam: Exam): readonly Shift[] {
  const { findings, history, onset } = exam;
  if (!cameFast(onset)) return [];
  if (!tells(history, pressed) || tells(history, ofTheSpine)) return [];
  if (showsTracts(exam) || hasSignOfTheHead(findings)) return [];
  const weak = findings.filter(
    ({ abnormal, item }) => abnormal && (item.probe.kind === 'movement' || ends.has(item.key)),
  );
  const [first] = weak;
  const limbs = new Set(weak.map(({ item, side }) => `${item.region} ${side}`));
  const areFar = weak.every(({ item }) => ends.has(item.key) || farMovement.test(item.key));
  if (first === undefined || limbs.size < 2 || !areFar) return [];
  const because = 'the ends of several limbs fail after something pressed on them';
  const isBothLegs = [...limbs].every((limb) => limb.startsWith('lower'));
  return [
    ...(isBothLegs
      ? []
      : [shiftBy(first, { applies: kinds('multiple-nerves'), factor: severalPressed.several, because })]),
    shiftBy(first, { applies: kinds('cord'), factor: severalPressed.cord, because }),
    shiftBy(first, { applies: kinds('polyradiculoneuropathy', 'root'), factor: severalPressed.roots, because }),
  ];
}

/** What shows that the far joint of the thumb, and that of the index finger, cannot be bent. */
const farJoints: Readonly<Record<string, readonly string[]>> = {
  'thumb-flexion': ['thumb'],
  'index-distal-flexion': ['index-finger'],
  'pinch-sign': ['thumb', 'index-finger'],
};
/** Odds of what lies above where the far joints of thumb and index finger alone fail in one hand that feels. Judged. */
const farJointsFromAbove = 0.06;

/**
 * The far joints of thumb and index finger have one branch to themselves. A hand that fails from above fails most in spreading and in
 * straightening its fingers, and hardly ever in these two alone.
 */
function farJointsShift(exam: Exam): readonly Shift[] {
  const { findings } = exam;
  if (showsTracts(exam) || hasSignOfTheHead(findings) || lostFeeling(findings).length > 0) return [];
  const weak = findings.filter(
    ({ abnormal, item }) => abnormal && (item.probe.kind === 'movement' || item.key in farJoints),
  );
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size > 1 || !weak.every(({ item }) => item.key in farJoints)) return [];
  const shown = new Set(weak.flatMap(({ item }) => farJoints[item.key] ?? []));
  if (shown.size < 2) return [];
  const because = 'the far joints of thumb and index finger fail alone, which one branch bends';
  return [shiftBy(first, { applies: above, factor: farJointsFromAbove, because })];
}

/** How what fails in the hands, or at the ends of several limbs, tells nerves, motor cells and cord apart. */
export function handPatternShifts(exam: Exam): readonly Shift[] {
  return [
    ...fingersAloneShift(exam),
    ...twoNervesShifts(exam),
    ...thinAndFeelingShifts(exam),
    ...thinArmOfTheYoungShifts(exam),
    ...bothMedianShift(exam),
    ...farJointsShift(exam),
    ...severalPressedShifts(exam),
  ];
}
