import type { AggregateMethod, PopulationCode, Scoring } from './published-codes.ts';

/**
 * Score of a group; undefined where there is nothing to divide by, or nothing was observed, and for a cohort.
 * Source: Quality Measure Implementation Guide 5.0.0, Measure Conformance, scoring.
 */
export function scoreOf(
  scoring: Scoring,
  count: (population: PopulationCode) => number,
  observations: readonly number[],
  method: AggregateMethod | undefined,
): number | undefined {
  switch (scoring) {
    case 'cohort':
      return undefined;
    case 'continuous-variable':
      return method === undefined ? undefined : aggregate(observations, method);
    default: {
      const numerator = count('numerator') - count('numerator-exclusion');
      const denominator = count('denominator') - count('denominator-exclusion') - count('denominator-exception');
      return denominator === 0 ? undefined : numerator / denominator;
    }
  }
}

function aggregate(values: readonly number[], method: AggregateMethod): number | undefined {
  if (method === 'count') return values.length;
  if (values.length === 0) return undefined;
  const sum = values.reduce((total, value) => total + value, 0);
  if (method === 'sum') return sum;
  if (method === 'average') return sum / values.length;
  const sorted = [...values].sort((a, b) => a - b);
  if (method === 'minimum') return sorted[0];
  if (method === 'maximum') return sorted.at(-1);
  const middle = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(middle) - 1] as number, sorted[Math.floor(middle)] as number];
  return (low + high) / 2;
}
