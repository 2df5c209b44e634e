import type { Bundle, FhirResource, OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { send, sendJson } from '../support/client.ts';
import { examNumbered, exampleExam, exampleNames } from '../support/example-exam.ts';
import { type GuardedService, startGuardedService } from '../support/guarded-service.ts';

const subject = 'Patient/invented-foot-drop';
const other = 'Patient/invented-cervical-cord';
const types = ['Observation', 'ClinicalImpression', 'RiskAssessment', 'ServiceRequest'];

let service: GuardedService;
/** A token that is limited to one subject, and one that sees everything. */
let limited: Record<string, string>;
let all: Record<string, string>;
const examAt = new Map<string, string>();
beforeAll(async () => {
  service = await startGuardedService({ VIEW_TABLES_SECONDS: '0' });
  limited = await service.bearer('patient/*.rs patient/exam.cru', { patient: 'invented-foot-drop' });
  all = await service.bearer('system/*.rs system/exam.cru');
  for (const name of exampleNames) {
    const answer = await sendJson(`${service.url}/exams`, exampleExam({}, name), { headers: all });
    examAt.set(name, String(answer.headers.get('Location')));
  }
});
afterAll(() => service.stop());

const get = (path: string, headers: Record<string, string>) => send(service.url + path, { headers });
const found = (bundle: Bundle) => (bundle.entry ?? []).map(({ resource }) => resource as FhirResource);
const subjectOf = (one: FhirResource) => (one as { subject?: { reference?: string } }).subject?.reference;

/** Every page of a search, with the total that the first one gives. */
async function pages(path: string, headers: Record<string, string>) {
  const resources: FhirResource[] = [];
  let total: number | undefined;
  for (let url: string | undefined = service.url + path; url !== undefined; ) {
    const bundle: Bundle = (await send(url, { headers })).json<Bundle>();
    total ??= bundle.total;
    resources.push(...found(bundle));
    url = bundle.link?.find(({ relation }) => relation === 'next')?.url;
  }
  return { resources, total };
}

describe('a token that is limited to one subject', () => {
  it.each(types)('finds what there is of its subject, and no %s of anybody else', async (type) => {
    const whole = await pages(`/fhir/${type}?_count=40&_total=accurate`, all);
    const own = whole.resources.filter((one) => subjectOf(one) === subject).map(({ id }) => id);
    const seen = await pages(`/fhir/${type}?_count=7&_total=accurate`, limited);
    expect(seen.resources.map(({ id }) => id).sort()).toEqual(own.sort());
    expect(seen.total).toBe(own.length);
    expect(own.length).toBeGreaterThan(0);
    expect(own.length).toBeLessThan(whole.resources.length);
  });

  it('finds nothing of others by asking for them', async () => {
    const foreign = found((await get(`/fhir/Observation?subject=${other}&_count=3`, all)).json<Bundle>());
    expect(foreign).toHaveLength(3);
    const questions = [
      `subject=${other}`,
      `patient=${other}`,
      `_id=${foreign.map(({ id }) => id).join(',')}`,
      `_tag=${foreign[0]?.meta?.tag?.[0]?.code}`,
      `subject=${other},${other}`,
      `has-member=Observation/${foreign[0]?.id}`,
    ];
    for (const question of questions) {
      const answer = await get(`/fhir/Observation?${question}&_total=accurate`, limited);
      expect([question, answer.status, answer.json<Bundle>().total]).toEqual([question, 200, 0]);
    }
    const counted = await get(`/fhir/Observation?subject=${other}&_summary=count`, limited);
    expect(counted.json<Bundle>().total).toBe(0);
  });

  it('goes no further by a page of somebody who sees more', async () => {
    const first = (await get('/fhir/Observation?_count=2', all)).json<Bundle>();
    const next = new URL(first.link?.find(({ relation }) => relation === 'next')?.url ?? '');
    const page = found((await get(next.pathname + next.search, limited)).json<Bundle>());
    expect(page.filter((one) => subjectOf(one) !== subject)).toEqual([]);
  });

  it('brings along nothing of others, also by the software that all have in common', async () => {
    const answer = await get(
      '/fhir/Device?_revinclude=Observation:device&_revinclude:iterate=Provenance:target',
      limited,
    );
    const brought = found(answer.json<Bundle>()).filter(({ resourceType }) => resourceType !== 'Device');
    expect(brought.filter((one) => one.resourceType !== 'OperationOutcome' && subjectOf(one) !== subject)).toEqual([]);
    expect(brought.some(({ resourceType }) => resourceType === 'Observation')).toBe(true);
  });

  it('is answered as for an id that is not there when it reads what is of others', async () => {
    for (const type of types) {
      const [own] = found((await get(`/fhir/${type}?subject=${subject}&_count=1`, all)).json<Bundle>());
      const [foreign] = found((await get(`/fhir/${type}?subject=${other}&_count=1`, all)).json<Bundle>());
      for (const rest of ['', '/_history', '/_history/1']) {
        expect((await get(`/fhir/${type}/${own?.id}${rest}`, limited)).status).toBe(200);
        const [hidden, unknown] = await Promise.all([
          get(`/fhir/${type}/${foreign?.id}${rest}`, limited),
          get(`/fhir/${type}/00000000-0000-5000-8000-000000000000${rest}`, limited),
        ]);
        expect([hidden.status, hidden.text]).toEqual([404, unknown.text]);
      }
    }
  });

  it('reads, posts and corrects the exams of its subject alone', async () => {
    const at = (name: string) => String(examAt.get(name));
    expect((await get(at('foot-drop'), limited)).status).toBe(200);
    expect((await get(`${at('foot-drop')}/bundle?type=collection`, limited)).status).toBe(200);
    const unknown = await get('/exams/00000000-0000-5000-8000-000000000000', limited);
    for (const path of [at('cervical-cord'), `${at('cervical-cord')}/bundle`]) {
      const hidden = await get(path, limited);
      expect([hidden.status, hidden.text]).toEqual([404, unknown.text]);
    }
    const exam = (reference: string) => examNumbered('EX-OF-A-SUBJECT', { subject: { reference } });
    for (const foreign of [exam(other), examNumbered('EX-OF-NOBODY', { subject: undefined })]) {
      expect((await sendJson(`${service.url}/exams`, foreign, { headers: limited })).status).toBe(403);
    }
    const posted = await sendJson(`${service.url}/exams`, exam(subject), { headers: limited });
    expect(posted.status).toBe(201);
    const correct = (path: string, body: object) =>
      sendJson(service.url + path, body, { method: 'PUT', headers: { ...limited, 'If-Match': 'W/"1"' } });
    const corrected = { status: 'amended' };
    const own = String(posted.headers.get('Location'));
    expect((await correct(own, { ...exam(other), ...corrected })).status).toBe(403);
    expect((await correct(own, { ...exam(subject), ...corrected })).status).toBe(200);
    const foreign = { ...exampleExam(corrected, 'cervical-cord'), subject: { reference: subject } };
    expect((await correct(at('cervical-cord'), foreign)).status).toBe(404);
  });
});

describe('an exam that was first kept under a wrong patient', () => {
  it('shows the right one nothing of the other', async () => {
    const right = 'Patient/invented-right';
    const wrong = 'Patient/invented-wrong';
    const token = await service.bearer('patient/*.rs patient/exam.cru', { patient: 'invented-right' });
    const first = examNumbered('EX-WRONG-PATIENT', { subject: { reference: wrong } });
    const posted = await sendJson(`${service.url}/exams`, first, { headers: all });
    const path = String(posted.headers.get('Location'));
    expect((await get(path, token)).status).toBe(404);
    const findings = { power: first.findings?.power?.slice(0, 1) ?? [] };
    const corrected = { ...first, status: 'amended', subject: { reference: right }, findings };
    const headers = { ...all, 'If-Match': 'W/"1"' };
    expect((await sendJson(service.url + path, corrected, { method: 'PUT', headers })).status).toBe(200);
    expect((await get(path, token)).status).toBe(200);
    expect((await get(`${path}?version=1`, token)).status).toBe(404);
    expect((await get(`${path}/bundle?version=1`, token)).status).toBe(404);
    for (const type of ['transaction', 'collection', 'document']) {
      const answer = await get(`${path}/bundle?type=${type}`, token);
      expect([type, answer.status, answer.text.includes(right), answer.text.includes(wrong)]).toEqual([
        type,
        200,
        true,
        false,
      ]);
    }
    expect((await get(`${path}/bundle`, all)).text).toContain(wrong);
    const [kept] = found((await get(`/fhir/RiskAssessment?subject=${right}`, token)).json<Bundle>());
    expect((await get(`/fhir/RiskAssessment/${kept?.id}/_history/2`, token)).status).toBe(200);
    expect((await get(`/fhir/RiskAssessment/${kept?.id}/_history/1`, token)).status).toBe(404);
    const history = await get(`/fhir/RiskAssessment/${kept?.id}/_history`, token);
    expect([history.status, history.text.includes(wrong)]).toEqual([200, false]);
  });
});

describe('a token that covers some types', () => {
  it('brings along those types alone, and says which it left out', async () => {
    const some = await service.bearer('system/ClinicalImpression.rs system/Device.rs');
    const query =
      '_include=ClinicalImpression:finding-ref&_revinclude=Provenance:target&_include:iterate=Observation:device';
    const resources = found((await get(`/fhir/ClinicalImpression?${query}`, some)).json<Bundle>());
    expect([...new Set(resources.map(({ resourceType }) => resourceType))].sort()).toEqual([
      'ClinicalImpression',
      'OperationOutcome',
    ]);
    const outcome = resources.find((one): one is OperationOutcome => one.resourceType === 'OperationOutcome');
    expect(outcome?.issue[0]?.details?.text).toMatch(/Observation.*Provenance/);
    const whole = found((await get(`/fhir/ClinicalImpression?${query}`, all)).json<Bundle>());
    expect(new Set(whole.map(({ resourceType }) => resourceType))).toEqual(
      new Set(['ClinicalImpression', 'Observation', 'Provenance', 'Device']),
    );
  });

  it('makes tables of those types alone', async () => {
    const some = await service.bearer('system/Observation.rs');
    expect((await get('/views/power.csv', some)).status).toBe(200);
    expect((await get('/views/causes.csv', some)).status).toBe(403);
    const view = { resourceType: 'ViewDefinition', resource: 'RiskAssessment', status: 'draft' };
    const select = [{ column: [{ name: 'id', path: 'id' }] }];
    const run = await sendJson(
      `${service.url}/fhir/$viewdefinition-run`,
      { ...view, name: 'v', select },
      { headers: some },
    );
    expect(run.status).toBe(403);
  });
});

describe('a bulk export', () => {
  const start = (query: string, headers: Record<string, string>) =>
    get(`/fhir/$export${query}`, { ...headers, Prefer: 'respond-async' });

  it('has the types that the token covers, and belongs to the program that began it', async () => {
    const some = await service.bearer('system/Observation.rs system/Device.rs');
    expect((await start('?_type=Observation,RiskAssessment', some)).status).toBe(403);
    const started = await start('', some);
    expect(started.status).toBe(202);
    const status = new URL(String(started.headers.get('Content-Location'))).pathname;
    await expect.poll(async () => (await get(status, some)).status, { timeout: 20_000 }).toBe(200);
    const manifest = (await get(status, some)).json<{
      requiresAccessToken: boolean;
      output: { type: string; url: string }[];
    }>();
    expect(manifest.requiresAccessToken).toBe(true);
    expect(manifest.output.map(({ type }) => type)).toEqual(['Observation', 'Device']);
    const file = new URL(String(manifest.output[0]?.url)).pathname;
    expect((await get(file, some)).status).toBe(200);
    // The same program with less, and another with as much.
    expect((await get(file, await service.bearer('system/Device.rs'))).status).toBe(403);
    const stranger = await service.bearer('system/*.rs', { client_id: 'somebody-else' });
    for (const path of [status, file]) expect((await get(path, stranger)).status).toBe(404);
    expect((await send(service.url + status, { method: 'DELETE', headers: stranger })).status).toBe(404);
    expect((await get(file, {})).status).toBe(401);
    expect((await send(service.url + status, { method: 'DELETE', headers: some })).status).toBe(202);
    expect((await get(status, some)).status).toBe(404);
  });
});
