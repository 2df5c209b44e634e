import { skinPlace } from '../../anatomy/skin-places.ts';
import type { Exam } from '../../exam/exam.ts';
import { type Finding, isLost } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import type { BodySide } from '../../kernel/side.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { hasSignOfTheHead, lostFeeling, shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import { showsTracts } from './nerve-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { onEachSide } from './signs/sign-weight.ts';
import { tells } from './told.ts';

/** What hurts or presses both femoral nerves or both halves of the lumbar plexus at once. */
const hurtsBothThighs: ReadonlySet<string> = new Set([
  ...['recent-surgery', 'surgical-positioning', 'hip-replacement', 'pregnancy', 'difficult-delivery', 'trauma'],
  ...['anticoagulant', 'bleeding-disorder', 'external-pressure', 'prolonged-immobility', 'needle-near-nerve'],
  ...['flank-pain', 'thigh-pain', 'leg-pain', 'weight-loss', 'radiotherapy', 'cancer', 'lymphoma'],
]);
/** Odds of both femoral nerves or plexuses where nothing hurt them and the jerks of the ankles are gone with those of the knees. Judged. */
const bothFemoralNerves = 0.02;
const femoralOrLumbar = sites('femoral-nerve-pelvis', 'femoral-nerve-groin', 'lumbar-plexus');

const jerkIsGone = (findings: readonly Finding[], reflex: string, side: BodySide): boolean =>
  findings.some((one) => one.item.key === reflex && one.side === side && isLost(one.value));

/**
 * Two nerves of one name that fail within days were hurt together; neither serves the jerk of the ankle, and roots that are
 * inflamed take all jerks of the legs before they take much strength.
 */
function bothFemoralShift({ findings, history, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset)) return [];
  const weak = weakMovements(findings).filter(({ item }) => item.region === 'lower-limbs');
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2 || tells(history, hurtsBothThighs)) return [];
  const areGone = (['left', 'right'] as const).every((side) => jerkIsGone(findings, 'ankle', side));
  if (!areGone) return [];
  const because = 'both ankle jerks are gone, which the femoral nerves do not serve, and nothing hurt both nerves';
  return [shiftBy(first, { applies: femoralOrLumbar, factor: bothFemoralNerves, because })];
}

/** Movements of each leg that must have been found weak to the same degree, and the odds of an infection of motor cells then. Judged. */
const alike = { movements: 2, motorCells: 0.2 } as const;

/**
 * Poliomyelitis and its kin take motor cells in patches, one leg far more than the other; both legs that fail alike within days
 * fail by their roots. Source: Adams and Victor, poliomyelitis (recalled).
 */
function legsAlikeShift({ findings, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset)) return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || !weak.every(({ item }) => item.region === 'lower-limbs')) return [];
  const grades = (side: BodySide): ReadonlyMap<string, Finding['value']> =>
    new Map(weak.filter((one) => one.side === side).map(({ item, value }) => [item.key, value]));
  const [left, right] = [grades('left'), grades('right')];
  const areAlike = left.size === right.size && [...left].every(([key, value]) => right.get(key) === value);
  if (!areAlike || left.size < alike.movements) return [];
  const because = 'both legs fail alike within days, and motor cells that are infected fail in patches';
  return [shiftBy(first, { applies: kinds('anterior-horn'), factor: alike.motorCells, because })];
}

/** Odds of brain and brainstem where both legs have lost their jerks within days. Judged. */
const jerksLostFromAbove = 0.3;

/** Legs that fail from the brain keep their jerks, or lose them for a day; the ankle's alone goes with age. Source: Brazis, paraparesis (recalled). */
function jerksLostShift(exam: Exam): readonly Shift[] {
  const { findings } = exam;
  if (showsTracts(exam) || hasSignOfTheHead(findings)) return [];
  const first = weakMovements(findings).find(({ item }) => item.region === 'lower-limbs');
  const isFaint = (side: BodySide): boolean =>
    jerkIsGone(findings, 'ankle', side) &&
    (jerkIsGone(findings, 'knee', side) ||
      findings.some(({ item, side: own, value }) => item.key === 'knee' && own === side && value === '1'));
  if (first === undefined || !isFaint('left') || !isFaint('right')) return [];
  const because = 'the jerks of both legs are lost, which the brain does not take';
  return [shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: jerksLostFromAbove, because })];
}

