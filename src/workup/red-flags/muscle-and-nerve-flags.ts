import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { powerOf } from '../../exam/power.ts';
import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { breathingSigns, bulbarReasons } from './breathing.ts';
import { isOnBothSides } from './cord.ts';
import { orTold, present, type RedFlagRule, type Verdict } from './rule.ts';
import { each, none } from './story.ts';
import { onOneSide } from './sudden-deficit.ts';
import { isAtLeast, written } from './thresholds.ts';

/** From this creatine kinase, in U/L, the kidneys are in danger. Judged from the usual ranges. */
const dangerousCreatineKinase = 5000;

const threeMonths = 92;

/** Dangers that come from muscle, a swollen limb, porphyria, or a cord that drives the diaphragm. */
export const muscleAndNerveFlags: readonly RedFlagRule[] = [
  {
    key: 'rhabdomyolysis',
    label: 'Breakdown of muscle that endangers the kidneys',
    urgency: 'immediate',
    action: 'Fluids, potassium and ECG, creatinine; stop what may have caused it.',
    source: recalled('amato-russell', 'rhabdomyolysis'),
    check: (facts) => {
      const kinase = facts.query.quantity('creatine-kinase', 'U/L');
      const high = kinase !== undefined && isAtLeast(kinase, dangerousCreatineKinase);
      const urine = facts.told('dark-urine');
      const muscle = [
        ...facts.told('muscle-pain', 'weakness', 'heavy-exertion', 'prolonged-immobility'),
        ...findingReasons(facts.weakLimbs, 2),
      ];
      // What is measured now endangers now, unless it is the level of a muscle that has been ill for long.
      const isRecent = facts.beganWithin(high ? 92 : 14) !== 'no';
      // Hours on hard ground with a limb that is tense, sore or dead: the muscle has been crushed before anybody has measured.
      const crushed =
        kinase === undefined && facts.beganWithin(7) === 'yes' && !isPulledPlexus(facts)
          ? each(facts.told('prolonged-immobility'), [
              ...facts.told('tense-painful-limb'),
              ...findingReasons(
                facts.query.abnormalWhere(({ item }) => item.key === 'muscle-tenderness'),
                1,
              ),
              ...(facts.lowestLimbPower <= 1 ? findingReasons(facts.weakLimbs, 2) : []),
            ])
          : none;
      if (crushed.length > 0) return present(crushed);
      if (!isRecent || !(high || (urine.length > 0 && muscle.length > 0))) return null;
      // Dark urine with pain of the abdomen and weak nerves is porphyria's picture.
      if (!high && facts.told('abdominal-pain').length > 0) return null;
      return present([
        ...(high ? [{ pointer: kinase.pointer, text: `creatine kinase ${written(kinase)} U/L` }] : []),
        ...urine,
        ...muscle,
      ]);
    },
  },
  {
    key: 'severe-inflammatory-myopathy',
    label: 'Severe inflammation of muscle: weak swallowing or breathing, or limbs that fail within weeks',
    urgency: 'same-day',
    action: 'Admit; swallowing assessment, vital capacity, imaging of the lungs; treatment without delay.',
    source: recalled('eular-acr-myositis-2017', 'skin and oesophagus'),
    check: (facts) => orTold(failingInflamedMuscle(facts), checkMyositis(facts)),
  },
  {
    key: 'suspected-acute-porphyria',
    label: 'Suspected attack of acute porphyria',
    urgency: 'immediate',
    action:
      'Porphobilinogen in urine kept from light; haem and glucose; stop unsafe medicines; watch breathing and sodium.',
    source: recalled('adams-victor', 'porphyric polyneuropathy'),
    check: (facts) => {
      const belly = facts.told('abdominal-pain');
      const also = facts.told('dark-urine', 'seizure', 'behaviour-change', 'porphyria', 'family/porphyria');
      const weak = [...findingReasons(facts.weakLimbs, 3), ...facts.told('weakness', 'arm-weakness', 'leg-weakness')];
      const isAcute = facts.beganWithin(28) === 'yes' && facts.told('preceding-gastroenteritis').length === 0;
      const clouded = findingReasons(
        facts.query.abnormal([
          'higher-function/confusion',
          'higher-function/disorientation',
          'higher-function/hallucinations',
        ]),
      );
      const isBrain = facts.told('seizure').length > 0 && clouded.length > 0;
      // Convulsions and a changed mind with pain of the abdomen come before any limb is weak.
      const isTold = facts.told('seizure').length > 0 && facts.told('behaviour-change').length > 0;
      const isBrainTold = isTold && isAcute && facts.told('pregnancy').length === 0;
      const fits = (weak.length > 0 && (also.length > 0 || isAcute)) || isBrain || isBrainTold;
      return belly.length > 0 && fits && facts.beganWithin(42) !== 'no'
        ? present([...belly, ...also, ...weak, ...clouded])
        : null;
    },
  },
  {
    key: 'compartment-syndrome',
    label: 'Suspected compartment syndrome',
    urgency: 'immediate',
    action: 'Take off what constricts; surgeon now; do not wait for the pulse to go.',
    source: fromMemory,
    check: (facts) => {
      const swollen = facts.query.abnormal(['inspection/oedema']);
      const lain = facts.told('prolonged-immobility', 'external-pressure', 'limb-fracture-or-dislocation', 'trauma');
      const lost = facts.told('leg-weakness', 'arm-weakness', 'numbness', ...limbPains);
      // A limb that swells, hurts and grows weak within days needs no known reason.
      const isPlain =
        facts.cameWithin(3) && facts.told(...limbPains).length > 0 && onOneSide(facts.weakLimbs).length > 0;
      const isSwollen =
        swollen.length > 0 && (lain.length > 0 || isPlain) && (lost.length > 0 || facts.weakLimbs.length > 0);
      const tense = [
        ...facts.told('tense-painful-limb'),
        ...(isSwollen && facts.exam.onset.pace !== 'chronic' ? [...findingReasons(swollen, 1), ...lost] : []),
      ];
      const limbPain = facts.told(...limbPains);
      const squeezed = facts.told(
        'limb-fracture-or-dislocation',
        'external-pressure',
        'prolonged-immobility',
        'heavy-exertion',
      );
      const inCompartments = facts.weakLimbs.filter(({ item }) => !inNoCompartment.has(item.key));
      const numb = [...facts.told('numbness'), ...findingReasons(inCompartments, 2)];
      // Pain with failing nerves in a broken or squeezed limb comes before the swelling is seen.
      const isEarly = facts.beganWithin(3) === 'yes' && !isPulledPlexus(facts);
      const early =
        limbPain.length > 0 && squeezed.length > 0 && numb.length > 0 && isEarly ? [...limbPain, ...numb] : [];
      const cause = facts.told(
        'trauma',
        'limb-fracture-or-dislocation',
        'external-pressure',
        'prolonged-immobility',
        'heavy-exertion',
        'recent-surgery',
        'anticoagulant',
      );
      const deficit = facts.query.abnormalWhere(({ item }) => item.section === 'power' || item.section === 'sensation');
      const limb = [...tense, ...early, ...lainUpon(facts)];
      return limb.length > 0 && cause.length + deficit.length > 0 && facts.beganWithin(7) !== 'no'
        ? present([...limb, ...cause, ...findingReasons(deficit, 3)])
        : null;
    },
  },
  {
    key: 'high-cord-lesion-with-breathing-at-risk',
    label: 'Acute lesion of the upper cervical cord, breathing at risk',
    urgency: 'immediate',
    action: 'Vital capacity now and hourly, cough, blood pressure and pulse; intensive care; protect the neck.',
    source: recalled('isncsci', 'phrenic motor neurons C3 to C5'),
    check: (facts) => {
      if (facts.beganWithin(28) !== 'yes' || !facts.bothArmsWeak || !facts.bothLegsWeak) return null;
      const breathing = [
        ...findingReasons(facts.query.abnormal(breathingSigns)),
        ...facts.told('breathlessness', 'orthopnoea'),
      ];
      const high = facts.localisation.localisations.some(
        ({ site, kind, level, probability }) =>
          probability >= 0.2 && (site === 'foramen-magnum' || (kind === 'cord' && /^C[1-5]$/.test(level ?? ''))),
      );
      // After a blow to the neck arms that cannot be lifted nor bent lie at the fifth segment or above.
      const injury = facts.told('neck-trauma', 'trauma', 'falls');
      const c5 = facts.weak('upper-limbs').filter((one) => fifthSegment.has(one.item.key) && (powerOf(one) ?? 5) <= 2);
      if (injury.length > 0 && isOnBothSides(c5) && facts.lowestLimbPower <= 1)
        return present([...injury, ...findingReasons(c5, 3)]);
      return high && facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + breathing.length > 0
        ? present([...breathing, ...findingReasons([...facts.weak('upper-limbs'), ...facts.trunkSensoryLoss], 4)])
        : null;
    },
  },
  {
    key: 'suspected-vasculitic-neuropathy',
    label: 'Suspected vasculitic neuropathy',
    urgency: 'urgent',
    action:
      'Neurology and rheumatology within days; inflammatory markers, urine, ANCA; nerve biopsy if the conduction study agrees.',
    source: read('vasculitic-neuropathy-2010'),
    check: (facts) => {
      const { query } = facts;
      const rash = findingReasons(query.abnormal(['inspection/livedo-reticularis', 'inspection/non-blanching-rash']));
      const eosinophils = query.quantity('eosinophils', '10*9/L');
      const pain = facts.told('neuropathic-pain', 'leg-pain', 'arm-pain', 'foot-pain', 'burning-feet');
      // Skin that breaks down with a painful nerve within weeks has lost its vessels, where neither sugar nor a closed artery explains it.
      const hasOtherUlcer =
        facts.told('diabetes-mellitus', 'peripheral-arterial-disease', 'known-neuropathy').length > 0;
      const isFreshAndPainful = facts.beganWithin(92) === 'yes' && pain.length > 0 && !hasOtherUlcer;
      const ulcer = isFreshAndPainful ? findingReasons(query.abnormal(['inspection/foot-ulcer'])) : [];
      const arteries = [
        ...facts.told('asthma', 'vasculitis', 'cryoglobulinaemia'),
        ...rash,
        ...ulcer,
        ...(eosinophils !== undefined && isAtLeast(eosinophils, 1.5)
          ? [{ pointer: eosinophils.pointer, text: `eosinophils ${written(eosinophils)} x 10^9/L` }]
          : []),
      ];
      const systemic = [...arteries, ...facts.told('weight-loss', 'rash', 'fever', 'night-sweats')];
      const drops = query.abnormal(['inspection/foot-drop', 'inspection/wrist-drop', 'inspection/finger-drop']);
      const nerves = [...facts.weakLimbs, ...facts.legSensoryLoss, ...drops];
      const several = facts.kindProbability('multiple-nerves') >= 0.25;
      // With purpura, late asthma or eosinophils any fresh loss of nerve function may be an infarcted nerve.
      const isArterial =
        arteries.length > 0 &&
        nerves.length > 0 &&
        facts.upperMotorSigns.length === 0 &&
        facts.kindProbability('muscle') < 0.5 &&
        !isOneRoot(facts, arteries.length);
      // Two or more limbs, no pair of them alike: nerves that fail one by one.
      const limbs = (['upper-limbs', 'lower-limbs'] as const).flatMap((limb) =>
        (['left', 'right'] as const).filter((side) => facts.weak(limb, side).length > 0),
      );
      const isPatchy =
        limbs.length >= 2 && !facts.bothArmsWeak && !facts.bothLegsWeak && facts.upperMotorSigns.length === 0;
      const fits = ((several || isPatchy) && pain.length > 0 && systemic.length > 0) || isArterial;
      // Antibodies of the vessels, with any fresh loss of the nerves.
      const blood = ['anca', 'cryoglobulin'].flatMap((key) => {
        const result = query.result(key);
        return result?.value === 'positive' ? [{ pointer: result.pointer, text: `${result.label} positive` }] : [];
      });
      const isNerve = facts.upperMotorSigns.length === 0 && facts.kindProbability('muscle') < 0.5;
      const isFresh = facts.maybeProgressing && facts.beganWithin(183) === 'yes';
      if (isNerve && isFresh && blood.length > 0 && nerves.length > 0)
        return present([...blood, ...findingReasons(nerves, 3)]);
      const told = nervesOfSickArteries(facts);
      if (told.length > 0) return present(told);
      return fits &&
        (facts.exam.onset.pace !== 'chronic' || facts.beganWithin(183) === 'yes') &&
        facts.exam.course !== 'static'
        ? present([...pain, ...systemic, ...findingReasons(nerves, 2)])
        : null;
    },
  },
  {
    key: 'complete-nerve-injury',
    label: 'Injury with complete loss of a movement',
    urgency: 'same-day',
    action: 'Same-day opinion of a peripheral nerve surgeon; an open wound over the nerve is explored, not watched.',
    source: fromMemory,
    check: (facts) => {
      const injury = facts.told('trauma', 'limb-fracture-or-dislocation', 'recent-surgery');
      const lost = facts.query.abnormalWhere(
        ({ item, value }) => item.section === 'power' && (value === '0' || value === '1'),
      );
      return injury.length > 0 &&
        lost.length > 0 &&
        facts.beganWithin(14) === 'yes' &&
        facts.upperMotorSigns.length + facts.trunkSensoryLoss.length === 0 &&
        facts.kindProbability('cord') < 0.5
        ? present([...injury, ...findingReasons(lost, 3)])
        : null;
    },
  },
  {
    key: 'nitrous-oxide-myeloneuropathy',
    label: 'Suspected nitrous oxide myeloneuropathy',
    urgency: 'same-day',
    action:
      'Stop nitrous oxide; homocysteine or methylmalonic acid; replace vitamin B12 before the results; urgent MRI of the cord.',
    source: recalled('nice-ng239', 'nitrous oxide'),
    check: (facts) => {
      const gas = facts.told('nitrous-oxide');
      const signs = facts.query.abnormalWhere(
        ({ item }) =>
          item.section === 'gait' ||
          item.key === 'lhermitte' ||
          item.probe.kind === 'proprioception' ||
          (item.section === 'power' && item.region === 'lower-limbs'),
      );
      const sensory = facts.query.abnormalWhere(
        ({ modality }) => modality === 'vibration' || modality === 'joint-position',
      );
      const told = facts.told(
        'unsteadiness',
        'difficulty-walking',
        'leg-weakness',
        'electric-shock-on-neck-flexion',
        'paraesthesiae',
        'numbness',
        'clumsiness',
        'falls',
        'bladder-disturbance',
      );
      return gas.length > 0 && signs.length + sensory.length + told.length > 0
        ? present([...gas, ...findingReasons([...signs, ...sensory], 4), ...told])
        : null;
    },
  },
];

