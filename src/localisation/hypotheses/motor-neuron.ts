import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { type Damage, LesionBuilder } from '../lesion.ts';
import { noProcess } from '../process.ts';
import { facultiesOf, type ProcessSign, processSite } from './process-signs.ts';

/** Percent of all focal and diffuse findings that each process stands for. Judged. */
const percent = { motorNeuron: 2.5, lowerMotorNeuron: 0.8 } as const;

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

const bulbarSigns = (chance: number): readonly ProcessSign[] => [
  ['tongue', chance * 0.6],
  ['tongue-denervation', chance * 0.9],
  ['speech-articulation', chance],
  ['swallowing', chance],
  ['voice', chance * 0.5],
  ['lower-face', chance * 0.4],
  ['pseudobulbar', chance * 0.4],
  ['breathing', 0.12],
];

/** Every disease of motor cells, of the cord alone or of cord and cortex together. */
export function motorNeuronHypotheses(): Hypothesis[] {
  const total = motorOnsets.reduce((sum, onset) => sum + onset.share, 0);
  return motorOnsets.flatMap(({ key, share, onsets, bulbar }) => [
    ...[0.3, 0.65].map((upper) =>
      hypothesis(
        processSite('motor-neuron-system', 'Disease of upper and lower motor neurons', 'motor-neuron-system'),
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
      processSite('lower-motor-neuron-system', 'Anterior horn cell disease', 'anterior-horn'),
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
