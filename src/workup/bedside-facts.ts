import { isSegment, segmentIndex } from '../anatomy/segments.ts';
import type { SiteKind } from '../anatomy/site-kind.ts';
import { skinPlace } from '../anatomy/skin-places.ts';
import type { ExamQuery } from '../causes/exam-query.ts';
import { historyReason, isFrom, queryExam } from '../causes/exam-query.ts';
import type { Reason } from '../causes/ranked-cause.ts';
import { findingReasons } from '../causes/reasons.ts';
import type { Exam } from '../exam/exam.ts';
import { type Finding, isBrisk } from '../exam/finding.ts';
import { isOnLimb, type Limb } from '../exam/place-on-limb.ts';
import { powerOf } from '../exam/power.ts';
import type { BodySide } from '../kernel/side.ts';
import type { Localisation } from '../localisation/localisation.ts';

export type Certainty = 'yes' | 'no' | 'unknown';

/** What red flags and tests ask of an exam again and again. */
export interface BedsideFacts {
  readonly exam: Exam;
  readonly query: ExamQuery;
  readonly localisation: Localisation;
  /** Everything that was found abnormal. */
  readonly abnormalFindings: readonly Finding[];
  /** What of it is of the cranial nerves. */
  readonly cranialNerveSigns: readonly Finding[];
  /** Weak movements of the arms or legs, on one side or both. */
  weak(limb: Limb, side?: BodySide): readonly Finding[];
  /** Weak movements of all limbs, the arms first. */
  readonly weakLimbs: readonly Finding[];
  readonly bothLegsWeak: boolean;
  readonly bothArmsWeak: boolean;
  /** Lowest MRC ordinal of the limbs; 5 when nothing was tested. */
  readonly lowestLimbPower: number;
  /** Signs of an upper motor neuron lesion: extensor plantar, brisk reflex, clonus, spastic tone, finger-flexor signs. */
  readonly upperMotorSigns: readonly Finding[];
  /** The same in the legs only. */
  readonly upperMotorSignsInLegs: readonly Finding[];
  /** Stretch reflexes of the limbs that are absent or reduced. */
  readonly reducedReflexes: readonly Finding[];
  /** Altered sensation on the trunk or below a segment. */
  readonly trunkSensoryLoss: readonly Finding[];
  readonly trunkSensationTests: readonly Finding[];
  readonly legSensoryLoss: readonly Finding[];
  /** New failure of bladder or bowel: findings first, then what was told. */
  readonly sphincterFailure: readonly Reason[];
  /** Altered saddle sensation, examined or told. */
  readonly saddleLoss: readonly Reason[];
  /** What was examined or asked about saddle sensation and about the bladder, normal or not; empty when nothing was. */
  readonly saddleChecks: readonly Reason[];
  readonly bladderChecks: readonly Reason[];
  /** Whether it began at most this many days ago. */
  beganWithin(days: number): Certainty;
  /** Whether it came over seconds to days, at most this many days ago; of a pace that nobody has named the date is enough. */
  cameWithin(days: number): boolean;
  /** Nobody has said since when, nor how fast it came. */
  readonly isUndated: boolean;
  /** Undated, and nobody says either how it has gone on. */
  readonly isUntimed: boolean;
  /** True unless the course is said to be static or improving. */
  readonly maybeProgressing: boolean;
  /** The course was called progressive, or nothing was said of it. */
  readonly isProgressive: boolean;
  /** Statements of the history that were made with `present: true`, as reasons. */
  told(...keys: readonly string[]): readonly Reason[];
  /** Summed probability of the sites of these kinds. */
  kindProbability(...kinds: readonly SiteKind[]): number;
  /** Probability that the lesion is in a hemisphere, the brainstem or the cerebellum. */
  readonly brainProbability: number;
}

const failures = [
  'sphincters/urinary-retention',
  'sphincters/palpable-bladder',
  'sphincters/urinary-incontinence',
  'sphincters/loss-of-bladder-sensation',
  'sphincters/faecal-incontinence',
  'sphincters/reduced-anal-tone',
  'sphincters/absent-voluntary-anal-contraction',
];
const bladderSigns = ['sphincters/urinary-retention', 'sphincters/urinary-incontinence', 'sphincters/palpable-bladder'];
const saddleDermatomes = new Set(['S3', 'S4-5']);
const saddleLandmarks = new Set(['saddle', 'perianal-skin']);

