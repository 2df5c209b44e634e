import type { MuscleGroup } from '../../anatomy/movement.ts';
import type { Faculty } from '../../anatomy/probe.ts';
import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { type Damage, intact, LesionBuilder } from '../lesion.ts';
import type { SiteKind } from '../localisation.ts';
import { type FacultyChances, facultyKey, type MotorUnitSite, noProcess, type Process, reached } from '../process.ts';

const none = (): number => 0;

/** Percent of all focal and diffuse findings that each process stands for. Judged; polyneuropathy is the commonest. */
const percent = {
  lengthDependent: 14,
  polyradiculoneuropathy: 4,
  ganglionopathy: 0.5,
  motorNeuron: 2.5,
  lowerMotorNeuron: 0.8,
  postsynaptic: 2,
  presynaptic: 0.4,
  proximalMuscle: 3,
  distalMuscle: 0.4,
  fingerFlexorQuadriceps: 0.4,
  facioscapulohumeral: 0.3,
} as const;

function site(key: string, label: string, kind: SiteKind): Site {
  return { key, label, side: 'both', level: null, kind };
}

function signs(list: readonly (readonly [Faculty, number])[], paired: ReadonlySet<Faculty>): FacultyChances {
  const chances = new Map<string, number>();
  for (const [faculty, chance] of list) {
    for (const side of paired.has(faculty) ? bodySides : (['midline'] as const))
      chances.set(facultyKey(faculty, side), chance);
  }
  return chances;
}

const pairedFaculties: ReadonlySet<Faculty> = new Set<Faculty>([
  'lower-face',
  'upper-face',
  'eyelid-elevation',
  'abducens',
  'oculomotor',
  'palate',
  'tongue-denervation',
  'accessory',
]);

const facultiesOf = (list: readonly (readonly [Faculty, number])[]): FacultyChances => signs(list, pairedFaculties);

/**
 * Length-dependent axonal loss: which fibre classes it takes, and how much further it must have come up the leg before
 * the motor axons of the same length suffer. Hands join in when the loss has come up to about the knee, because the axons
 * are then of one length. Source of the order: cutaneous and motor axon lengths in the tables of skin and movements.
 */
const lengthDependent = [
  {
    key: 'length-dependent-polyneuropathy',
    label: 'Length-dependent sensorimotor polyneuropathy',
    share: 0.55,
    motorLag: 10,
    motor: 0.95,
    large: 0.95,
    small: 0.9,
  },
  {
    key: 'length-dependent-polyneuropathy',
    label: 'Length-dependent sensorimotor polyneuropathy',
    share: 0.1,
    motorLag: -4,
    motor: 0.95,
    large: 0.7,
    small: 0.5,
  },
  {
    key: 'sensory-polyneuropathy',
    label: 'Length-dependent sensory polyneuropathy',
    share: 0.18,
    motorLag: 60,
    motor: 0.3,
    large: 0.95,
    small: 0.85,
  },
  {
    key: 'motor-polyneuropathy',
    label: 'Length-dependent motor neuropathy',
    share: 0.04,
    motorLag: 0,
    motor: 0.95,
    large: 0.1,
    small: 0.05,
  },
  {
    key: 'small-fibre-polyneuropathy',
    label: 'Small-fibre polyneuropathy',
    share: 0.13,
    motorLag: 999,
    motor: 0,
    large: 0.04,
    small: 0.92,
  },
] as const;

/** Reach of the loss as the length of the shortest axon that is half lost, in cm: toes, foot, ankle to mid-calf, knee and hands, thigh and forearm. */
const reaches = [
  { key: 'toes', cm: 103, share: 0.22 },
  { key: 'foot', cm: 92, share: 0.3 },
  { key: 'mid-calf', cm: 80, share: 0.25 },
  { key: 'knee-and-hands', cm: 68, share: 0.15 },
  { key: 'thigh-and-forearm', cm: 50, share: 0.08 },
] as const;

function lengthDependentHypotheses(): Hypothesis[] {
  return lengthDependent.flatMap((form) =>
    reaches.map((reach) => {
      const process: Process = {
        motor: (unit) => form.motor * reached(unit.lengthCm, reach.cm + form.motorLag),
        largeFibre: (fibre) => form.large * reached(fibre.lengthCm, reach.cm),
        smallFibre: (fibre) => form.small * reached(fibre.lengthCm, reach.cm - 4),
        reflex: (fibre) => 0.55 * form.large * reached(fibre.lengthCm, reach.cm - 14),
        denervating: true,
        because: 'the longest axons fail first',
      };
      return hypothesis(
        site(form.key, form.label, 'polyneuropathy'),
        `${form.motorLag}-${reach.key}`,
        percent.lengthDependent * form.share * reach.share,
        intact,
        {
          process,
          faculties: facultiesOf([
            ['blood-pressure', 0.1],
            ['sweating', 0.1],
            ['sexual', 0.15],
          ]),
        },
      );
    }),
  );
}