/**
 * Asthma of late onset with sinuses, skin, eosinophils, fever or loss of weight, and limbs that within three months tingle or hurt and grow weak: it
 * is told as sciatica before anybody has examined.
 */
function nervesOfSickArteries(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const isFresh = facts.beganWithin(threeMonths) === 'yes' && facts.exam.course === 'progressive';
  if (!isFresh || facts.exam.onset.pace === 'hyperacute' || facts.upperMotorSigns.length > 0) return none;
  const eosinophils = query.quantity('eosinophils', '10*9/L');
  const body = [
    ...facts.told(
      'sinus-or-ear-infection',
      'rash',
      'fever',
      'weight-loss',
      'night-sweats',
      'cardiomyopathy',
      'glomerulonephritis',
    ),
    ...findingReasons(query.abnormal(['inspection/non-blanching-rash', 'inspection/livedo-reticularis']), 1),
    ...(eosinophils !== undefined && isAtLeast(eosinophils, 1.5)
      ? [{ pointer: eosinophils.pointer, text: `eosinophils ${written(eosinophils)} x 10^9/L` }]
      : []),
  ];
  const weak = [...facts.told('leg-weakness', 'arm-weakness', 'weakness'), ...findingReasons(facts.weakLimbs, 2)];
  const felt = facts.told(
    'paraesthesiae',
    'numbness',
    'neuropathic-pain',
    'leg-pain',
    'arm-pain',
    'foot-pain',
    'burning-feet',
  );
  return each(facts.told('asthma', 'vasculitis', 'cryoglobulinaemia'), body, weak, felt);
}

