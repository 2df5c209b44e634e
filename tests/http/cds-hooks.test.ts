import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import type { Bundle, QuestionnaireResponse, ServiceRequest } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Card } from '../../src/cds/card.ts';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { discoverySchema, responseSchema } from '../cds/cds-hooks-schema.ts';
import { compiledByBuild } from '../support/built.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { examNumbered, exampleExam } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';

const ajv = new Ajv2020({ allErrors: true, strict: false });
addFormats.default(ajv);
const isResponse = ajv.compile(responseSchema);
const isDiscovery = ajv.compile(discoverySchema);

let service: RunningService;
beforeAll(async () => {
  const config = readConfig({
    PORT: '0',
    LOG_LEVEL: 'silent',
    DATA_DIR: temporaryFolder(),
    CDS_ALLOWED_ORIGINS: 'https://ehr.example, http://127.0.0.1:9000',
  });
  service = await startService(config, compiledByBuild());
}, 120_000);
afterAll(() => service.stop());

const hookInstance = 'd1577c69-dfbe-44ad-ba6d-3e05e953b2ea';
const localisation = '/cds-services/neuroexam-localisation';
const discharge = '/cds-services/neuroexam-before-discharge';
const call = (path: string, body: unknown) => sendJson(`${service.url}${path}`, body);

function view(patientId: string, prefetch?: Record<string, unknown>) {
  const context = { userId: 'Practitioner/7', patientId, encounterId: '88' };
  return { hook: 'patient-view', hookInstance, context, ...(prefetch && { prefetch }) };
}

function cardsOf(answer: Answer): readonly Card[] {
  expect(answer.status).toBe(200);
  const body = answer.json<{ cards: Card[] }>();
  expect([isResponse(body), isResponse.errors]).toEqual([true, null]);
  return body.cards;
}

/** An hour ago, since the flags of an old exam do not interrupt. */
const recently = () => `${new Date(Date.now() - 3_600_000).toISOString().slice(0, 19)}Z`;

async function formOf(exam: unknown): Promise<QuestionnaireResponse> {
  const { headers } = await call('/exams', exam);
  return (await send(`${service.url}${headers.get('Location')}/questionnaire-response`)).json();
}

describe('discovery', () => {
  it('describes the services as CDS Hooks asks, each with a prefetch of our own form', async () => {
    const body = (await send(`${service.url}/cds-services`)).json<{ services: { id: string; hook: string }[] }>();
    expect([isDiscovery(body), isDiscovery.errors]).toEqual([true, null]);
    expect(body.services.map(({ id, hook }) => `${id} ${hook}`)).toEqual([
      'neuroexam-localisation patient-view',
      'neuroexam-before-discharge encounter-discharge',
    ]);
  });
});