/** Inflammatory loss along roots and nerves alike: proximal and distal weakness, reflexes gone early, little skin loss. */
const polyradiculoneuropathies = [
  { key: 'legs-mild', leg: 0.45, arm: 0.12, trunk: 0.05, reflex: 0.85, armReflex: 0.5, large: 0.35, share: 0.25 },
  { key: 'legs-first', leg: 0.7, arm: 0.4, trunk: 0.15, reflex: 0.95, armReflex: 0.85, large: 0.45, share: 0.3 },
  { key: 'all-limbs', leg: 0.8, arm: 0.75, trunk: 0.35, reflex: 0.97, armReflex: 0.95, large: 0.5, share: 0.2 },
  { key: 'severe', leg: 0.95, arm: 0.92, trunk: 0.6, reflex: 0.98, armReflex: 0.97, large: 0.6, share: 0.1 },
  { key: 'pure-motor', leg: 0.75, arm: 0.6, trunk: 0.25, reflex: 0.9, armReflex: 0.8, large: 0.03, share: 0.1 },
  { key: 'arms-and-throat', leg: 0.08, arm: 0.7, trunk: 0.2, reflex: 0.3, armReflex: 0.9, large: 0.15, share: 0.05 },
] as const;

const legTop = segmentIndex('T12');
const armBottom = segmentIndex('T1');

function polyradiculoneuropathyHypotheses(): Hypothesis[] {
  return polyradiculoneuropathies.map((form) => {
    const part = (segment: number): number =>
      segment >= legTop ? form.leg : segment <= armBottom ? form.arm : form.trunk;
    const process: Process = {
      motor: (unit) => part(unit.segment),
      largeFibre: (fibre) =>
        form.large * (part(fibre.segment) / Math.max(form.leg, form.arm)) * (0.45 + 0.55 * reached(fibre.lengthCm, 72)),
      smallFibre: (fibre) => 0.65 * form.large * reached(fibre.lengthCm, 76),
      reflex: (fibre) => (fibre.segment >= legTop ? form.reflex : form.armReflex),
      denervating: false,
      because: 'roots and nerves are affected along their whole length, near and far alike',
    };
    const bulbar = 0.35 * form.arm + 0.1;
    return hypothesis(
      site('demyelinating-polyradiculoneuropathy', 'Inflammatory polyradiculoneuropathy', 'polyradiculoneuropathy'),
      form.key,
      percent.polyradiculoneuropathy * form.share,
      intact,
      {
        process,
        faculties: facultiesOf([
          ['lower-face', bulbar],
          ['upper-face', bulbar],
          ['swallowing', bulbar * 0.7],
          ['voice', bulbar * 0.4],
          ['abducens', 0.08],
          ['breathing', 0.15 + 0.3 * form.trunk],
          ['blood-pressure', 0.25],
          ['heart-rate', 0.25],
          ['bladder-retention', 0.08],
        ]),
      },
    );
  });
}

function ganglionopathyHypotheses(): Hypothesis[] {
  return [0.9, 0.6].map((loss) => {
    const process: Process = {
      motor: none,
      largeFibre: () => loss,
      smallFibre: () => loss * 0.6,
      reflex: () => 0.5,
      denervating: true,
      because: 'sensory cell bodies are lost whatever the length of their axons',
    };
    return hypothesis(
      site('sensory-ganglionopathy', 'Sensory ganglionopathy', 'ganglion'),
      String(loss),
      percent.ganglionopathy / 2,
      intact,
      {
        process,
        faculties: facultiesOf([
          ['trigeminal-sensation', 0.3],
          ['blood-pressure', 0.15],
        ]),
      },
    );
  });
}

/** Regions in which motor cells may be lost: bulbar signs go by faculty, the others by segment. */
const motorRegions = {
  arm: { from: 'C5', to: 'T1' },
  leg: { from: 'L2', to: 'S2' },
} as const satisfies Record<string, { from: Segment; to: Segment }>;

type MotorRegion = keyof typeof motorRegions;
type Onset = readonly [BodySide, MotorRegion, number];