const fifthSegment: ReadonlySet<string> = new Set(['shoulder-abduction', 'elbow-flexion']);

const limbPains = ['leg-pain', 'arm-pain', 'thigh-pain', 'foot-pain'] as const;

/**
 * A limb that is dead and numb after hours in which nobody moved: the crush hurts little once the nerves are gone. One nerve
 * that was lain on does not take several joints.
 */
function lainUpon(facts: BedsideFacts): readonly Reason[] {
  if (!facts.cameWithin(3) || isPulledPlexus(facts)) return none;
  const lain = facts.told('prolonged-immobility', 'injecting-drug-use', 'opioid', 'loss-of-consciousness');
  const dead = onOneSide(facts.weakLimbs.filter((one) => (powerOf(one) ?? 5) <= 1));
  const regions = new Set(facts.weakLimbs.map(({ item }) => item.region));
  const movements = new Set(dead.map(({ item }) => item.key));
  const head =
    facts.cranialNerveSigns.length +
    facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction').length +
    facts.upperMotorSigns.length;
  const kinase = facts.query.quantity('creatine-kinase', 'U/L');
  const leaks =
    kinase !== undefined && isAtLeast(kinase, 1000)
      ? [{ pointer: kinase.pointer, text: `creatine kinase ${written(kinase)} U/L` }]
      : [];
  const isLimb = regions.size === 1 && head === 0 && (movements.size >= 3 || leaks.length > 0);
  const numb = [
    ...findingReasons(
      facts.query.abnormalWhere(({ item }) => item.section === 'sensation'),
      2,
    ),
    ...facts.told('numbness'),
  ];
  return isLimb ? each(lain, findingReasons(dead, 3), [...numb, ...leaks]) : none;
}

