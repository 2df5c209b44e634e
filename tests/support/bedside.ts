import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import type { Exam } from '../../src/exam/exam.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import type { Localisation, RankedLocalisation } from '../../src/localisation/localisation.ts';
import { systems } from '../../src/terminology/systems.ts';
import { type ExampleName, exampleExam } from './example-exam.ts';

const reader = createExamReader();
const now = new Date('2026-12-01T00:00:00Z');

/** An exam of a few statements, read as the service reads it. */
export function bedsideExam(parts: Record<string, unknown> = {}): Exam {
  return reader.read({ examinedAt: '2026-05-01T10:00:00Z', ...parts }, { purpose: 'localise', now });
}

export function exampleRead(name: ExampleName): Exam {
  return reader.read(exampleExam({}, name), { purpose: 'record', now });
}

/** A result of HbA1c in percent, as it is sent. */
export const hba1c = (value: number) => ({
  code: { system: 'http://loinc.org', code: '4548-4' },
  valueQuantity: { value, unit: '%', system: 'http://unitsofmeasure.org', code: '%' },
});

/** A site at a probability, without evidence. */
export function site(key: string, kind: SiteKind, probability = 1, level: string | null = null): RankedLocalisation {
  return {
    site: key,
    label: key,
    side: null,
    level,
    levelRange: null,
    kind,
    code: { system: systems.localisation, code: key, display: key },
    probability,
    fit: 1,
    supporting: [],
    against: [],
    unexplained: [],
  };
}

export function localised(...sites: readonly RankedLocalisation[]): Localisation {
  return {
    localisations: sites,
    pattern: { key: 'other', label: 'Other', motorNeuron: 'lower', symmetry: 'one-sided', modalities: [] },
    conclusion: 'single-site',
    nextExamination: [],
  };
}

export const nothingFound: Localisation = {
  localisations: [site('no-lesion', 'none')],
  pattern: { key: 'normal', label: 'Normal examination', motorNeuron: 'none', symmetry: 'none', modalities: [] },
  conclusion: 'no-abnormality',
  nextExamination: [],
};

/** Weak legs on both sides, as an acute polyradiculoneuropathy shows. */
export const weakLegsBothSides = [
  { movement: 'hip-flexion', side: 'both', grade: '3' },
  { movement: 'ankle-dorsiflexion', side: 'both', grade: '2' },
];
