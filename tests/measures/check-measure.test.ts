import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkMeasure } from '../../src/measures/check-measure.ts';

type Json = Record<string, unknown>;

const folder = new URL('../../profiles/measures/', import.meta.url);
const shipped = readdirSync(folder).map((name) => [name, JSON.parse(readFileSync(new URL(name, folder), 'utf8'))]);
const fresh = (name = 'Measure-red-flag-minutes.json'): Json =>
  structuredClone(shipped.find(([file]) => file === name)?.[1] as Json);

/** The value at a JSON Pointer, replaced; everything else stays. */
function changed(pointer: string, value: unknown, measure = fresh()): Json {
  const keys = pointer.split('/').slice(1);
  const last = keys.pop() ?? '';
  const parent = keys.reduce<Json>((at, key) => at[key] as Json, measure);
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return measure;
}

describe('the check of a Measure', () => {
  it.each(shipped)('passes %s', (_name, measure) => {
    expect(checkMeasure(measure)).toEqual([]);
  });

  it.each([
    ['/resourceType', 'Library', '/resourceType', 'UNKNOWN_KEY'],
    ['/group', undefined, '/group', 'REQUIRED'],
    ['/group', [], '/group', 'WRONG_TYPE'],
    ['/groups', [], '/groups', 'UNKNOWN_PROPERTY'],
    ['/scoring', undefined, '/scoring', 'REQUIRED'],
    ['/extension/0/valueCode', 'Encounter', '/extension', 'UNKNOWN_KEY'],
    ['/group/0/population/0/criteria/language', 'text/cql', '/group/0/population/0/criteria/language', 'UNKNOWN_KEY'],
    ['/group/0/population/0/criteria/expression', undefined, '/group/0/population/0/criteria/expression', 'REQUIRED'],
    ['/group/0/population/0/criteria/expression', ' ', '/group/0/population/0/criteria/expression', 'WRONG_TYPE'],
    ['/group/0/population/0/criteria/expression', 7, '/group/0/population/0/criteria/expression', 'WRONG_TYPE'],
    ['/group/0/population/0/criteria/expression', 'a.(', '/group/0/population/0/criteria/expression', 'FORMAT'],
    ['/group/0/population/0/criteria/expression', "'x'", '/group/0/population/0/criteria/expression', 'WRONG_TYPE'],
    [
      '/group/0/population/0/criteria/expression',
      '%findings.where(%findings.where(%findings.exists(code = 1)).exists()).exists()',
      '/group/0/population/0/criteria/expression',
      'TOO_LARGE',
    ],
  ])('tells that %s cannot be %j', (pointer, value, place, code) => {
    expect(checkMeasure(changed(pointer, value))).toContainEqual(expect.objectContaining({ pointer: place, code }));
  });

  it('names the variable or function that was meant', () => {
    const place = '/group/0/population/0/criteria/expression';
    const [variable] = checkMeasure(changed(place, '%reflexs.exists()'));
    expect(variable).toMatchObject({ pointer: place, code: 'UNKNOWN_KEY', suggestion: 'reflexes' });
    const [called] = checkMeasure(changed(place, '%reflexes.exist()'));
    expect(called).toMatchObject({ pointer: place, code: 'UNKNOWN_KEY', suggestion: 'exists' });
  });

  // Functions of FHIRPath that reach outside, write, or make up work without end. Source: FHIRPath 2.0.0 and FHIR R4, FHIRPath.
  it.each([
    "trace('x')",
    'resolve()',
    "memberOf('x')",
    'repeat($this)',
    'aggregate($this + $total)',
    "replaceMatches('(a+)+', '')",
    "matches('(a+)+$')",
  ])('lets no stranger call %s', (call) => {
    const expression = `%findings.${call}.exists()`;
    const faults = checkMeasure(changed('/group/0/population/0/criteria/expression', expression));
    expect(faults).toContainEqual(expect.objectContaining({ code: 'UNKNOWN_KEY' }));
  });

  it('tells a measure of another kind what is missing, without failing', () => {
    // Source: the examples that HL7 publishes with FHIR R4; they are written in CQL and count patients.
    const examples = dirname(createRequire(import.meta.url).resolve('hl7.fhir.r4.examples/package.json'));
    const files = readdirSync(examples).filter((name) => /^Measure-/.test(name));
    expect(files.length).toBeGreaterThan(5);
    for (const file of files) {
      const faults = checkMeasure(JSON.parse(readFileSync(join(examples, file), 'utf8')));
      expect([file, faults.some(({ pointer, code }) => pointer === '/extension' && code === 'REQUIRED')]).toEqual([
        file,
        true,
      ]);
    }
  });

  it('answers with faults whatever is sent', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (sent) => {
        expect(checkMeasure(sent).length).toBeGreaterThan(0);
      }),
    );
    const pointers = ['/group', '/group/0/population', '/group/0/population/0/criteria', '/extension', '/scoring'];
    fc.assert(
      fc.property(fc.constantFrom(...pointers), fc.jsonValue(), (pointer, sent) => {
        expect(checkMeasure(changed(pointer, sent)).length).toBeGreaterThan(0);
      }),
    );
  });
});