/** Movements whose muscles lie in no tight compartment. */
const inNoCompartment: ReadonlySet<string> = new Set([
  'hip-flexion',
  'hip-adduction',
  'shoulder-abduction',
  'shoulder-abduction-initiation',
  'shoulder-external-rotation',
]);

/**
 * An arm that is dead from the shoulder down, in somebody who was nursed or operated on in one posture: crushed muscle would
 * spare what lies above the part that was lain on, and would be tense, sore or leaking. Whoever lay where nobody turned him is
 * not meant, nor one whose senses a poison took.
 */
export function isPulledPlexus(facts: BedsideFacts): boolean {
  const { query, weakLimbs } = facts;
  const limbs = new Set(weakLimbs.map(({ item, side }) => `${item.region} ${side}`));
  const isDead = (key: string) => weakLimbs.some((one) => one.item.key === key && (powerOf(one) ?? 5) <= 2);
  const ofMuscle = [
    ...facts.told(
      'tense-painful-limb',
      'dark-urine',
      'loss-of-consciousness',
      'syncope',
      'injecting-drug-use',
      'opioid',
    ),
    ...facts.told('cocaine-or-stimulants', 'alcohol-excess', 'carbon-monoxide', 'benzodiazepine', 'heavy-exertion'),
    ...facts.told('limb-fracture-or-dislocation', 'trauma'),
  ];
  const seen = query.abnormalWhere(({ item }) => seenOfCrushedMuscle.has(item.key));
  return (
    limbs.size === 1 &&
    isDead('shoulder-abduction') &&
    isDead('elbow-flexion') &&
    ofMuscle.length + seen.length === 0 &&
    query.quantity('creatine-kinase', 'U/L') === undefined
  );
}