const bladderIsTold: ReadonlySet<string> = new Set(['bladder-disturbance', 'bowel-disturbance', 'saddle-numbness']);
const ofSacralFailure: ReadonlySet<string> = new Set([
  ...['urinary-retention', 'loss-of-bladder-sensation', 'palpable-bladder', 'reduced-anal-tone'],
  ...['absent-voluntary-anal-contraction', 'saddle-anaesthesia', 'loss-of-genital-sensation'],
]);
const farBelowTheKnee: ReadonlySet<string> = new Set([
  ...['foot-drop', 'ankle-dorsiflexion', 'ankle-plantarflexion', 'ankle-eversion', 'ankle-inversion'],
  ...['great-toe-extension', 'great-toe-flexion', 'toe-extension', 'toe-flexion'],
]);
const painOfLowRoots: ReadonlySet<string> = new Set([
  ...['back-pain', 'leg-pain', 'radicular-leg-pain', 'bilateral-leg-pain', 'night-spinal-pain', 'foot-pain'],
]);
/** Odds where a foot fails limply and the bladder with it; more, where back or leg hurts. Judged. */
const footAndBladder = { cauda: 2.5, conus: 2, oneRoot: 0.6, nerve: 0.4, cordAbove: 0.4, brain: 0.4 } as const;

/**
 * Fibres for the foot (L5 and S1) and for the bladder (S2 to S4) lie side by side in conus and cauda equina alone: no nerve or
 * plexus has both, and tracts that fail stiffen the leg from the hip down. Source: Brazis, cauda equina and conus (recalled).
 */
function footAndBladderShifts(exam: Exam): readonly Shift[] {
  const { findings, history } = exam;
  if (showsTracts(exam) || hasSignOfTheHead(findings)) return [];
  const isSacral =
    tells(history, bladderIsTold) || findings.some(({ abnormal, item }) => abnormal && ofSacralFailure.has(item.key));
  const weak = findings.filter(
    ({ abnormal, item }) => abnormal && (item.probe.kind === 'movement' || item.key === 'foot-drop'),
  );
  const [first] = weak;
  if (!isSacral || first === undefined || !weak.every(({ item }) => farBelowTheKnee.has(item.key))) return [];
  const because = 'a foot and the bladder fail together, whose fibres lie side by side in conus and cauda equina alone';
  const hurts = tells(history, painOfLowRoots);
  return [
    shiftBy(first, { applies: kinds('cauda-equina'), factor: footAndBladder.cauda, because }),
    shiftBy(first, { applies: sites('conus-medullaris'), factor: footAndBladder.conus, because }),
    shiftBy(first, { applies: kinds('root'), factor: footAndBladder.oneRoot, because }),
    shiftBy(first, { applies: kinds('nerve', 'plexus'), factor: footAndBladder.nerve, because }),
    ...(hurts
      ? [
          shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: footAndBladder.brain, because }),
          shiftBy(first, { applies: cordAboveTheConus, factor: footAndBladder.cordAbove, because }),
        ]
      : []),
  ];
}
const cordAboveTheConus: Applies = ({ kind, key }) => kind === 'cord' && key !== 'conus-medullaris';

