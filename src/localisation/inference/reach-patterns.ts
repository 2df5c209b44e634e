import { isWithin } from '../../anatomy/body-parts.ts';
import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import { cervicalCord, kinds, sites } from './history/history-weight.ts';
import { hasSignOfTheHead, lostFeeling, shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/** Odds of motor neuron disease where one limb shows both of its signs and nobody speaks of numbness. Judged. */
const bothMotorCells = 3;
const ofLowerCells: ReadonlySet<string> = new Set(['wasting', 'fasciculation']);
const limbs = [
  { region: 'upper-limbs', part: 'upper-limb' },
  { region: 'lower-limbs', part: 'lower-limb' },
] as const;
const ofNumbness: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae']);

/**
 * A jerk that is brisk in a limb that has wasted or twitches, and feeling that is kept: upper and lower motor cells of one region
 * fail together. Source: revised El Escorial criteria (recalled).
 */
function bothMotorCellsShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ modality }) => modality !== undefined)) return [];
  if (tells(history, ofNumbness)) return [];
  const limbOf = ({ item, place, side }: Finding): string => {
    const limb = limbs.find((one) =>
      place === undefined ? item.region === one.region : isWithin(place.key, one.part),
    );
    return `${limb?.part} ${side}`;
  };
  const thin = new Set(wrong.filter(({ item }) => ofLowerCells.has(item.key)).map(limbOf));
  const brisk = wrong.find(
    (finding) =>
      ((finding.item.section === 'reflexes' && isBrisk(finding.value)) ||
        (finding.item.section === 'plantars' && finding.value === 'extensor')) &&
      thin.has(limbOf(finding)),
  );
  if (brisk === undefined) return [];
  const because = 'upper and lower motor cells fail in one limb, and feeling is kept';
  return [shiftBy(brisk, { applies: sites('motor-neuron-system'), factor: bothMotorCells, because })];
}

/** Odds where the throat shows both, and nothing of one half alone: of motor neuron disease, and of a nerve or a hole of the skull. Judged. */
const bothOfTheThroat = { motorNeurons: 3, oneNerve: 0.25 } as const;
const freedThroat: ReadonlySet<string> = new Set([
  ...['spastic-dysarthria', 'pseudobulbar-affect', 'brisk-gag-reflex', 'spastic-tongue'],
]);
const thinTongue: ReadonlySet<string> = new Set(['tongue-wasting', 'tongue-fasciculation']);
const feelsOrSees: ReadonlySet<string> = new Set(['facial-numbness', 'absent-corneal-reflex', 'horner-syndrome']);

/**
 * The same of the region of the throat: a tongue that is thin or flickers as a whole, under a jaw jerk that is brisk. A nerve at
 * the base of the skull takes half the tongue, which is then named, and frees no jerk. Source: revised El Escorial criteria (recalled).
 */
function bothMotorCellsOfTheThroatShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (cameFast(onset) || tells(history, ofNumbness)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const tongue = wrong.filter(({ item }) => thinTongue.has(item.key));
  const [thin] = tongue;
  const isOfOneHalf = thin?.side !== 'midline' && sidesOf(tongue).size === 1;
  const isFreed = wrong.some(
    ({ item, value }) =>
      freedThroat.has(item.key) || (item.key === 'jaw' && item.section === 'reflexes' && isBrisk(value)),
  );
  if (thin === undefined || isOfOneHalf || !isFreed) return [];
  if (wrong.some(({ item, modality }) => modality !== undefined || feelsOrSees.has(item.key))) return [];
  const because = 'the whole tongue is thin or flickers, and tracts to the throat have let go';
  return [
    shiftBy(thin, { applies: sites('motor-neuron-system'), factor: bothOfTheThroat.motorNeurons, because }),
    shiftBy(thin, { applies: kinds('cranial-nerve'), factor: bothOfTheThroat.oneNerve, because }),
  ];
}

/** Odds of processes that take nerves of both halves alike where skin is numb by dermatomes of one limb or half alone. Judged. */
const dermatomesOfOneHalf = 0.5;
const takesBothHalves = kinds('polyneuropathy', 'polyradiculoneuropathy', 'muscle', 'junction');

