import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Bundle, CapabilityStatement, FhirResource } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { send } from '../support/client.ts';
import { startTestService } from '../support/service.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const committed = ['profiles', 'terminology'].flatMap((folder) =>
  readdirSync(`${root}/${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.json'))
    .map((name) => `/${folder}/${name}`),
);

describe('what the service publishes about itself', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  const get = (path: string, headers: Record<string, string> = {}) => send(service.url + path, { headers });

  it('serves every committed file byte for byte and no other', async () => {
    expect(committed.length).toBeGreaterThan(0);
    for (const path of committed) {
      const answer = await get(path);
      expect([path, answer.status]).toEqual([path, 200]);
      expect(answer.text).toBe(readFileSync(root + path, 'utf8'));
    }
    for (const path of [
      '/profiles/README.md',
      '/profiles/../package.json',
      '/profiles/%2e%2e/package.json',
      '/profiles/',
    ]) {
      expect([path, (await get(path)).status]).toEqual([path, 404]);
    }
  });

  it('serves the JSON Schemas by name, at the end of the path of their $id', async () => {
    const schemas = committed.filter((path) => path.endsWith('.schema.json'));
    expect(schemas.length).toBeGreaterThan(0);
    for (const path of schemas) {
      const name = path.slice(path.lastIndexOf('/') + 1, -'.schema.json'.length);
      for (const form of [name, `${name}.json`, `${name}.schema.json`]) {
        const answer = await get(`/json-schema/${form}`);
        expect([form, answer.status]).toEqual([form, 200]);
        expect(answer.headers.get('Content-Type')).toMatch(/^application\/schema\+json/);
        expect(answer.json<{ $id: string }>().$id).toContain(name);
      }
    }
    expect((await get('/json-schema/nothing')).status).toBe(404);
  });

  it('states in its CapabilityStatement exactly what it does', async () => {
    const answer = await get('/fhir/metadata');
    expect(answer.headers.get('Content-Type')).toMatch(/^application\/fhir\+json/);
    const statement = answer.json<CapabilityStatement>();
    expect(statement).toMatchObject({ resourceType: 'CapabilityStatement', kind: 'instance', fhirVersion: '4.0.1' });
    const declared = statement.rest?.[0]?.resource ?? [];
    // What is kept of exams, what callers send, and the audit trail are held to their word by the tests of the search.
    const published = declared.filter(
      ({ type, interaction = [] }) => interaction.length === 2 && type !== 'AuditEvent',
    );
    expect(published.map(({ type }) => type)).toEqual([
      'CodeSystem',
      'ConceptMap',
      'Questionnaire',
      'SearchParameter',
      'StructureDefinition',
      'ValueSet',
    ]);
    for (const { type, interaction, searchParam } of published) {
      expect(interaction?.map(({ code }) => code)).toEqual(['read', 'search-type']);
      expect(searchParam?.map(({ name }) => name)).toEqual(['url']);
      const all = (await get(`/fhir/${type}`)).json<Bundle<FhirResource & { url: string }>>();
      expect(all).toMatchObject({ resourceType: 'Bundle', type: 'searchset', total: all.entry?.length });
      for (const { resource, fullUrl } of all.entry ?? []) {
        const read = await get(`/fhir/${type}/${resource?.id}`);
        expect([read.status, read.json()]).toEqual([200, resource]);
        const found = (await get(`/fhir/${type}?url=${encodeURIComponent(fullUrl ?? '')}`)).json<Bundle>();
        expect(found.entry?.map((entry) => entry.resource)).toEqual([resource]);
      }
      const none = (await get(`/fhir/${type}?url=https://nobody.example/x`)).json<Bundle>();
      expect([none.total, none.entry]).toEqual([0, undefined]);
      expect((await get(`/fhir/${type}/none-such`)).status).toBe(404);
    }
  });

  it('answers HEAD like GET, without the body', async () => {
    for (const path of ['/', '/catalogue', '/fhir/metadata', '/health/live', '/nothing']) {
      const head = await send(service.url + path, { method: 'HEAD' });
      const full = await get(path);
      expect([path, head.status, head.text]).toEqual([path, full.status, '']);
      if (full.status === 200) expect(head.headers.get('Content-Length')).toBe(full.headers.get('Content-Length'));
    }
  });

  it('says at its root what there is, as a page for a person and as JSON for a program, with the caution', async () => {
    const browser = { Accept: 'text/html,application/xhtml+xml,*/*;q=0.8' };
    for (const path of ['/', '/about']) {
      const page = await get(path, browser);
      expect(page.headers.get('Content-Type')).toBe('text/html; charset=utf-8');
      expect(page.text).toMatch(/not a diagnosis/);
    }
    const index = (await get('/')).json<{ endpoints: { method: string; path: string }[]; files: string[] }>();
    expect([...index.files].sort()).toEqual([...committed].sort());
    for (const { method, path } of index.endpoints.filter((endpoint) => !endpoint.path.includes('{'))) {
      const answer = await send(service.url + path, { method });
      // Without a body or parameters some can only say what they need, and without an authorisation server there is none to tell of.
      const isAbsent = path.endsWith('/smart-configuration');
      expect([path, answer.status]).toEqual([path, isAbsent ? 404 : answer.status === 400 ? 400 : 200]);
    }
  });

  it('serves the catalogue', async () => {
    const answer = await get('/catalogue');
    expect(answer.status).toBe(200);
    expect(Object.keys(answer.json()).length).toBeGreaterThan(0);
  });

  it('sends protective headers with every answer and lets no exam be kept on the way', async () => {
    for (const path of ['/', '/health/ready', '/exams/x', '/nothing']) {
      const { headers } = await get(path);
      expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
      expect(headers.get('Content-Security-Policy')).toMatch(/^default-src 'none'/);
      expect(headers.get('Cache-Control')).toBe('no-store');
      expect(headers.get('X-Powered-By')).toBeNull();
      expect(headers.get('X-Request-Id')).toMatch(/^[0-9a-f]{32}$/);
    }
  });

  it('takes up the trace of a caller as the id of the request', async () => {
    const trace = '4bf92f3577b34da6a3ce929d0e0e4736';
    const id = async (traceparent: string) => (await get('/health/live', { traceparent })).headers.get('X-Request-Id');
    expect(await id(`00-${trace}-00f067aa0ba902b7-01`)).toBe(trace);
    for (const invalid of ['x', `00-${'0'.repeat(32)}-00f067aa0ba902b7-01`, `00-${trace}-short-01`]) {
      // A trace of its own then.
      expect(await id(invalid)).toMatch(/^(?!0{32})[0-9a-f]{32}$/);
    }
  });
});
