import type { Bundle, CapabilityStatement, Observation, Resource } from 'fhir/r4.js';
import { Client } from 'fhir-kit-client';
import FHIR from 'fhirclient';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

// Two FHIR clients from npm, as they come, against the running service.

let service: RunningService;
let base: string;
beforeAll(async () => {
  service = await startTestService();
  base = `${service.url}/fhir`;
  for (const name of exampleNames) {
    const answer = await fetch(`${service.url}/exams`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(exampleExam({}, name)),
    });
    expect(answer.status).toBe(201);
  }
});
afterAll(() => service.stop());

const reads = (bundle: Bundle) => (bundle.entry ?? []).map(({ resource }) => resource as Resource);

describe('fhir-kit-client', () => {
  const client = () => new Client({ baseUrl: base });

  it('reads the statement of capabilities', async () => {
    const statement = (await client().capabilityStatement()) as unknown as CapabilityStatement;
    expect(statement.rest?.[0]?.resource?.map(({ type }) => type)).toContain('Observation');
  });

  it('searches, follows next links to the end, and finds each resource once', async () => {
    let bundle = (await client().search({
      resourceType: 'Observation',
      searchParams: { _count: 100, _total: 'accurate' },
    })) as unknown as Bundle;
    const { total } = bundle;
    const ids: (string | undefined)[] = [];
    while (bundle !== undefined) {
      ids.push(...reads(bundle).map(({ id }) => id));
      if (!bundle.link?.some(({ relation }) => relation === 'next')) break;
      bundle = (await client().nextPage({ bundle: bundle as never })) as unknown as Bundle;
    }
    expect(ids).toHaveLength(total as number);
    expect(new Set(ids).size).toBe(total);
  });

  it('finds by code and value, by what was not tested, and by the exam that a finding belongs to', async () => {
    const search = async (resourceType: string, searchParams: Record<string, string>) =>
      (await client().search({ resourceType, searchParams })) as unknown as Bundle;
    const weak = await search('Observation', {
      'code-value-concept': 'power/ankle-dorsiflexion$2',
      subject: 'Patient/invented-foot-drop',
    });
    expect(reads(weak)).toHaveLength(1);
    expect((reads(weak)[0] as Observation).valueCodeableConcept?.coding?.[0]?.code).toBe('2');
    const untested = await search('Observation', { 'data-absent-reason': 'asked-declined' });
    expect(reads(untested).map((one) => (one as Observation).subject?.reference)).toContain(
      'Patient/invented-foot-drop',
    );
    const id = reads(weak)[0]?.id as string;
    const panels = await search('Observation', { 'has-member': `Observation/${id}` });
    expect(reads(panels)).toHaveLength(1);
    const impressions = await search('ClinicalImpression', {
      'finding-code': 'mononeuropathy',
      _include: 'ClinicalImpression:finding-ref',
    });
    expect(impressions.entry?.filter(({ search: found }) => found?.mode === 'match')).toHaveLength(1);
    expect(impressions.entry?.filter(({ search: found }) => found?.mode === 'include').length).toBeGreaterThan(2);
  });

  it('reads one resource, its version and its history', async () => {
    const [first] = reads(
      (await client().search({ resourceType: 'RiskAssessment', searchParams: {} })) as unknown as Bundle,
    );
    const id = first?.id as string;
    const one = (await client().read({ resourceType: 'RiskAssessment', id })) as unknown as Resource;
    expect(one.meta?.versionId).toBe('1');
    expect(await client().vread({ resourceType: 'RiskAssessment', id, version: '1' })).toEqual(one);
    const history = (await client().history({ resourceType: 'RiskAssessment', id })) as unknown as Bundle;
    expect(history.entry?.map(({ resource }) => resource)).toEqual([one]);
    await expect(client().read({ resourceType: 'RiskAssessment', id: 'unknown' })).rejects.toMatchObject({
      response: { status: 404, data: { resourceType: 'OperationOutcome' } },
    });
  });
});

describe('fhirclient', () => {
  const client = () => {
    const request = { headers: {}, url: '/', method: 'GET' };
    const storage = {
      get: async () => undefined,
      set: async (_: string, value: unknown) => value,
      unset: async () => true,
    };
    return FHIR(request as never, {} as never, storage as never).client({ serverUrl: base });
  };

  it('fetches all pages as one list, the same as the counted total', async () => {
    const count = (await client().request('Observation?_summary=count')) as unknown as Bundle;
    const all = await client().request<Observation[]>('Observation?_count=77', { pageLimit: 0, flat: true });
    expect(all).toHaveLength(count.total as number);
  });

  it('resolves the references from a request to what it rests on', async () => {
    const bundle = (await client().request(
      'ServiceRequest?_count=1&_include=ServiceRequest:requester',
    )) as unknown as Bundle;
    expect(
      reads(bundle)
        .map(({ resourceType }) => resourceType)
        .sort(),
    ).toEqual(['Device', 'ServiceRequest']);
  });
});
