import type { MuscleGroup } from '../../anatomy/movement.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import type { SiteKind } from '../localisation.ts';
import type { MotorUnitSite, Process } from '../process.ts';
import { facultiesOf, type ProcessSign, processSite } from './process-signs.ts';

/** Percent of all focal and diffuse findings that each process stands for. Judged. */
const percent = {
  postsynaptic: 2,
  presynaptic: 0.4,
  proximalMuscle: 3,
  distalMuscle: 0.4,
  fingerFlexorQuadriceps: 0.4,
  facioscapulohumeral: 0.3,
} as const;

const none = (): number => 0;

type GroupLoss = Readonly<Partial<Record<MuscleGroup, number>>>;

function groupProcess(losses: GroupLoss, because: string, reflex: number, denervating = false): Process {
  return {
    motor: (unit: MotorUnitSite) => (unit.group === undefined ? 0 : (losses[unit.group] ?? 0)),
    largeFibre: none,
    smallFibre: none,
    reflex: () => reflex,
    denervating,
    because,
  };
}

interface MuscleDisease {
  readonly key: string;
  readonly label: string;
  readonly kind: SiteKind;
  readonly variant: string;
  readonly percent: number;
  readonly losses: GroupLoss;
  readonly reflex: number;
  readonly because: string;
  readonly faculties: readonly ProcessSign[];
}

const fatigue = 'transmission to the muscle fails, more with use';
const proximal = 'the muscles of the limb girdles are affected on both sides';