/** Who names dermatomes found the loss to run along them; what fades from feet and hands has no such edges. */
function dermatomeShifts({ findings }: Exam): readonly Shift[] {
  const lost = lostFeeling(findings);
  const [first] = lost;
  if (first === undefined || sidesOf(lost).size > 1 || first.side === 'midline') return [];
  if (!lost.every(({ place }) => place?.kind === 'dermatome')) return [];
  const because = 'skin is numb by dermatomes of one half, and what takes all nerves has no such edges';
  return [shiftBy(first, { applies: takesBothHalves, factor: dermatomesOfOneHalf, because })];
}

/**
 * Odds of cord and brain where the wrists or fingers of both hands drop: fingers and wrists that fail from above are held bent, and both hands hang when
 * both radial nerves, their motor cells or the muscles fail. Source: Adams and Victor, lead neuropathy (recalled). Judged.
 */
const bothWristsFromAbove = 0.4;
const hangs: ReadonlySet<string> = new Set(['wrist-drop', 'finger-drop']);

function bothWristsShift({ findings }: Exam): readonly Shift[] {
  const dropped = findings.filter(({ abnormal, item }) => abnormal && hangs.has(item.key));
  const [first] = dropped;
  if (first === undefined || sidesOf(dropped).size < 2) return [];
  const because = 'wrists and fingers that fail from above are held bent and do not hang';
  return [shiftBy(first, { applies: kinds('hemisphere', 'brainstem', 'cord'), factor: bothWristsFromAbove, because })];
}

/** Skin at the far end of arm and leg. */
const ofTheHand: ReadonlySet<string> = new Set([
  'palm',
  'fingertips',
  'whole-hand',
  'dorsum-of-hand',
  'glove-to-wrist',
  'index-finger',
  'middle-finger',
]);
const ofTheFoot: ReadonlySet<string> = new Set([
  'sole',
  'toes',
  'great-toe',
  'whole-foot',
  'dorsum-of-foot',
  'stocking-to-ankle',
]);
/** Where a tuning fork is set next when it is not felt at the toes. */
const aboveTheFoot: ReadonlySet<string> = new Set(['ankle', 'medial-malleolus', 'lateral-malleolus', 'shin', 'knee']);
/** Columns that starve fail from their far end, as the longest nerves do. */
const inSegments: Applies = ({ key, kind }) =>
  (kind === 'cord' || kind === 'root' || kind === 'hemisphere' || kind === 'brainstem') &&
  key !== 'spinal-cord-posterolateral';
/** Odds of what lies in segments where hands and feet alone are numb, on both sides; a narrow neck does it too. Judged. */
const handsAndFeet = 0.6;

function handsAndFeetShift({ findings }: Exam): readonly Shift[] {
  const lost = lostFeeling(findings);
  const inBoth = (places: ReadonlySet<string>): boolean =>
    sidesOf(lost.filter(({ place }) => place !== undefined && places.has(place.key))).size === 2;
  const [first] = lost;
  if (first === undefined || !inBoth(ofTheHand) || !inBoth(ofTheFoot)) return [];
  const isFar = (key: string): boolean => ofTheHand.has(key) || ofTheFoot.has(key) || aboveTheFoot.has(key);
  if (!lost.every(({ place }) => place !== undefined && isFar(place.key))) return [];
  const because = 'hands and feet alone are numb on both sides, as where the longest fibres fail';
  return [shiftBy(first, { applies: inSegments, factor: handsAndFeet, because })];
}

/** Odds of the brainstem where both legs alone are weak and nothing is told or seen of arms, face or speech. Judged. */
const bothLegsFromTheBrainstem = 0.25;
const complaintsAboveTheLegs: ReadonlySet<string> = new Set([
  'arm-weakness',
  'diplopia',
  'dysphagia',
  'slurred-speech',
  'vertigo',
  'headache',
]);
const brainstem: Applies = ({ key, kind }) => kind === 'brainstem' && key !== 'foramen-magnum';