const seenOfCrushedMuscle: ReadonlySet<string> = new Set([
  'oedema',
  'muscle-tenderness',
  'colour-or-temperature-change',
]);

function skinOfMyositis({ query }: BedsideFacts): readonly Reason[] {
  return findingReasons(query.abnormal(['inspection/heliotrope-rash', 'inspection/gottron-papules']));
}

/** A creatine kinase of at least 1000 U/L in the first year, where muscle is a likely place. */
function leakingMuscle(facts: BedsideFacts): readonly Reason[] {
  const kinase = facts.query.quantity('creatine-kinase', 'U/L');
  const isMuscle = facts.beganWithin(365) !== 'no' && facts.kindProbability('muscle') >= 0.3;
  return kinase !== undefined && isAtLeast(kinase, 1000) && isMuscle
    ? [{ pointer: kinase.pointer, text: `creatine kinase ${written(kinase)} U/L` }]
    : none;
}

function failingInflamedMuscle(facts: BedsideFacts): Verdict | null {
  const skin = [...skinOfMyositis(facts), ...facts.told('photosensitive-rash')];
  const danger = [
    ...findingReasons(facts.query.abnormal(breathingSigns)),
    ...bulbarReasons(facts),
    ...facts.told('breathlessness', 'orthopnoea'),
  ];
  const inflamed = leakingMuscle(facts);
  // Before anybody has measured it: both sides of the girdles weak within weeks to months, and a throat that fails, is muscle.
  const isOfWeeks =
    facts.beganWithin(threeMonths) === 'yes' && facts.beganWithin(7) !== 'yes' && facts.maybeProgressing;
  const isOfGirdles = facts.bothLegsWeak && facts.lowestLimbPower <= 4 && facts.kindProbability('muscle') >= 0.7;
  const isUnmeasured = isOfWeeks && isOfGirdles && facts.query.quantity('creatine-kinase', 'U/L') === undefined;
  // Muscle that dies over weeks until limbs hardly lift is lost if treatment waits; a statin names it before its enzyme is known. Source: Allenbach 2020, Nat Rev Rheumatol.
  const statin = isUnmeasured ? facts.told('statin') : none;
  const isFailing =
    inflamed.length + statin.length > 0 &&
    facts.isProgressive &&
    facts.beganWithin(threeMonths) === 'yes' &&
    facts.lowestLimbPower <= 3 &&
    facts.bothLegsWeak &&
    facts.bothArmsWeak;
  const isEndangered =
    (skin.length + inflamed.length > 0 || isUnmeasured) && danger.length > 0 && facts.weakLimbs.length > 0;
  return isEndangered || isFailing
    ? present([...skin, ...inflamed, ...statin, ...danger, ...findingReasons(facts.weakLimbs, 2)])
    : null;
}

