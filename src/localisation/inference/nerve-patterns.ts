import { bodyPartTable } from '../../anatomy/body-parts.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk, isLost } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { lostFeeling, shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { onEachSide } from './signs/sign-weight.ts';
import { tells } from './told.ts';

const above = kinds('hemisphere', 'brainstem', 'cord');
const stiffGaits: ReadonlySet<string> = new Set(['spastic', 'hemiplegic', 'scissoring']);

/** Whether a sign says that the tract above the motor cells has let go, or that a level was found. */
function isOfTheTracts({ abnormal, item: { section, key, probe }, value, place }: Finding): boolean {
  if (!abnormal) return false;
  if (section === 'reflexes') return isBrisk(value);
  // Fine movements fail for want of strength as readily.
  if (section === 'coordination') return false;
  if (probe.kind === 'upper-motor' || section === 'clonus' || stiffGaits.has(key)) return true;
  return value === 'extensor' || value === 'spastic' || place?.kind === 'level-below';
}

export const showsTracts = ({ findings }: Exam): boolean => findings.some(isOfTheTracts);

/** Odds where limbs fail by nerves that differ from limb to limb, and nothing says that tracts are ill. Judged. */
const otherNerveInEachLimb = { above: 0.45, muscle: 0.25, longAxons: 0.7, motorCells: 0.7, several: 1.5 } as const;
/** Postures that say which movement fails. */
const failsIn: Readonly<Record<string, string>> = {
  'foot-drop': 'ankle-dorsiflexion',
  'wrist-drop': 'wrist-extension',
  'finger-drop': 'finger-extension',
};

/**
 * What fails in one limb is whole in its fellow, and the other way round: a foot that drops beside one that cannot push, a
 * wrist here and the small muscles of the hand there. One lesion above takes like movements of both; several nerves do not.
 * Source: Amato and Russell, mononeuritis multiplex (recalled).
 */
function otherNerveInEachLimbShifts(exam: Exam): readonly Shift[] {
  if (showsTracts(exam)) return [];
  const weak = exam.findings.filter(
    ({ abnormal, item, side }) =>
      abnormal && side !== 'midline' && (item.probe.kind === 'movement' || item.key in failsIn),
  );
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2) return [];
  const limbs = new Map<string, Set<string>>();
  for (const { item, side } of weak) {
    const limb = `${item.region} ${side}`;
    limbs.set(limb, (limbs.get(limb) ?? new Set()).add(failsIn[item.key] ?? item.key));
  }
  const shared = (region: string): boolean =>
    [...(limbs.get(`${region} left`) ?? [])].some((key) => limbs.get(`${region} right`)?.has(key));
  if (shared('upper-limbs') || shared('lower-limbs')) return [];
  const because = 'each limb fails in another way, as single nerves do, and nothing says that tracts are ill';
  return [
    shiftBy(first, { applies: above, factor: otherNerveInEachLimb.above, because }),
    shiftBy(first, { applies: kinds('muscle'), factor: otherNerveInEachLimb.muscle, because }),
    shiftBy(first, { applies: kinds('polyneuropathy'), factor: otherNerveInEachLimb.longAxons, because }),
    shiftBy(first, {
      applies: kinds('anterior-horn', 'motor-neuron-system'),
      factor: otherNerveInEachLimb.motorCells,
      because,
    }),
    shiftBy(first, { applies: kinds('multiple-nerves'), factor: otherNerveInEachLimb.several, because }),
  ];
}

const deformities: ReadonlySet<string> = new Set(['pes-cavus', 'hammer-toes', 'claw-toes']);
/** Odds where both feet are deformed. Judged. */
const bothFeetDeformed = { inherited: 3, pressed: 0.4 } as const;
const inherited = sites('length-dependent-polyneuropathy', 'motor-polyneuropathy');
const pressed = kinds('root', 'nerve', 'plexus', 'cauda-equina');

/**
 * High arches and clawed toes on both sides took years of small muscles that waste before the long ones, as in inherited
 * neuropathy; a disc or a narrow canal makes none. A cord that is tethered from birth marks the skin over it or the sphincters.
 * Source: Szigeti 2009 (recalled).
 */
