import type { RankedCause, Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { type BedsideFacts, isOneCranialNerveAlone } from '../bedside-facts.ts';
import {
  anyComplaint,
  anySign,
  areEyesAlone,
  beyondMovements,
  beyondOneLimb,
  goingDown,
  isFeltAlone,
  isNerveOverDiabeticFeet,
  isNotPlainlyElsewhere,
  isOfOneLimb,
  isOneLimbAlone,
  isOneRootThatHurts,
  limbsOrHead,
  lossInTheBrain,
  notOfAPupilAlone,
  ofAnOldArtery,
  ofPressure,
  squeezedMuscle,
  weakOrInfected,
} from './beside-likely-causes.ts';
import { areFeetPressed, spinalPain } from './cord.ts';
import { isLossOfOld } from './eye-flags.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { isOfPressedNerves } from './few-muscles.ts';
import { isOfTheGirdles } from './girdles.ts';
import { isPulledPlexus } from './muscle-and-nerve-flags.ts';
import { each } from './story.ts';

/** An emergency that is suspected because the causes behind it are among the likely ones, whatever its own rule asks for. */
interface LikelyEmergency {
  readonly flag: string;
  /** Keys of the causes whose probabilities are added up. */
  readonly causes: readonly string[];
  /** How old the trouble may be, in days, before it is no emergency any more. Judged. */
  readonly withinDays: number;
  /** Set where only what is known to be that recent counts: of what nobody has dated, most is old. */
  readonly isDated?: true;
  /** Set where one of the causes must come first, and how likely it must be, in place of what they come to together. */
  readonly leadsFrom?: number;
  /**
   * What must be told or found beside it, where the causes are likely by default: with little else to choose from, a common
   * fever or a sore muscle would raise it.
   */
  readonly beside?: (facts: BedsideFacts) => readonly Reason[];
}

/**
 * From which probability of its causes an emergency is said: when the trouble is known to be recent and nothing else has been raised,
 * and when nobody has dated it or other flags speak already. An emergency is dear to miss and a look is cheap, so that both lie
 * far below a half. Judged; chosen with the cases of tests/evaluation, of which one non-urgent in fifty is alarmed by it.
 */
const worthRaising = { recentAndAlone: 0.12, otherwise: 0.15 } as const;

const strokes = [
  'ischaemic-stroke',
  'cervical-artery-dissection-stroke',
  'intracerebral-haemorrhage',
  'cerebellar-haemorrhage-or-infarct-with-swelling',
] as const;

/** Every emergency that its causes can raise. */
export const likelyEmergencies: readonly LikelyEmergency[] = [
  {
    flag: 'suspected-stroke',
    causes: [...strokes, 'cerebral-amyloid-angiopathy', 'transient-ischaemic-attack', 'retinal-artery-occlusion'],
    withinDays: 7,
    isDated: true,
    // What has gone and has left nothing behind is an attack that has passed, which has a flag of its own.
    beside: (facts) => (facts.told('resolved-deficit').length > 0 ? anySign(facts) : isNotPlainlyElsewhere(facts)),
  },
  {
    // What is most likely a stroke, and some weeks old, is treated as one whatever pace was noted: when it came to notice, when
    // it was at its worst and when it began are told for each other, and the next one threatens all the same.
    flag: 'suspected-stroke',
    causes: strokes,
    withinDays: 42,
    isDated: true,
    leadsFrom: 0.4,
    beside: lossInTheBrain,
  },
  { flag: 'hypoglycaemia-with-deficit', causes: ['hypoglycaemia'], withinDays: 14 },
  {
    flag: 'thunderclap-headache',
    causes: ['subarachnoid-haemorrhage', 'reversible-cerebral-vasoconstriction'],
    withinDays: 14,
  },
  {
    flag: 'suspected-meningitis',
    causes: [
      'bacterial-meningitis',
      'viral-meningitis',
      'tuberculous-meningitis',
      'fungal-meningitis',
      'eosinophilic-meningitis',
      'amoebic-encephalitis',
    ],
    withinDays: 60,
    // A neck that was tried and is supple under a clear mind leaves a fever with a headache as common as it is.
    beside: (facts) => [
      ...anySign(facts),
      ...facts.told('vomiting', 'photophobia', 'seizure', 'diplopia', 'visual-loss', 'hearing-loss', 'rash'),
      ...facts.told('immunosuppression', 'hiv-infection', 'tuberculosis', 'behaviour-change', 'cognitive-change'),
      ...(facts.query.sign('special-tests/neck-stiffness') === 'unknown' ? facts.told('headache', 'new-headache') : []),
    ],
  },
  {
    flag: 'suspected-encephalitis',
    causes: [
      'herpes-simplex-encephalitis',
      'viral-encephalitis',
      'rickettsial-encephalitis',
      'autoimmune-encephalitis',
      'brainstem-encephalitis',
      'acute-disseminated-encephalomyelitis',
      'brain-abscess',
      'cerebral-toxoplasmosis',
    ],
    withinDays: 60,
    beside: beyondMovements,
  },
  {
    flag: 'raised-intracranial-pressure',
    causes: [
      'obstructive-hydrocephalus',
      'idiopathic-intracranial-hypertension',
      'abducens-palsy-from-raised-pressure',
      'subdural-haematoma',
      'infant-subdural-haematoma',
      'cerebellar-haemorrhage-or-infarct-with-swelling',
    ],
    withinDays: 180,
    beside: ofPressure,
  },
  { flag: 'suspected-wernicke-encephalopathy', causes: ['wernicke-encephalopathy'], withinDays: 30 },
  { flag: 'status-epilepticus', causes: ['non-convulsive-status'], withinDays: 14 },
  {
    flag: 'suspected-space-occupying-lesion',
    causes: [
      'brain-tumour',
      'brainstem-glioma',
      'central-nervous-system-lymphoma',
      'brain-abscess',
      'cerebral-toxoplasmosis',
      'tuberculoma',
      'subdural-haematoma',
    ],
    withinDays: 365,
    // It grows, or something that masses bring is told or seen beside it.
    beside: (facts) => [
      ...(['progressive', 'fluctuating'].includes(facts.exam.course ?? '') && !isFeltAlone(facts)
        ? anyComplaint(facts)
        : []),
      ...facts.told('headache', 'new-headache', 'morning-headache', 'vomiting', 'seizure'),
      // A disorder of mood of long standing, of which nobody says that it grows, changes memory and manner too.
      ...(facts.told('psychiatric-disorder').length > 0 && facts.beganWithin(92) === 'no'
        ? []
        : facts.told('behaviour-change', 'cognitive-change')),
      ...facts.told('speech-difficulty', 'cancer', 'lymphoma', 'immunosuppression', 'hiv-infection'),
      ...findingReasons(
        facts.abnormalFindings.filter(
          ({ item }) => ['higherFunction', 'cranialNerves', 'power'].includes(item.section) && item.key !== 'low-mood',
        ),
        1,
      ),
    ],
  },
  {
    // Those that grow for a year or two before anybody thinks of them.
    flag: 'suspected-space-occupying-lesion',
    causes: ['olfactory-groove-meningioma', 'suprasellar-tumour', 'foramen-magnum-meningioma'],
    withinDays: 730,
    beside: (facts) => (facts.exam.course === 'progressive' ? anySign(facts) : []),
  },
  {
    flag: 'acute-ascending-weakness',
    causes: ['guillain-barre-syndrome', 'acute-motor-axonal-neuropathy', 'miller-fisher-syndrome', 'tick-paralysis'],
    withinDays: 28,
    beside: (facts) =>
      (areFeetPressed(facts) && facts.weakLimbs.length > 0) ||
      isOneCranialNerveAlone(facts) ||
      isOneLimbAlone(facts) ||
      areEyesAlone(facts) ||
      isNerveOverDiabeticFeet(facts)
        ? []
        : facts.beganWithin(28) === 'yes'
          ? limbsOrHead(facts)
          : weakOrInfected(facts),
  },
  { flag: 'suspected-botulism', causes: ['botulism'], withinDays: 30, beside: goingDown },
  {
    flag: 'suspected-cord-compression',
    causes: [
      'metastatic-spinal-cord-compression',
      'spinal-epidural-abscess',
      'spinal-epidural-haematoma',
      'spinal-subdural-haematoma',
      'spinal-cord-injury',
      'spinal-cord-infarction',
      'decompression-sickness',
      'cervical-disc-herniation-with-cord-compression',
      'thoracic-disc-herniation',
      'idiopathic-transverse-myelitis',
      'acute-infectious-myelitis',
    ],
    withinDays: 90,
    beside: beyondOneLimb,
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    causes: ['metastatic-spinal-cord-compression'],
    withinDays: 180,
    // It is the flag of those who are known or seem to have a cancer; others have that of the cord.
    beside: (facts) =>
      isOfTheGirdles(facts) || isOneRootThatHurts(facts)
        ? []
        : facts.told('cancer', 'lymphoma', 'monoclonal-gammopathy', 'weight-loss', 'recent-weight-loss'),
  },
  {
    flag: 'suspected-spinal-infection',
    causes: ['spinal-epidural-abscess', 'spinal-tuberculosis'],
    withinDays: 365,
    beside: (facts) => [
      ...facts.told(...spinalPain, 'leg-weakness', 'arm-weakness', 'difficulty-walking', 'weakness'),
      ...findingReasons(
        [
          ...facts.weakLimbs,
          ...facts.upperMotorSigns,
          ...facts.trunkSensoryLoss,
          ...facts.query.abnormal(['inspection/spinal-tenderness', 'inspection/kyphosis']),
        ],
        1,
      ),
      ...facts.sphincterFailure,
    ],
  },
  {
    flag: 'suspected-spinal-haematoma',
    causes: ['spinal-epidural-haematoma', 'spinal-subdural-haematoma', 'retroperitoneal-haematoma'],
    withinDays: 30,
    // Blood that does not clot, or what blood in the canal or the psoas takes: both legs, a level, the bladder, the thigh.
    beside: (facts) => [
      ...facts.told('leg-weakness'),
      ...each(facts.told('anticoagulant', 'bleeding-disorder', 'lumbar-puncture-or-epidural', 'dialysis'), [
        ...facts.told(...spinalPain, 'thigh-pain', 'flank-pain', 'leg-pain', 'abdominal-pain', 'radicular-leg-pain'),
        ...facts.told('bilateral-leg-pain', 'difficulty-walking', 'weakness', 'trauma'),
        ...findingReasons([...facts.weakLimbs, ...facts.reducedReflexes, ...facts.upperMotorSigns], 1),
      ]),
      ...(facts.bothLegsWeak ? findingReasons(facts.weak('lower-limbs'), 1) : []),
      ...findingReasons(
        [...facts.trunkSensoryLoss, ...facts.query.abnormal(['power/hip-flexion', 'power/knee-extension'])],
        1,
      ),
      ...facts.sphincterFailure,
    ],
  },
  {
    flag: 'compressive-third-nerve-palsy',
    causes: ['intracranial-aneurysm-with-third-nerve-palsy'],
    withinDays: 30,
    beside: notOfAPupilAlone,
  },
  {
    flag: 'acute-visual-loss',
    causes: [
      'optic-neuritis',
      'anterior-ischaemic-optic-neuropathy',
      'posterior-ischaemic-optic-neuropathy',
      'retinal-artery-occlusion',
    ],
    withinDays: 30,
    // A disc takes weeks to grow pale: what goes with it, and is not known to be recent, is old.
    beside: (facts) =>
      isLossOfOld(facts) ||
      (facts.query.hasAbnormal('cranial-nerves/optic-disc-pallor') && facts.beganWithin(30) !== 'yes')
        ? []
        : [
            ...findingReasons(facts.cranialNerveSigns, 1),
            ...facts.told('visual-loss', 'transient-visual-loss', 'eye-pain'),
          ],
  },
  { flag: 'suspected-giant-cell-arteritis', causes: ['giant-cell-arteritis'], withinDays: 180, beside: ofAnOldArtery },
  { flag: 'painful-horner-syndrome', causes: ['carotid-dissection'], withinDays: 30, beside: notOfAPupilAlone },
  {
    flag: 'suspected-cerebral-venous-thrombosis',
    causes: ['cerebral-venous-thrombosis'],
    withinDays: 30,
    beside: (facts) => [
      ...anySign(facts),
      ...facts.told('vomiting', 'seizure', 'visual-loss', 'transient-visual-loss', 'diplopia', 'weakness', 'numbness'),
      ...each(
        facts.told('headache', 'new-headache', 'morning-headache', 'behaviour-change', 'cognitive-change'),
        facts.told('pregnancy', 'hormonal-contraceptive', 'thrombophilia', 'sinus-or-ear-infection', 'cancer'),
      ),
      ...(facts.exam.course === 'progressive' ? facts.told('headache', 'new-headache', 'morning-headache') : []),
    ],
  },
  { flag: 'suspected-pituitary-apoplexy', causes: ['pituitary-apoplexy'], withinDays: 30 },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    causes: ['orbital-infection-or-mucormycosis', 'cavernous-sinus-thrombosis'],
    withinDays: 30,
    beside: (facts) => [
      ...findingReasons(
        facts.query.abnormal([
          ...eyeMovementSigns,
          'cranial-nerves/ptosis',
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/facial-numbness',
          'inspection/proptosis',
          'inspection/chemosis',
          'inspection/periorbital-oedema',
        ]),
        1,
      ),
      ...facts.told('eye-pain', 'facial-pain', 'headache', 'new-headache', 'fever', 'visual-loss', 'diplopia'),
    ],
  },
  {
    flag: 'suspected-acute-porphyria',
    causes: ['acute-porphyria'],
    withinDays: 60,
    beside: (facts) => [
      ...anySign(facts),
      ...facts.told('weakness', 'arm-weakness', 'leg-weakness', 'seizure', 'behaviour-change', 'dark-urine'),
      ...facts.told('porphyria', 'family/porphyria', 'paraesthesiae', 'numbness', 'cognitive-change'),
    ],
  },
  {
    flag: 'compartment-syndrome',
    causes: ['compartment-syndrome'],
    withinDays: 7,
    isDated: true,
    beside: (facts) =>
      isPulledPlexus(facts)
        ? []
        : each(
            [
              ...anySign(facts),
              ...facts.told('tense-painful-limb', 'numbness', 'leg-weakness', 'arm-weakness', 'paraesthesiae'),
            ],
            squeezedMuscle(facts),
          ),
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    causes: ['vasculitic-neuropathy'],
    withinDays: 180,
    // One nerve, with nothing of an ill body or of the skin, is more often something else.
    beside: (facts) =>
      isOfPressedNerves(facts)
        ? []
        : [
            // Nerves that a blow has hurt at several places are several without any vessel.
            ...(facts.kindProbability('multiple-nerves') >= (isOfOneLimb(facts) ? 0.5 : 0.15) &&
            facts.told('trauma', 'limb-fracture-or-dislocation').length === 0
              ? anySign(facts)
              : []),
            ...findingReasons(
              facts.query.abnormal(['inspection/non-blanching-rash', 'inspection/livedo-reticularis']),
              1,
            ),
            ...(isOfOneLimb(facts) ? [] : facts.told('neuropathic-pain')),
            // Hands that tingle at night in somebody with asthma or joints are those of a carpal tunnel.
            ...each(
              facts.told(
                ...['weight-loss', 'night-sweats', 'asthma', 'vasculitis', 'cryoglobulinaemia'],
                ...['rheumatoid-arthritis', 'hepatitis-b', 'hepatitis-c'],
              ),
              limbsOrHead(facts),
            ),
          ],
  },
  {
    flag: 'potassium-paralysis',
    causes: [
      'electrolyte-paralysis',
      'thyrotoxic-periodic-paralysis',
      'hereditary-periodic-paralysis',
      'renal-tubular-acidosis-paralysis',
    ],
    withinDays: 14,
  },
  {
    flag: 'suspected-tetanus',
    causes: ['tetanus'],
    withinDays: 30,
    // A jaw that does not open after work on the teeth is mostly theirs.
    beside: (facts) => [
      ...anySign(facts),
      ...facts.told('stiffness', 'dysphagia', 'cramps', 'trauma', 'injecting-drug-use', 'back-pain', 'neck-pain'),
    ],
  },
  { flag: 'rhabdomyolysis', causes: ['rhabdomyolysis'], withinDays: 14 },
  {
    flag: 'suspected-poisoning',
    causes: [
      'organophosphate-poisoning',
      'neurotoxic-envenomation',
      'carbon-monoxide-poisoning',
      'methanol-poisoning',
      'lithium-poisoning',
    ],
    withinDays: 14,
  },
  // Lithium that is taken on while the kidneys fail gathers in the brain over weeks to months.
  { flag: 'suspected-poisoning', causes: ['lithium-poisoning'], withinDays: 183 },
  {
    // Nobody tells of a poison that was given unseen; hair and nails show it weeks later, when it can still be driven out.
    flag: 'suspected-poisoning',
    causes: ['thallium-neuropathy', 'arsenic-neuropathy'],
    withinDays: 60,
    isDated: true,
  },
  { flag: 'acute-limb-ischaemia', causes: ['aortic-dissection-or-occlusion'], withinDays: 14 },
  {
    flag: 'drug-induced-hyperthermia-with-rigidity',
    causes: ['antipsychotic-malignant-syndrome', 'serotonin-syndrome', 'baclofen-withdrawal'],
    withinDays: 14,
  },
];

