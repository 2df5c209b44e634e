import { describe, expect, it } from 'vitest';
import { RequestError } from '../../src/kernel/errors.ts';
import type { Filter } from '../../src/search/query.ts';
import { readSearch, type SearchOptions } from '../../src/search/read-search.ts';
import { systems } from '../../src/terminology/systems.ts';

const uuid = '0b5c1f9e-6a3d-5e7b-9c1d-2f4a6b8c0d1e';
const options: SearchOptions = {
  strict: true,
  expandValueSet: (url) => (url === 'https://vs.example/two' ? [coding('a'), coding('b')] : undefined),
  descendants: (system, code) => (system === 'https://cs.example' && code === 'root' ? ['leaf-1', 'leaf-2'] : []),
};
function coding(code: string) {
  return { system: 'https://cs.example', code };
}

const search = (type: string, ...parameters: (readonly [string, string])[]) => readSearch(type, parameters, options);
const filterOf = (type: string, name: string, value: string) => search(type, [name, value]).query.filters[0];
const ms = (text: string) => new Date(text).getTime();
const token = (param: string, ...anyOf: object[]) => ({ kind: 'token', param, anyOf, negated: false });
const range = (param: string, prefix: string, low: number, high: number) => ({
  kind: 'range',
  param,
  anyOf: [{ prefix, low, high }],
});