const movedByTheFibular: ReadonlySet<string> = new Set([
  ...['ankle-dorsiflexion', 'ankle-eversion', 'great-toe-extension', 'toe-extension'],
]);
const seenOfTheFibular: ReadonlySet<string> = new Set([
  'foot-drop',
  'high-stepping',
  'heel-walking',
  'tinel-fibular-neck',
]);
const skinOfTheFibular: ReadonlySet<string> = new Set([
  ...['outer-shin', 'shin', 'dorsum-of-foot', 'first-web-space-of-foot', 'common-fibular-nerve', 'deep-fibular-nerve'],
  ...['superficial-fibular-nerve', 'lateral-sural-cutaneous-nerve'],
]);
/** What hurts or presses the sciatic nerve above its division. */
const ofTheButtock: ReadonlySet<string> = new Set([
  ...['hip-replacement', 'needle-near-nerve', 'prolonged-immobility', 'trauma', 'difficult-delivery', 'anticoagulant'],
  ...['leg-pain', 'thigh-pain', 'radicular-leg-pain', 'back-pain', 'surgical-positioning'],
]);
/** Odds of the sciatic nerve as a whole where strength and skin of the fibular nerve alone are found lost. Judged. */
const sciaticOfTheFibular = 0.5;

/**
 * Who found foot and toes that do not lift, or a foot that does not turn out, and the skin that goes with it, has looked at what the tibial
 * nerve does beside them. The fibular nerve at the neck of the bone is the commonest nerve of the leg to fail (Katirji 1999, from memory).
 */
