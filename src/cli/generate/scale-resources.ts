import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import { type Grade, type Scale, type ScaleKey, scales } from '../../exam/scales.ts';
import { ordinalValueUrl } from '../../fhir/finding-observation.ts';
import { scaleSystem, systems } from '../../terminology/systems.ts';
import { header, type Release, valueSetUrl } from './header.ts';

const table: Readonly<Record<ScaleKey, Scale>> = scales;
const scaleKeys = Object.keys(scales) as readonly ScaleKey[];

/** One CodeSystem for each scale, and one ValueSet of all its grades. */
export function scaleResources(release: Release): (CodeSystem | ValueSet)[] {
  return scaleKeys.flatMap((key) => [scaleCodeSystem(key, release), scaleValueSet(key, release)]);
}

function scaleCodeSystem(key: ScaleKey, release: Release): CodeSystem {
  const scale = table[key];
  const graded = scale.grades.some((grade) => grade.ordinal !== undefined);
  return {
    ...header('CodeSystem', release, {
      id: key,
      title: scale.label,
      description: `The values of the scale: ${scale.label.toLowerCase()}.${graded ? ' The numbers behind the grades keep their order, for sorting and thresholds; they are not made for means.' : ''}`,
    }),
    caseSensitive: true,
    valueSet: valueSetUrl(key),
    content: 'complete',
    count: scale.grades.length,
    property: [{ code: 'normal', description: 'Whether the value is no deficit.', type: 'boolean' }],
    concept: scale.grades.map((grade) => ({
      ...(grade.ordinal === undefined ? {} : { extension: [{ url: ordinalValueUrl, valueDecimal: grade.ordinal }] }),
      code: grade.key,
      display: grade.label,
      property: [{ code: 'normal', valueBoolean: scale.normal.includes(grade.key) }],
    })),
  };
}

function scaleValueSet(key: ScaleKey, release: Release): ValueSet {
  const scale = table[key];
  return {
    ...header('ValueSet', release, {
      id: key,
      title: scale.label,
      description: `All values of the scale: ${scale.label.toLowerCase()}.`,
    }),
    immutable: false,
    compose: { include: [{ system: scaleSystem(key) }] },
  };
}

interface Subset {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly scale: ScaleKey;
  readonly includes: (grade: Grade) => boolean;
}

/** Subsets that a reader of the Observations asks for with `value-concept:in`. */
const subsets: readonly Subset[] = [
  {
    id: 'power-reduced',
    title: 'Power below normal',
    description: 'Every grade of power short of full power.',
    scale: 'mrc-power',
    includes: (grade) => (grade.ordinal ?? 5) < 5,
  },
  {
    id: 'power-below-antigravity',
    title: 'Power too low to move against gravity',
    description: 'Grades 0 to 2: no movement against gravity.',
    scale: 'mrc-power',
    includes: (grade) => (grade.ordinal ?? 5) < 3,
  },
  {
    id: 'reflex-reduced',
    title: 'Reflex reduced or absent',
    description: 'Grades of a stretch reflex below normal, absence included.',
    scale: 'reflex-grade',
    includes: (grade) => (grade.ordinal ?? 2) < 2,
  },
  {
    id: 'reflex-brisk',
    title: 'Reflex brisk',
    description: 'Grades of a stretch reflex above normal.',
    scale: 'reflex-grade',
    includes: (grade) => (grade.ordinal ?? 2) > 2,
  },
  {
    id: 'sensation-abnormal',
    title: 'Sensation abnormal',
    description: 'Every result of a sensory test other than normal.',
    scale: 'sensation',
    includes: (grade) => grade.key !== 'normal',
  },
];

export function subsetValueSets(release: Release): ValueSet[] {
  return subsets.map(({ id, title, description, scale, includes }) => ({
    ...header('ValueSet', release, { id, title, description }),
    immutable: false,
    compose: {
      include: [
        {
          system: scaleSystem(scale),
          concept: table[scale].grades.filter(includes).map((grade) => ({ code: grade.key, display: grade.label })),
        },
      ],
    },
  }));
}

/** Every value that any scale may give: the value of a finding comes from here. */
export function gradesValueSet(release: Release): ValueSet {
  return {
    ...header('ValueSet', release, {
      id: 'exam-grades',
      title: 'Values of examination findings',
      description: 'The grades of all scales of the examination together, and the value of a summary statement.',
    }),
    immutable: false,
    compose: { include: [...scaleKeys.map(scaleSystem), systems.overall].map((system) => ({ system })) },
  };
}