function deformedFeetShifts({ findings, history }: Exam): readonly Shift[] {
  const deformed = findings.filter(({ abnormal, item }) => abnormal && deformities.has(item.key));
  const [first] = deformed;
  if (first === undefined || sidesOf(deformed).size < 2) return [];
  if (findings.some(({ abnormal, item }) => abnormal && ofTheSacrum(item))) return [];
  if (tells(history, toldOfTheSacrum)) return [];
  const because = 'both feet are deformed, which takes years of a neuropathy and is not made by pressure';
  return [
    shiftBy(first, { applies: inherited, factor: bothFeetDeformed.inherited, because }),
    shiftBy(first, { applies: pressed, factor: bothFeetDeformed.pressed, because }),
  ];
}

const ofTheSacrum = ({ section, key }: Finding['item']): boolean =>
  section === 'sphincters' || key === 'lumbosacral-skin-mark';
const toldOfTheSacrum: ReadonlySet<string> = new Set([
  'bladder-disturbance',
  'bowel-disturbance',
  'sexual-dysfunction',
  'saddle-numbness',
  'spina-bifida',
]);

/** What lifts the foot and turns it out; who is weak in these alone has two fibular nerves, two roots or ill long axons. */
const ofTheFibularNerve: ReadonlySet<string> = new Set([
  'ankle-dorsiflexion',
  'ankle-eversion',
  'great-toe-extension',
  'toe-extension',
]);
/** Odds of what lies above where both feet drop, nothing else of the legs is weak and no tract is let go. Judged. */
const bothFeetFromAbove = 0.45;

/** What presses both fibular nerves, and the odds of these and of muscle then: slimmers drop both feet in a fifth. From memory; judged. */
const bothPressed = { nerve: 3, muscle: 0.4 } as const;
const pressesTheFibular: ReadonlySet<string> = new Set([
  ...['recent-weight-loss', 'leg-crossing', 'prolonged-squatting', 'prolonged-immobility', 'critical-illness'],
]);

/** A leg that fails from above fails at the hip with the foot. Source: Adams and Victor, foot drop (recalled). */
function bothFeetShifts(exam: Exam): readonly Shift[] {
  if (showsTracts(exam)) return [];
  const weak = weakMovements(exam.findings);
  const dropped = exam.findings.filter(
    ({ abnormal, item }) => abnormal && (item.key === 'foot-drop' || ofTheFibularNerve.has(item.key)),
  );
  const [first] = dropped;
  if (first === undefined || sidesOf(dropped).size < 2) return [];
  if (!weak.every(({ item }) => ofTheFibularNerve.has(item.key))) return [];
  const because = 'both feet drop and nothing else of the legs fails, which a lesion above hardly does';
  const press = 'both feet drop and nothing else of the legs fails, in somebody whose fibular nerves were pressed';
  return [
    shiftBy(first, { applies: above, factor: bothFeetFromAbove, because }),
    ...(tells(exam.history, pressesTheFibular)
      ? [
          shiftBy(first, { applies: sites('common-fibular-nerve'), factor: bothPressed.nerve, because: press }),
          shiftBy(first, { applies: kinds('muscle'), factor: bothPressed.muscle, because: press }),
        ]
      : []),
  ];
}

const pelvicPain: ReadonlySet<string> = new Set([
  ...toldOfTheSacrum,
  'back-pain',
  'night-spinal-pain',
  'pain-on-straining',
  'radicular-leg-pain',
  'bilateral-leg-pain',
  'leg-pain',
  'thigh-pain',
  'foot-pain',
  'neurogenic-claudication',
  'neuropathic-pain',
]);
/** Odds of the cauda equina where nothing hurts and neither sphincters nor saddle are ill. Judged. */
const silentCauda = 0.45;

/** Pain, saddle and sphincters define the syndrome; legs alone that fail without pain do so by other ways. */
function silentCaudaShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || history.length === 0 || tells(history, pelvicPain)) return [];
  const isSacral = ({ item, place }: Finding): boolean =>
    ofTheSacrum(item) || item.section === 'specialTests' || sacralSkin.has(place?.key ?? '');
  if (wrong.some(isSacral)) return [];
  const because = 'nothing hurts, and saddle and sphincters are not said to be ill';
  return [shiftBy(first, { applies: kinds('cauda-equina'), factor: silentCauda, because })];
}

/** Odds of the cauda equina where one leg alone fails, and neither saddle nor sphincters do. Judged. */
const caudaOfOneSide = 0.45;

