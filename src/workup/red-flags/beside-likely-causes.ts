import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { farMovement } from '../../exam/far-along-the-limb.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { clouded, reducedConsciousness } from './consciousness.ts';
import { spinalPain } from './cord.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { infectionsBefore, trueFever } from './fever.ts';
import { limbsOf } from './few-muscles.ts';
import { each } from './story.ts';
import { isHipOfABirth, isStrokeOfOld, onOneSide } from './sudden-deficit.ts';
import { isAtLeast } from './thresholds.ts';

export const limbsOrHead = (facts: BedsideFacts): readonly Reason[] => [
  ...findingReasons(facts.abnormalFindings, 1),
  ...facts.told('weakness', 'leg-weakness', 'arm-weakness', 'difficulty-walking', 'paraesthesiae', 'numbness'),
  ...facts.told(
    'unsteadiness',
    'diplopia',
    'ascending-weakness',
    'drooping-eyelids',
    'dysphagia',
    'back-pain',
    'face-droop',
  ),
];

/** Of what nobody has dated: a walk that sways or feet that tingle are mostly old, and weakness, lost jerks or an infection before them may be new. */
export const weakOrInfected = (facts: BedsideFacts): readonly Reason[] => [
  ...findingReasons([...facts.weakLimbs, ...facts.reducedReflexes, ...facts.cranialNerveSigns], 1),
  ...facts.told('weakness', 'leg-weakness', 'arm-weakness', 'ascending-weakness', 'diplopia', 'dysphagia'),
  ...facts.told('drooping-eyelids', 'face-droop', 'preceding-infection', 'preceding-gastroenteritis'),
  ...facts.told('preceding-respiratory-infection', 'recent-vaccination'),
];

export const anyComplaint = (facts: BedsideFacts): readonly Reason[] => [
  { pointer: null, text: `a ${facts.exam.course} course` },
];

export const anySign = (facts: BedsideFacts): readonly Reason[] => findingReasons(facts.abnormalFindings, 1);

/** Unless the place is plainly another, or nothing but a pupil was found: that is a drug's or its nerve's. */
export function isNotPlainlyElsewhere(facts: BedsideFacts): readonly Reason[] {
  if (isHipOfABirth(facts) || isStrokeOfOld(facts)) return [];
  const { abnormalFindings, brainProbability, kindProbability } = facts;
  const inBrain = brainProbability + kindProbability('visual-pathway');
  const elsewhere = kindProbability('cranial-nerve', 'nerve', 'plexus', 'root', 'muscle', 'junction');
  const isPupilAlone = abnormalFindings.length > 0 && abnormalFindings.every(({ item }) => ofThePupil.has(item.key));
  return isPupilAlone || (inBrain < 0.1 && elsewhere >= 0.7) ? [] : [{ pointer: null, text: 'a place in the brain' }];
}

/**
 * Anything beside pupils of two sizes of which nobody has said since when: such pupils alone, in somebody who is well, are a
 * variant of health or have had drops, and neither an aneurysm nor a torn carotid shows itself so.
 */
export function notOfAPupilAlone(facts: BedsideFacts): readonly Reason[] {
  const isUnequalAlone = facts.abnormalFindings.every(({ item }) => item.key === 'anisocoria');
  if (isUnequalAlone && facts.isUndated && facts.exam.history.every(({ present }) => !present)) return [];
  return [{ pointer: null, text: 'more than unequal pupils' }];
}

/**
 * An age from which the arteritis is met, and more than a headache of days with a fever, which infections of the head have
 * too. Source of the age: the society's guideline of 2020, which suspects it from 50 on.
 */
export function ofAnOldArtery(facts: BedsideFacts): readonly Reason[] {
  const age = facts.exam.person.ageYears;
  const arterial = [
    ...facts.told('jaw-claudication', 'scalp-tenderness', 'visual-loss', 'transient-visual-loss', 'diplopia'),
    ...findingReasons(facts.query.abnormal(['inspection/temporal-artery-tenderness'])),
  ];
  if (arterial.length > 0) return arterial;
  const isFeverOfDays = trueFever(facts).length > 0 && facts.beganWithin(7) === 'yes';
  return age === undefined || age < 50 || isFeverOfDays ? [] : [{ pointer: '/person/ageYears', text: `age ${age}` }];
}

/** Anything of an inflamed brain beside movements that nobody wills, which drugs, sugar and a clot bring in the old as often. */
export function beyondMovements(facts: BedsideFacts): readonly Reason[] {
  const found = facts.abnormalFindings;
  const areMovements = found.length > 0 && found.every(({ item }) => item.section === 'involuntaryMovements');
  if (!areMovements || (facts.exam.person.ageYears ?? 0) < 60) return anyComplaint(facts);
  return facts.told(
    ...['fever', 'headache', 'new-headache', 'seizure', 'ongoing-seizure', 'behaviour-change', 'cognitive-change'],
    ...['speech-difficulty', 'vomiting', 'diplopia', 'unsteadiness', 'weakness', 'loss-of-consciousness'],
    ...['immunosuppression', 'hiv-infection', 'cancer', 'immune-checkpoint-inhibitor'],
  );
}

