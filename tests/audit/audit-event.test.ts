import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import type { AuditEvent, CodeSystem, CodeSystemConcept, Coding, SearchParameter } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { linkHash } from '../../src/audit/audit-chain.ts';
import { auditEvent } from '../../src/audit/audit-event.ts';
import { type AuditRecord, entriesOf, readRecord, recordText } from '../../src/audit/audit-record.ts';
import { exportEndRecord } from '../../src/audit/export-end.ts';
import { auditSearchParams } from '../../src/search/audit-search.ts';
import { ruleProblems, structureProblems } from '../fhir/support/r4-rules.ts';
import { auditRecords } from '../support/audit-records.ts';

const hl7 = (name: string) =>
  fileURLToPath(new URL(`../../node_modules/hl7.fhir.r4.examples/${name}.json`, import.meta.url));
const fromHl7 = <T>(name: string): T => JSON.parse(readFileSync(hl7(name), 'utf8')) as T;

/** HL7's own R4 (4.0.1) code systems. */
const codeSystems = [
  'audit-event-type',
  'restful-interaction',
  'audit-entity-type',
  'object-role',
  'dicom-dcim',
  'security-source-type',
]
  .filter((name) => existsSync(hl7(`CodeSystem-${name}`)))
  .map((name) => fromHl7<CodeSystem>(`CodeSystem-${name}`));
const conceptsOf = (concepts: readonly CodeSystemConcept[] = []): readonly CodeSystemConcept[] =>
  concepts.flatMap((concept) => [concept, ...conceptsOf(concept.concept)]);

function codingsIn(node: unknown): Coding[] {
  if (typeof node !== 'object' || node === null) return [];
  const own = 'system' in node && 'code' in node ? [node as Coding] : [];
  return [...own, ...Object.values(node).flatMap(codingsIn)];
}

const read: AuditRecord = {
  at: '2026-11-01T10:00:00.000Z',
  interaction: 'read',
  action: 'R',
  outcome: '0',
  client: 'analyst',
  exam: '00000000-0000-5000-8000-000000000001',
  resource: 'Observation/a',
  patients: [{ reference: 'Patient/1' }],
  request: '0123',
};
const roles = ({ agent }: AuditEvent) => agent.map(({ type }) => type?.coding?.[0]?.code);

describe('an AuditEvent', () => {
  it('obeys the R4 definitions, whatever was recorded', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(fc.integer({ min: 1 }), auditRecords, (n, record) => {
        const event = auditEvent(n, record);
        expect(structureProblems(event)).toEqual([]);
        expect(ruleProblems(event)).toEqual([]);
        expect([event.id, event.recorded, event.outcome]).toEqual([String(n), record.at, record.outcome]);
      }),
      { numRuns: 150 },
    );
  });

  it('has codes and displays as HL7 has them', () => {
    const checked = new Set<string>();
    fc.assert(
      fc.property(auditRecords, (record) => {
        for (const { system, code, display } of codingsIn(auditEvent(1, record))) {
          const found = codeSystems.find(({ url }) => url === system);
          if (found === undefined) continue;
          checked.add(`${system}|${code}`);
          expect([code, conceptsOf(found.concept).find((one) => one.code === code)?.display]).toEqual([code, display]);
        }
      }),
    );
    expect(checked.size).toBeGreaterThanOrEqual(15);
  });

  /** IHE Basic Audit Log Patterns 1.1.3, profiles Read, Query and Create: DICOM 110153 is the source, 110152 the destination. */
  it('names the two ends as the patterns of IHE do', () => {
    expect(roles(auditEvent(1, read))).toEqual(['110152', '110153']);
    expect(roles(auditEvent(1, { ...read, interaction: 'search' }))).toEqual(['110153', '110152']);
    expect(roles(auditEvent(1, { ...read, interaction: 'create', user: 'user-1' }))).toEqual([
      '110153',
      '110152',
      'IRCP',
    ]);
    const { entity = [] } = auditEvent(1, { ...read, query: 'GET /fhir/Observation?patient=1' });
    expect(entity.map(({ role, type }) => role?.code ?? type?.code)).toEqual(['4', '4', '1', '24', 'XrequestId']);
    expect(Buffer.from(entity[3]?.query ?? '', 'base64').toString()).toBe('GET /fhir/Observation?patient=1');
  });

  it('names the service alone where nobody asked: the end of an export', () => {
    const record = exportEndRecord(() => new Date(read.at), '0.1.0')('job-1', { failure: 'Store not available' });
    const event = auditEvent(1, record);
    // DICOM PS3.16, CID 400: 110106 is Export.
    expect([event.type.code, event.outcome, event.outcomeDesc]).toEqual(['110106', '8', 'Store not available']);
    expect(event.agent.map(({ requestor, who }) => [requestor, who])).toEqual([[true, event.source.observer]]);
    expect(event.text?.div).toContain('Ended export job-1, by neuroexam-fhir');
  });

  it('is searched by parameters that R4 defines, with the types that it gives them', () => {
    for (const { name, type, definition } of auditSearchParams) {
      if (name.startsWith('_')) continue;
      const file = `SearchParameter-AuditEvent-${name}`;
      const shared =
        ['date', 'type', 'patient'].includes(name) && !existsSync(hl7(file))
          ? `SearchParameter-clinical-${name}`
          : file;
      const { url, type: kind } = fromHl7<SearchParameter>(shared);
      expect([name, definition, type]).toEqual([name, url, kind]);
    }
    expect(auditSearchParams.length).toBeGreaterThanOrEqual(10);
  });
});

describe('a record', () => {
  it('comes back from its text, and gives the same text and entries again', () => {
    fc.assert(
      fc.property(auditRecords, (record) => {
        const text = recordText(record);
        const again = readRecord(text);
        expect(again).toEqual(JSON.parse(JSON.stringify(record)));
        expect([recordText(again), entriesOf(again)]).toEqual([text, entriesOf(record)]);
        expect(text).toBe(Buffer.from(text, 'utf8').toString('utf8'));
      }),
    );
  });

  it('is linked by SHA-256 over the hash before it and its text', () => {
    const previous = Buffer.alloc(32, 7);
    const joined = Buffer.concat([previous, Buffer.from('{"at":"ä"}', 'utf8')]);
    expect(linkHash(previous, '{"at":"ä"}')).toEqual(createHash('sha256').update(joined).digest());
    // 64 bytes of zero; sha256sum of GNU coreutils gives the same.
    expect(linkHash(Buffer.alloc(32), '\0'.repeat(32)).toString('hex')).toBe(
      'f5a5fd42d16a20302798ef6ed309979b43003d2320d9f0e8ea9831a92759fb4b',
    );
  });
});