/** The roots of the cauda lie side by side, and what presses there reaches both legs or the saddle before long. */
function caudaOfOneSideShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal, item }) => abnormal && item.section !== 'specialTests');
  const [first] = wrong;
  if (first === undefined || first.side === 'midline' || wrong.length < 2 || sidesOf(wrong).size > 1) return [];
  if (wrong.some(({ item, place }) => ofTheSacrum(item) || sacralSkin.has(place?.key ?? ''))) return [];
  if (tells(history, toldOfTheSacrum) || tells(history, ofBothLegs)) return [];
  const because = 'one leg alone fails, with saddle and sphincters not said to be ill';
  return [shiftBy(first, { applies: kinds('cauda-equina'), factor: caudaOfOneSide, because })];
}
const ofBothLegs: ReadonlySet<string> = new Set(['bilateral-leg-pain', 'neurogenic-claudication']);

const farJerks: readonly string[] = ['knee', 'ankle'];
/** Odds of the cord where the legs are weak, all their jerks are gone and no tract is said to be ill. Judged. */
const legsWithoutJerks = { acute: 0.7, later: 0.45 } as const;
/** Columns whose dorsal roots are ill have no jerks either. */
const cordWithJerks: Applies = ({ kind, key }) => kind === 'cord' && key !== 'spinal-cord-posterior';

/** Once the shock of its first days is over a cord that is ill makes jerks brisk. Source: Brazis, spinal shock (recalled). */
function legsWithoutJerksShift(exam: Exam): readonly Shift[] {
  const { findings, onset } = exam;
  if (showsTracts(exam) || onset.pace === 'hyperacute') return [];
  const gone = (side: string, reflex: string): boolean =>
    findings.some(
      ({ item, side: own, value }) =>
        item.section === 'reflexes' && item.key === reflex && own === side && isLost(value),
    );
  if (!['left', 'right'].every((side) => farJerks.every((reflex) => gone(side, reflex)))) return [];
  const weak = weakMovements(findings).find(({ item }) => item.region === 'lower-limbs');
  if (weak === undefined) return [];
  const factor = onset.pace === 'acute' ? legsWithoutJerks.acute : legsWithoutJerks.later;
  const because = 'all jerks of the weak legs are gone, and nothing says that tracts are ill';
  return [shiftBy(weak, { applies: cordWithJerks, factor, because })];
}

const sacralSkin: ReadonlySet<string> = new Set(['saddle', 'perianal-skin', 'genitals', 'S2', 'S3', 'S4-5']);

/** Skin above the wrist on the side of the little finger, which neither median nor ulnar nerve serves. */
const innerForearm: ReadonlySet<string> = new Set(['inner-forearm', 'medial-cutaneous-nerve-of-forearm']);
const ofTheHand: ReadonlySet<string> = new Set(['hand', 'thenar-eminence', 'hypothenar-eminence', 'first-web-space']);
const nervesOfTheHand = onEachSide(({ kind, key }) => kind === 'nerve' && /^(median|ulnar|deep-branch)/.test(key));
const lowerPlexus = onEachSide(sites('lower-trunk', 'medial-cord'));
/** Odds where a hand fails and the inner forearm is numb. Judged. */
const handWithForearm = { plexus: 2.5, nerve: 0.5 } as const;

/**
 * A hand that wastes with an inner forearm that is numb is of the lower trunk, the medial cord or their roots: the skin
 * above the wrist has a nerve of its own from there. Source: Gilliatt 1970 (recalled).
 */
