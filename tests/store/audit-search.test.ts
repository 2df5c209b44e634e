import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AuditRecord } from '../../src/audit/audit-record.ts';
import { interactionOf } from '../../src/audit/interactions.ts';
import { readAuditSearch } from '../../src/search/audit-search.ts';
import { auditRecords } from '../support/audit-records.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { openTestStores } from '../support/stores.ts';

const newStore = emptyStores();

const start = Date.parse('2026-11-01T00:00:00Z');
const moment = (ms: number) => new Date(start + ms).toISOString();
const tag = 'https://neuroexam-fhir.example/fhir/CodeSystem/exam';
const exam = '00000000-0000-5000-8000-000000000001';
const referenceOf = (one: NonNullable<AuditRecord['patients']>[number]) => ('reference' in one ? one.reference : '');
const identifierOf = (one: NonNullable<AuditRecord['patients']>[number]) =>
  'identifier' in one ? `${one.identifier.system ?? ''}|${one.identifier.value}` : '';

type Case = readonly [parameter: string, value: string, is: (record: AuditRecord) => boolean];

/** What each question means, said once more over the records themselves. */
const questions: fc.Arbitrary<Case> = fc.oneof(
  fc.constantFrom<Case[]>(
    ['patient', 'Patient/1', ({ patients = [] }) => patients.some((one) => referenceOf(one) === 'Patient/1')],
    ['patient', '2', ({ patients = [] }) => patients.some((one) => referenceOf(one) === 'Patient/2')],
    [
      'patient',
      '1,https://clinic.example/fhir/Patient/1',
      ({ patients = [] }) => patients.some((one) => referenceOf(one).endsWith('Patient/1')),
    ],
    [
      'patient:identifier',
      'https://clinic.example/mrn|7',
      ({ patients = [] }) => patients.some((one) => identifierOf(one) === 'https://clinic.example/mrn|7'),
    ],
    ['patient:identifier', '|x', ({ patients = [] }) => patients.some((one) => identifierOf(one) === '|x')],
    ['entity', 'Observation/a', ({ resource }) => resource?.startsWith('Observation/a') === true],
    ['entity', 'Observation/a/_history/2,Measure/b', ({ resource }) => resource !== undefined],
    ['entity', 'Observation/b', () => false],
    ['entity:identifier', `${tag}|${exam}`, (record) => record.exam === exam],
    ['entity:identifier', exam, (record) => record.exam === exam],
    ['entity:identifier', `https://other.example|${exam}`, () => false],
    ['agent-name', 'ANALYST', ({ client, user }) => [client, user ?? ''].some((one) => /^analyst/i.test(one))],
    ['agent-name', 'analyst-', ({ client }) => /^analyst-/i.test(client)],
    ['agent-name', 'user-1,poster', ({ client, user }) => user === 'user-1' || /^poster/i.test(client)],
    ['action', 'R', ({ action }) => action === 'R'],
    ['action', 'http://hl7.org/fhir/audit-event-action|E,C', ({ action }) => 'EC'.includes(action)],
    ['outcome', '4,8', ({ outcome }) => outcome !== '0'],
    ['outcome', 'http://hl7.org/fhir/audit-event-outcome|', () => true],
    ['subtype', 'read,vread', ({ interaction }) => /^v?read$/.test(interaction)],
    ['subtype', 'delete', ({ interaction }) => /^(delete|erase)$/.test(interaction)],
    ['type', 'http://dicom.nema.org/resources/ontology/DCM|110110', ({ interaction }) => interaction === 'erase'],
    ['subtype', 'http://hl7.org/fhir/restful-interaction|search', ({ interaction }) => interaction === 'search'],
    ['type', 'rest', ({ interaction }) => interactionOf(interaction).type.code === 'rest'],
    ['type', '|rest', () => false],
  ),
  fc
    .tuple(
      fc.constantFrom('eq', 'ne', 'gt', 'lt', 'ge', 'le', 'sa', 'eb'),
      fc.integer({ min: 0, max: 5_000 }),
      fc.constantFrom('date', '_lastUpdated'),
    )
    .map(([prefix, ms, name]): Case => {
      const holds: Readonly<Record<string, (time: number) => boolean>> = {
        eq: (time) => time === ms,
        ne: (time) => time !== ms,
        gt: (time) => time > ms,
        sa: (time) => time > ms,
        lt: (time) => time < ms,
        eb: (time) => time < ms,
        ge: (time) => time >= ms,
        le: (time) => time <= ms,
      };
      return [name, `${prefix}${moment(ms)}`, ({ at }) => holds[prefix]?.(Date.parse(at) - start) === true];
    }),
);

describe.each(engines)('a search of the audit trail on %s', (engine) => {
  it('finds what a look at every record finds, in order, page by page', { timeout: 60_000 }, async () => {
    const stores = await openTestStores(await newStore(engine));
    const records: AuditRecord[] = fc.sample(auditRecords, { numRuns: 120, seed: 11 });
    for (const record of records) await stores.audit.append(record);
    const property = async (cases: readonly Case[], isDown: boolean, count: number) => {
      const asked = cases.map(([name, value]): [string, string] => [name, value]);
      const sort: [string, string] = ['_sort', isDown ? '-date' : 'date'];
      const { query, ignored } = readAuditSearch(
        [...asked, sort, ['_count', String(count)], ['_total', 'accurate']],
        true,
      );
      expect(ignored).toEqual([]);
      const expected = records
        .map((record, index) => ({ n: index + 1, record }))
        .filter(({ record }) => cases.every(([, , holds]) => holds(record)))
        .sort((one, other) => Date.parse(one.record.at) - Date.parse(other.record.at) || one.n - other.n)
        .map(({ n }) => n);
      if (isDown) expected.reverse();
      const found: number[] = [];
      for (let from: Parameters<typeof stores.audit.search>[1]; ; ) {
        const page = await stores.audit.search(query, from);
        expect([asked, page.total]).toEqual([asked, expected.length]);
        expect(page.matches.length).toBeLessThanOrEqual(count);
        found.push(...page.matches.map(({ n }) => n));
        from = page.next;
        if (from === undefined) break;
      }
      expect([asked, found]).toEqual([asked, expected]);
    };
    await fc.assert(
      fc.asyncProperty(fc.array(questions, { maxLength: 3 }), fc.boolean(), fc.integer({ min: 7, max: 60 }), property),
      { numRuns: 150 },
    );
    const byNumber = readAuditSearch([['_id', '3,5,x,999999']], true);
    expect((await stores.audit.search(byNumber.query)).matches.map(({ n }) => n).sort()).toEqual([3, 5]);
    await stores.exams.close();
  });
});