/** A loss that is found in the brain, and has not gone. */
export const lossInTheBrain = (facts: BedsideFacts): readonly Reason[] =>
  facts.brainProbability >= 0.5 && facts.told('resolved-deficit').length === 0 && !isStrokeOfOld(facts)
    ? anySign(facts)
    : [];

const ofThePupil: ReadonlySet<string> = new Set([
  'dilated-pupil',
  'unreactive-pupil',
  'sluggish-pupil',
  'anisocoria',
  'tonic-pupil',
  'small-pupil',
  'light-near-dissociation',
]);

/** All that was found lies in one limb. */
export function isOfOneLimb({ abnormalFindings }: BedsideFacts): boolean {
  const limbs = new Set(
    abnormalFindings.map(
      (one) => `${limbRegions.find((limb) => one.item.region === limb || isOnLimb(one.place, limb))} ${one.side}`,
    ),
  );
  return limbs.size === 1 && onOneSide(abnormalFindings).length > 0;
}

const limbRegions = ['upper-limbs', 'lower-limbs'] as const;

const ofEyesAndLids: ReadonlySet<string> = new Set([
  ...eyeMovementSigns.map((key) => key.replace('cranial-nerves/', '')),
  ...['ptosis', 'fatigable-ptosis', 'diplopia', 'fatigable-diplopia', 'eye-depression-weakness', 'hypertropia'],
]);

/** What roots make people tell of beside eyes that do not move, and what wakes immunity against them. */
const ofInflamedRoots = [
  ...['weakness', 'leg-weakness', 'arm-weakness', 'ascending-weakness', 'descending-weakness', 'difficulty-walking'],
  ...[
    'unsteadiness',
    'paraesthesiae',
    'numbness',
    'dysphagia',
    'slurred-speech',
    'voice-change',
    'face-droop',
    'falls',
  ],
  ...['perioral-numbness', 'face-numbness', 'breathlessness', 'recent-vaccination', ...infectionsBefore],
] as const;

/** Eyes or lids alone, with nothing told of limbs, walk or throat nor of an infection before: junction, orbit or one nerve, for inflamed roots take jerks and balance along. */
export function areEyesAlone({ abnormalFindings, told }: BedsideFacts): boolean {
  return (
    abnormalFindings.length > 0 &&
    abnormalFindings.every(({ item }) => ofEyesAndLids.has(item.key)) &&
    told(...ofInflamedRoots).length === 0
  );
}

/** From these on, in mmol/L and %, diabetes is known by its number. Source: ADA, Standards of Care. */
const diabeticFrom = { glucose: 11.1, hba1c: 6.5 } as const;

function isDiabetic({ query, told }: BedsideFacts): boolean {
  const glucose = query.quantity('glucose-random', 'mmol/L');
  const hba1c = query.quantity('hba1c', '%');
  return (
    told('diabetes-mellitus', 'known-neuropathy').length > 0 ||
    (glucose !== undefined && isAtLeast(glucose, diabeticFrom.glucose)) ||
    (hba1c !== undefined && isAtLeast(hba1c, diabeticFrom.hba1c))
  );
}

/** One nerve of the head beside feet that do not feel, in somebody with diabetes, where nothing is weak: the sugar has taken both. */
export function isNerveOverDiabeticFeet(facts: BedsideFacts): boolean {
  const { abnormalFindings, cranialNerveSigns, legSensoryLoss, reducedReflexes } = facts;
  const ofTheFeet = [...legSensoryLoss, ...reducedReflexes.filter(({ item }) => item.key === 'ankle')];
  return (
    onOneSide(cranialNerveSigns).length > 0 &&
    ofTheFeet.length > 0 &&
    abnormalFindings.every((one) => cranialNerveSigns.includes(one) || ofTheFeet.includes(one)) &&
    isDiabetic(facts) &&
    facts.told(...ofInflamedRoots.filter((key) => key !== 'numbness' && key !== 'paraesthesiae')).length === 0
  );
}

/** One limb alone that is weak, below a sound head. */
export function isOneLimbAlone(facts: BedsideFacts): boolean {
  const { weakLimbs, reducedReflexes, cranialNerveSigns, abnormalFindings, query } = facts;
  // A shoulder blade that stands off on one side, and nothing found of the other, is one nerve.
  const wing = query.abnormalWhere(({ item }) => item.key === 'scapular-winging');
  if (onOneSide(wing).length > 0 && onOneSide(abnormalFindings).length > 0 && cranialNerveSigns.length === 0)
    return true;
  const limbs = limbsOf([...weakLimbs, ...reducedReflexes]);
  return weakLimbs.length > 0 && limbs.size === 1 && cranialNerveSigns.length === 0;
}