function fibularAloneShift(exam: Exam): readonly Shift[] {
  const { findings, history } = exam;
  if (showsTracts(exam) || tells(history, ofTheButtock)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const weak = weakMovements(wrong);
  const lost = lostFeeling(wrong);
  const [first] = weak;
  if (first === undefined || sidesOf(wrong).size > 1 || lost.length === 0) return [];
  const isOfTheFibular = ({ item, place, modality }: Finding): boolean =>
    modality === undefined
      ? movedByTheFibular.has(item.key) || seenOfTheFibular.has(item.key)
      : skinOfTheFibular.has(place?.key ?? '');
  if (new Set(weak.map(({ item }) => item.key)).size < 2 || !wrong.every(isOfTheFibular)) return [];
  const because = 'strength and skin of the fibular nerve alone are lost, and nothing of the tibial nerve beside it';
  return [shiftBy(first, { applies: sites('sciatic-nerve'), factor: sciaticOfTheFibular, because })];
}

const ofPain: ReadonlySet<string> = new Set(['pinprick', 'temperature']);
/** Odds where one leg as a whole loses pain or warmth alone: touch looked for there and kept, or not looked for. Judged. */
const warmthAlone = {
  touchKept: { nerves: 0.2, crossed: 3 },
  touchUnknown: { nerves: 0.25, crossed: 2.5 },
} as const;
const nervesOfOneLeg = anyOf(
  kinds('nerve', 'multiple-nerves', 'plexus', 'root', 'cauda-equina'),
  sites('conus-medullaris'),
);
const halfOfTheCord = onEachSide(sites('spinal-cord-hemisection'));
const otherCrossing = sites('spinal-cord-anterior', 'spinal-cord-central');

/**
 * In a nerve or a root fibres for touch and for warmth run mixed; they part where those for pain and warmth cross in the cord. One
 * leg that misses warmth alone has a crossed tract of the other half. Source: Brazis, dissociated loss (recalled).
 */
function warmthAloneShifts({ findings }: Exam): readonly Shift[] {
  const felt = findings.filter(
    ({ modality, value, place }) => modality && value !== null && isOnLimb(place, 'lower-limbs'),
  );
  const lost = felt.filter(({ abnormal }) => abnormal);
  const whole = lost.find(({ place }) => place?.key === 'whole-leg');
  if (whole === undefined || (whole.side !== 'left' && whole.side !== 'right') || sidesOf(lost).size > 1) return [];
  const own = weakMovements(findings).some(({ side, item }) => side === whole.side && item.region === 'lower-limbs');
  if (own || !lost.every(({ modality }) => ofPain.has(modality ?? ''))) return [];
  if (!lost.some(({ modality }) => modality === 'temperature')) return [];
  const isKept = felt.some((one) => one.side === whole.side && !ofPain.has(one.modality ?? ''));
  const { nerves, crossed } = isKept ? warmthAlone.touchKept : warmthAlone.touchUnknown;
  const because = 'a leg misses warmth alone, whose fibres part from those of touch only where they cross in the cord';
  const other = whole.side === 'left' ? 'right' : 'left';
  return [
    shiftBy(whole, { applies: nervesOfOneLeg, factor: nerves, because }),
    shiftBy(whole, { applies: anyOf(halfOfTheCord[other], otherCrossing), factor: crossed, because }),
  ];
}

const ofHipAndThigh: ReadonlySet<string> = new Set(['hip-flexion', 'hip-extension', 'knee-extension']);
/** Odds of what takes the longest axons first where hips fail and the trunk is numb before the hands are. Judged. */
const trunkBeforeHands = 0.05;
const longestFirst = kinds('polyneuropathy');

/**
 * Where the longest axons fail first, the hands have long been numb and the feet long been limp before the trunk is reached, and
 * it is reached at the breastbone; a trunk that is numb over hips that are weak has its roots or its cord ill.
 */
function numbTrunkShift({ findings }: Exam): readonly Shift[] {
  const lost = lostFeeling(findings);
  const numb = lost.filter(({ place }) => {
    if (place === undefined) return false;
    if (place.kind === 'level-below') return /^T/.test(place.key);
    return place.kind === 'dermatome' ? /^T([2-9]|1[0-2])$/.test(place.key) : isOfTheTrunk(place.kind, place.key);
  });
  const [first] = numb;
  const hips = weakMovements(findings).filter(({ item }) => ofHipAndThigh.has(item.key));
  if (first === undefined || sidesOf(numb).size < 2 || sidesOf(hips).size < 2) return [];
  if (lost.some(({ place }) => isOnLimb(place, 'upper-limbs'))) return [];
  const because =
    'the trunk is numb and the hips are weak while the hands feel, and the longest axons fail at the ends first';
  return [shiftBy(first, { applies: longestFirst, factor: trunkBeforeHands, because })];
}

function isOfTheTrunk(kind: string, key: string): boolean {
  if (kind !== 'landmark' && kind !== 'territory') return false;
  return skinPlace(kind, key)?.region === 'trunk';
}

const ofBurningFeet: ReadonlySet<string> = new Set(['burning-feet', 'foot-pain', 'neuropathic-pain']);
const stocking = /^(stocking-|sole|toes|great-toe|whole-foot|dorsum-of-foot|ankle$|medial-malleolus|lateral-malleolus)/;
/** Odds of a cord that is ill in its whole width where feet burn and feel wrong as far as a stocking goes, and no more is wrong. Judged. */
const cordUnderStockings = 0.35;
const cordInItsWidth = sites('spinal-cord-transverse', 'spinal-cord-hemisection', 'spinal-cord-central');

/** Small fibres burn where they are longest; a level of the cord numbs thighs and trunk with the feet, and stiffens or weakens them. */
function burningStockingsShift(exam: Exam): readonly Shift[] {
  const { findings, history } = exam;
  if (showsTracts(exam) || weakMovements(findings).length > 0 || tells(history, bladderIsTold)) return [];
  const felt = findings.filter(({ abnormal, modality }) => abnormal && modality !== undefined);
  const [first] = felt;
  if (first === undefined || sidesOf(felt).size < 2 || !tells(history, ofBurningFeet)) return [];
  if (!felt.every(({ place }) => stocking.test(place?.key ?? ''))) return [];
  const because = 'the feet burn and feel wrong as far as a stocking goes, and no tract is ill';
  return [shiftBy(first, { applies: cordInItsWidth, factor: cordUnderStockings, because })];
}

/** Odds where touch is felt too strongly on the skin of both feet, and they burn. Judged. */
const tenderFeet = { ends: 4, severalNerves: 2, cord: 0.5, above: 0.4, oneNerve: 0.6 } as const;
const burns: ReadonlySet<string> = new Set(['burning-feet', 'foot-pain', 'allodynia', 'neuropathic-pain']);
const skinOfTheFoot: ReadonlySet<string> = new Set([
  ...['whole-foot', 'sole', 'toes', 'great-toe', 'dorsum-of-foot', 'stocking-to-ankle', 'stocking-to-mid-calf'],
]);
const endsOfTheLongest = sites(
  'small-fibre-polyneuropathy',
  'sensory-polyneuropathy',
  'length-dependent-polyneuropathy',
);

/** Ends of fibres that die back fire at a touch; tracts that are cut numb first. Source: Lauria 2005 (from memory). */
function tenderFeetShifts({ findings, history }: Exam): readonly Shift[] {
  if (!tells(history, burns)) return [];
  const tender = findings.filter(
    ({ modality, value, place }) =>
      modality !== undefined && value === 'increased' && skinOfTheFoot.has(place?.key ?? ''),
  );
  const [first] = tender;
  if (first === undefined || sidesOf(tender).size < 2) return [];
  const because = 'both feet burn and cannot bear a touch, as where the ends of their fibres die back';
  return [
    shiftBy(first, { applies: endsOfTheLongest, factor: tenderFeet.ends, because }),
    shiftBy(first, { applies: kinds('multiple-nerves'), factor: tenderFeet.severalNerves, because }),
    shiftBy(first, { applies: kinds('cord'), factor: tenderFeet.cord, because }),
    shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: tenderFeet.above, because }),
    shiftBy(first, { applies: kinds('nerve', 'root'), factor: tenderFeet.oneNerve, because }),
  ];
}

