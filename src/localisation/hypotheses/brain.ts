import type { Faculty } from '../../anatomy/probe.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder, type Limb } from '../lesion.ts';
import type { SiteKind } from '../localisation.ts';
import { facultyKey } from '../process.ts';

/** Fractions lost by the fibres of one limb: motor, position and vibration, pain and temperature. */
type Losses = readonly [motor: number, position: number, pain: number];

/** A cranial-nerve or cortical sign of a territory: on the side of the lesion, on the other side, or in the midline. */
type Sign = readonly [Faculty, 'same' | 'other' | 'midline', number];

interface Territory {
  readonly key: string;
  readonly label: string;
  readonly kind: SiteKind;
  /** Percent of all focal findings, both sides together. Judged. */
  readonly percent: number;
  readonly body: Readonly<Record<Limb, Losses>>;
  readonly signs: readonly Sign[];
  /** Chances that hold only when the territory lies in that half of the brain. */
  readonly ifLeft?: readonly Sign[];
  readonly ifRight?: readonly Sign[];
  /** Spinal trigeminal tract: loss of pain on the same side of the face. */
  readonly sameSideFace?: number;
  /** Cerebellar peduncle or hemisphere of the same side. */
  readonly cerebellum?: number;
}

const nothing: Losses = [0, 0, 0];

/**
 * Territories above the foramen magnum as sources of one-sided long-tract signs. Cranial-nerve signs are on the side of
 * the lesion when the nucleus or nerve is hit, on the other side when the fibres to it are. Source of the neighbourhoods:
 * Brazis, Localization in Clinical Neurology (recalled); chances judged.
 */
const territories: readonly Territory[] = [
  {
    key: 'cerebral-hemisphere-cortex-arm-face',
    label: 'Cerebral cortex, face and arm area',
    kind: 'hemisphere',
    percent: 5,
    body: { face: [0.9, 0.4, 0.3], arm: [0.9, 0.5, 0.4], leg: [0.2, 0.1, 0.1] },
    signs: [
      ['lower-face', 'other', 0.75],
      ['speech-articulation', 'midline', 0.35],
      ['cortical-sensation', 'other', 0.5],
      ['visual-field-half', 'other', 0.2],
      ['gaze-horizontal', 'other', 0.15],
    ],
    ifLeft: [
      ['language-expression', 'midline', 0.6],
      ['language-comprehension', 'midline', 0.25],
      ['praxis', 'midline', 0.2],
    ],
    ifRight: [
      ['spatial-attention', 'other', 0.5],
      ['language-expression', 'midline', 0.04],
    ],
  },
  {
    key: 'cerebral-hemisphere-cortex-leg',
    label: 'Cerebral cortex, leg area',
    kind: 'hemisphere',
    percent: 1,
    body: { face: nothing, arm: [0.2, 0.1, 0.1], leg: [0.9, 0.5, 0.3] },
    signs: [
      ['bladder-urgency', 'midline', 0.3],
      ['frontal-release', 'other', 0.2],
      ['mood-behaviour', 'midline', 0.25],
    ],
  },
  {
    key: 'cerebral-hemisphere-deep',
    label: 'Internal capsule or corona radiata',
    kind: 'hemisphere',
    percent: 5,
    body: { face: [0.85, 0.1, 0.1], arm: [0.9, 0.15, 0.15], leg: [0.85, 0.15, 0.15] },
    signs: [
      ['lower-face', 'other', 0.75],
      ['speech-articulation', 'midline', 0.5],
    ],
  },
  {
    key: 'cerebral-hemisphere-sensory',
    label: 'Thalamus or its projection to the cortex',
    kind: 'hemisphere',
    percent: 1.2,
    body: { face: [0, 0.8, 0.8], arm: [0.08, 0.85, 0.85], leg: [0.08, 0.85, 0.85] },
    signs: [['cortical-sensation', 'other', 0.4]],
  },
  {
    key: 'midbrain',
    label: 'Midbrain',
    kind: 'brainstem',
    percent: 0.5,
    body: { face: [0.7, 0.1, 0.1], arm: [0.85, 0.2, 0.2], leg: [0.85, 0.2, 0.2] },
    signs: [
      ['oculomotor', 'same', 0.8],
      ['eyelid-elevation', 'same', 0.65],
      ['pupil-parasympathetic', 'same', 0.5],
      ['lower-face', 'other', 0.6],
      ['gaze-vertical', 'midline', 0.2],
    ],
  },
  {
    key: 'pons',
    label: 'Pons',
    kind: 'brainstem',
    percent: 1.2,
    body: { face: nothing, arm: [0.85, 0.3, 0.3], leg: [0.85, 0.3, 0.3] },
    signs: [
      ['abducens', 'same', 0.5],
      ['lower-face', 'same', 0.55],
      ['upper-face', 'same', 0.5],
      ['gaze-horizontal', 'same', 0.35],
      ['internuclear', 'same', 0.25],
      ['speech-articulation', 'midline', 0.5],
      ['nystagmus', 'midline', 0.3],
    ],
    cerebellum: 0.35,
  },
  {
    key: 'medial-medulla',
    label: 'Medial medulla',
    kind: 'brainstem',
    percent: 0.2,
    body: { face: nothing, arm: [0.85, 0.7, 0.05], leg: [0.85, 0.7, 0.05] },
    signs: [['tongue', 'same', 0.7]],
  },
  {
    key: 'lateral-medulla',
    label: 'Lateral medulla',
    kind: 'brainstem',
    percent: 0.8,
    body: { face: nothing, arm: [0, 0, 0.85], leg: [0, 0, 0.85] },
    signs: [
      ['palate', 'same', 0.65],
      ['swallowing', 'midline', 0.65],
      ['voice', 'midline', 0.5],
      ['sympathetic-eye', 'same', 0.7],
      ['nystagmus', 'midline', 0.6],
      ['vestibular', 'midline', 0.5],
      ['trigeminal-sensation', 'same', 0.7],
      ['corneal', 'same', 0.4],
    ],
    sameSideFace: 0.75,
    cerebellum: 0.7,
  },
  {
    key: 'cerebellar-hemisphere',
    label: 'Cerebellar hemisphere',
    kind: 'cerebellum',
    percent: 1.6,
    body: { face: nothing, arm: nothing, leg: nothing },
    signs: [
      ['nystagmus', 'midline', 0.5],
      ['speech-cerebellar', 'midline', 0.4],
    ],
    cerebellum: 0.85,
  },
];

