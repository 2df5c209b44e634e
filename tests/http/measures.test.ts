import { readFileSync } from 'node:fs';
import { validateResource } from '@medplum/core';
import type { Bundle, CapabilityStatement, List, Measure, MeasureReport, OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam } from '../support/example-exam.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';
import { startTestService } from '../support/service.ts';

indexR4Definitions();
let service: RunningService;
let fhir: string;
const shipped = (id: string): Measure =>
  JSON.parse(readFileSync(new URL(`../../profiles/measures/Measure-${id}.json`, import.meta.url), 'utf8'));

const numbered = (value: string) => ({ system: 'https://clinic.example/exams', value });

beforeAll(async () => {
  service = await startTestService();
  fhir = `${service.url}/fhir`;
  const exams = [
    exampleExam({ identifier: numbered('M-1'), examinedAt: '2026-01-31T23:59:59Z' }),
    exampleExam({ identifier: numbered('M-2'), examinedAt: '2026-02-10T09:00:00Z' }, 'cervical-cord'),
    exampleExam({ identifier: numbered('M-3'), examinedAt: '2026-02-28T23:30:00Z' }, 'ascending-weakness'),
    exampleExam({ identifier: numbered('M-4'), examinedAt: '2026-03-01T00:00:00Z' }, 'cervical-cord'),
    exampleExam({ identifier: numbered('M-5'), examinedAt: '2026-02-11T09:00:00Z' }, 'cervical-cord'),
  ];
  for (const exam of exams) {
    const answer = await sendJson(`${service.url}/exams`, exam);
    expect([answer.status, answer.status === 201 ? '' : answer.text]).toEqual([201, '']);
    if ((exam.identifier as { value: string }).value !== 'M-5') continue;
    const location = `${service.url}${answer.headers.get('location')}`;
    const taken = await sendJson(
      location,
      { ...exam, status: 'entered-in-error' },
      { method: 'PUT', headers: { 'If-Match': 'W/"1"' } },
    );
    expect(taken.status).toBe(200);
  }
});
afterAll(() => service.stop());

const february = 'periodStart=2026-02&periodEnd=2026-02';
const countsOf = (report: MeasureReport, group = 0) => report.group?.[group]?.population?.map(({ count }) => count);

describe('$evaluate-measure', () => {
  it('counts the exams of the period, both ends included, and none that was entered in error', async () => {
    const answer = await send(`${fhir}/Measure/red-flag-proposals/$evaluate-measure?${february}`);
    expect(answer.status).toBe(200);
    const report = answer.json<MeasureReport>();
    validateResource(report as never);
    expect(report).toMatchObject({
      status: 'complete',
      type: 'summary',
      measure: `${shipped('red-flag-proposals').url}|0.1.0`,
      period: { start: '2026-02', end: '2026-02' },
    });
    expect(countsOf(report)).toEqual([2, 2, 2]);
    expect(report.group?.[0]?.measureScore?.value).toBe(1);
    const wider = await send(
      `${fhir}/Measure/certain-localisation/$evaluate-measure?periodStart=2026&periodEnd=2026-03-01`,
    );
    expect(countsOf(wider.json())).toEqual([4, 4, 0, 4]);
    const exact = 'periodStart=2026-01-31T23:59:59Z&periodEnd=2026-02-10T10:00:00%2B01:00';
    const narrow = await send(`${fhir}/Measure/certain-localisation/$evaluate-measure?${exact}`);
    expect(countsOf(narrow.json())).toEqual([2, 2, 0, 2]);
  });

  it('finds a measure by its address too, and takes Parameters', async () => {
    const url = encodeURIComponent(`${shipped('red-flag-minutes').url}|0.1.0`);
    const got = await send(`${fhir}/Measure/$evaluate-measure?measure=${url}&${february}`);
    expect(got.json<MeasureReport>().group?.[0]?.measureScore).toMatchObject({ value: 0, code: 'min' });
    const parameter = [
      { name: 'measure', valueString: shipped('red-flag-minutes').url },
      { name: 'periodStart', valueDate: '2026-02-01' },
      { name: 'periodEnd', valueDate: '2026-02-28' },
    ];
    const posted = await sendJson(`${fhir}/Measure/$evaluate-measure`, { resourceType: 'Parameters', parameter });
    expect(posted.json<MeasureReport>().group).toEqual(got.json<MeasureReport>().group);
    const unknown = await send(`${fhir}/Measure/$evaluate-measure?measure=${url}9&${february}`);
    expect(unknown.status).toBe(404);
  });

  it('lists the impressions that it counted, and limits itself to one person', async () => {
    const path = `${fhir}/Measure/red-flag-proposals/$evaluate-measure?${february}`;
    const listed = (await send(`${path}&reportType=subject-list`)).json<MeasureReport>();
    validateResource(listed as never);
    const list = listed.contained?.find((contained): contained is List => contained.resourceType === 'List');
    const references = list?.entry?.map(({ item }) => item.reference);
    expect(references).toHaveLength(2);
    for (const reference of references ?? []) expect((await send(`${fhir}/${reference}`)).status).toBe(200);
    expect(listed.group?.[0]?.population?.[0]?.subjectResults).toEqual({ reference: `#${list?.id}` });
    const one = (await send(`${path}&subject=invented-cervical-cord`)).json<MeasureReport>();
    validateResource(one as never);
    expect(one).toMatchObject({ type: 'individual', subject: { reference: 'Patient/invented-cervical-cord' } });
    expect(countsOf(one)).toEqual([1, 1, 1]);
  });

  it.each([
    ['periodStart=2026', 400],
    ['periodStart=2026&periodEnd=2025', 400],
    ['periodStart=2026-02-31&periodEnd=2026', 400],
    ['periodStart=soon&periodEnd=2026', 400],
    [`${february}&reportType=data-collection`, 400],
    [`${february}&reportType=subject`, 400],
    [`${february}&practitioner=7`, 400],
  ])('refuses %s', async (query, status) => {
    const answer = await send(`${fhir}/Measure/red-flag-proposals/$evaluate-measure?${query}`);
    expect([answer.status, answer.json<OperationOutcome>().resourceType]).toEqual([status, 'OperationOutcome']);
  });

  it('says so when there is no such measure', async () => {
    expect((await send(`${fhir}/Measure/none/$evaluate-measure?${february}`)).status).toBe(404);
  });
});