/** Fibres for arms and face run beside those for the legs down to the medulla; below the arms, both legs fail alone. */
function bothLegsShift({ findings, history }: Exam): readonly Shift[] {
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2) return [];
  if (!weak.every(({ item }) => item.region === 'lower-limbs')) return [];
  if (hasSignOfTheHead(findings)) return [];
  if (tells(history, complaintsAboveTheLegs)) return [];
  const because = 'both legs fail and nothing above them does';
  return [shiftBy(first, { applies: brainstem, factor: bothLegsFromTheBrainstem, because })];
}

/** Odds of the whole cross-section where pain is lost below a level and both qualities of the columns are found kept. Judged. */
const columnsKept = { wholeCord: 0.35, front: 2 } as const;
/** The same where pain is lost altogether: a cord of which nothing passes carries no position either. Judged. */
const columnsKeptAlone = { wholeCord: 0.12, front: 3 } as const;
const ofPain: ReadonlySet<string> = new Set(['pinprick', 'temperature']);
const ofTheColumns: ReadonlySet<string> = new Set(['vibration', 'joint-position']);

/** Who tests vibration and position below a level of lost pain, and finds them kept, has found the columns spared. */
function columnsKeptShifts({ findings }: Exam): readonly Shift[] {
  const felt = findings.filter(({ modality, value }) => modality !== undefined && value !== null);
  const pain = felt.filter(
    ({ abnormal, modality, place }) => abnormal && place?.kind === 'level-below' && ofPain.has(modality ?? ''),
  );
  const columns = felt.filter(({ modality }) => ofTheColumns.has(modality ?? ''));
  const [first] = pain;
  if (first === undefined || sidesOf(pain).size < 2 || sidesOf(columns).size < 2) return [];
  if (columns.some(({ abnormal }) => abnormal)) return [];
  const because = 'pain is lost below a level while vibration and position are kept, which the dorsal columns carry';
  const odds = pain.every(({ value }) => value === 'absent') ? columnsKeptAlone : columnsKept;
  return [
    shiftBy(first, { applies: sites('spinal-cord-transverse'), factor: odds.wholeCord, because }),
    shiftBy(first, { applies: sites('spinal-cord-anterior'), factor: odds.front, because }),
  ];
}

/** Odds of a lesion across the cord where position or vibration is lost slowly at both ends, no level was found and the columns starve. Judged. */
const acrossStarvedColumns = 0.4;
const starves: ReadonlySet<string> = new Set([
  ...[
    'zinc-excess',
    'nitrous-oxide',
    'vitamin-b12-deficiency',
    'pernicious-anaemia',
    'bariatric-surgery',
    'gastrectomy',
  ],
]);
const ofALevel: ReadonlySet<string> = new Set([
  ...['neck-pain', 'back-pain', 'thoracic-back-pain', 'tight-band', 'bladder-disturbance', 'trauma', 'neck-trauma'],
  ...['electric-shock-on-neck-flexion', 'radicular-arm-pain', 'cancer', 'multiple-sclerosis', 'fever'],
]);

