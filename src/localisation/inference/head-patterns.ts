import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/** Odds of the whole brainstem where nothing is told or seen of eyes, face, throat, speech or balance, and where balance alone fails. Judged. */
const brainstemWithoutItsNerves = { nothing: 0.2, balanceAlone: 0.45 } as const;
const ofTheBrainstem: ReadonlySet<string> = new Set([
  'diplopia',
  'oscillopsia',
  'drooping-eyelids',
  'vertigo',
  'continuous-vertigo',
  'hearing-loss',
  'tinnitus',
  'face-numbness',
  'face-droop',
  'slurred-speech',
  'voice-change',
  'dysphagia',
  'nasal-regurgitation',
  'hiccups',
]);
const unsteadiness: ReadonlySet<string> = new Set(['unsteadiness']);
/** Signs of sight and smell, which no lesion of the brainstem makes, and of pressure. */
const inFront: ReadonlySet<string> = new Set([
  'anosmia',
  'reduced-visual-acuity',
  'reduced-colour-vision',
  'central-scotoma',
  'altitudinal-field-defect',
  'monocular-field-defect',
  'constricted-visual-field',
  'homonymous-hemianopia',
  'upper-quadrantanopia',
  'lower-quadrantanopia',
  'bitemporal-hemianopia',
  'relative-afferent-pupillary-defect',
  'optic-disc-swelling',
  'enlarged-blind-spot',
  'optic-disc-pallor',
]);
const ofBalance: ReadonlySet<string> = new Set(['ataxic', 'veering', 'unable-to-stand', 'romberg']);

const isOfTheBrainstem = ({ item: { key, section } }: Finding): boolean =>
  (section === 'cranialNerves' && !inFront.has(key)) || key === 'posturing';
const isOfBalance = ({ item: { key, probe } }: Finding): boolean => probe.kind === 'cerebellar' || ofBalance.has(key);

/**
 * The nuclei of eyes, face and throat and the paths of balance lie so close that no lesion takes the brainstem on both sides and
 * leaves them all alone (common practice): who is sleepy and weak on both sides without any of it has both hemispheres ill.
 */
function bareBrainstemShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || wrong.some(isOfTheBrainstem) || tells(history, ofTheBrainstem)) return [];
  const isUnsteady = wrong.some(isOfBalance) || tells(history, unsteadiness);
  const because = isUnsteady
    ? 'nothing is wrong with eyes, face or throat, whose nuclei lie beside the paths of balance there'
    : 'nothing is wrong with eyes, face, throat or balance, whose nuclei and paths lie close together there';
  const { balanceAlone, nothing } = brainstemWithoutItsNerves;
  return [
    shiftBy(first, { applies: sites('brainstem-diffuse'), factor: isUnsteady ? balanceAlone : nothing, because }),
  ];
}

/** Odds where speech cannot be repeated though it flows and is understood: behind the fissure, and in front of it. Judged. */
const repetitionAlone = { behind: 2, inFront: 0.5 } as const;
const ofLanguage: ReadonlySet<string> = new Set([
  'expressive-aphasia',
  'receptive-aphasia',
  'global-aphasia',
  'mutism',
  'speech-apraxia',
]);
const behindTheFissure: Applies = (site) =>
  site.side === 'left' && ['cortex-parietal', 'cortex-middle-cerebral-lower', 'cortex-temporal'].includes(site.key);
const inFrontOfTheFissure: Applies = (site) =>
  site.side === 'left' &&
  ['cortex-middle-cerebral-upper', 'cortex-frontal', 'cortex-middle-cerebral'].includes(site.key);

/**
 * Repetition that fails by itself has lost the supramarginal gyrus, its white matter or the cortex around the ear, and the foot of
 * the third frontal gyrus in few (Damasio and Damasio 1980, recalled).
 */
function repetitionShifts({ findings }: Exam): readonly Shift[] {
  const sign = findings.find(({ abnormal, item }) => abnormal && item.key === 'impaired-repetition');
  if (sign === undefined || findings.some(({ abnormal, item }) => abnormal && ofLanguage.has(item.key))) return [];
  const because = 'repetition alone fails behind the fissure, where the heard is handed on to speech';
  return [
    shiftBy(sign, { applies: behindTheFissure, factor: repetitionAlone.behind, because }),
    shiftBy(sign, { applies: inFrontOfTheFissure, factor: repetitionAlone.inFront, because }),
  ];
}