/** Where loss of motor cells is seen at examination: region, side, fraction. Judged; onset in one limb is the rule. */
const motorOnsets: readonly {
  readonly key: string;
  readonly share: number;
  readonly onsets: readonly Onset[];
  readonly bulbar: number;
}[] = [
  ...bodySides.flatMap((side) => [
    { key: `${side}-arm`, share: 0.14, onsets: [[side, 'arm', 0.6]] as const, bulbar: 0.2 },
    { key: `${side}-leg`, share: 0.12, onsets: [[side, 'leg', 0.6]] as const, bulbar: 0.15 },
    {
      key: `${side}-arm-and-leg`,
      share: 0.06,
      onsets: [
        [side, 'arm', 0.6],
        [side, 'leg', 0.45],
      ] as const,
      bulbar: 0.25,
    },
  ]),
  {
    key: 'both-arms',
    share: 0.1,
    onsets: [
      ['left', 'arm', 0.6],
      ['right', 'arm', 0.6],
    ],
    bulbar: 0.25,
  },
  {
    key: 'both-legs',
    share: 0.08,
    onsets: [
      ['left', 'leg', 0.6],
      ['right', 'leg', 0.6],
    ],
    bulbar: 0.15,
  },
  {
    key: 'all-limbs',
    share: 0.16,
    onsets: bodySides.flatMap(
      (side) =>
        [
          [side, 'arm', 0.55],
          [side, 'leg', 0.5],
        ] as const,
    ),
    bulbar: 0.45,
  },
  // Uneven over several limbs, the worst one nearly paralysed.
  ...bodySides.flatMap((side) => {
    const far = opposite(side);
    return [
      {
        key: `${side}-leg-worst`,
        share: 0.05,
        onsets: [
          [side, 'leg', 0.85],
          [far, 'leg', 0.3],
          [far, 'arm', 0.3],
          [side, 'arm', 0.15],
        ] as const,
        bulbar: 0.1,
      },
      {
        key: `${side}-arm-worst`,
        share: 0.05,
        onsets: [
          [side, 'arm', 0.85],
          [far, 'arm', 0.3],
          [side, 'leg', 0.3],
          [far, 'leg', 0.15],
        ] as const,
        bulbar: 0.1,
      },
    ];
  }),
  {
    key: 'arms-worst',
    share: 0.06,
    onsets: bodySides.flatMap(
      (side) =>
        [
          [side, 'arm', 0.8],
          [side, 'leg', 0.2],
        ] as const,
    ),
    bulbar: 0.2,
  },
  { key: 'bulbar', share: 0.1, onsets: bodySides.map((side) => [side, 'arm', 0.15] as const), bulbar: 0.85 },
];

function hornLoss(onsets: readonly Onset[], upperMotor: number): Damage {
  const lesion = new LesionBuilder();
  for (const [side, region, fraction] of onsets) {
    const { from, to } = motorRegions[region];
    for (let segment = segmentIndex(from); segment <= segmentIndex(to); segment += 1)
      lesion.cord('anteriorHorn', side, segment, fraction);
  }
  if (upperMotor > 0) for (const side of bodySides) lesion.cord('corticospinal', side, 0, upperMotor);
  return lesion.build();
}

const bulbarSigns = (chance: number): readonly (readonly [Faculty, number])[] => [
  ['tongue', chance * 0.6],
  ['tongue-denervation', chance * 0.9],
  ['speech-articulation', chance],
  ['swallowing', chance],
  ['voice', chance * 0.5],
  ['lower-face', chance * 0.4],
  ['pseudobulbar', chance * 0.4],
  ['breathing', 0.12],
];

function motorNeuronHypotheses(): Hypothesis[] {
  const total = motorOnsets.reduce((sum, onset) => sum + onset.share, 0);
  return motorOnsets.flatMap(({ key, share, onsets, bulbar }) => [
    ...[0.3, 0.65].map((upper) =>
      hypothesis(
        site('motor-neuron-system', 'Disease of upper and lower motor neurons', 'motor-neuron-system'),
        `${key}-${upper}`,
        (percent.motorNeuron * share) / (total * 2),
        hornLoss(onsets, upper),
        {
          process: { ...noProcess, because: 'motor cells are lost in cortex, brainstem and cord' },
          faculties: facultiesOf(bulbarSigns(bulbar)),
        },
      ),
    ),
    hypothesis(
      site('lower-motor-neuron-system', 'Anterior horn cell disease', 'anterior-horn'),
      key,
      (percent.lowerMotorNeuron * share) / total,
      hornLoss(onsets, 0),
      {
        process: { ...noProcess, because: 'anterior horn cells are lost' },
        faculties: facultiesOf(bulbarSigns(bulbar * 0.5)),
      },
    ),
  ]);
}

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
  readonly faculties: readonly (readonly [Faculty, number])[];
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

function muscleHypotheses(): Hypothesis[] {
  return muscleDiseases.map((disease) =>
    hypothesis(site(disease.key, disease.label, disease.kind), disease.variant, disease.percent, intact, {
      process: groupProcess(disease.losses, disease.because, disease.reflex),
      faculties: facultiesOf(disease.faculties),
    }),
  );
}

/** Every disease that follows a rule instead of a place. */
export function diffuseHypotheses(): Hypothesis[] {
  return [
    ...lengthDependentHypotheses(),
    ...polyradiculoneuropathyHypotheses(),
    ...ganglionopathyHypotheses(),
    ...motorNeuronHypotheses(),
    ...muscleHypotheses(),
  ];
}