describe('measures of callers', () => {
  const own = (): Measure => {
    const { text: _text, ...measure } = shipped('certain-localisation');
    return { ...measure, id: 'wished', url: 'https://clinic.example/Measure/own', meta: { versionId: '7' } };
  };

  it('are kept under an id of the server, evaluated, corrected and found again', async () => {
    const created = await sendJson(`${fhir}/Measure`, own());
    expect(created.status).toBe(201);
    const kept = created.json<Measure>();
    expect(kept.id).toMatch(/^[0-9a-f-]{36}$/);
    expect(kept.meta?.versionId).toBe('1');
    expect(created.headers.get('location')).toBe(`${fhir}/Measure/${kept.id}/_history/1`);
    const path = `${fhir}/Measure/${kept.id}`;
    expect(countsOf((await send(`${path}/$evaluate-measure?${february}`)).json())).toEqual([2, 2, 0, 2]);

    const changed = { ...kept, title: 'Changed' };
    const put = (headers: Record<string, string>, body: unknown = changed) =>
      sendJson(path, body, { method: 'PUT', headers });
    expect((await put({})).status).toBe(428);
    expect((await put({ 'If-Match': 'W/"4"' })).status).toBe(412);
    expect((await put({ 'If-Match': 'W/"1"' }, { ...changed, id: 'other' })).status).toBe(400);
    const updated = await put({ 'If-Match': 'W/"1"' });
    expect([updated.status, updated.headers.get('etag')]).toEqual([200, 'W/"2"']);
    expect((await send(path)).json<Measure>()).toMatchObject({ title: 'Changed', meta: { versionId: '2' } });
    expect((await send(`${path}/_history/1`)).json<Measure>().title).toBe(own().title);
    const found = await send(`${fhir}/Measure?url=${encodeURIComponent('https://clinic.example/Measure/own')}`);
    expect(found.json<Bundle>().entry?.map(({ resource }) => resource?.id)).toEqual([kept.id]);
  });

  it('take the example that is shown to newcomers', async () => {
    const example = JSON.parse(readFileSync(new URL('../examples/measure.json', import.meta.url), 'utf8')) as Measure;
    expect((await sendJson(`${fhir}/Measure`, example)).status).toBe(201);
    const path = `${fhir}/Measure/$evaluate-measure?measure=${encodeURIComponent(example.url ?? '')}`;
    const report = (await send(`${path}&periodStart=2026-01&periodEnd=2026-03`)).json<MeasureReport>();
    // Of the four exams the two of a cervical cord have an extensor plantar response, and both have tone documented.
    expect(countsOf(report)).toEqual([2, 2, 2]);
  });

  it('are refused with every fault and where it is', async () => {
    const bad = own();
    const [group] = bad.group ?? [];
    const [first, second] = group?.population ?? [];
    if (first !== undefined) first.criteria.expression = '%findngs.exists()';
    if (second !== undefined) second.criteria.expression = '%findings.repeat(code).count()';
    const answer = await sendJson(`${fhir}/Measure`, { ...bad, groups: [] });
    expect(answer.status).toBe(422);
    const { issue } = answer.json<OperationOutcome>();
    const places = issue.map(({ diagnostics, details, expression }) =>
      [diagnostics, details?.text, expression].join(' '),
    );
    expect(places.join('\n')).toContain('findings');
    expect(issue).toHaveLength(3);
  });

  it('do not take the place of one that comes with the service', async () => {
    const answer = await sendJson(`${fhir}/Measure/red-flag-minutes`, shipped('red-flag-minutes'), {
      method: 'PUT',
      headers: { 'If-Match': 'W/"1"' },
    });
    expect(answer.status).toBe(409);
    expect((await send(`${fhir}/Measure/red-flag-minutes`)).headers.get('etag')).toBe('W/"1"');
    const missing = await sendJson(`${fhir}/Measure/none`, own(), { method: 'PUT', headers: { 'If-Match': 'W/"1"' } });
    expect(missing.status).toBe(404);
  });

  it('are told of in the CapabilityStatement and by Allow', async () => {
    const { rest } = (await send(`${fhir}/metadata`)).json<CapabilityStatement>();
    const resource = rest?.[0]?.resource?.find(({ type }) => type === 'Measure');
    expect(resource?.interaction?.map(({ code }) => code)).toEqual(expect.arrayContaining(['create', 'update']));
    expect(resource?.operation?.map(({ name }) => name)).toContain('evaluate-measure');
    const options = await send(`${fhir}/Measure`, { method: 'OPTIONS' });
    expect(options.headers.get('allow')).toBe('GET, POST, HEAD, OPTIONS');
    const one = await send(`${fhir}/Measure/red-flag-minutes`, { method: 'DELETE' });
    expect([one.status, one.headers.get('allow')]).toEqual([405, 'GET, PUT, HEAD, OPTIONS']);
  });
});