/** Anything that one root or one nerve does not do: the other side, the legs, the trunk, the bladder, or a danger of the spine. */
export function beyondOneLimb(facts: BedsideFacts): readonly Reason[] {
  if (isHipOfABirth(facts) || areLegsSound(facts) || isSettledSpasticity(facts)) return [];
  const limbs = facts.abnormalFindings.filter(({ item }) => item.section !== 'cranialNerves');
  const isOneSided = onOneSide(limbs).length > 0 && limbsOf([...facts.weakLimbs, ...facts.reducedReflexes]).size <= 1;
  // A leg said to be weak, and a walk that has changed, are accounted for by one foot that was found to hang.
  const isOneFoot =
    isOneSided && facts.weakLimbs.length > 0 && facts.weakLimbs.every(({ item }) => farMovement.test(item.key));
  const isNerve = isOneFoot && facts.kindProbability('nerve', 'plexus', 'root') >= 0.6;
  return [
    ...(isOneSided ? [] : findingReasons(facts.abnormalFindings, 1)),
    ...findingReasons([...facts.upperMotorSigns, ...facts.trunkSensoryLoss], 1),
    ...facts.sphincterFailure,
    ...(isNerve ? [] : facts.told('leg-weakness', 'difficulty-walking')),
    ...facts.told('unsteadiness', 'tight-band', 'thoracic-back-pain'),
    ...facts.told('night-spinal-pain', 'neck-trauma', 'electric-shock-on-neck-flexion'),
    ...each(
      facts.told(...spinalPain),
      facts.told(
        'anticoagulant',
        'cancer',
        'lymphoma',
        'fever',
        'trauma',
        'injecting-drug-use',
        'recent-bacteraemia',
        'immunosuppression',
      ),
    ),
  ];
}

/** What squeezed muscle does beside the nerve that fails in it: it hurts or swells, or the limb was lain upon, broken, struck or bound. Exertion alone lames without pain. */
export function squeezedMuscle(facts: BedsideFacts): readonly Reason[] {
  const seen = facts.abnormalFindings.filter(({ item }) => ['oedema', 'muscle-tenderness'].includes(item.key));
  return [
    ...facts.told('tense-painful-limb', 'leg-pain', 'arm-pain', 'thigh-pain', 'foot-pain', 'hand-pain', 'muscle-pain'),
    ...facts.told('prolonged-immobility', 'limb-fracture-or-dislocation', 'trauma', 'external-pressure', 'dark-urine'),
    ...facts.told('loss-of-consciousness', 'injecting-drug-use', 'opioid', 'anticoagulant', 'venomous-bite'),
    ...facts.told('surgical-positioning', 'recent-surgery', 'alcohol-excess', 'carbon-monoxide'),
    ...findingReasons(seen, 1),
  ];
}

/** The pain of one root of one leg, with at most its jerk and its stretch: nothing weak or numb, nothing of the spine, the walk or the bladder. */
export function isOneRootThatHurts(facts: BedsideFacts): boolean {
  const found = facts.abnormalFindings;
  const isSided = found.length === 0 || onOneSide(found).length > 0;
  const also = facts.told(
    ...['leg-weakness', 'weakness', 'difficulty-walking', 'numbness', 'unsteadiness', 'falls', 'bilateral-leg-pain'],
    ...[...spinalPain, 'weight-loss', 'tight-band'],
  );
  return (
    facts.told('radicular-leg-pain', 'leg-pain').length > 0 &&
    isSided &&
    facts.weakLimbs.length + facts.legSensoryLoss.length + facts.upperMotorSigns.length === 0 &&
    facts.sphincterFailure.length + facts.saddleLoss.length + also.length === 0
  );
}

/** Legs whose strength was tried and is whole, with nothing else found and no limb, walk or bladder said to fail: a spine that hurts, and no cord. */
function areLegsSound(facts: BedsideFacts): boolean {
  const tried = facts.query.testedWhere(({ item }) => item.probe.kind === 'movement' && item.region === 'lower-limbs');
  const failing = facts.told(
    'leg-weakness',
    'arm-weakness',
    'weakness',
    'difficulty-walking',
    'numbness',
    'tight-band',
  );
  return tried.length > 0 && facts.abnormalFindings.length + failing.length + facts.sphincterFailure.length === 0;
}

