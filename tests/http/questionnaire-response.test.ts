import type { Bundle, CapabilityStatement, OperationOutcome, QuestionnaireResponse } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

let service: RunningService;
beforeAll(async () => {
  service = await startTestService();
}, 120_000);
afterAll(() => service.stop());

const fhirJson = { headers: { 'Content-Type': 'application/fhir+json' } };
const post = (path: string, body: unknown) => sendJson(`${service.url}${path}`, body, fhirJson);
const extract = '/fhir/QuestionnaireResponse/$extract';

/** The exam as a form, from an exam that is kept under another identifier, so that this one is new. */
async function formNumbered(value: string): Promise<QuestionnaireResponse> {
  const kept = await post('/exams', examNumbered(`${value}-source`));
  const form = (
    await send(`${service.url}${kept.headers.get('Location')}/questionnaire-response`)
  ).json<QuestionnaireResponse>();
  return { ...form, identifier: { system: 'https://clinic.example/exams', value } };
}

describe('a QuestionnaireResponse to our Questionnaire', () => {
  it('is kept as the exam that it means, answered with the same Bundle as the plain exam, in either order', async () => {
    const first = await post('/exams', await formNumbered('Q-1'));
    expect(first.status).toBe(201);
    const plain = await post('/exams', examNumbered('Q-1'));
    expect([plain.status, plain.text === first.text]).toEqual([200, true]);
    const path = String(first.headers.get('Location'));
    const kept = (await send(`${service.url}${path}`)).json();
    expect(kept).toMatchObject({ identifier: { value: 'Q-1' }, status: 'final', person: examNumbered('Q-1').person });

    const original = await post('/exams', examNumbered('Q-2'));
    const again = await post('/exams', await formNumbered('Q-2'));
    expect([again.status, again.text === original.text]).toEqual([200, true]);
  });

  it('with other content under a known identifier is a conflict', async () => {
    const form = await formNumbered('Q-3');
    expect((await post('/exams', form)).status).toBe(201);
    expect((await post('/exams', { ...form, authored: '2026-01-02T10:00:00Z' })).status).toBe(409);
  });

  it('corrects an exam, whichever way that came in', async () => {
    const { headers } = await post('/exams', examNumbered('Q-4'));
    const path = String(headers.get('Location'));
    const form: QuestionnaireResponse = { ...(await formNumbered('Q-4')), status: 'amended' };
    const correction = { method: 'PUT', headers: { ...fhirJson.headers, 'If-Match': 'W/"1"' } };
    const answer = await sendJson(`${service.url}${path}`, form, correction);
    expect([answer.status, answer.headers.get('ETag')]).toEqual([200, 'W/"2"']);
    expect((await send(`${service.url}${path}/questionnaire-response`)).json()).toMatchObject({ status: 'amended' });
  });

  it('is localised without being kept', async () => {
    const form = await formNumbered('Q-5');
    const { identifier: _, ...plain } = examNumbered('Q-5');
    const answer = (await post('/localisation', form)).json<{
      localisations: { supporting: { finding: string }[] }[];
    }>();
    const expected = (await post('/localisation', plain)).json<typeof answer>();
    const sites = (one: typeof answer) =>
      one.localisations.map(({ supporting, ...rest }) => ({ ...rest, n: supporting.length }));
    expect(sites(answer).map((one) => JSON.stringify(one).replaceAll(/"finding":"[^"]*"/g, ''))).toEqual(
      sites(expected).map((one) => JSON.stringify(one).replaceAll(/"finding":"[^"]*"/g, '')),
    );
    for (const { finding } of answer.localisations[0]?.supporting ?? []) expect(finding).toMatch(/^\/item\/\d+/);
  });
});

/** Source: HL7 Structured Data Capture, operation QuestionnaireResponse/$extract: the response as body or parameter. */
describe('$extract', () => {
  it('answers the Bundle that the exam would be answered with, and keeps nothing', async () => {
    const form = await formNumbered('Q-6');
    const extracted = await post(extract, form);
    expect([extracted.status, extracted.json<Bundle>().type]).toEqual([200, 'transaction']);
    const parameter = [{ name: 'questionnaire-response', resource: form }];
    expect((await post(extract, { resourceType: 'Parameters', parameter })).text).toBe(extracted.text);
    const kept = await post('/exams', examNumbered('Q-6'));
    expect([kept.status, kept.text === extracted.text]).toEqual([201, true]);
  });

  it('tells every fault, with its place in what was sent', async () => {
    const response = { ...(await formNumbered('Q-7')), status: 'stopped', item: [{ linkId: 'powr' }] };
    const bare = (await post(extract, response)).json<OperationOutcome>();
    expect(bare.issue.map(({ diagnostics }) => diagnostics)).toEqual(['/status', '/item/0/linkId']);
    const parameter = [{ name: 'questionnaire-response', resource: response }];
    const wrapped = (await post(extract, { resourceType: 'Parameters', parameter })).json<OperationOutcome>();
    expect(wrapped.issue.map(({ diagnostics }) => diagnostics)).toEqual([
      '/parameter/0/resource/status',
      '/parameter/0/resource/item/0/linkId',
    ]);
  });

  it('refuses what holds no response', async () => {
    for (const body of [{ resourceType: 'Bundle' }, { resourceType: 'Parameters', parameter: [] }, [], 'null']) {
      expect((await post(extract, body)).status).toBe(400);
    }
    const unknown = { resourceType: 'Parameters', parameter: [{ name: 'model', resource: {} }] };
    expect((await post(extract, unknown)).text).toContain('questionnaire-response');
    expect((await send(`${service.url}${extract}`)).status).toBe(405);
  });

  it('is stated, by its definition, where it works', async () => {
    const { rest } = (await send(`${service.url}/fhir/metadata`)).json<CapabilityStatement>();
    const stated = rest?.[0]?.resource?.filter(({ operation = [] }) =>
      operation.some(({ name }) => name === 'extract'),
    );
    expect(stated?.map(({ type }) => type)).toEqual(['QuestionnaireResponse']);
  });
});
