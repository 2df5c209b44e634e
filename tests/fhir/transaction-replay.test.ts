import type { Bundle, FhirResource, Resource } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/exam/finding.ts';
import { buildBundle } from '../../src/fhir/bundle.ts';
import { documentOf } from '../../src/fhir/bundle-forms.ts';
import { versionsOf } from './support/bundle-building.ts';
import { assessment, exam, finding } from './support/exam-fixture.ts';
import { MemoryServer } from './support/memory-server.ts';

const other = (one: Finding) =>
  finding(one.item, one.side === 'left' ? 'right' : 'left', one.value, { abnormal: true });
const statusOf = (resource: Resource | undefined) =>
  resource !== undefined && 'status' in resource ? String(resource.status) : '';
/** The value by which a server finds a resource again. */
function markOf(resource: FhirResource): string | undefined {
  const identifiers = 'identifier' in resource ? [resource.identifier].flat() : [];
  return identifiers[0]?.value ?? resource.meta?.tag?.[0]?.code;
}

const sent = (version: number) => buildBundle(exam, assessment, { version });

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
    const bundle = buildBundle(corrected, assessment, { version: 2, previous: sent(1) });
    server.transaction(bundle);
    server.transaction(bundle);
    expect(server.resources()).toHaveLength(count + 1);
    expect(server.resources('Provenance')).toHaveLength(2);
    expect(server.resources('Device')).toHaveLength(1);
    const statuses = server.resources('Observation').map((one) => ('status' in one ? one.status : undefined));
    expect(new Set(statuses)).toEqual(new Set(['amended', 'preliminary']));
  });

  it('comes by three versions to what the third says, with what only earlier ones said in error', () => {
    const moved = exam.findings.map((one) => (one.id.startsWith('power/') ? other(one) : one));
    const versions = versionsOf(
      [exam, assessment],
      [
        { ...exam, status: 'amended', findings: moved },
        { ...assessment, proposed: assessment.proposed.slice(1) },
      ],
      [
        { ...exam, status: 'amended', scales: [] },
        { ...assessment, redFlags: [], modelVersion: '2.0.0-test' },
      ],
    );
    const server = new MemoryServer();
    const states = versions.map((bundle) => {
      server.transaction(bundle);
      const once = structuredClone(server.resources());
      server.transaction(bundle);
      expect(server.resources()).toEqual(once);
      return new Map(once.map((resource) => [markOf(resource), statusOf(resource)]));
    });
    versions.forEach((bundle, index) => {
      for (const { fullUrl, resource } of bundle.entry ?? []) {
        expect(states[index]?.get(fullUrl?.replace('urn:uuid:', ''))).toBe(statusOf(resource));
      }
    });
    const ever = new Set(versions.flatMap(({ entry = [] }) => entry.map(({ fullUrl }) => fullUrl)));
    expect(server.resources()).toHaveLength(ever.size);
    const said = new Set(documentOf(versions[2] as Bundle).entry?.map(({ fullUrl }) => fullUrl));
    const standing = server
      .resources()
      .filter((resource) => !['entered-in-error', 'revoked'].includes(statusOf(resource)));
    const fixed = ['Device', 'Provenance'];
    expect(
      standing
        .filter(({ resourceType }) => !fixed.includes(resourceType))
        .filter((one) => !said.has(`urn:uuid:${markOf(one)}`)),
    ).toEqual([]);
    expect(server.resources('Provenance')).toHaveLength(3);
    expect(server.resources('Device')).toHaveLength(2);
  });

  it('is not undone when the first version arrives once more after its correction', () => {
    const [first, second] = versionsOf([exam, assessment], [{ ...exam, status: 'amended', findings: [] }, assessment]);
    const server = new MemoryServer();
    server.transaction(first as Bundle);
    server.transaction(second as Bundle);
    const before = structuredClone(server.resources());
    server.transaction(first as Bundle);
    expect(server.resources()).toEqual(before);
  });

  it('lets a correction arrive at a server that has never seen the exam', () => {
    const server = new MemoryServer();
    expect(new Set(server.transaction(sent(3)))).toEqual(new Set([201]));
  });

  it('keeps two exams apart and gives them one Device', () => {
    const server = new MemoryServer();
    server.transaction(sent(1));
    const other = { ...exam, identifier: { system: 'https://clinic.example/exams', value: 'EX-2' } };
    server.transaction(buildBundle(other, assessment, { version: 1 }));
    expect(server.resources('ClinicalImpression')).toHaveLength(2);
    expect(server.resources('Device')).toHaveLength(1);
  });

  it('leaves no reference to an entry behind that a server could not resolve', () => {
    const server = new MemoryServer();
    server.transaction(sent(1));
    expect(JSON.stringify(server.resources())).not.toContain('urn:uuid:');
  });
});