const depths = [
  { key: 'severe', factor: 1, share: 0.5 },
  { key: 'partial', factor: 0.5, share: 0.5 },
] as const;

function chances(signs: readonly Sign[], side: BodySide, factor: number): Map<string, number> {
  const where = { same: side, other: opposite(side), midline: 'midline' } as const;
  const result = new Map<string, number>();
  for (const [faculty, place, chance] of signs) {
    // A mild lesion shows its neighbourhood signs less often, but not in proportion: they are what localises it.
    result.set(facultyKey(faculty, where[place]), chance * (0.5 + 0.5 * factor));
  }
  return result;
}

function territoryHypothesis(territory: Territory, side: BodySide, depth: (typeof depths)[number]): Hypothesis {
  const lesion = new LesionBuilder();
  for (const limb of ['face', 'arm', 'leg'] as const) {
    const [motor, position, pain] = territory.body[limb];
    lesion.cerebral(side, limb, motor * depth.factor, position * depth.factor, pain * depth.factor);
  }
  if (territory.cerebellum !== undefined) lesion.cerebellum(side, territory.cerebellum * depth.factor);
  if (territory.sameSideFace !== undefined) {
    for (const division of ['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'] as const) {
      lesion.place(side, division, 0, territory.sameSideFace * depth.factor);
    }
  }
  const dominant = (side === 'left' ? territory.ifLeft : territory.ifRight) ?? [];
  return hypothesis(
    { key: territory.key, label: territory.label, side, level: null, kind: territory.kind },
    depth.key,
    (territory.percent * depth.share) / 2,
    lesion.build(),
    { faculties: chances([...territory.signs, ...dominant], side, depth.factor) },
  );
}

function vermis(): Hypothesis[] {
  return depths.map((depth) =>
    hypothesis(
      { key: 'cerebellar-vermis', label: 'Cerebellar vermis', side: null, level: null, kind: 'cerebellum' },
      depth.key,
      0.3 * depth.share,
      new LesionBuilder().cerebellum('midline', 0.85 * depth.factor).build(),
      {
        faculties: new Map([
          [facultyKey('nystagmus', 'midline'), 0.3],
          [facultyKey('speech-cerebellar', 'midline'), 0.3],
        ]),
      },
    ),
  );
}

/** Every focal lesion above the foramen magnum that sends signs to one side of the body. */
export function brainHypotheses(): Hypothesis[] {
  const sided = territories.flatMap((territory) =>
    bodySides.flatMap((side) => depths.map((depth) => territoryHypothesis(territory, side, depth))),
  );
  return [...sided, ...vermis()];
}