/**
 * Immune cells let loose on muscle: with lids, eyes or throat that fail beside limbs that are weak or sore the junction and the
 * heart are mostly taken too, and a third die. Source: Johnson 2018, Lancet, recalled.
 */
function releasedOnMuscle(facts: BedsideFacts): readonly Reason[] {
  const drug = facts.told('immune-checkpoint-inhibitor');
  if (drug.length === 0 || facts.beganWithin(threeMonths) === 'no') return none;
  const muscle = [
    ...leakingMuscle(facts),
    ...facts.told('muscle-pain', 'weakness', 'difficulty-with-stairs', 'leg-weakness', 'arm-weakness'),
    ...findingReasons([...facts.weakLimbs, ...facts.query.abnormal(['power/neck-flexion', 'power/neck-extension'])], 3),
  ];
  const head = [
    ...findingReasons(
      facts.query.abnormal(['cranial-nerves/ptosis', 'cranial-nerves/fatigable-ptosis', 'inspection/dropped-head']),
      2,
    ),
    ...facts.told('diplopia', 'drooping-eyelids'),
    ...bulbarReasons(facts),
  ];
  const isOfNerves = facts.reducedReflexes.length >= 4 || facts.kindProbability('polyradiculoneuropathy') >= 0.7;
  return isOfNerves ? none : each(drug, muscle, head);
}

/**
 * Stairs and chairs that grow hard within weeks to three months with a throat that fails, before anybody has measured the muscle: where a
 * statin, sore muscles or the skin point to it, and nothing tires, tingles or sees double.
 */