function handWithForearmShifts({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  return wrong
    .filter(({ modality, place }) => modality !== undefined && innerForearm.has(place?.key ?? ''))
    .slice(0, 1)
    .flatMap((numb) => {
      const isOfTheHand = ({ item, place, side }: Finding): boolean =>
        side === numb.side &&
        ((item.probe.kind === 'denervation' && ofTheHand.has(place?.key ?? '')) ||
          (item.probe.kind === 'movement' && /^(thumb|finger|index|little|metacarpo)/.test(item.key)));
      if (!wrong.some(isOfTheHand)) return [];
      const because = 'the hand fails and the inner forearm is numb, which nerves of the hand do not serve';
      if (numb.side === 'midline') return [];
      return [
        shiftBy(numb, { applies: lowerPlexus[numb.side], factor: handWithForearm.plexus, because }),
        shiftBy(numb, { applies: nervesOfTheHand[numb.side], factor: handWithForearm.nerve, because }),
      ];
    });
}

/** Odds where half of the ring finger was found numb, of what lies above the nerve. Judged. */
const halfOfTheRingFinger = 0.5;
const aboveTheNerve = anyOf(kinds('root', 'plexus'), kinds('hemisphere', 'brainstem', 'cord'));

/** A loss that splits the ring finger is of the ulnar nerve or the median: roots and tracts numb the finger as a whole. */
function splitRingFingerShift({ findings }: Exam): readonly Shift[] {
  const numb = findings.filter(({ abnormal, place }) => abnormal && place?.key.startsWith('ring-finger-'));
  const [half] = numb;
  if (half === undefined || new Set(numb.map(({ place }) => place?.key)).size > 1) return [];
  const because = 'the loss splits the ring finger, as a nerve does and a root does not';
  return [shiftBy(half, { applies: aboveTheNerve, factor: halfOfTheRingFinger, because })];
}

/** Odds of several nerves where all that is found lies in one limb: of a leg, and of an arm, where a mishap takes two. Judged. */
const inOneLimb = { leg: 0.65, arm: 0.8 } as const;

/** Who has several nerves shows more than one of them. */
function oneLimbShift({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal, item }) => abnormal && ofLimbs.has(item.region));
  const [first] = wrong;
  if (first === undefined || first.side === 'midline') return [];
  const { region } = first.item;
  const isOfOther = ({ item, place, side }: Finding): boolean =>
    side !== first.side || (place === undefined && item.region !== region);
  if (wrong.some(isOfOther)) return [];
  const factor = region === 'lower-limbs' ? inOneLimb.leg : inOneLimb.arm;
  const because = 'all that fails lies in one limb';
  return [shiftBy(first, { applies: kinds('multiple-nerves'), factor, because })];
}
const ofLimbs: ReadonlySet<string> = new Set(['upper-limbs', 'lower-limbs']);

/** Signs of the muscles of the accessory nerve, and of a shoulder that they no longer hold. */
const ofTheAccessory: ReadonlySet<string> = new Set([
  'trapezius-weakness',
  'sternocleidomastoid-weakness',
  'shoulder-shrug',
  'neck-rotation',
  'shoulder-droop',
  'scapular-winging',
  'scapular-retraction',
  'shoulder-abduction',
  'shoulder-flexion',
]);
/** Odds of the accessory nerve where nothing is wrong with what it moves. Judged. */
const accessoryThatWorks = 0.15;

function accessoryShift({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  const isShown = ({ item, place }: Finding): boolean =>
    ofTheAccessory.has(item.key) ||
    (item.probe.kind === 'denervation' && /shoulder|scapular|neck/.test(`${place?.key}`));
  if (first === undefined || wrong.some(isShown)) return [];
  const because = 'the muscles that it serves are not said to fail';
  return [shiftBy(first, { applies: sites('spinal-accessory-nerve'), factor: accessoryThatWorks, because })];
}

/** What tells of the legs, or of the bladder, which a cord that is ill in the neck does not leave alone. */
const complaintsBelowTheArms: ReadonlySet<string> = new Set([
  'leg-weakness',
  'ascending-weakness',
  'weakness',
  'difficulty-walking',
  'difficulty-with-stairs',
  'falls',
  'unsteadiness',
  'stiffness',
  'tight-band',
  'electric-shock-on-neck-flexion',
  'bladder-disturbance',
  'bowel-disturbance',
  'sexual-dysfunction',
]);
/** The cord in its whole width or its tracts, which the legs run through. */
const tractsOfTheLegs = sites(
  'spinal-cord-transverse',
  'spinal-cord-lateral',
  'spinal-cord-posterolateral',
  'spinal-cord-hemisection',
  'foramen-magnum',
);
/** Odds where both arms alone fail and nothing is said of the legs. Judged. */
const bothArmsAlone = 0.45;

/** Tracts of the legs lie in the cord of the neck; who is ill in both arms alone has lost horns, roots, plexus or nerves. */
function bothArmsAloneShift(exam: Exam): readonly Shift[] {
  if (showsTracts(exam) || exam.history.length === 0 || tells(exam.history, complaintsBelowTheArms)) return [];
  const wrong = exam.findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || sidesOf(wrong).size < 2) return [];
  if (weakMovements(wrong).length === 0 || !wrong.every(({ item, place }) => isOfTheArm(item.region, place?.key)))
    return [];
  const because = 'both arms alone fail, and the tracts of the legs run through the cord of the neck';
  return [shiftBy(first, { applies: tractsOfTheLegs, factor: bothArmsAlone, because })];
}