/** Odds where reading is lost and writing kept: of the back of the leading half, and of what serves both. Judged. */
const readingAlone = { behind: 2, ofLanguage: 0.12 } as const;
const whereBothAreServed = [
  'cortex-middle-cerebral',
  'cortex-middle-cerebral-lower',
  'cortex-middle-cerebral-upper',
  'cortex-parietal',
] as const;

/**
 * Who writes and cannot read back what is written has kept the angular gyrus and lost what leads sight to it: the back of the
 * leading half with the splenium (Dejerine 1892, recalled).
 */
function readingAloneShifts({ findings }: Exam): readonly Shift[] {
  const alexia = findings.find(({ abnormal, item }) => abnormal && item.key === 'alexia');
  const writes = findings.some(({ abnormal, item }) => !abnormal && item.key === 'agraphia');
  if (alexia === undefined || !writes) return [];
  if (findings.some(({ abnormal, item }) => abnormal && ofLanguage.has(item.key))) return [];
  const because = 'reading is lost and writing is kept: what is seen no longer reaches the cortex that reads';
  return [
    shiftBy(alexia, {
      applies: sites('cortex-posterior-cerebral', 'cortex-occipital'),
      factor: readingAlone.behind,
      because,
    }),
    shiftBy(alexia, { applies: sites(...whereBothAreServed), factor: readingAlone.ofLanguage, because }),
  ];
}

/** Odds of a disorder of the whole brain where the pupil of one side alone is wide. Judged. */
const widerOnOneSide = 0.04;
const widePupil: ReadonlySet<string> = new Set([
  'dilated-pupil',
  'unreactive-pupil',
  'anisocoria',
  'third-nerve-palsy',
]);

/** What is in the blood reaches both pupils alike (common practice): one that is wide is pressed on, or its nerve or nucleus is lost. */
function onePupilShift({ findings }: Exam): readonly Shift[] {
  const wide = findings.filter(({ abnormal, item }) => abnormal && widePupil.has(item.key));
  const [first] = wide;
  if (first === undefined || new Set(wide.map(({ side }) => side)).size > 1 || first.side === 'midline') return [];
  const because = 'what ails the whole brain widens both pupils and not one';
  return [shiftBy(first, { applies: sites('diffuse-encephalopathy'), factor: widerOnOneSide, because })];
}

/** Odds of the basal meninges where limbs alone fail and nothing is told or seen of the head. Judged. */
const baseWithoutTheHead = 0.06;
/** Complaints of the head, its nerves and the mind, and of what ails all of it. */
export const complaintsOfTheHead: ReadonlySet<string> = new Set([
  ...['headache', 'new-headache', 'morning-headache', 'photophobia', 'vomiting', 'nausea', 'eye-pain', 'facial-pain'],
  ...[
    'visual-loss',
    'transient-visual-loss',
    'diplopia',
    'oscillopsia',
    'drooping-eyelids',
    'face-numbness',
    'face-droop',
  ],
  ...['vertigo', 'tinnitus', 'pulsatile-tinnitus', 'hearing-loss', 'ear-pain', 'dizziness', 'loss-of-smell'],
  ...['dysphagia', 'nasal-regurgitation', 'slurred-speech', 'voice-change', 'difficulty-chewing', 'speech-difficulty'],
  ...['cognitive-change', 'behaviour-change', 'seizure', 'loss-of-consciousness', 'hiccups', 'fever'],
]);
const ofTheMeninges: ReadonlySet<string> = new Set(['neck-stiffness', 'kernig', 'brudzinski', 'fever']);

/** What spreads along the base of the skull is known by its cranial nerves and its headache; roots that fail without them are roots. */
function baseWithoutTheHeadShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const limb = wrong.find(
    ({ item, modality, side }) => side !== 'midline' && (item.probe.kind === 'movement' || modality !== undefined),
  );
  if (limb === undefined || tells(history, complaintsOfTheHead)) return [];
  const isOfTheHead = ({ item }: Finding): boolean =>
    item.region === 'head' || ofTheHead.has(item.section) || ofTheMeninges.has(item.key);
  if (wrong.some(isOfTheHead)) return [];
  const because = 'limbs alone fail, and neither a cranial nerve nor a headache is told of';
  return [shiftBy(limb, { applies: sites('basal-meningeal-process'), factor: baseWithoutTheHead, because })];
}
const ofTheHead: ReadonlySet<string> = new Set(['cranialNerves', 'higherFunction']);

