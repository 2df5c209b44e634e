import type { Bundle, CapabilityStatement, Observation } from 'fhir/r4.js';
import { Client } from 'fhir-kit-client';
import FHIR from 'fhirclient';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sendJson } from '../support/client.ts';
import { exampleExam } from '../support/example-exam.ts';
import { type GuardedService, roles, startGuardedService, tokenOf, tokenUrl } from '../support/guarded-service.ts';

// Two FHIR clients from npm, as they come, with the token of an analyst.

let service: GuardedService;
let base: string;
let token: string;
beforeAll(async () => {
  service = await startGuardedService();
  base = `${service.url}/fhir`;
  token = await tokenOf(service.signing, { scope: roles.analyst });
  const headers = await service.bearer(roles.integration);
  expect((await sendJson(`${service.url}/exams`, exampleExam(), { headers })).status).toBe(201);
});
afterAll(() => service.stop());

describe('fhir-kit-client', () => {
  it('finds out where tokens are had, from the document and from the statement', async () => {
    const client = new Client({ baseUrl: base });
    expect(await client.smartAuthMetadata()).toMatchObject({ tokenUrl: new URL(tokenUrl) });
    const statement = (await client.capabilityStatement()) as unknown as CapabilityStatement;
    expect(statement.rest?.[0]?.security?.service?.[0]?.coding?.[0]?.code).toBe('SMART-on-FHIR');
  });

  it('is let in with its token, and turned away without', async () => {
    const client = new Client({ baseUrl: base });
    const search = () => client.search({ resourceType: 'Observation', searchParams: { _count: 5 } });
    await expect(search()).rejects.toMatchObject({
      response: { status: 401, data: { resourceType: 'OperationOutcome' } },
    });
    client.bearerToken = token;
    const bundle = (await search()) as unknown as Bundle;
    expect(bundle.entry).toHaveLength(5);
    expect((await client.nextPage({ bundle: bundle as never })) as unknown as Bundle).toMatchObject({
      type: 'searchset',
    });
  });
});

describe('fhirclient', () => {
  const client = (accessToken?: string) => {
    const storage = {
      get: async () => undefined,
      set: async (_: string, value: unknown) => value,
      unset: async () => true,
    };
    const api = FHIR({ headers: {}, url: '/', method: 'GET' } as never, {} as never, storage as never);
    return api.client({
      serverUrl: base,
      ...(accessToken === undefined ? {} : { tokenResponse: { access_token: accessToken } }),
    });
  };

  it('is let in with its token, page after page, and turned away without', async () => {
    const all = await client(token).request<Observation[]>('Observation?_count=20', { pageLimit: 0, flat: true });
    const count = (await client(token).request('Observation?_summary=count')) as unknown as Bundle;
    expect(all).toHaveLength(count.total as number);
    await expect(client().request('Observation')).rejects.toMatchObject({ statusCode: 401 });
  });
});