// Examples of FHIR R4, Search (http://hl7.org/fhir/R4/search.html), with our types and parameters in place of its own.
// The first column names the section.
const examples: readonly (readonly [section: string, type: string, name: string, value: string, expected: object])[] = [
  [
    'date: year',
    'Observation',
    'date',
    '2013',
    range('date', 'eq', ms('2013-01-01T00:00Z'), ms('2014-01-01T00:00Z') - 1),
  ],
  ['date: day', 'Observation', 'date', 'eq2013-01-14', range('date', 'eq', ms('2013-01-14'), ms('2013-01-15') - 1)],
  [
    'date: minute',
    'Observation',
    'date',
    'lt2013-01-14T10:00',
    range('date', 'lt', ms('2013-01-14T10:00Z'), ms('2013-01-14T10:01Z') - 1),
  ],
  ['date: month', 'Observation', 'date', 'ge2013-03', range('date', 'ge', ms('2013-03-01'), ms('2013-04-01') - 1)],
  [
    'date: zone',
    'Observation',
    'date',
    'sa2013-03-14T10:00:00+01:00',
    range('date', 'sa', ms('2013-03-14T09:00Z'), ms('2013-03-14T09:00:01Z') - 1),
  ],
  [
    'date: blank for +',
    'Observation',
    'date',
    'eb2013-03-14T10:00:00 01:00',
    range('date', 'eb', ms('2013-03-14T09:00Z'), ms('2013-03-14T09:00:01Z') - 1),
  ],
  [
    'date: millisecond',
    'Observation',
    'date',
    '2013-03-14T10:00:00.125Z',
    range('date', 'eq', ms('2013-03-14T10:00:00.125Z'), ms('2013-03-14T10:00:00.125Z')),
  ],
  ['date: leap day', 'Observation', 'date', '2024-02', range('date', 'eq', ms('2024-02-01'), ms('2024-03-01') - 1)],
  ['date: ap', 'Observation', 'date', 'ap2013-01-14', range('date', 'ap', ms('2013-01-13'), ms('2013-01-16') - 1)],
  ['number: lt', 'RiskAssessment', 'probability', 'lt100', range('probability', 'lt', 100, 100)],
  ['number: gt', 'RiskAssessment', 'probability', 'gt0.8', range('probability', 'gt', 0.8, 0.8)],
  ['number: ap', 'RiskAssessment', 'probability', 'ap100', range('probability', 'ap', 90, 110)],
  ['token: code', 'Observation', 'code', 'x-1', token('code', { code: 'x-1' })],
  [
    'token: system|code',
    'Observation',
    'code',
    'http://loinc.org|1234-5',
    token('code', { system: 'http://loinc.org', code: '1234-5' }),
  ],
  ['token: |code', 'ClinicalImpression', 'identifier', '|2345', token('identifier', { system: '', code: '2345' })],
  ['token: system|', 'Observation', 'code', 'http://loinc.org|', token('code', { system: 'http://loinc.org' })],
  ['or', 'Observation', 'status', 'final,amended', token('status', { code: 'final' }, { code: 'amended' })],
  ['escaping', 'Observation', 'code', String.raw`a\,b\|c\$d\\e`, token('code', { code: String.raw`a,b|c$d\e` })],
  ['token :not', 'Observation', 'status:not', 'final', { ...token('status', { code: 'final' }), negated: true }],
  [
    'token :text',
    'Observation',
    'code:text',
    'Knie\u0301',
    { kind: 'text', param: 'code', anyOf: ['knie'], match: 'start' },
  ],
  ['token :in', 'Observation', 'code:in', 'https://vs.example/two', token('code', coding('a'), coding('b'))],
  [
    'token :not-in',
    'Observation',
    'code:not-in',
    'https://vs.example/two',
    { ...token('code', coding('a'), coding('b')), negated: true },
  ],
  [
    'token :below',
    'Observation',
    'code:below',
    'https://cs.example|root',
    token('code', coding('root'), coding('leaf-1'), coding('leaf-2')),
  ],
  ['modifier :missing', 'Observation', 'method:missing', 'true', { kind: 'missing', param: 'method', isMissing: true }],
  ['modifier :missing', 'Observation', 'date:missing', 'false', { kind: 'missing', param: 'date', isMissing: false }],
  ['string', 'Measure', 'title', 'Évé', { kind: 'text', param: 'title', anyOf: ['eve'], match: 'start' }],
  [
    'string :contains',
    'Measure',
    'title:contains',
    'Eve',
    { kind: 'text', param: 'title', anyOf: ['eve'], match: 'contain' },
  ],
  ['string :exact', 'Measure', 'title:exact', 'Eve', token('title', { system: 'exact', code: 'Eve' })],
  [
    'uri',
    'Measure',
    'url',
    'http://acme.example/fhir/Measure/1',
    token('url', { code: 'http://acme.example/fhir/Measure/1' }),
  ],
  ['reference: id', 'Observation', 'subject', '23', { kind: 'reference', param: 'subject', anyOf: ['23'] }],
  [
    'reference: type/id',
    'Observation',
    'subject',
    'Patient/23',
    { kind: 'reference', param: 'subject', anyOf: ['Patient/23'] },
  ],
  [
    'reference: url',
    'Observation',
    'subject',
    'http://acme.example/fhir/Patient/23',
    { kind: 'reference', param: 'subject', anyOf: ['http://acme.example/fhir/Patient/23'] },
  ],
  [
    'reference :Type',
    'Observation',
    'subject:Patient',
    '23',
    { kind: 'reference', param: 'subject', anyOf: ['Patient/23'] },
  ],
  [
    'reference: one target',
    'Observation',
    'patient',
    '23',
    { kind: 'reference', param: 'patient', anyOf: ['Patient/23'] },
  ],
  [
    'reference :identifier',
    'Observation',
    'subject:identifier',
    'http://acme.example/mrn|12',
    {
      kind: 'reference',
      param: 'subject',
      anyOf: [],
      byIdentifier: [{ system: 'http://acme.example/mrn', code: '12' }],
    },
  ],
  [
    'chained',
    'Observation',
    'subject:Patient.identifier',
    '12',
    { kind: 'reference', param: 'subject', anyOf: [], byIdentifier: [{ code: '12' }] },
  ],
  [
    'chained',
    'Observation',
    'patient.identifier',
    '12',
    { kind: 'reference', param: 'patient', anyOf: [], byIdentifier: [{ code: '12' }] },
  ],
  [
    'reference to the same exam',
    'Observation',
    'has-member',
    uuid,
    { kind: 'link', param: 'has-member', anyOf: [uuid] },
  ],
  [
    'reference to the same exam',
    'Provenance',
    'target',
    `Observation/${uuid}`,
    { kind: 'link', param: 'target', anyOf: [`Observation/${uuid}`] },
  ],
  [
    'reference to a Device',
    'Observation',
    'device',
    `Device/${uuid}`,
    { kind: 'reference', param: 'device', anyOf: [`Device/${uuid}`] },
  ],
  [
    'composite',
    'Observation',
    'code-value-concept',
    'http://loinc.org|1$http://x.example|a',
    {
      kind: 'pair',
      param: 'code-value-concept',
      anyOf: [{ first: { system: 'http://loinc.org', code: '1' }, second: { system: 'http://x.example', code: 'a' } }],
    },
  ],
  [
    'composite',
    'Observation',
    'code-value-quantity',
    '1$gt5',
    { kind: 'range', param: 'code-value-quantity', anyOf: [{ prefix: 'gt', low: 5, high: 5, of: { code: '1' } }] },
  ],
  [
    'quantity: unit',
    'Observation',
    'value-quantity',
    'le5.4|http://unitsofmeasure.org|mg',
    {
      kind: 'range',
      param: 'value-quantity',
      anyOf: [{ prefix: 'le', low: 5.4, high: 5.4, unit: { system: 'http://unitsofmeasure.org', code: 'mg' } }],
    },
  ],
  [
    'quantity: any system',
    'Observation',
    'value-quantity',
    'gt5.4||mg',
    { kind: 'range', param: 'value-quantity', anyOf: [{ prefix: 'gt', low: 5.4, high: 5.4, unit: { code: 'mg' } }] },
  ],
  ['_id', 'Observation', '_id', 'a,b', { kind: 'id', anyOf: ['a', 'b'] }],
  [
    'own identifier',
    'Observation',
    'identifier',
    `${systems.resourceIdentifier}|${uuid}`,
    { kind: 'id', anyOf: [uuid] },
  ],
  ['own tag', 'Provenance', '_tag', `${systems.resourceTag}|${uuid}`, { kind: 'id', anyOf: [uuid] }],
  ['bare UUID', 'Observation', 'identifier', uuid, { ...token('identifier', { code: uuid }), orIds: [uuid] }],
];