/** Odds of what lies above where the jerk of one weak leg is gone, its fellow is there and hours have passed. Judged. */
const jerkGone = { brain: 0.2, cord: 0.6 } as const;
const jerksOfTheLeg: ReadonlySet<string> = new Set(['knee', 'ankle', 'medial-hamstring', 'adductor']);

/**
 * A jerk that is gone in the weak leg alone has its arc cut, by a root, the plexus or a nerve; a tract that fails lets go of it, but for
 * the first hours.
 */
function oneJerkGoneShifts(exam: Exam): readonly Shift[] {
  const { findings, onset } = exam;
  if (onset.pace === undefined || onset.pace === 'hyperacute' || showsTracts(exam) || hasSignOfTheHead(findings))
    return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size > 1 || !weak.every(({ item }) => item.region === 'lower-limbs'))
    return [];
  const jerks = findings.filter(({ item }) => item.section === 'reflexes' && jerksOfTheLeg.has(item.key));
  const gone = jerks.filter(({ side, value }) => side === first.side && isLost(value));
  const isAlone = (one: Finding): boolean =>
    jerks.some(
      ({ item, side, abnormal, value }) =>
        item.key === one.item.key && side !== one.side && !abnormal && value !== null,
    );
  const cut = gone.find(isAlone);
  if (cut === undefined) return [];
  const because = 'the jerk of the weak leg alone is gone, as where its arc is cut';
  return [
    shiftBy(cut, { applies: kinds('hemisphere', 'brainstem'), factor: jerkGone.brain, because }),
    shiftBy(cut, { applies: kinds('cord'), factor: jerkGone.cord, because }),
  ];
}

/** How what fails in the legs tells roots, cord and nerves apart. */
export function legPatternShifts(exam: Exam): readonly Shift[] {
  return [
    ...bothFemoralShift(exam),
    ...legsAlikeShift(exam),
    ...jerksLostShift(exam),
    ...footAndBladderShifts(exam),
    ...fibularAloneShift(exam),
    ...warmthAloneShifts(exam),
    ...numbTrunkShift(exam),
    ...burningStockingsShift(exam),
    ...tenderFeetShifts(exam),
    ...oneJerkGoneShifts(exam),
  ];
}
