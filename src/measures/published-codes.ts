/**
 * Names that HL7 gives to the parts of a Measure.
 * Sources: FHIR R4 code systems measure-scoring and measure-population; Quality Measure Implementation Guide 5.0.0 (extensions).
 */
export const scoringSystem = 'http://terminology.hl7.org/CodeSystem/measure-scoring';
export const populationSystem = 'http://terminology.hl7.org/CodeSystem/measure-population';

const guide = 'http://hl7.org/fhir/us/cqfmeasures/StructureDefinition';
export const extensions = {
  populationBasis: `${guide}/cqfm-populationBasis`,
  aggregateMethod: `${guide}/cqfm-aggregateMethod`,
  scoringUnit: `${guide}/cqfm-scoringUnit`,
} as const;

/** What is counted: each exam has exactly one. */
export const populationBasis = 'ClinicalImpression';

export const criteriaLanguage = 'text/fhirpath';

/** How observations of a continuous variable become one number. */
export const aggregateMethods = ['sum', 'average', 'median', 'minimum', 'maximum', 'count'] as const;
export type AggregateMethod = (typeof aggregateMethods)[number];

export const scorings = ['proportion', 'ratio', 'continuous-variable', 'cohort'] as const;
export type Scoring = (typeof scorings)[number];

export const populationCodes = [
  'initial-population',
  'denominator',
  'denominator-exclusion',
  'denominator-exception',
  'numerator',
  'numerator-exclusion',
  'measure-population',
  'measure-population-exclusion',
  'measure-observation',
] as const;
export type PopulationCode = (typeof populationCodes)[number];

/** Populations that a group of each scoring must have, and may have, each once. Source: the same guide, Measure Conformance. */
export const populationsOf: Readonly<
  Record<Scoring, { readonly needed: readonly PopulationCode[]; readonly allowed: readonly PopulationCode[] }>
> = {
  proportion: {
    needed: ['initial-population', 'denominator', 'numerator'],
    allowed: ['denominator-exclusion', 'denominator-exception', 'numerator-exclusion'],
  },
  ratio: {
    needed: ['initial-population', 'denominator', 'numerator'],
    allowed: ['denominator-exclusion', 'numerator-exclusion'],
  },
  'continuous-variable': {
    needed: ['initial-population', 'measure-population', 'measure-observation'],
    allowed: ['measure-population-exclusion'],
  },
  cohort: { needed: ['initial-population'], allowed: [] },
};