function untriedGirdles(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const isWeeks = facts.beganWithin(threeMonths) === 'yes' && facts.beganWithin(7) !== 'yes' && facts.maybeProgressing;
  const isOther =
    facts.told(...notOfInflamedMuscle).length > 0 ||
    query.quantity('creatine-kinase', 'U/L') !== undefined ||
    query.abnormal(['cranial-nerves/ptosis', 'cranial-nerves/tongue-fasciculation', 'cranial-nerves/tongue-wasting'])
      .length > 0 ||
    facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + facts.reducedReflexes.length > 0;
  if (!isWeeks || facts.exam.onset.pace === 'hyperacute' || isOther) return none;
  const girdles = [
    ...facts.told('difficulty-with-stairs'),
    ...findingReasons(
      query.abnormal(['gait/rising-from-chair', 'gait/gowers-sign', 'gait/stairs', 'gait/waddling']),
      2,
    ),
  ];
  const muscle = [...facts.told('statin', 'muscle-pain', 'photosensitive-rash', 'rash'), ...skinOfMyositis(facts)];
  return each(girdles, facts.told('dysphagia'), muscle);
}

const notOfInflamedMuscle = [
  ...['diplopia', 'drooping-eyelids', 'fatigable-weakness', 'fluctuating-symptoms', 'numbness', 'paraesthesiae'],
  ...['myasthenia-gravis', 'descending-weakness', 'bladder-disturbance', 'speech-difficulty'],
] as const;

/** Muscle known to be inflamed by skin, enzyme, antibody, needle or biopsy, with a swallow or a breath that fails or limbs that hardly lift. */
function checkMyositis(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  if (!facts.maybeProgressing || facts.beganWithin(365) === 'no') return none;
  const inflamed = [
    ...skinOfMyositis(facts),
    ...leakingMuscle(facts),
    ...(
      [
        ['muscle-biopsy', ['inflammatory', 'necrotising']],
        ['myositis-antibody', ['positive']],
        ['hmgcr-antibody', ['positive']],
      ] as const
    ).flatMap(([key, values]) => {
      const result = query.result(key);
      return result !== undefined && (values as readonly string[]).includes(String(result.value))
        ? [{ pointer: result.pointer, text: `${result.label}: ${result.value}` }]
        : [];
    }),
  ];
  const danger = [
    ...bulbarReasons(facts),
    ...facts.told('breathlessness', 'orthopnoea', 'interstitial-lung-disease'),
    ...findingReasons(query.abnormal(['autonomic/breathlessness-at-rest'])),
  ];
  const hardlyLift = facts.beganWithin(183) === 'yes' ? facts.weakLimbs.filter((one) => (powerOf(one) ?? 5) <= 3) : [];
  const weak = [
    ...findingReasons(facts.weakLimbs, 2),
    ...facts.told('weakness', 'leg-weakness', 'arm-weakness', 'difficulty-with-stairs'),
  ];
  // The skin of it with a breath that grows short needs no weak muscle: the lungs may fail within weeks. Source: Lu 2022, MDA5, recalled.
  const lungs = each(skinOfMyositis(facts), facts.told('breathlessness', 'orthopnoea', 'interstitial-lung-disease'));
  if (lungs.length > 0) return lungs;
  const untried = untriedGirdles(facts);
  if (untried.length > 0) return untried;
  const released = releasedOnMuscle(facts);
  if (released.length > 0) return released;
  return each(inflamed, weak, [...danger, ...findingReasons(hardlyLift, 2)]);
}

/** A root that a stretched nerve or a strained spine points to, in somebody who happens to have asthma and nothing else of the vessels. */
function isOneRoot(facts: BedsideFacts, vessels: number): boolean {
  const pulled = facts.query.abnormal(['special-tests/straight-leg-raise', 'special-tests/spurling']);
  return (
    vessels === 1 &&
    facts.told('asthma').length === 1 &&
    pulled.length + facts.told('pain-on-straining').length > 0 &&
    facts.kindProbability('root') >= 0.5
  );
}