describe('the search parameters of R4', () => {
  it.each(examples)('%s: %s?%s=%s', (_section, type, name, value, expected) => {
    expect(filterOf(type, name, value)).toEqual(expected);
  });

  // Section "number": 100 is [99.5, 100.5), 100.00 is [99.995, 100.005). Its third example gives 1e2
  // as [95, 105), which is two figures; one figure, as it says, is half a hundred either way.
  it.each([
    ['100', 99.5, 100.5],
    ['100.00', 99.995, 100.005],
    ['1e2', 50, 150],
    ['0', -0.5, 0.5],
    ['-3.67', -3.675, -3.665],
  ])('takes the number %s for what rounds to it, from %d to just below %d', (text, low, end) => {
    const [one] = (filterOf('Observation', 'ordinal', text) as Extract<Filter, { kind: 'range' }>).anyOf;
    expect(one?.low).toBe(low);
    expect(one?.high).toBeLessThan(end);
    expect(one?.high).toBeCloseTo(end, 12);
  });

  it('knows that no resource is without an identifier of its own', () => {
    expect(search('Observation', ['identifier:missing', 'true']).query.filters).toEqual([{ kind: 'id', anyOf: [] }]);
    expect(search('Provenance', ['_tag:missing', 'false']).query.filters).toEqual([]);
    expect(filterOf('Measure', 'identifier:missing', 'true')).toEqual({
      kind: 'missing',
      param: 'identifier',
      isMissing: true,
    });
  });

  it('joins repeated parameters by and', () => {
    const { query } = search('Observation', ['date', 'ge2020'], ['date', 'lt2021'], ['status', 'final']);
    expect(query.filters.map((filter) => 'param' in filter && filter.param)).toEqual(['date', 'date', 'status']);
  });
});

describe('a code and its value', () => {
  const filters = (...parameters: (readonly [string, string])[]) => search('Observation', ...parameters).query.filters;

  it('are asked for as the pair that they are, whatever stands between them', () => {
    expect(
      filters(['value-concept', '3,4'], ['status', 'final'], ['code', 'https://cs.example|a'], ['code', 'b']),
    ).toEqual([
      token('status', { code: 'final' }),
      token('code', { code: 'b' }),
      {
        kind: 'pair',
        param: 'code-value-concept',
        anyOf: ['3', '4'].map((code) => ({ first: coding('a'), second: { code } })),
      },
    ]);
    expect(filters(['code', 'b'], ['data-absent-reason', 'not-done'])).toEqual([
      {
        kind: 'pair',
        param: 'code-data-absent-reason',
        anyOf: [{ first: { code: 'b' }, second: { code: 'not-done' } }],
      },
    ]);
  });

  it('stay apart where a pair would ask for something else', () => {
    for (const parameters of [
      [['code:not', 'b'] as const, ['value-concept', '3'] as const],
      [['code', 'https://cs.example|'] as const, ['value-concept', '3'] as const],
      [['code', 'b'] as const, ['combo-value-concept', '3'] as const],
      [['code', 'b'] as const, ['data-absent-reason:missing', 'true'] as const],
    ]) {
      expect(filters(...parameters).map(({ kind }) => kind)).not.toContain('pair');
    }
  });

  it('stay apart where the pairs would be too many', () => {
    const many = (count: number) => Array.from({ length: count }, (_, index) => `c${index}`).join(',');
    expect(filters(['code', many(8)], ['value-concept', many(8)])).toHaveLength(1);
    expect(filters(['code', many(9)], ['value-concept', many(8)])).toHaveLength(2);
  });
});