/** Some signs name their place beside a region that is that of the item. */
const isOfTheArm = (region: string, place: string | undefined): boolean =>
  region === 'upper-limbs' || bodyPartTable.get(place ?? '')?.region === 'upper-limbs';

/** Skin that the median nerve never serves. */
const neverOfTheMedian: ReadonlySet<string> = new Set([
  'little-finger',
  'hypothenar-eminence',
  'ring-finger-ulnar-half',
]);
/** Odds of the median nerve of that side where such skin alone of the hand, or with its neighbour, was found numb. Judged. */
const medianBeside = 0.25;
const ofTheMedian: ReadonlySet<string> = new Set(['thumb', 'index-finger', 'middle-finger', 'thenar-eminence']);

const medianNerve = onEachSide(({ key }) => key.startsWith('median-nerve'));

function littleFingerShift({ findings }: Exam): readonly Shift[] {
  const numb = lostFeeling(findings);
  const little = numb.find(({ place }) => neverOfTheMedian.has(place?.key ?? ''));
  if (little === undefined || little.side === 'midline') return [];
  if (numb.some(({ place, side }) => side === little.side && ofTheMedian.has(place?.key ?? ''))) return [];
  const because = 'the median nerve does not serve the little finger';
  return [shiftBy(little, { applies: medianNerve[little.side], factor: medianBeside, because })];
}

/** Skin of the hand from branches of the ulnar nerve in the palm, and from the branch that leaves it above the wrist. */
const palmOfTheUlnar: ReadonlySet<string> = new Set([
  'little-finger',
  'hypothenar-eminence',
  'ring-finger',
  'ring-finger-ulnar-half',
  'superficial-branch-of-ulnar-nerve',
  'palmar-branch-of-ulnar-nerve',
]);
const backOfTheUlnar: ReadonlySet<string> = new Set(['dorsum-of-hand-ulnar-side', 'dorsal-branch-of-ulnar-nerve']);
/** Odds of what lies above the dorsal branch where the palm of its side was found numb and the back was not. Judged. */
const aboveTheBackSpared = 0.4;
const ulnarAbove: Applies = ({ key }) => /^ulnar-nerve-(upper-arm|elbow|forearm)$/.test(key);

/**
 * The dorsal branch leaves the ulnar nerve above the wrist; roots, trunks and tracts numb both faces of that side of the hand
 * alike. Source: Preston and Shapiro, ulnar neuropathy at the wrist (recalled).
 */
function backOfTheHandSparedShifts({ findings }: Exam): readonly Shift[] {
  const numb = lostFeeling(findings).find(({ place }) => palmOfTheUlnar.has(place?.key ?? ''));
  if (numb === undefined || numb.side === 'midline') return [];
  const ofTheBack = findings.filter(
    ({ side, modality, place }) => side === numb.side && modality !== undefined && backOfTheUlnar.has(place?.key ?? ''),
  );
  if (ofTheBack.length === 0 || ofTheBack.some(({ abnormal, value }) => abnormal || value === null)) return [];
  const because = 'the back of the hand feels beside it, whose branch leaves above the wrist';
  return [shiftBy(numb, { applies: anyOf(ulnarAbove, aboveTheNerve), factor: aboveTheBackSpared, because })];
}

/** Odds of what lies above where a leg fails within days of a birth and nothing says that tracts are ill; of roots, where no root hurts. Judged. */
const afterBirth = { brain: 0.3, cord: 0.6, roots: 0.6 } as const;

/**
 * A birth hurts a nerve of the legs in one of a hundred (Wong 2003, read) and brings a stroke in one of some thousands; an
 * epidural that harms the cord is rarer still, and seldom harms one leg alone.
 */
function afterBirthShifts(exam: Exam): readonly Shift[] {
  const { findings, history, onset } = exam;
  if (!tells(history, birth) || showsTracts(exam)) return [];
  if (!cameFast(onset)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = weakMovements(wrong);
  if (first === undefined || sidesOf(wrong).size > 1) return [];
  if (!wrong.every(isOfTheLeg)) return [];
  const because = 'within days of a birth one leg fails, and nothing says that tracts are ill';
  return [
    shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: afterBirth.brain, because }),
    shiftBy(first, { applies: kinds('cord'), factor: afterBirth.cord, because }),
    ...(tells(history, rootPain)
      ? []
      : [shiftBy(first, { applies: kinds('root'), factor: afterBirth.roots, because })]),
  ];
}
const rootPain: ReadonlySet<string> = new Set(['back-pain', 'radicular-leg-pain', 'bilateral-leg-pain']);
const birth: ReadonlySet<string> = new Set(['pregnancy']);