/** Odds of inflamed roots and of both tracts of the face, where one half of the face is all that is weak. Judged. */
const oneFaceAlone = 0.25;
const wholeHalf: ReadonlySet<string> = new Set(['facial-weakness', 'upper-facial-weakness']);
const ofTheMouth: ReadonlySet<string> = new Set([
  ...wholeHalf,
  ...['lower-facial-weakness', 'drooling', 'dysarthria', 'flaccid-dysarthria', 'bells-phenomenon', 'loss-of-taste'],
  ...['hyperacusis', 'facial-synkinesis'],
]);
const limbsTold: ReadonlySet<string> = new Set([
  ...['weakness', 'leg-weakness', 'arm-weakness', 'ascending-weakness', 'difficulty-walking', 'unsteadiness'],
  ...['numbness', 'paraesthesiae', 'dysphagia', 'breathlessness', 'diplopia'],
]);

/**
 * Forehead and mouth of one half that are weak by themselves, with the slurring and the saliva that lips let out: one nerve. Inflamed
 * roots take both halves and limbs or jerks with them, and tracts leave the forehead alone (common practice).
 */
function oneFaceShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const face = wrong.filter(({ item }) => wholeHalf.has(item.key));
  const [first] = face;
  if (first === undefined || face.some(({ side }) => side !== first.side)) return [];
  if (!wrong.every(({ item }) => ofTheMouth.has(item.key)) || tells(history, limbsTold)) return [];
  const because = 'one whole half of the face fails by itself, which is one nerve';
  return [
    shiftBy(first, {
      applies: anyOf(kinds('polyradiculoneuropathy'), sites('corticobulbar-both-sides', 'brainstem-diffuse')),
      factor: oneFaceAlone,
      because,
    }),
  ];
}

/** Odds of the sixth nerve where nobody found or told of an eye that does not turn out. Judged. */
const sixthUnseen = 0.1;
const ofTheSixth: ReadonlySet<string> = new Set([
  ...['sixth-nerve-palsy', 'eye-abduction-weakness', 'esotropia', 'diplopia', 'fatigable-diplopia', 'ophthalmoplegia'],
  ...['gaze-palsy', 'head-tilt', 'third-nerve-palsy', 'fourth-nerve-palsy', 'internuclear-ophthalmoplegia'],
]);
const seenDouble: ReadonlySet<string> = new Set(['diplopia', 'oscillopsia']);

/** A sixth nerve that fails doubles what is seen, and nobody names it for the nerves that lie beside it. */
function sixthUnseenShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || tells(history, seenDouble) || wrong.some(({ item }) => ofTheSixth.has(item.key)))
    return [];
  const because = 'no eye was found that does not turn out, and nothing is seen double';
  return [shiftBy(first, { applies: sites('abducens-nerve'), factor: sixthUnseen, because })];
}

/** Odds where somebody names the third, fourth or sixth nerve, of muscles and junctions that fail in all directions at once. Judged. */
const namedNerve = 0.25;
const nervesOfTheEye: ReadonlySet<string> = new Set(['third-nerve-palsy', 'fourth-nerve-palsy', 'sixth-nerve-palsy']);

/** Who names a nerve of the eye found its muscles to fail and others to pull; muscles that waste, or get no transmitter, fail in every direction alike. */
function namedNerveShift({ findings }: Exam): readonly Shift[] {
  const named = findings.find(({ abnormal, item }) => abnormal && nervesOfTheEye.has(item.key));
  if (named === undefined) return [];
  const because = 'a nerve of the eye was named, and muscles or junctions fail in every direction alike';
  return [
    shiftBy(named, {
      applies: sites('oculopharyngeal-myopathy', 'presynaptic-junction'),
      factor: namedNerve,
      because,
    }),
  ];
}

/** Odds of the sympathetic fibres of the eye where pupils and lids were looked at and nothing was wrong. Judged. */
const sympatheticUnseen = 0.1;
const ofTheSympathetic: ReadonlySet<string> = new Set([
  ...['horner-syndrome', 'ptosis', 'small-pupil', 'anisocoria', 'anhidrosis', 'enophthalmos', 'drooping-eyelids'],
]);

