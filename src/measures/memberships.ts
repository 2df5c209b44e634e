import type { PopulationCode, Scoring } from './published-codes.ts';

/**
 * The populations that an exam is counted in, given the criteria that it meets. A population is part of the one before
 * it: nothing outside the denominator is in a numerator of a proportion, what is excluded is looked at no further, and an
 * exception is only asked for where the numerator is not met. In a ratio, numerator and denominator are apart.
 * Source: Quality Measure Implementation Guide 5.0.0, Measure Conformance, population criteria of each scoring.
 */
export function membershipsOf(
  scoring: Scoring,
  meets: (population: PopulationCode) => boolean,
): readonly PopulationCode[] {
  if (!meets('initial-population')) return [];
  const found: PopulationCode[] = ['initial-population'];
  const isIn = (population: PopulationCode): boolean => {
    if (!meets(population)) return false;
    found.push(population);
    return true;
  };
  switch (scoring) {
    case 'cohort':
      break;
    case 'proportion':
      if (!isIn('denominator') || isIn('denominator-exclusion')) break;
      if (isIn('numerator')) isIn('numerator-exclusion');
      else isIn('denominator-exception');
      break;
    case 'ratio':
      if (isIn('denominator')) isIn('denominator-exclusion');
      if (isIn('numerator')) isIn('numerator-exclusion');
      break;
    case 'continuous-variable':
      if (isIn('measure-population')) isIn('measure-population-exclusion');
      break;
  }
  return found;
}