export function bedsideFacts(exam: Exam, localisation: Localisation): BedsideFacts {
  const query = queryExam(exam);
  const weak = (limb: Limb, side?: BodySide) =>
    query.abnormalWhere(
      (finding) =>
        finding.item.section === 'power' &&
        finding.item.region === limb &&
        (side === undefined || finding.side === side),
    );
  const weakLimbs = [...weak('upper-limbs'), ...weak('lower-limbs')];
  const kindProbability = (...kinds: readonly SiteKind[]) =>
    localisation.localisations
      .filter((site) => kinds.includes(site.kind))
      .reduce((sum, site) => sum + site.probability, 0);
  // A migraine of which somebody is known explains nothing but what an attack brings.
  const isOfMigraine = attackOfMigraine.some((key) => query.history(key)?.present === true);
  const told = (...keys: readonly string[]): readonly Reason[] =>
    keys.flatMap((key) => {
      const statement = query.history(key);
      const isSilent = key === 'migraine' && !isOfMigraine;
      return statement?.present === true && !isSilent ? [historyReason(statement)] : [];
    });
  const upperMotorSigns = query.abnormalWhere(isUpperMotorSign);
  const saddleSigns = query.abnormalWhere(isSaddleSensation);
  const residual = query.result('post-void-residual');
  const { pace, durationDays } = exam.onset;
  const beganWithin = (days: number): Certainty => {
    if (durationDays !== undefined) return durationDays <= days ? 'yes' : 'no';
    if (pace === undefined) return 'unknown';
    if (pace === 'chronic') return 'no';
    if (pace === 'subacute') return days >= 28 ? 'yes' : 'unknown';
    return 'yes';
  };
  return {
    exam,
    query,
    localisation,
    weak,
    abnormalFindings: query.abnormalWhere(() => true),
    cranialNerveSigns: query.abnormalWhere(({ item }) => item.section === 'cranialNerves'),
    weakLimbs,
    told,
    bothLegsWeak: weak('lower-limbs', 'left').length > 0 && weak('lower-limbs', 'right').length > 0,
    bothArmsWeak: weak('upper-limbs', 'left').length > 0 && weak('upper-limbs', 'right').length > 0,
    lowestLimbPower: Math.min(5, ...weakLimbs.map((finding) => powerOf(finding) ?? 5)),
    upperMotorSigns,
    upperMotorSignsInLegs: upperMotorSigns.filter((finding) => finding.item.region === 'lower-limbs'),
    reducedReflexes: query.abnormalWhere(
      ({ item, value }) =>
        item.scale === 'reflex-grade' && item.region !== 'head' && ['0', 'trace', '1'].includes(String(value)),
    ),
    trunkSensoryLoss: query.abnormalWhere(isTrunkSensation),
    trunkSensationTests: query.testedWhere(isTrunkSensation),
    legSensoryLoss: query.abnormalWhere(
      ({ item, place }) => item.section === 'sensation' && isOnLimb(place, 'lower-limbs'),
    ),
    sphincterFailure: [
      ...findingReasons(query.abnormal(failures)),
      ...told('bladder-disturbance', 'bowel-disturbance'),
      ...residualReason(query),
    ],
    saddleLoss: [...findingReasons(saddleSigns), ...told('saddle-numbness')],
    saddleChecks: [...findingReasons(query.testedWhere(isSaddleSensation), 2), ...stated(query, 'saddle-numbness')],
    bladderChecks: [
      ...findingReasons(query.tested(bladderSigns), 2),
      ...stated(query, 'bladder-disturbance'),
      ...(residual === undefined ? [] : [{ pointer: residual.pointer, text: residual.label }]),
    ],
    beganWithin,
    cameWithin: (days) => pace !== 'subacute' && pace !== 'chronic' && beganWithin(days) === 'yes',
    isUndated: pace === undefined && durationDays === undefined,
    isUntimed: pace === undefined && durationDays === undefined && exam.course === undefined,
    maybeProgressing: exam.course !== 'static' && exam.course !== 'improving',
    isProgressive: exam.course === 'progressive' || exam.course === undefined,
    kindProbability,
    brainProbability: kindProbability('hemisphere', 'brainstem', 'cerebellum'),
  };
}

