import { request } from 'node:http';
import { validateResource } from '@medplum/core';
import type { CapabilityStatement } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashOf, newKey } from '../../src/access/api-key.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam } from '../support/example-exam.ts';
import { type GuardedService, issuer, startGuardedService, tokenOf, tokenUrl } from '../support/guarded-service.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';

let service: GuardedService;
beforeAll(async () => {
  service = await startGuardedService();
});
afterAll(() => service.stop());

const observation = (headers: Record<string, string>, query = '') =>
  send(`${service.url}/fhir/Observation${query}`, { headers });

describe('a request that is not let in', () => {
  // RFC 6750, section 3: the challenge and its error codes.
  it('is told how, in the same words whatever was wrong', async () => {
    const none = await observation({});
    expect(none.status).toBe(401);
    expect(none.headers.get('WWW-Authenticate')).toBe('Bearer realm="neuroexam-fhir"');
    expect(none.headers.get('Content-Type')).toMatch(/^application\/fhir\+json/);
    expect(none.json()).toMatchObject({
      resourceType: 'OperationOutcome',
      issue: [{ severity: 'error', code: 'login' }],
    });
    const wrong = [
      'Bearer token',
      `Bearer ${newKey()}`,
      `bearer ${await tokenOf(service.signing, { aud: 'x' })}`,
      `Bearer ${await tokenOf(service.signing, { exp: 1 })}`,
      `Bearer ${await tokenOf(service.signing, {})}, Bearer ${await tokenOf(service.signing, {})}`,
    ];
    const answers = await Promise.all(wrong.map((Authorization) => observation({ Authorization })));
    for (const answer of answers) {
      expect(answer.status).toBe(401);
      expect(answer.headers.get('WWW-Authenticate')).toBe('Bearer realm="neuroexam-fhir", error="invalid_token"');
      expect(answer.text).toBe(answers[0]?.text);
    }
    expect((await observation({ Authorization: 'Basic dXNlcjpwYXNz' })).text).toBe(none.text);
    const problem = await sendJson(`${service.url}/localisation`, {});
    expect(problem.status).toBe(401);
    expect(problem.headers.get('Content-Type')).toMatch(/^application\/problem\+json/);
    expect(problem.json()).toMatchObject({ status: 401, code: 'UNAUTHENTICATED' });
  });

  it('is told the scopes that would be enough', async () => {
    const answer = await observation(await service.bearer('system/Observation.r'));
    expect(answer.status).toBe(403);
    expect(answer.headers.get('WWW-Authenticate')).toBe(
      'Bearer realm="neuroexam-fhir", error="insufficient_scope", scope="system/Observation.s"',
    );
    expect(answer.json()).toMatchObject({ issue: [{ code: 'forbidden' }] });
  });

  it('may not have its token in the address, twice, or without end', async () => {
    const token = await tokenOf(service.signing, { scope: 'system/*.rs' });
    const inQuery = await observation({ Authorization: `Bearer ${token}` }, `?access_token=${token}`);
    expect([inQuery.status, inQuery.text.includes(token)]).toEqual([400, false]);
    const twice = await raw(['Authorization', `Bearer ${token}`, 'Authorization', `Bearer ${token}`]);
    expect(twice).toBe(400);
    expect(await raw(['Authorization', `Bearer ${token}`])).toBe(200);
    // Node refuses so large a header before anything of ours sees it: 431, RFC 6585.
    expect([431, 0]).toContain(await raw(['Authorization', `Bearer ${'a'.repeat(1024 * 1024)}`]));
    const form = await send(`${service.url}/fhir/Observation/_search`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/x-www-form-urlencoded' },
      body: `access_token=${token}`,
    });
    expect(form.status).toBe(401);
  });

  it('keeps nothing of what was sent', async () => {
    const exam = exampleExam();
    for (const headers of [{}, await service.bearer('system/*.cruds'), { Authorization: `Bearer ${newKey()}` }]) {
      expect([401, 403]).toContain((await sendJson(`${service.url}/exams`, exam, { headers })).status);
    }
    const count = await observation(await service.bearer('system/*.rs'), '?_summary=count');
    expect(count.json()).toMatchObject({ total: 0 });
  });

  /** Status of a request with headers as they are; 0 when the connection is closed on it. */
  function raw(headers: string[]): Promise<number> {
    return new Promise((resolve) => {
      const { hostname, port } = new URL(service.url);
      const req = request(
        { hostname, port, path: '/fhir/Observation?_count=1', headers: ['Host', hostname, ...headers] as never },
        (res) => {
          res.resume();
          resolve(res.statusCode ?? 0);
        },
      );
      req.once('error', () => resolve(0));
      req.end();
    });
  }
});

describe('static keys', () => {
  it('let in, and are added and taken away while the service runs', async () => {
    const post = (key: string) =>
      sendJson(`${service.url}/exams`, exampleExam(), { headers: { Authorization: `Bearer ${key}` } });
    expect((await post(service.key)).status).toBe(201);
    expect(
      (await send(`${service.url}/exams/none`, { headers: { Authorization: `Bearer ${service.key}` } })).status,
    ).toBe(403);
    const next = newKey();
    service.writeKeys({ name: 'ward-7', hash: hashOf(next), scopes: ['system/exam.c'] });
    const rotated = async () => (await post(next)).status;
    await expect.poll(rotated, { timeout: 20_000, interval: 200 }).toBe(200);
    expect((await post(service.key)).status).toBe(401);
  });
});

describe('what is said of access control', () => {
  // SMART App Launch 2.2.0: required members of the document, for backend services.
  it('is discovered at the FHIR base', async () => {
    const answers = await Promise.all(
      ['/.well-known/smart-configuration', '/fhir/.well-known/smart-configuration'].map((path) =>
        send(service.url + path),
      ),
    );
    for (const answer of answers) {
      expect(answer.status).toBe(200);
      expect(answer.headers.get('Content-Type')).toMatch(/^application\/json/);
      expect(answer.json()).toMatchObject({
        issuer,
        token_endpoint: tokenUrl,
        grant_types_supported: ['client_credentials'],
        token_endpoint_auth_methods_supported: ['private_key_jwt'],
        token_endpoint_auth_signing_alg_values_supported: ['RS384', 'ES384'],
        code_challenge_methods_supported: ['S256'],
        scopes_supported: expect.arrayContaining(['system/*.rs', 'system/exam.cru', 'system/localisation.c']),
        capabilities: expect.arrayContaining(['permission-v2', 'client-confidential-asymmetric']),
      });
    }
  });

  it('stands in the statement of capabilities, which stays a valid one', async () => {
    const statement = (await send(`${service.url}/fhir/metadata`)).json<CapabilityStatement>();
    indexR4Definitions();
    expect(validateResource(statement as Parameters<typeof validateResource>[0])).toEqual([]);
    const { rest } = statement;
    expect(rest?.[0]?.security).toMatchObject({
      service: [{ coding: [{ code: 'SMART-on-FHIR' }] }],
      extension: [{ extension: [{ url: 'token', valueUri: tokenUrl }] }],
    });
  });
});