describe('the result parameters', () => {
  it('have defaults: newest clinical date first, fifty to a page', () => {
    expect(search('ServiceRequest').query).toEqual({
      type: 'ServiceRequest',
      filters: [],
      sort: { by: 'date', direction: 'descending' },
      count: 50,
      total: 'cheap',
      includes: [],
      revIncludes: [],
    });
    expect(search('Device').query.sort).toEqual({ by: '_lastUpdated', direction: 'descending' });
  });

  it('are read and told apart from filters', () => {
    const { query, presentation, applied } = search(
      'Provenance',
      ['_sort', 'recorded'],
      ['_count', '100000'],
      ['_total', 'accurate'],
      ['_include', 'Provenance:target:Observation'],
      ['_include:iterate', 'Observation:derived-from'],
      ['_revinclude', 'Provenance:entity'],
      ['_summary', 'data'],
      ['_elements', 'target,recorded'],
      ['_format', 'json'],
      ['_pretty', 'true'],
      ['_cursor', 'abc'],
    );
    expect(query).toEqual({
      type: 'Provenance',
      filters: [],
      sort: { by: 'date', direction: 'ascending' },
      count: 500,
      total: 'accurate',
      includes: [
        { source: 'Provenance', param: 'target', targetType: 'Observation', isIterative: false },
        { source: 'Observation', param: 'derived-from', isIterative: true },
      ],
      revIncludes: [{ source: 'Provenance', param: 'entity', isIterative: false }],
    });
    expect(presentation).toEqual({
      summary: 'data',
      elements: ['target', 'recorded'],
      format: 'json',
      pretty: true,
      cursor: 'abc',
    });
    expect(applied).toHaveLength(11);
  });

  it('ask for the number alone by _summary=count as by _count=0', () => {
    for (const parameter of [
      ['_summary', 'count'],
      ['_count', '0'],
    ] as const) {
      expect(search('Observation', parameter).query).toMatchObject({ count: 0, total: 'accurate' });
    }
  });
});

const message = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(RequestError);
    expect((error as RequestError).code).toBe('BAD_REQUEST');
    return (error as RequestError).message;
  }
  throw new Error('nothing was refused');
};

describe('what is not understood', () => {
  const unknown = [
    ['boddy-site', 'x'],
    ['code:of-type', 'x'],
    ['has-member.code', 'x'],
    ['_include', 'Observation:*'],
    ['_sort', 'code'],
    ['status', ''],
    ['_has:Provenance:target:agent', 'x'],
  ] as const;

  it('is named in one error in strict mode, with the nearest known name', () => {
    const text = message(() => search('Observation', ...unknown));
    for (const [name] of unknown) expect(text).toContain(name);
    expect(text).toContain('did you mean body-site?');
  });

  it('is left out and listed in lenient mode', () => {
    const lenient = readSearch('Observation', [['status', 'final'], ...unknown], { ...options, strict: false });
    expect(lenient.ignored).toEqual(unknown.map(([name]) => name));
    expect(lenient.applied).toEqual([['status', 'final']]);
    expect(lenient.query.filters).toHaveLength(1);
  });

  it.each([
    ['date', '2013-02-31', 'a date such as'],
    ['date', '14.03.2026', 'a date such as'],
    ['ordinal', 'four', 'a number such as'],
    ['value-quantity', '5|mg', 'number||code'],
    ['code', 'a|b|c', 'system|code'],
    ['code', 'a,,b', 'either side of every comma'],
    ['code:in', 'https://vs.example/unknown', 'value set'],
    ['code:missing', 'yes', 'true or false'],
    ['subject', 'Patient 4711', 'Patient/id or an absolute address'.slice(8)],
    ['patient', 'Group/1', 'Patient/id'],
    ['code-value-concept', 'a', 'code$value'],
    ['has-member', `Observation/${uuid},QuestionnaireResponse/1`, 'not both'],
    ['identifier', `${systems.resourceIdentifier}|`, 'after the bar'],
    ['_count', '-1', 'whole number'],
    ['_summary', 'all', 'one of true'],
    ['_include', 'has-member', 'Type:parameter'],
    ['code', 'x'.repeat(2001), 'at most 2000'],
    ['code', Array.from({ length: 501 }, () => 'x').join(','), 'at most 500'],
  ])('is a wrong value of %s in either mode, and the value is not repeated: %s', (name, value, expected) => {
    for (const strict of [true, false]) {
      const text = message(() => readSearch('Observation', [[name, value]], { ...options, strict }));
      expect(text).toContain(expected);
      expect(text).toContain(`parameter ${name}`);
      if (value.length > 9) expect(text).not.toContain(value);
    }
  });

  it('is more than fifty parameters, a second page size, and a type that is not searched', () => {
    expect(message(() => search('Observation', ...Array.from({ length: 51 }, () => ['code', 'x'] as const)))).toContain(
      '50',
    );
    expect(message(() => search('Observation', ['_count', '1'], ['_count', '2']))).toContain('stand once');
    expect(message(() => search('Patient'))).toContain('cannot be searched');
  });
});