describe('cards of an exam in context', () => {
  it('put red flags first and interrupting, then the site with its reasons, then proposals to accept', async () => {
    const subject = { reference: 'Patient/cds-1' };
    const exam = exampleExam(
      { identifier: { system: 'urn:x:exams', value: 'CDS-1' }, subject, examinedAt: recently() },
      'cervical-cord',
    );
    expect((await call('/exams', exam)).status).toBe(201);
    const cards = cardsOf(await call(localisation, view('cds-1')));
    const indicators = cards.map(({ indicator }) => indicator);
    expect(indicators.indexOf('critical')).toBe(0);
    expect(indicators.lastIndexOf('critical')).toBeLessThan(indicators.indexOf('info'));
    const place = cards.find(({ summary }) => summary.startsWith('Localisation: '));
    expect(place?.summary).toContain('Spinal cord');
    expect(place?.detail).toContain('corticospinal fibres');
    for (const { detail, source } of cards) {
      expect(detail).toContain('Decision support for trained clinicians');
      expect(source).toMatchObject({ label: 'neuroexam-fhir', url: service.url });
    }
    const proposals = cards.at(-1);
    expect(proposals?.selectionBehavior).toBe('any');
    const drafts = proposals?.suggestions?.flatMap(({ actions }) => actions.map(({ resource }) => resource));
    for (const draft of drafts as ServiceRequest[]) {
      expect(draft).toMatchObject({
        status: 'draft',
        intent: 'proposal',
        subject,
        encounter: { reference: 'Encounter/88' },
      });
    }
    expect(drafts?.length).toBeGreaterThan(0);
  });

  it('are the same for the same exam, from the store or as a form in the prefetch, and name nobody', async () => {
    const subject = { reference: 'Patient/cds-2', display: 'Invented Person' };
    const form = await formOf(examNumbered('CDS-2', { subject, examinedAt: recently() }));
    const searchset: Bundle = { resourceType: 'Bundle', type: 'searchset', entry: [{ resource: form }] };
    const kept = await call(localisation, view('cds-2'));
    const fetched = await call(localisation, view('cds-2', { questionnaireResponse: searchset }));
    const alone = await call(localisation, view('cds-2', { questionnaireResponse: form }));
    expect(cardsOf(kept).length).toBeGreaterThan(0);
    expect([fetched.text === kept.text, alone.text === kept.text]).toEqual([true, true]);
    const words = cardsOf(kept)
      .map(({ summary, detail }) => summary + detail)
      .join();
    expect(words).not.toMatch(/cds-2|Invented|CDS-2/);
  });

  it('take the newest exam, and none that was entered in error', async () => {
    const subject = { reference: 'Patient/cds-3' };
    const numbered = (value: string, examinedAt: string) => examNumbered(value, { subject, examinedAt });
    await call('/exams', numbered('CDS-3a', '2026-03-01T10:00:00Z'));
    const { headers } = await call('/exams', numbered('CDS-3b', '2026-03-05T10:00:00Z'));
    const days = async () =>
      cardsOf(await call(localisation, view('cds-3'))).map(({ summary }) => /2026-03-\d\d/.exec(summary)?.[0]);
    expect(new Set(await days())).toEqual(new Set(['2026-03-05']));
    const wrong = { ...numbered('CDS-3b', '2026-03-05T10:00:00Z'), status: 'entered-in-error' };
    const correction = { method: 'PUT', headers: { 'If-Match': 'W/"1"' } };
    expect((await sendJson(`${service.url}${headers.get('Location')}`, wrong, correction)).status).toBe(200);
    expect(new Set(await days())).toEqual(new Set(['2026-03-01']));
  });

  it('are fewer before discharge, and ask for an encounter', async () => {
    const { hook: _, ...body } = view('cds-1');
    const cards = cardsOf(await call(discharge, { hook: 'encounter-discharge', ...body }));
    expect(cards.some(({ summary }) => summary.startsWith('Localisation'))).toBe(false);
    expect(cards[0]?.indicator).toBe('critical');
    const context = { userId: 'Practitioner/7', patientId: 'cds-1' };
    const refused = await call(discharge, { hook: 'encounter-discharge', hookInstance, context });
    expect([refused.status, refused.text.includes('encounterId')]).toEqual([400, true]);
  });

  it('name what to examine next where too little is known', async () => {
    const findings = { reflexes: [{ reflex: 'ankle', side: 'left', grade: '1' }] };
    const exam = {
      ...examNumbered('CDS-4', { subject: { reference: 'Patient/cds-4' }, findings }),
      history: {},
      results: [],
      otherwiseNormal: [],
    };
    expect((await call('/exams', exam)).status).toBe(201);
    const [card] = cardsOf(await call(localisation, view('cds-4')));
    expect(card?.detail).toContain('What to examine next');
  });
});