function isOfTheLeg({ item, place }: Finding): boolean {
  if (item.region === 'lower-limbs') return true;
  if (place === undefined) return false;
  const { kind, key } = place;
  const isSkin = kind === 'dermatome' || kind === 'landmark' || kind === 'territory';
  const region = isSkin ? skinPlace(kind, key)?.region : bodyPartTable.get(key)?.region;
  return region === 'lower-limbs';
}

/** Odds of several single nerves where both sides fail alike within weeks and nothing pressed on them; worse with an infection before. Judged. */
const alikeOnBothSides = { several: 0.25, afterInfection: 0.12 } as const;
/** The same over months, where arms and legs fail alike by side. Judged. */
const alikeInAllLimbs = 0.4;
const pressesOnBoth: ReadonlySet<string> = new Set([
  ...['external-pressure', 'surgical-positioning', 'prolonged-immobility', 'recent-surgery', 'prolonged-squatting'],
  ...['trauma', 'diabetes-mellitus', 'leprosy', 'repetitive-hand-use'],
]);
const infections: ReadonlySet<string> = new Set(['preceding-infection', 'preceding-gastroenteritis']);

/** What strikes single nerves strikes one and then another; the same muscles of both sides, within days, are taken by what takes all. */
function alikeOnBothSidesShift({ findings, history, onset }: Exam): readonly Shift[] {
  const isQuick = (onset.pace === 'acute' || onset.pace === 'subacute') && (onset.durationDays ?? 99) <= 28;
  if (!isQuick || tells(history, pressesOnBoth)) return [];
  const weak = weakMovements(findings);
  const nameOf = ({ item, value }: Finding): string => `${item.key} ${String(value)}`;
  const [left, right] = (['left', 'right'] as const).map(
    (side) => new Set(weak.filter((one) => one.side === side).map(nameOf)),
  );
  const [first] = weak;
  if (first === undefined || left === undefined || right === undefined || left.size < 3) return [];
  if (left.size !== right.size || ![...left].every((name) => right.has(name))) return [];
  const factor = tells(history, infections) ? alikeOnBothSides.afterInfection : alikeOnBothSides.several;
  const because = 'the same muscles fail on both sides within weeks, and single nerves are struck one after the other';
  return [shiftBy(first, { applies: kinds('multiple-nerves'), factor, because })];
}

/** Single nerves leave arms or legs unlike by side even when all of them are hit; an illness of all nerves hardly does. */
function alikeInAllLimbsShift({ findings, history }: Exam): readonly Shift[] {
  if (tells(history, pressesOnBoth)) return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  const regions = new Set(weak.map(({ item }) => item.region));
  if (first === undefined || !regions.has('upper-limbs') || !regions.has('lower-limbs')) return [];
  const hasFellow = ({ item, side, value }: Finding): boolean =>
    weak.some((other) => other.item.key === item.key && other.side !== side && other.value === value);
  if (!weak.every(hasFellow)) return [];
  const because = 'arms and legs fail alike on both sides, and single nerves are hit unlike';
  return [shiftBy(first, { applies: kinds('multiple-nerves'), factor: alikeInAllLimbs, because })];
}

/** How patterns that tell nerves from roots, plexus, cord and muscle shift the odds of sites. */
export function nervePatternShifts(exam: Exam): readonly Shift[] {
  return [
    ...otherNerveInEachLimbShifts(exam),
    ...alikeOnBothSidesShift(exam),
    ...alikeInAllLimbsShift(exam),
    ...deformedFeetShifts(exam),
    ...bothFeetShifts(exam),
    ...silentCaudaShift(exam),
    ...caudaOfOneSideShift(exam),
    ...legsWithoutJerksShift(exam),
    ...handWithForearmShifts(exam),
    ...splitRingFingerShift(exam),
    ...oneLimbShift(exam),
    ...accessoryShift(exam),
    ...bothArmsAloneShift(exam),
    ...littleFingerShift(exam),
    ...backOfTheHandSparedShifts(exam),
    ...afterBirthShifts(exam),
  ];
}