/**
 * Reasons for each flag whose causes are likely enough, by the flag's key. A flag can only be added by this, never taken away.
 *
 * @param causes the ranked causes of the exam
 * @param raised how many flags the rules have raised by themselves
 */
export function raisedByCauses(
  facts: BedsideFacts,
  causes: readonly RankedCause[],
  raised: number,
): ReadonlyMap<string, readonly Reason[]> {
  return new Map(
    likelyEmergencies.flatMap(({ flag, causes: keys, withinDays, isDated = false, leadsFrom, beside }) => {
      const recency = facts.beganWithin(withinDays);
      const isInTime = isDated ? recency === 'yes' : recency !== 'no';
      const behind = causesBehind(keys, causes);
      const likelihood = sumOf(behind);
      const isAlone = recency === 'yes' && raised === 0;
      const [first] = causes;
      const isLikely =
        leadsFrom === undefined
          ? likelihood >= (isAlone ? worthRaising.recentAndAlone : worthRaising.otherwise)
          : first !== undefined && behind.includes(first) && first.probability >= leadsFrom;
      const isMet = beside === undefined || beside(facts).length > 0;
      // What has rested or mended for more than a month is no emergency by what may have caused it.
      if (!facts.maybeProgressing && facts.beganWithin(31) === 'no') return [];
      return isInTime && isLikely && isMet ? [[flag, reasonsOf(behind)] as const] : [];
    }),
  );
}

/** What the causes behind each flag come to together, by the flag's key: of flags that press alike the likeliest is said first. */
export function likelihoodOfFlags(causes: readonly RankedCause[]): ReadonlyMap<string, number> {
  const likeliest = new Map<string, number>();
  for (const { flag, causes: keys } of likelyEmergencies)
    likeliest.set(flag, Math.max(likeliest.get(flag) ?? 0, sumOf(causesBehind(keys, causes))));
  return likeliest;
}

const causesBehind = (keys: readonly string[], causes: readonly RankedCause[]): readonly RankedCause[] =>
  causes.filter(({ key }) => keys.includes(key));

const sumOf = (causes: readonly RankedCause[]): number => causes.reduce((sum, { probability }) => sum + probability, 0);

function reasonsOf(causes: readonly RankedCause[]): readonly Reason[] {
  return causes.slice(0, 2).flatMap(({ label, probability, supporting }): readonly Reason[] => [
    {
      pointer: supporting[0]?.pointer ?? null,
      text: `${label} is among the likely causes (${Math.round(probability * 100)} %)`,
    },
    ...supporting.slice(0, 3),
  ]);
}