describe('a hook without an exam', () => {
  it('gives no cards where the client looked and found none', async () => {
    expect(cardsOf(await call(localisation, view('nobody', { questionnaireResponse: null })))).toEqual([]);
    const empty = { resourceType: 'Bundle', type: 'searchset', total: 0 };
    expect(cardsOf(await call(localisation, view('nobody', { questionnaireResponse: empty })))).toEqual([]);
  });

  it('is told that the prefetch is missing where nobody looked', async () => {
    const answer = await call(localisation, { ...view('nobody'), fhirServer: 'http://127.0.0.1:1/fhir' });
    expect([answer.status, answer.json().code]).toEqual([412, 'PREFETCH_MISSING']);
    expect(answer.headers.get('Content-Type')).toContain('application/problem+json');
  });

  it('tells every fault of the request and of the form, each at its place', async () => {
    const wrong = await call(localisation, { hook: 'order-sign', hookInstance: 'x', context: { patientId: 'a b' } });
    const { errors } = wrong.json<{ errors: { pointer: string }[] }>();
    expect(wrong.status).toBe(400);
    expect(errors.map(({ pointer }) => pointer).sort()).toEqual([
      '/context',
      '/context/patientId',
      '/hook',
      '/hookInstance',
    ]);
    const form = await formOf(examNumbered('CDS-5', { subject: { reference: 'Patient/cds-5' } }));
    const prefetch = { questionnaireResponse: { ...form, status: 'stopped' } };
    const faulty = await call(localisation, view('cds-5', prefetch));
    expect([faulty.status, faulty.text.includes('/prefetch/questionnaireResponse/status')]).toEqual([422, true]);
  });

  it('refuses the exam of another patient', async () => {
    const form = await formOf(examNumbered('CDS-6', { subject: { reference: 'Patient/cds-6' } }));
    const answer = await call(localisation, view('cds-7', { questionnaireResponse: form }));
    expect([answer.status, answer.text.includes('OTHER_PATIENT'), answer.text.includes('cds-6')]).toEqual([
      422,
      true,
      false,
    ]);
  });
});

describe('feedback', () => {
  const outcomeTimestamp = '2026-11-01T10:00:00Z';
  const accepted = {
    card: hookInstance,
    outcome: 'accepted',
    acceptedSuggestions: [{ id: hookInstance }],
    outcomeTimestamp,
  };
  it('is taken, and refused with every fault where it is not as the standard asks', async () => {
    const overridden = { card: hookInstance, outcome: 'overridden', outcomeTimestamp };
    expect((await call(`${localisation}/feedback`, { feedback: [accepted, overridden] })).status).toBe(200);
    const wrong = await call(`${localisation}/feedback`, {
      feedback: [{ ...accepted, card: 7 }, { outcome: 'ignored' }],
    });
    const { errors } = wrong.json<{ errors: { pointer: string }[] }>();
    expect([wrong.status, new Set(errors.map(({ pointer }) => pointer))]).toEqual([
      400,
      new Set(['/feedback/0/card', '/feedback/1', '/feedback/1/outcome']),
    ]);
  });
});

/** Source: the Fetch standard, CORS protocol. */
describe('pages of other origins', () => {
  const preflight = (Origin: string) =>
    send(`${service.url}${localisation}`, {
      method: 'OPTIONS',
      headers: { Origin, 'Access-Control-Request-Method': 'POST', 'Access-Control-Request-Headers': 'content-type' },
    });

  it('may call where their origin is allowed, and no others', async () => {
    const allowed = await preflight('https://ehr.example');
    expect([allowed.status, allowed.headers.get('Access-Control-Allow-Origin')]).toEqual([204, 'https://ehr.example']);
    expect(allowed.headers.get('Access-Control-Allow-Headers')).toContain('Authorization');
    expect((await preflight('https://evil.example')).headers.get('Access-Control-Allow-Origin')).toBeNull();
    expect((await preflight('null')).headers.get('Access-Control-Allow-Origin')).toBeNull();
    expect(allowed.headers.get('Vary')).toContain('Origin');
  });

  it('are let into nothing else', async () => {
    const answer = await send(`${service.url}/catalogue`, { headers: { Origin: 'https://ehr.example' } });
    expect(answer.headers.get('Access-Control-Allow-Origin')).toBeNull();
  });

  it('must be written as origins', () => {
    for (const origins of ['*', 'https://ehr.example/path', 'ehr.example', 'null']) {
      expect(() => readConfig({ CDS_ALLOWED_ORIGINS: origins })).toThrow('CDS_ALLOWED_ORIGINS');
    }
    expect(readConfig({}).cdsAllowedOrigins).toEqual([]);
  });
});
