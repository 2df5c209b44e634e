import type { Bundle, FhirResource, Resource } from 'fhir/r4.js';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { compiledByBuild } from '../support/built.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { type ExamBody, exampleExam } from '../support/example-exam.ts';

const newStore = emptyStores();
const searched = ['Observation', 'ClinicalImpression', 'RiskAssessment', 'ServiceRequest', 'Provenance'] as const;

/** What a resource may say of itself after an amendment: its own status, or that it was taken back. */
const afterCorrection = {
  Observation: ['amended', 'preliminary', 'entered-in-error'],
  ClinicalImpression: ['in-progress'],
  RiskAssessment: ['amended', 'preliminary', 'entered-in-error'],
  ServiceRequest: ['draft', 'revoked'],
};

interface Kept {
  readonly status: string | undefined;
  readonly version: string | undefined;
}

/**
 * Provenance has no status, and that of an earlier version stays true, so it is left alone.
 * Source: FHIR R4, status codes of Observation, ClinicalImpression, RiskAssessment and ServiceRequest, each of which has
 * entered-in-error; http.html#history, each update is a version that can be read on.
 */
describe.each(engines)('a correction over HTTP on %s', (engine) => {
  let service: RunningService;
  let base: string;
  let exams = 0;

  beforeAll(async () => {
    const target = await newStore(engine);
    const url = target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url;
    service = await startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATABASE_URL: url }), compiledByBuild());
    base = `${service.url}/fhir`;
  }, 120_000);
  afterAll(() => service.stop());
  beforeEach(() => {
    exams += 1;
  });

  /** Without its statements of what else was normal, which would only make more of the same. */
  const exam = (changes: ExamBody = {}): ExamBody => {
    const { otherwiseNormal: _, ...plain } = exampleExam();
    return { ...plain, identifier: { system: 'https://clinic.example/exams', value: `C-${exams}` }, ...changes };
  };

  async function post(): Promise<string> {
    const answer = await sendJson(`${service.url}/exams`, exam());
    expect(answer.status).toBe(201);
    return String(answer.headers.get('Location'));
  }
  function correct(path: string, version: number, body: ExamBody): Promise<Answer> {
    const headers = { 'If-Match': `W/"${version}"` };
    return sendJson(`${service.url}${path}`, body, { method: 'PUT', headers });
  }

  /** All that searches find of an exam, by its tag. */
  async function found(path: string): Promise<ReadonlyMap<string, FhirResource>> {
    const all = new Map<string, FhirResource>();
    for (const type of searched) {
      const answer = await send(`${base}/${type}?_tag=${path.replace('/exams/', '')}&_count=500`);
      expect(answer.status).toBe(200);
      for (const { resource } of answer.json<Bundle>().entry ?? []) {
        if (resource?.resourceType === type) all.set(`${type}/${resource.id}`, resource as FhirResource);
      }
    }
    return all;
  }
  const kept = (resource: Resource | undefined): Kept => ({
    status: (resource as { status?: string } | undefined)?.status,
    version: resource?.meta?.versionId,
  });
  const typesOf = (resources: ReadonlyMap<string, FhirResource>) =>
    new Set([...resources.values()].map(({ resourceType }) => resourceType));

  /** Every version of a resource, newest first. */
  async function history(key: string): Promise<FhirResource[]> {
    const bundle = (await send(`${base}/${key}/_history?_count=50`)).json<Bundle>();
    expect(bundle.type).toBe('history');
    return (bundle.entry ?? []).map(({ resource }) => resource as FhirResource);
  }

  it('as amended reaches all that the exam brought, and takes back what no longer follows', async () => {
    const path = await post();
    const before = await found(path);
    expect(typesOf(before)).toEqual(new Set(searched));
    const findings = { power: [{ movement: 'ankle-dorsiflexion', side: 'right', grade: '3' }] };
    expect((await correct(path, 1, exam({ status: 'amended', findings }))).status).toBe(200);
    const after = await found(path);

    let withdrawn = 0;
    for (const [key, earlier] of before) {
      const later = after.get(key);
      expect(later, key).toBeDefined();
      if (earlier.resourceType === 'Provenance') continue;
      const { status, version } = kept(later);
      if (version === '1') {
        // A proposal that follows from the amended exam word for word stays as it was.
        expect([earlier.resourceType, later]).toEqual(['ServiceRequest', earlier]);
        continue;
      }
      expect([key, version]).toEqual([key, '2']);
      expect([key, afterCorrection[earlier.resourceType as keyof typeof afterCorrection]]).toEqual([
        key,
        expect.arrayContaining([status]),
      ]);
      if (status === 'entered-in-error' || status === 'revoked') withdrawn += 1;
      expect(await history(key)).toEqual([later, earlier]);
    }
    expect(withdrawn).toBeGreaterThan(5);
    expect(withdrawn).toBeLessThan(before.size);
    const bundle = (await send(`${service.url}${path}/bundle?type=document`)).json<Bundle>();
    for (const { resource } of bundle.entry ?? []) {
      expect(['entered-in-error', 'revoked']).not.toContain(kept(resource).status);
    }
    const provenances = [...after.values()].filter(({ resourceType }) => resourceType === 'Provenance');
    expect(provenances).toHaveLength(2);
    expect(new Set([...after.keys()])).toEqual(new Set([...(await inCollection(path)), ...before.keys()]));
  }, 120_000);

  it('as entered-in-error reaches all of it, and every version stays in the history', async () => {
    const path = await post();
    const first = await found(path);
    expect((await correct(path, 1, exam({ status: 'amended', person: { ageYears: 50, sex: 'female' } }))).status).toBe(
      200,
    );
    const second = await found(path);
    expect((await correct(path, 2, exam({ status: 'entered-in-error' }))).status).toBe(200);
    const third = await found(path);

    for (const [key, resource] of third) {
      if (resource.resourceType === 'Provenance') continue;
      expect([key, kept(resource).status]).toEqual([key, 'entered-in-error']);
      const versions = await history(key);
      // Newest first, and nothing is missing of what searches gave at each step.
      for (const at of [first, second, third]) if (at.has(key)) expect(versions).toContainEqual(at.get(key));
      expect(versions.map(({ meta }) => meta?.versionId)).toEqual(versions.map((_, n) => String(versions.length - n)));
    }
    expect([...third.keys()]).toEqual(expect.arrayContaining([...first.keys(), ...second.keys()]));
    const standing = await send(
      `${base}/Observation?_tag=${path.replace('/exams/', '')}&status:not=entered-in-error&_summary=count`,
    );
    expect(standing.json<Bundle>().total).toBe(0);
    for (const version of [1, 2, 3]) {
      expect((await send(`${service.url}${path}?version=${version}`)).status).toBe(200);
    }
  }, 120_000);

  async function inCollection(path: string): Promise<string[]> {
    const { entry = [] } = (await send(`${service.url}${path}/bundle?type=collection`)).json<Bundle>();
    return entry
      .map(({ resource }) => `${resource?.resourceType}/${resource?.id}`)
      .filter((key) => !key.startsWith('Device/'));
  }
});