/** Cord signs of more than four weeks that lie at a cervical level, without fever or cancer: the neck is imaged, not the whole spine. */
export function isSlowlyCervical({ localisation, beganWithin, told, abnormalFindings }: BedsideFacts): boolean {
  const cord = localisation.localisations.find(({ kind }) => kind === 'cord');
  // Before anybody has looked, failing hands or shocks from the neck tell which part of the cord it is.
  const isToldOfTheNeck =
    abnormalFindings.length === 0 &&
    told('clumsiness', 'arm-weakness', 'neck-pain', 'electric-shock-on-neck-flexion').length > 0 &&
    told('thoracic-back-pain', 'tight-band', 'back-pain', 'saddle-numbness').length === 0;
  const isNeck = isToldOfTheNeck || (cord?.level?.startsWith('C') ?? false);
  return isNeck && beganWithin(28) === 'no' && told('cancer', 'lymphoma', 'fever', 'night-spinal-pain').length === 0;
}

/** Signs of the head on one side and nothing of limbs, breathing or swallowing, found or told: a Bell palsy and its like. */
export function isOneCranialNerveAlone({ abnormalFindings, cranialNerveSigns, told }: BedsideFacts): boolean {
  // Double vision is of both eyes, whichever nerve it comes from.
  // So is a mouth that lets saliva out, where half of the face is weak.
  const isFace = cranialNerveSigns.some(({ item }) => ofHalfAFace.has(item.key));
  const hasASide = cranialNerveSigns.filter(
    ({ item }) => item.key !== 'diplopia' && !(isFace && ofALooseMouth.has(item.key)),
  );
  const sides = new Set(hasASide.map(({ side }) => side));
  const isOneSided = sides.size === 1 && !sides.has('midline');
  // A cheek that holds the food back is told as a swallow that fails.
  const isCheek = cranialNerveSigns.some(({ item }) => ofAWholeHalf.has(item.key));
  const beyond = told(...ofTheWholeBody, ...(isCheek ? [] : ['dysphagia']));
  // A head that is turned or tilted makes up for an eye.
  const found = abnormalFindings.filter(({ item }) => item.key !== 'head-tilt');
  return isOneSided && cranialNerveSigns.length === found.length && beyond.length === 0;
}

/**
 * Half a face alone, forehead and mouth, that did not fall at once, with nothing found or told of throat, eyes or body beyond: saliva runs from it, words
 * slur and the food collects in the cheek. Zoster takes the nerve of the throat along.
 */
export function isHalfAFaceAlone(facts: BedsideFacts): boolean {
  const isWholeHalf = facts.cranialNerveSigns.some(({ item }) => ofAWholeHalf.has(item.key));
  const beyond = facts.told(
    ...['nasal-regurgitation', 'diplopia', 'drooping-eyelids', 'herpes-zoster', 'fever', 'orthopnoea', 'vertigo'],
    ...['descending-weakness', 'ascending-weakness', 'myasthenia-gravis', 'home-preserved-food', 'face-or-neck-lump'],
  );
  return isWholeHalf && facts.exam.onset.pace !== 'hyperacute' && isOneCranialNerveAlone(facts) && beyond.length === 0;
}

const ofHalfAFace: ReadonlySet<string> = new Set(['facial-weakness', 'lower-facial-weakness', 'upper-facial-weakness']);
const ofAWholeHalf: ReadonlySet<string> = new Set(['facial-weakness', 'upper-facial-weakness']);
const ofALooseMouth: ReadonlySet<string> = new Set(['drooling', 'loss-of-taste', 'dysarthria', 'flaccid-dysarthria']);