/** Diseases of the junction and of muscle, by the groups they weaken. Distributions: Amato and Russell, Neuromuscular Disorders (recalled). */
const muscleDiseases: readonly MuscleDisease[] = [
  {
    key: 'postsynaptic-junction',
    label: 'Postsynaptic disorder of the neuromuscular junction',
    kind: 'junction',
    variant: 'ocular',
    percent: percent.postsynaptic * 0.4,
    losses: {},
    reflex: 0,
    because: fatigue,
    faculties: [
      ['eyelid-elevation', 0.8],
      ['eye-movement-fatigue', 0.8],
      ['oculomotor', 0.2],
      ['abducens', 0.2],
      ['fatigability', 0.6],
    ],
  },
  {
    key: 'postsynaptic-junction',
    label: 'Postsynaptic disorder of the neuromuscular junction',
    kind: 'junction',
    variant: 'generalised',
    percent: percent.postsynaptic * 0.45,
    losses: {
      'neck-flexors': 0.5,
      'neck-extensors': 0.3,
      shoulder: 0.5,
      'upper-arm': 0.4,
      hip: 0.4,
      'forearm-extensors': 0.35,
      'knee-extensors': 0.2,
      scapular: 0.2,
      hand: 0.2,
    },
    reflex: 0,
    because: fatigue,
    faculties: [
      ['eyelid-elevation', 0.65],
      ['eye-movement-fatigue', 0.65],
      ['fatigability', 0.75],
      ['swallowing', 0.45],
      ['speech-articulation', 0.35],
      ['voice', 0.3],
      ['lower-face', 0.35],
      ['upper-face', 0.4],
      ['jaw-power', 0.3],
      ['breathing', 0.2],
    ],
  },
  {
    key: 'postsynaptic-junction',
    label: 'Postsynaptic disorder of the neuromuscular junction',
    kind: 'junction',
    variant: 'bulbar',
    percent: percent.postsynaptic * 0.15,
    losses: { 'neck-flexors': 0.5, 'neck-extensors': 0.4, shoulder: 0.15 },
    reflex: 0,
    because: fatigue,
    faculties: [
      ['eyelid-elevation', 0.4],
      ['eye-movement-fatigue', 0.3],
      ['fatigability', 0.7],
      ['swallowing', 0.8],
      ['speech-articulation', 0.7],
      ['voice', 0.6],
      ['lower-face', 0.5],
      ['upper-face', 0.5],
      ['breathing', 0.3],
    ],
  },
  {
    key: 'presynaptic-junction',
    label: 'Presynaptic disorder of the neuromuscular junction',
    kind: 'junction',
    variant: 'legs-first',
    percent: percent.presynaptic,
    losses: {
      hip: 0.6,
      'knee-extensors': 0.45,
      'knee-flexors': 0.45,
      shoulder: 0.4,
      'upper-arm': 0.3,
      'neck-flexors': 0.2,
      trunk: 0.2,
    },
    reflex: 0.85,
    because: 'too little transmitter is released, less at rest than after effort',
    faculties: [
      ['gut', 0.6],
      ['sexual', 0.4],
      ['blood-pressure', 0.3],
      ['sweating', 0.3],
      ['eyelid-elevation', 0.3],
      ['fatigability', 0.4],
    ],
  },
  ...([0.35, 0.6, 0.85] as const).map(
    (depth): MuscleDisease => ({
      key: 'proximal-myopathy',
      label: 'Proximal muscle disease',
      kind: 'muscle',
      variant: String(depth),
      percent: percent.proximalMuscle / 3,
      losses: {
        hip: depth,
        shoulder: depth * 0.85,
        'neck-flexors': depth * 0.7,
        'upper-arm': depth * 0.6,
        'knee-extensors': depth * 0.65,
        'knee-flexors': depth * 0.55,
        trunk: depth * 0.4,
        scapular: depth * 0.5,
        'neck-extensors': depth * 0.25,
        hand: 0.03,
        'leg-anterior': depth * 0.12,
      },
      reflex: 0.1 * depth,
      because: proximal,
      faculties: [
        ['swallowing', 0.2],
        ['breathing', 0.12],
      ],
    }),
  ),
  {
    key: 'distal-myopathy',
    label: 'Distal muscle disease',
    kind: 'muscle',
    variant: 'one',
    percent: percent.distalMuscle,
    losses: {
      'leg-anterior': 0.65,
      'leg-posterior': 0.4,
      'forearm-extensors': 0.4,
      'forearm-flexors': 0.35,
      hand: 0.35,
      foot: 0.6,
    },
    reflex: 0.1,
    because: 'the far muscles are affected on both sides without any loss of sensation',
    faculties: [['myotonia', 0.3]],
  },
  {
    key: 'distal-myopathy',
    label: 'Distal muscle disease',
    kind: 'muscle',
    variant: 'myotonic',
    percent: percent.distalMuscle,
    losses: {
      'leg-anterior': 0.6,
      foot: 0.4,
      'forearm-extensors': 0.45,
      'forearm-flexors': 0.5,
      hand: 0.3,
      'neck-flexors': 0.6,
    },
    reflex: 0.35,
    because: 'the far muscles and those of face and neck are affected on both sides without any loss of sensation',
    faculties: [
      ['myotonia', 0.85],
      ['eyelid-elevation', 0.6],
      ['lower-face', 0.6],
      ['upper-face', 0.5],
      ['speech-articulation', 0.3],
      ['swallowing', 0.3],
    ],
  },
  {
    key: 'finger-flexor-quadriceps-myopathy',
    label: 'Muscle disease of finger flexors and quadriceps',
    kind: 'muscle',
    variant: 'one',
    percent: percent.fingerFlexorQuadriceps,
    losses: {
      'forearm-flexors': 0.65,
      'knee-extensors': 0.65,
      hip: 0.25,
      'leg-anterior': 0.3,
      'upper-arm': 0.2,
      hand: 0.15,
    },
    reflex: 0.25,
    because: 'finger flexors and knee extensors are picked out',
    faculties: [
      ['swallowing', 0.4],
      ['lower-face', 0.15],
    ],
  },
  {
    key: 'facioscapulohumeral-myopathy',
    label: 'Muscle disease of face, shoulder blade and upper arm',
    kind: 'muscle',
    variant: 'one',
    percent: percent.facioscapulohumeral,
    losses: { scapular: 0.75, 'upper-arm': 0.55, shoulder: 0.3, trunk: 0.45, 'leg-anterior': 0.45, hip: 0.25 },
    reflex: 0.15,
    because: 'face, scapular fixators and upper arms are picked out',
    faculties: [
      ['lower-face', 0.7],
      ['upper-face', 0.65],
    ],
  },
];

/** Every disease of the junction and of muscle. */
export function muscleHypotheses(): Hypothesis[] {
  return muscleDiseases.map((disease) =>
    hypothesis(processSite(disease.key, disease.label, disease.kind), disease.variant, disease.percent, intact, {
      process: groupProcess(disease.losses, disease.because, disease.reflex),
      faculties: facultiesOf(disease.faculties),
    }),
  );
}
