import type { Bundle, Observation, OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

/** Place and status of the findings of power. */
function powerStatuses(bundle: Bundle) {
  return (bundle.entry ?? []).flatMap((entry) => {
    const { code, bodySite, status } = entry.resource as Observation;
    return code?.coding?.[0]?.code === 'power/ankle-dorsiflexion' ? [[bodySite?.coding?.[0]?.code, status]] : [];
  });
}

describe('exams over HTTP', () => {
  let service: RunningService;
  let exams: string;

  beforeAll(async () => {
    service = await startTestService();
    exams = `${service.url}/exams`;
  });
  afterAll(() => service.stop());

  const correct = (location: string | null, body: unknown, ifMatch?: string) =>
    sendJson(`${service.url}${location}`, body, {
      method: 'PUT',
      headers: ifMatch === undefined ? {} : { 'If-Match': ifMatch },
    });

  it('keeps a new exam and answers 201 with its transaction Bundle', async () => {
    const answer = await sendJson(exams, examNumbered('new'));
    expect(answer.status).toBe(201);
    expect(answer.headers.get('Content-Type')).toBe('application/fhir+json; charset=utf-8');
    expect(answer.headers.get('Location')).toMatch(/^\/exams\/[0-9a-f-]{36}$/);
    expect(answer.headers.get('ETag')).toBe('W/"1"');
    expect(Number(answer.headers.get('Content-Length'))).toBe(Buffer.byteLength(answer.text));
    expect(answer.json<Bundle>()).toMatchObject({ resourceType: 'Bundle', type: 'transaction' });
  });

  it('answers a repeat with 200 and the very same bytes, whatever the white space and the order of keys', async () => {
    const body = examNumbered('repeated');
    const first = await sendJson(exams, body);
    const reordered = Object.fromEntries(Object.entries(body).reverse());
    for (const repeat of [body, JSON.stringify(body, null, 3), reordered]) {
      const answer = await sendJson(exams, repeat);
      expect(answer.status).toBe(200);
      expect(answer.text).toBe(first.text);
      expect(answer.headers.get('Location')).toBe(first.headers.get('Location'));
    }
  });

  it('takes one exam posted twenty times at once as one exam', async () => {
    const body = examNumbered('twenty-times');
    const answers = await Promise.all(Array.from({ length: 20 }, () => sendJson(exams, body)));
    expect(answers.filter((answer) => answer.status === 201)).toHaveLength(1);
    expect(answers.filter((answer) => answer.status === 200)).toHaveLength(19);
    expect(new Set(answers.map((answer) => answer.text)).size).toBe(1);
  });

  it('refuses other content under the same identifier with 409 and keeps the first', async () => {
    const first = await sendJson(exams, examNumbered('taken'));
    const other = await sendJson(exams, examNumbered('taken', { person: { ageYears: 47, sex: 'female' } }));
    expect(other.status).toBe(409);
    expect(other.json<OperationOutcome>().issue[0]).toMatchObject({
      code: 'duplicate',
      details: { coding: [{ code: 'IDENTIFIER_IN_USE' }] },
    });
    expect(other.headers.get('Location')).toBe(first.headers.get('Location'));
    const bundle = await send(`${service.url}${first.headers.get('Location')}/bundle`);
    expect(bundle.text).toBe(first.text);
  });

  it('returns an exam exactly as it was sent', async () => {
    const sent = `  ${JSON.stringify(examNumbered('as sent'), null, '\t')}\n`;
    const { headers } = await sendJson(exams, sent);
    const answer = await send(`${service.url}${headers.get('Location')}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('Content-Type')).toBe('application/json; charset=utf-8');
    expect(answer.headers.get('ETag')).toBe('W/"1"');
    expect(answer.text).toBe(sent);
  });

  it('returns the Bundle as transaction, collection or document', async () => {
    const { headers, text } = await sendJson(exams, examNumbered('bundles'));
    const url = `${service.url}${headers.get('Location')}/bundle`;
    expect((await send(url)).text).toBe(text);
    expect((await send(`${url}?type=transaction`)).text).toBe(text);
    for (const type of ['collection', 'document']) {
      const answer = await send(`${url}?type=${type}`);
      expect(answer.status).toBe(200);
      expect(answer.json<Bundle>().type).toBe(type);
    }
    expect((await send(`${url}?type=batch`)).status).toBe(400);
    expect((await send(`${url}?type=document&type=document`)).status).toBe(400);
  });

  it('adds a version at a correction and keeps the old one', async () => {
    const first = await sendJson(exams, examNumbered('corrected'));
    const location = first.headers.get('Location');
    const amended = examNumbered('corrected', { status: 'amended', person: { ageYears: 64, sex: 'female' } });
    const second = await correct(location, amended, 'W/"1"');
    expect(second.status).toBe(200);
    expect(second.headers.get('ETag')).toBe('W/"2"');
    expect(second.text).not.toBe(first.text);

    expect((await send(`${service.url}${location}`)).json()).toEqual(amended);
    expect((await send(`${service.url}${location}?version=1`)).json()).toEqual(examNumbered('corrected'));
    expect((await send(`${service.url}${location}/bundle?version=1`)).text).toBe(first.text);
    expect((await send(`${service.url}${location}/bundle`)).text).toBe(second.text);
    expect((await send(`${service.url}${location}?version=3`)).status).toBe(404);

    const again = await sendJson(exams, amended);
    expect([again.status, again.text]).toEqual([200, second.text]);
    expect((await sendJson(exams, examNumbered('corrected'))).status).toBe(409);
  });

  it('withdraws in the Bundle of a correction what only the corrected version had', async () => {
    const power = (side: string) => ({ power: [{ movement: 'ankle-dorsiflexion', side, grade: '2' }] });
    const { otherwiseNormal: _, ...plain } = examNumbered('wrong side');
    const first = await sendJson(exams, { ...plain, findings: power('left') });
    expect(first.status).toBe(201);
    const location = first.headers.get('Location');
    const second = await correct(location, { ...plain, status: 'amended', findings: power('right') }, 'W/"1"');
    expect(second.status).toBe(200);
    expect(powerStatuses(second.json())).toEqual([
      ['ankle-dorsiflexion-muscles.right', 'amended'],
      ['ankle-dorsiflexion-muscles.left', 'entered-in-error'],
    ]);
    const url = `${service.url}${location}/bundle`;
    expect((await send(url)).text).toBe(second.text);
    expect(powerStatuses((await send(`${url}?type=collection`)).json())).toHaveLength(2);
    expect(powerStatuses((await send(`${url}?type=document`)).json())).toEqual([
      ['ankle-dorsiflexion-muscles.right', 'amended'],
    ]);

    const third = await correct(location, { ...plain, status: 'amended', findings: power('left') }, 'W/"2"');
    expect(powerStatuses(third.json())).toEqual([
      ['ankle-dorsiflexion-muscles.left', 'amended'],
      ['ankle-dorsiflexion-muscles.right', 'entered-in-error'],
    ]);
  });

  it('accepts a correction only with If-Match, and only against the current version', async () => {
    const { headers } = await sendJson(exams, examNumbered('matched'));
    const location = headers.get('Location');
    const amended = examNumbered('matched', { status: 'amended' });
    expect((await correct(location, amended)).status).toBe(428);
    expect((await correct(location, amended, '*')).status).toBe(400);
    expect((await correct(location, amended, 'W/"2"')).status).toBe(412);
    expect((await correct(location, amended, 'W/"1"')).status).toBe(200);
    const stale = await correct(location, amended, 'W/"1"');
    expect(stale.status).toBe(412);
    expect(stale.text).toMatch(/VERSION_MISMATCH/);
  });

  it('refuses a correction that names another exam or is no correction, with both faults', async () => {
    const { headers } = await sendJson(exams, examNumbered('mine'));
    const answer = await correct(headers.get('Location'), examNumbered('not mine'), 'W/"1"');
    expect(answer.status).toBe(422);
    const outcome = answer.json<OperationOutcome>();
    expect(outcome.issue.map((issue) => issue.diagnostics)).toEqual(['/identifier', '/status']);
  });

  it('knows nothing to correct or return under an id that it never gave', async () => {
    const id = '00000000-0000-5000-8000-000000000000';
    for (const path of [`/exams/${id}`, `/exams/${id}/bundle`, '/exams/x', '/exams/..%2f..%2fetc']) {
      expect((await send(`${service.url}${path}`)).status).toBe(404);
    }
  });

  it('lets exactly one of several corrections at once win', async () => {
    const { headers } = await sendJson(exams, examNumbered('raced'));
    const race = await Promise.all(
      Array.from({ length: 12 }, (_, n) =>
        correct(
          headers.get('Location'),
          examNumbered('raced', { status: 'amended', person: { ageYears: 30 + n } }),
          'W/"1"',
        ),
      ),
    );
    expect(race.map((answer) => answer.status).sort()).toEqual([200, ...Array.from({ length: 11 }, () => 412)]);
    expect((await send(`${service.url}${headers.get('Location')}`)).headers.get('ETag')).toBe('W/"2"');
  });

  it('answers a localisation without keeping anything', async () => {
    const { identifier: _, ...anonymous } = examNumbered('unused');
    const answer = await sendJson(`${service.url}/localisation`, anonymous);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('Content-Type')).toBe('application/json; charset=utf-8');
    expect(answer.json()).toMatchObject({ localisations: expect.any(Array), modelVersion: expect.any(String) });
    expect(answer.headers.get('Location')).toBeNull();
  });
});