/** Legs that are spastic already, of which nobody has said since when, without a pain of the spine or a failing bladder: that took months. */
function isSettledSpasticity(facts: BedsideFacts): boolean {
  const spastic = facts.query.abnormalWhere(
    ({ item, value }) => item.key === 'spastic' || item.key === 'scissoring' || value === 'spastic',
  );
  const recent = [
    ...facts.told(...spinalPain, 'tight-band', 'trauma', 'neck-trauma', 'falls'),
    ...facts.sphincterFailure,
  ];
  return facts.isUntimed && spastic.length > 0 && recent.length + facts.trunkSensoryLoss.length === 0;
}

/** Parts that botulism takes one after the other, downwards; the food or the needle counts as one. Source: CDC 2021, clinical guidelines for botulism. */
const partsOfBotulism: readonly {
  readonly signs: readonly string[];
  readonly told: readonly string[];
  /** Limbs that were found weak belong to it. */
  readonly hasLimbs?: true;
}[] = [
  {
    signs: [...eyeMovementSigns, 'cranial-nerves/ptosis', 'cranial-nerves/diplopia'],
    told: ['drooping-eyelids', 'diplopia'],
  },
  {
    signs: [
      ...['absent-gag-reflex', 'dysphagia', 'nasal-speech', 'palatal-weakness', 'dysphonia', 'flaccid-dysarthria'],
      ...['dysarthria', 'weak-suck-or-cry', 'jaw-weakness', 'tongue-weakness', 'facial-weakness', 'drooling'],
    ].map((key) => `cranial-nerves/${key}`),
    told: ['dysphagia', 'slurred-speech', 'voice-change', 'nasal-regurgitation', 'difficulty-chewing'],
  },
  {
    signs: ['autonomic/breathlessness-at-rest', 'tone/upper-limb', 'tone/lower-limb', 'power/neck-flexion'],
    told: ['weakness', 'arm-weakness', 'leg-weakness', 'breathlessness', 'descending-weakness', 'ascending-weakness'],
    hasLimbs: true,
  },
  {
    signs: [
      ...['dilated-pupil', 'unreactive-pupil', 'sluggish-pupil'].map((key) => `cranial-nerves/${key}`),
      ...['autonomic/dry-mouth', 'sphincters/constipation', 'sphincters/urinary-retention'],
    ],
    told: ['dry-mouth', 'visual-loss', 'bowel-disturbance'],
  },
  { signs: [], told: ['home-preserved-food', 'injecting-drug-use', 'botulinum-toxin-injection'] },
];

/** Two parts at least: what it takes alone, a tongue, a lid or a throat, is hardly ever its work. */
export function goingDown(facts: BedsideFacts): readonly Reason[] {
  const parts = partsOfBotulism.map(({ signs, told, hasLimbs }) => [
    ...findingReasons(facts.query.abnormal(signs), 1),
    ...facts.told(...told).slice(0, 1),
    ...(hasLimbs ? findingReasons(facts.weakLimbs, 1) : []),
  ]);
  const taken = parts.filter((reasons) => reasons.length > 0);
  return taken.length >= 2 ? taken.flat() : [];
}

/** What a pressure that rises brings, or what has blocked the fluid before; a gaze that does not rise is of other diseases too. */
export function ofPressure(facts: BedsideFacts): readonly Reason[] {
  const signs = [
    ...['optic-disc-swelling', 'sixth-nerve-palsy', 'eye-abduction-weakness', 'convergence-retraction-nystagmus'],
    ...['dilated-pupil', 'third-nerve-palsy'],
  ].map((key) => `cranial-nerves/${key}`);
  // Over many months a mind that loses its way is mostly failing by itself.
  const mind = facts.beganWithin(92) === 'no' ? reducedConsciousness : clouded;
  return [
    ...findingReasons(
      facts.query.abnormal([...signs, ...mind, 'inspection/bulging-fontanelle', 'inspection/large-head']),
      2,
    ),
    ...facts.told(
      ...['headache', 'new-headache', 'morning-headache', 'thunderclap-headache', 'orthostatic-headache', 'vomiting'],
      ...['visual-loss', 'transient-visual-loss', 'diplopia', 'pulsatile-tinnitus', 'loss-of-consciousness', 'seizure'],
      ...['ventricular-shunt', 'hydrocephalus', 'head-injury', 'trauma', 'anticoagulant', 'falls'],
    ),
    ...(facts.beganWithin(30) === 'yes' ? anySign(facts) : []),
  ];
}

/** Skin alone that feels otherwise, where the brain holds less than half of the probability: the cord and the roots are looked at first. */
export function isFeltAlone({ abnormalFindings, brainProbability }: BedsideFacts): boolean {
  const isSkin = abnormalFindings.length > 0 && abnormalFindings.every(({ item }) => item.section === 'sensation');
  return isSkin && brainProbability < 0.5;
}