/** Lack of vitamin B12 or copper takes both columns over a long stretch and leaves the rest of the cross-section. Source: Healton 1991 (recalled). */
function starvedColumnsShift({ findings, history, onset }: Exam): readonly Shift[] {
  if (cameFast(onset)) return [];
  if (!tells(history, starves) || tells(history, ofALevel) || hasSignOfTheHead(findings)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const lost = wrong.filter(({ modality }) => ofTheColumns.has(modality ?? ''));
  const [first] = lost;
  if (first === undefined || sidesOf(lost).size < 2) return [];
  if (wrong.some(({ item, place }) => item.section === 'sphincters' || place?.kind === 'level-below')) return [];
  const because = 'position and vibration are lost at both ends, no level was found, and something starves the columns';
  return [
    shiftBy(first, {
      applies: sites('spinal-cord-transverse', 'foramen-magnum'),
      factor: acrossStarvedColumns,
      because,
    }),
  ];
}

/** Odds where arm and leg of one half feel wrong, little by little, under a face that is not said to. Judged. */
const growingBelowTheFace = { cord: 2, above: 0.6 } as const;
const toldOfTheHead: ReadonlySet<string> = new Set([
  ...[
    'face-numbness',
    'face-droop',
    'headache',
    'new-headache',
    'morning-headache',
    'seizure',
    'slurred-speech',
    'speech-difficulty',
  ],
  ...['diplopia', 'vertigo', 'visual-loss', 'cognitive-change', 'perioral-numbness', 'vomiting', 'dysphagia'],
]);
const halfOfTheNeck: Applies = (site) =>
  cervicalCord(site) &&
  ['spinal-cord-hemisection', 'spinal-cord-transverse', 'spinal-cord-posterior'].includes(site.key);

function isGradual({ pace, durationDays = 0 }: Exam['onset']): boolean {
  return pace === 'subacute' || pace === 'chronic' || durationDays > 14;
}

/**
 * Thalamus and cortex give the face and the mouth much room, and what grows there seldom leaves them out; a neck that narrows takes
 * arm and leg of a half and is mistaken for a stroke. Source: Brazis, hemisensory loss (recalled).
 */
function growingBelowTheFaceShifts({ findings, history, onset, course }: Exam): readonly Shift[] {
  if (!isGradual(onset) || course === 'static' || course === 'improving' || course === 'relapsing-remitting') return [];
  if (hasSignOfTheHead(findings) || tells(history, toldOfTheHead)) return [];
  const lost = lostFeeling(findings);
  const [first] = lost;
  if (first === undefined || first.side === 'midline' || sidesOf(lost).size > 1) return [];
  if (
    !lost.some((one) => isOnLimb(one.place, 'upper-limbs')) ||
    !lost.some((one) => isOnLimb(one.place, 'lower-limbs'))
  )
    return [];
  const because = 'arm and leg of one half feel wrong, little by little, and the face is not said to';
  return [
    shiftBy(first, { applies: halfOfTheNeck, factor: growingBelowTheFace.cord, because }),
    shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: growingBelowTheFace.above, because }),
  ];
}

/** Odds where arm or trunk and leg of one half lose pain or warmth alone, little by little, below a face that is whole. Judged. */
const painOfAHalf = { cord: 3, above: 0.5, nerves: 0.2 } as const;
const nervesOfBothHalves = kinds('ganglion', 'polyneuropathy', 'polyradiculoneuropathy');

/**
 * The tract of pain runs by itself in the cord alone: from the medulla up it lies beside that of the face, in thalamus and cortex beside
 * touch and position. Source: Brazis, dissociated loss of feeling (recalled).
 */
function painOfAHalfShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (!isGradual(onset) || hasSignOfTheHead(findings) || tells(history, toldOfTheHead)) return [];
  const lost = lostFeeling(findings);
  const [first] = lost;
  if (first === undefined || first.side === 'midline' || sidesOf(lost).size > 1) return [];
  if (!lost.every(({ modality }) => ofPain.has(modality ?? ''))) return [];
  const isOfALeg = lost.some((one) => isOnLimb(one.place, 'lower-limbs'));
  if (!isOfALeg || lost.every((one) => isOnLimb(one.place, 'lower-limbs'))) return [];
  const because = 'pain or warmth alone is lost in one half below the face, and runs by itself in the cord alone';
  return [
    shiftBy(first, { applies: kinds('cord'), factor: painOfAHalf.cord, because }),
    shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: painOfAHalf.above, because }),
    shiftBy(first, { applies: nervesOfBothHalves, factor: painOfAHalf.nerves, because }),
  ];
}

/** Odds where both arms are freed of their tracts over a lumbar canal that is known, or walks, as narrow. Judged. */
const narrowTwice = { neck: 3, motorNeurons: 0.4, roots: 0.6 } as const;
const ofTheLumbarCanal: ReadonlySet<string> = new Set([
  ...['neurogenic-claudication', 'spinal-stenosis', 'radicular-leg-pain', 'bilateral-leg-pain'],
]);
const ofTheNeckAbove: ReadonlySet<string> = new Set(['clumsiness', 'unsteadiness', 'paraesthesiae', 'numbness']);
const ofFreedArms: ReadonlySet<string> = new Set(['hoffmann', 'tromner', 'inverted-brachioradialis']);

/**
 * Of those with a narrow lumbar canal one in five to ten has a narrow neck as well, and the roots below keep the jerks of the legs
 * down, so that only the arms are brisk (Dagi 1987, from memory). Odds judged.
 */
