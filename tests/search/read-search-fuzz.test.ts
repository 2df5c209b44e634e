import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RequestError } from '../../src/kernel/errors.ts';
import { parametersOf, searchedTypes } from '../../src/search/parameters.ts';
import { readSearch } from '../../src/search/read-search.ts';
import { resultParameters } from '../../src/search/result-parameters.ts';

const known = [...new Set(searchedTypes.flatMap((type) => [...parametersOf(type).keys()]))];
const suffixes = ['', ':not', ':missing', ':text', ':in', ':below', ':identifier', ':exact', ':Patient', '.identifier'];
const name = fc.oneof(
  fc.tuple(fc.constantFrom(...known), fc.constantFrom(...suffixes)).map((parts) => parts.join('')),
  fc.constantFrom(...resultParameters, '__proto__', 'constructor', 'code:constructor'),
  fc.string(),
);
const pieces = [
  '2026',
  '-03',
  'T10:20',
  'Z',
  'ge',
  'ap',
  '1e9',
  '-',
  '.',
  '|',
  '$',
  ',',
  '\\',
  'Patient/1',
  'true',
  'é',
];
const value = fc.oneof(
  fc
    .array(fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 4, unit: 'binary' })))
    .map((all) => all.join('')),
  fc.string({ unit: 'binary' }),
);

describe('reading any search', () => {
  it('gives a query whose ranges are in order, or a RequestError, and accounts for every parameter', () => {
    let read = 0;
    const property = fc.property(
      fc.constantFrom(...searchedTypes),
      fc.array(fc.tuple(name, value), { maxLength: 4 }),
      fc.boolean(),
      (type, parameters, strict) => {
        try {
          const options = { strict, expandValueSet: () => undefined, descendants: () => [] };
          const { query, applied, ignored } = readSearch(type, parameters, options);
          read += 1;
          expect(applied.length + ignored.length).toBe(parameters.length);
          for (const filter of query.filters) {
            if (filter.kind !== 'range') continue;
            for (const { low, high } of filter.anyOf) {
              expect(Number.isFinite(low) && Number.isFinite(high)).toBe(true);
              expect(low).toBeLessThanOrEqual(high);
            }
          }
        } catch (error) {
          expect(error).toBeInstanceOf(RequestError);
        }
      },
    );
    fc.assert(property, { numRuns: 3000 });
    expect(read).toBeGreaterThan(100);
  });
});
