import { describe, expect, it } from 'vitest';
import { buildBundle } from '../../src/fhir/bundle.ts';
import { assessment, exam } from './support/exam-fixture.ts';
import { MemoryServer } from './support/memory-server.ts';

const sent = (version: number) => buildBundle(exam, assessment, { type: 'transaction', version });

describe('the transaction on a FHIR server', () => {
  it('creates every resource once and nothing when it is sent again', () => {
    const server = new MemoryServer();
    const first = server.transaction(sent(1));
    expect(new Set(first)).toEqual(new Set([201]));
    const before = structuredClone(server.resources());
    const second = server.transaction(sent(1));
    expect(new Set(second)).toEqual(new Set([200]));
    expect(server.resources()).toEqual(before);
  });

  it('updates in place when a correction is sent, and adds only its own Provenance', () => {
    const server = new MemoryServer();
    server.transaction(sent(1));
    const count = server.resources().length;
    const corrected = { ...exam, status: 'amended' as const };
    const bundle = buildBundle(corrected, assessment, { type: 'transaction', version: 2 });
    server.transaction(bundle);
    server.transaction(bundle);
    expect(server.resources()).toHaveLength(count + 1);
    expect(server.resources('Provenance')).toHaveLength(2);
    expect(server.resources('Device')).toHaveLength(1);
    const statuses = server.resources('Observation').map((one) => ('status' in one ? one.status : undefined));
    expect(new Set(statuses)).toEqual(new Set(['amended', 'preliminary']));
  });

  it('lets a correction arrive at a server that has never seen the exam', () => {
    const server = new MemoryServer();
    expect(new Set(server.transaction(sent(3)))).toEqual(new Set([201]));
  });

  it('keeps two exams apart and gives them one Device', () => {
    const server = new MemoryServer();
    server.transaction(sent(1));
    const other = { ...exam, identifier: { system: 'https://clinic.example/exams', value: 'EX-2' } };
    server.transaction(buildBundle(other, assessment, { type: 'transaction', version: 1 }));
    expect(server.resources('ClinicalImpression')).toHaveLength(2);
    expect(server.resources('Device')).toHaveLength(1);
  });

  it('leaves no reference to an entry behind that a server could not resolve', () => {
    const server = new MemoryServer();
    server.transaction(sent(1));
    expect(JSON.stringify(server.resources())).not.toContain('urn:uuid:');
  });
});
