import { describe, expect, it } from 'vitest';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { ratioOf } from '../../src/causes/value-rows.ts';
import { resultRows } from '../../src/exam/catalogue/results.ts';
import { resultWeightRows } from '../../src/localisation/inference/result-weights.ts';
import { raisingResults } from '../../src/workup/red-flags/results-that-raise.ts';

/** Abnormal values that say too little to move anything. */
const mute = new Set(['genetic-test = uncertain', 'ct-chest = other']);

/** Numbers that rules of their own read, alone or two together. */
const readByRules = new Set([
  'achr-antibody-level',
  'forced-vital-capacity',
  'vital-capacity-per-kg',
  'max-inspiratory-pressure',
  'max-expiratory-pressure',
  'single-breath-count',
  'respiratory-rate',
  'body-weight',
  'systolic-pressure-standing',
]);

describe('what comes back from an investigation', () => {
  it('moves a site or a cause, or raises a red flag, with every abnormal value', () => {
    const idle = resultRows.flatMap((row) => {
      if (row.kind !== 'coded') return [];
      const abnormal = row.values.filter(({ key }) => !row.normal.includes(key));
      return abnormal.flatMap(({ key: value }) => {
        const moves =
          resultWeightRows.some(({ result, values }) => result === row.key && values?.includes(value)) ||
          raisingResults.some(({ results, values }) => results.includes(row.key) && values?.includes(value)) ||
          allCauses.some(({ values = [] }) =>
            values.some((one) => one.result === row.key && (ratioOf(one, value) ?? 1) !== 1),
          );
        return moves ? [] : [`${row.key} = ${value}`];
      });
    });
    expect(idle.filter((one) => !mute.has(one))).toEqual([]);
  });

  it('moves something with every number', () => {
    const idle = resultRows
      .filter(({ kind, key }) => kind === 'quantity' && !readByRules.has(key))
      .filter(
        ({ key }) =>
          !resultWeightRows.some(({ result }) => result === key) &&
          !raisingResults.some(({ results }) => results.includes(key)) &&
          !allCauses.some(({ quantities = [] }) => quantities.some(({ result }) => result === key)),
      );
    expect(idle.map(({ key }) => key)).toEqual([]);
  });
});