function narrowTwiceShifts({ findings, history }: Exam): readonly Shift[] {
  if (!tells(history, ofTheLumbarCanal) || !tells(history, ofTheNeckAbove)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ item }) => ofLowerCells.has(item.key)) || hasSignOfTheHead(findings)) return [];
  const isBriskOf = (region: string): readonly Finding[] =>
    wrong.filter(({ item, value }) => item.region === region && item.section === 'reflexes' && isBrisk(value));
  const freed = [...wrong.filter(({ item }) => ofFreedArms.has(item.key)), ...isBriskOf('upper-limbs')];
  const [first] = freed;
  if (first === undefined || sidesOf(freed).size < 2 || isBriskOf('lower-limbs').length > 0) return [];
  const because = 'the arms are brisk and the legs are not, over a narrow lumbar canal: the neck is narrow as well';
  return [
    shiftBy(first, { applies: cervicalCord, factor: narrowTwice.neck, because }),
    shiftBy(first, { applies: kinds('motor-neuron-system'), factor: narrowTwice.motorNeurons, because }),
    shiftBy(first, { applies: kinds('root'), factor: narrowTwice.roots, because }),
  ];
}

/** Odds where all that was found is that jerks are brisk alike on both sides, the toes go down, and nobody complains of it. Judged. */
const briskAlone = { tracts: 0.35, none: 2 } as const;
const ofTracts: ReadonlySet<string> = new Set([
  ...['unsteadiness', 'difficulty-walking', 'falls', 'stiffness', 'clumsiness', 'weakness', 'leg-weakness'],
  ...['arm-weakness', 'numbness', 'paraesthesiae', 'bladder-disturbance', 'bowel-disturbance', 'sexual-dysfunction'],
  ...['electric-shock-on-neck-flexion', 'tight-band', 'slurred-speech', 'dysphagia', 'visual-loss', 'diplopia'],
  ...['cognitive-change', 'muscle-thinning', 'twitching', 'cancer', 'multiple-sclerosis', 'neck-trauma'],
]);
const ofJerks: ReadonlySet<string> = new Set(['hoffmann', 'tromner', 'crossed-adductor', 'straight-leg-raise']);
const tracts = kinds('cord', 'hemisphere', 'brainstem', 'motor-neuron-system');

/** Lively jerks on both sides with flexor plantars, and fingers that answer a flick, are met in health. Source: Houten 2008 (from memory). */
function briskAloneShifts({ findings, history }: Exam): readonly Shift[] {
  if (history.length === 0 || tells(history, ofTracts)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const jerks = wrong.filter(({ item, value }) => item.section === 'reflexes' && isBrisk(value) && value !== '4');
  const [first] = jerks;
  if (first === undefined || !wrong.every((one) => jerks.includes(one) || ofJerks.has(one.item.key))) return [];
  const bySide = (side: string): number => jerks.filter((one) => one.side === side).length;
  if (bySide('left') !== bySide('right')) return [];
  const plantars = findings.filter(({ item, value }) => item.section === 'plantars' && value === 'flexor');
  if (sidesOf(plantars).size < 2) return [];
  const because =
    'jerks are lively alike on both sides, the toes go down, and nothing is complained of that tracts make';
  return [
    shiftBy(first, { applies: tracts, factor: briskAlone.tracts, because }),
    shiftBy(first, { applies: kinds('none'), factor: briskAlone.none, because }),
  ];
}

/** How far over the limbs findings reach, and what that says of the site. */
export function reachPatternShifts(exam: Exam): readonly Shift[] {
  return [
    ...bothMotorCellsShift(exam),
    ...bothMotorCellsOfTheThroatShifts(exam),
    ...dermatomeShifts(exam),
    ...bothWristsShift(exam),
    ...handsAndFeetShift(exam),
    ...bothLegsShift(exam),
    ...columnsKeptShifts(exam),
    ...starvedColumnsShift(exam),
    ...growingBelowTheFaceShifts(exam),
    ...painOfAHalfShifts(exam),
    ...narrowTwiceShifts(exam),
    ...briskAloneShifts(exam),
  ];
}