const ofTheWholeBody = [
  'weakness',
  'leg-weakness',
  'arm-weakness',
  'difficulty-walking',
  'unsteadiness',
  'numbness',
  'paraesthesiae',
  'breathlessness',
  'voice-change',
  'back-pain',
] as const;

/** What an attack of migraine brings, of which one at least is told before a known migraine accounts for anything. */
const attackOfMigraine = [
  ...['headache', 'new-headache', 'morning-headache', 'flashes-and-floaters', 'transient-visual-loss', 'vertigo'],
  ...['spreading-over-minutes', 'resolved-deficit', 'similar-attacks-before', 'photophobia'],
] as const;

/** Whether a pregnancy that nobody has told of is possible: not in a man, nor before or long after the fertile years. */
export function mayBePregnant({ exam, told }: BedsideFacts): boolean {
  const { ageYears = 30, sex } = exam.person;
  return sex !== 'male' && ageYears >= 11 && ageYears <= 55 && told('pregnancy').length === 0;
}

/** The age as a reason, from so many years on; none when it is not known. */
export function agedFrom(years: number, { exam }: BedsideFacts): readonly Reason[] {
  const { ageYears } = exam.person;
  return ageYears !== undefined && ageYears >= years ? [{ pointer: '/person/ageYears', text: `age ${ageYears}` }] : [];
}

/** Anything of the head, told or found: veins that clot do not show themselves in a hand or a thigh alone. */
export function isOfTheHead({ abnormalFindings, brainProbability, told }: BedsideFacts): boolean {
  const ofTheHead = abnormalFindings.some(({ item }) => item.region === 'head' || item.section === 'higherFunction');
  const complaints = told(
    ...['headache', 'new-headache', 'morning-headache', 'thunderclap-headache', 'vomiting', 'seizure', 'diplopia'],
    ...['visual-loss', 'transient-visual-loss', 'pulsatile-tinnitus', 'cognitive-change', 'behaviour-change'],
    ...['speech-difficulty', 'loss-of-consciousness', 'ongoing-seizure', 'orthostatic-headache'],
  );
  return ofTheHead || brainProbability >= 0.3 || complaints.length > 0;
}

function stated(query: ExamQuery, key: string): readonly Reason[] {
  const statement = query.history(key);
  return statement === undefined ? [] : [historyReason(statement)];
}

function isUpperMotorSign({ item, value }: Finding): boolean {
  const { probe } = item;
  if (value === 'equivocal') return false;
  if (probe.kind === 'plantar') return value === 'extensor';
  if (probe.kind === 'tone') return value === 'spastic';
  if (probe.kind === 'clonus') return true;
  // A brisk jaw jerk is about the brainstem and above; here only the limbs count.
  if (probe.kind === 'reflex') return isBrisk(value) && item.region !== 'head';
  return probe.kind === 'upper-motor';
}

function isSaddleSensation({ item, place }: Finding): boolean {
  if (item.section === 'sphincters') return item.key === 'saddle-anaesthesia';
  if (item.section !== 'sensation' || place === undefined) return false;
  if (place.kind === 'dermatome') return saddleDermatomes.has(place.key);
  if (place.kind === 'landmark') return saddleLandmarks.has(place.key);
  return place.kind === 'region' && place.key === 'perineum';
}

function isTrunkSensation({ item, place }: Finding): boolean {
  if (item.section !== 'sensation' || place === undefined) return false;
  if (place.kind === 'level-below') return true;
  if (place.kind === 'region') return place.key === 'trunk';
  if (place.kind === 'dermatome') {
    if (!isSegment(place.key)) return false;
    const index = segmentIndex(place.key);
    return index >= segmentIndex('T2') && index <= segmentIndex('T12');
  }
  return place.kind === 'landmark' && skinPlace('landmark', place.key)?.region === 'trunk';
}

/** 200 mL or more makes cauda equina compression likelier; less does not exclude it. Source: GIRFT pathway 2023. */
function residualReason(query: ExamQuery): readonly Reason[] {
  const volume = query.quantity('post-void-residual', 'mL');
  if (volume === undefined || isFrom(volume, 200) !== true) return [];
  return [{ pointer: volume.pointer, text: `post-void residual ${volume.value} mL` }];
}