/** A lesion of these fibres shows by lid and pupil and by hardly anything else: where both are sound it is not there. */
function sympatheticUnseenShift({ findings, history }: Exam): readonly Shift[] {
  const eyes = findings.find(
    ({ abnormal, item, value }) => !abnormal && value !== null && item.key === 'horner-syndrome',
  );
  if (eyes === undefined || tells(history, ofTheSympathetic)) return [];
  if (findings.some(({ abnormal, item }) => abnormal && ofTheSympathetic.has(item.key))) return [];
  const because = 'pupils and lids were found sound';
  return [shiftBy(eyes, { applies: sites('oculosympathetic-chain'), factor: sympatheticUnseen, because })];
}

/** Odds of the hole where the ninth to the eleventh nerve leave, where the tongue is all that fails. Judged. */
const tongueAlone = 0.35;
const ofTheTongue: ReadonlySet<string> = new Set([
  ...['tongue-weakness', 'tongue-wasting', 'tongue-deviation', 'tongue-fasciculation', 'dysarthria'],
  ...['flaccid-dysarthria', 'dysphagia', 'drooling', 'rapid-tongue-movements'],
]);
const seenOfTheTongue: ReadonlySet<string> = new Set(['tongue-weakness', 'tongue-wasting', 'tongue-deviation']);
const voices: ReadonlySet<string> = new Set(['voice-change', 'nasal-regurgitation']);

/** The twelfth nerve leaves by a canal of its own; speech and swallowing suffer by the tongue. */
function tongueShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const tongue = wrong.find(({ item }) => seenOfTheTongue.has(item.key));
  if (tongue === undefined || tells(history, voices) || !wrong.every(({ item }) => ofTheTongue.has(item.key)))
    return [];
  const because = 'the tongue alone fails, whose nerve has a canal of its own';
  return [shiftBy(tongue, { applies: sites('jugular-foramen'), factor: tongueAlone, because })];
}

/** Odds where a tremor of holding and moving comes with one thing that the cerebellum makes, and with several. Judged. */
const shakesBeside = {
  one: { tremor: 0.4, cerebellum: 1.6 },
  several: { tremor: 0.08, cerebellum: 4 },
} as const;
const tremors: ReadonlySet<string> = new Set(['postural-tremor', 'action-tremor', 'intention-tremor']);
const slurred: ReadonlySet<string> = new Set(['dysarthria', 'cerebellar-dysarthria', 'slurred-speech']);
const swaysOrSeesDouble: ReadonlySet<string> = new Set(['diplopia', 'oscillopsia', 'unsteadiness', 'vertigo', 'falls']);
/** Over so many days anybody may come to sway or slur beside a tremor. */
const overDecades = 3650;

/** A tremor that runs in families leaves speech clear and sight single: with these the cerebellum or its paths shake the limbs. */
function shakesBesideShifts({ findings, history, onset }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const sign = wrong.find(({ item }) => tremors.has(item.key));
  if (sign === undefined || (onset.durationDays ?? 0) > overDecades) return [];
  const told = history.filter(({ present, kind }) => present && kind !== 'family').map(({ key }) => key);
  const slurs = [...wrong.map(({ item }) => item.key), ...told].some((key) => slurred.has(key));
  const count = (slurs ? 1 : 0) + told.filter((key) => swaysOrSeesDouble.has(key)).length;
  if (count === 0) return [];
  const odds = count > 1 ? shakesBeside.several : shakesBeside.one;
  const because = 'a tremor with slurred speech, double sight or swaying comes from the cerebellum and its paths';
  return [
    shiftBy(sign, { applies: sites('action-tremor'), factor: odds.tremor, because }),
    shiftBy(sign, { applies: kinds('cerebellum'), factor: odds.cerebellum, because }),
  ];
}

/** What the signs of head and mind say together of the place. */
export function headPatternShifts(exam: Exam): readonly Shift[] {
  return [
    ...bareBrainstemShift(exam),
    ...repetitionShifts(exam),
    ...readingAloneShifts(exam),
    ...onePupilShift(exam),
    ...baseWithoutTheHeadShift(exam),
    ...oneFaceShift(exam),
    ...sixthUnseenShift(exam),
    ...namedNerveShift(exam),
    ...sympatheticUnseenShift(exam),
    ...tongueShift(exam),
    ...shakesBesideShifts(exam),
  ];
}
