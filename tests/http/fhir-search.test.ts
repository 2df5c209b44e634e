import type { Bundle, CapabilityStatement, ClinicalImpression, Observation, OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { canonicalBase, systems } from '../../src/terminology/systems.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

let service: RunningService;
beforeAll(async () => {
  service = await startTestService();
  for (const name of exampleNames) {
    expect((await sendJson(`${service.url}/exams`, exampleExam({}, name))).status).toBe(201);
  }
});
afterAll(() => service.stop());

const fhir = (path: string, init?: RequestInit) => send(`${service.url}/fhir/${path}`, init);
const strict = { headers: { Prefer: 'handling=strict' } };

async function search(path: string): Promise<Bundle> {
  const answer = await fhir(path, strict);
  expect(answer.text.slice(0, 300)).toMatch(/^\{"resourceType":"Bundle","type":"searchset"/);
  return answer.json<Bundle>();
}
async function count(path: string): Promise<number> {
  return (await search(`${path}${path.includes('?') ? '&' : '?'}_summary=count`)).total as number;
}
const outcome = (text: string) => (JSON.parse(text) as OperationOutcome).issue[0]?.details?.text ?? '';

describe('the statement of capabilities', () => {
  /** A value of the right form for every type of parameter. */
  const values: Record<string, string> = {
    token: 'x',
    reference: '1',
    date: 'ge2026-01-01',
    string: 'x',
    uri: 'http://x.example/y',
    number: 'lt4',
    quantity: 'gt1',
    composite: 'a$b',
  };

  it('lists parameters that work, and no other parameter of the standard works', async () => {
    const { rest } = (await fhir('metadata')).json<CapabilityStatement>();
    const kept =
      rest?.[0]?.resource?.filter(({ interaction }) => interaction?.some(({ code }) => code === 'vread')) ?? [];
    expect(kept.length).toBeGreaterThanOrEqual(8);
    for (const { type, searchParam = [], searchInclude = [], searchRevInclude = [] } of kept) {
      for (const { name, type: kind } of searchParam) {
        const value = kind === 'composite' && name.endsWith('quantity') ? 'a$1' : values[kind];
        const answer = await fhir(`${type}?${name}=${encodeURIComponent(value as string)}`, strict);
        expect(answer.status, `${type}?${name}`).toBe(200);
      }
      for (const include of searchInclude) await search(`${type}?_include=${include}`);
      for (const include of searchRevInclude) await search(`${type}?_revinclude=${include}`);
    }
    // Parameters of R4 that are not offered.
    for (const path of ['Observation?specimen=Specimen/1', 'ClinicalImpression?_content=x', 'Device?udi-carrier=x']) {
      const refused = await fhir(path, strict);
      expect(refused.status).toBe(400);
      expect(outcome(refused.text)).toMatch(/does not understand/);
    }
  });

  it('lists interactions that work', async () => {
    for (const type of [
      'Observation',
      'ClinicalImpression',
      'RiskAssessment',
      'ServiceRequest',
      'Provenance',
      'Device',
    ]) {
      const { entry = [] } = await search(`${type}?_count=1`);
      const id = entry[0]?.resource?.id as string;
      for (const path of [`${type}/${id}`, `${type}/${id}/_history/1`, `${type}/${id}/_history`, `${type}/_history`]) {
        expect((await fhir(path)).status, path).toBe(200);
      }
    }
  });
});

describe('search', () => {
  it('answers the same by POST as by GET', async () => {
    const form = new URLSearchParams({ code: 'power/ankle-dorsiflexion', _sort: '-date' });
    const posted = await fhir('Observation/_search', {
      method: 'POST',
      headers: { 'Content-Type': 'application/x-www-form-urlencoded', ...strict.headers },
      body: form.toString(),
    });
    expect(posted.json<Bundle>().entry).toEqual((await search(`Observation?${form}`)).entry);
    const json = await fhir('Observation/_search', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: '{}',
    });
    expect(json.status).toBe(415);
  });

  it('tells what did not take effect when it may be left out, and refuses it when that is asked for', async () => {
    const lenient = (await fhir('Observation?codee=x&status=final&_count=1')).json<Bundle>();
    expect(lenient.link?.[0]?.url).toBe(`${service.url}/fhir/Observation?status=final&_count=1`);
    // R4, Bundle: only the entries of a batch or transaction may do without a fullUrl (HL7's reference validator).
    expect(lenient.entry?.at(-1)).toMatchObject({
      fullUrl: expect.stringMatching(/^urn:uuid:[0-9a-f-]{36}$/),
      search: { mode: 'outcome' },
      resource: {
        issue: [{ severity: 'warning', details: { text: expect.stringMatching(/codee \(did you mean code\?\)/) } }],
      },
    });
    const refused = await fhir('Observation?codee=x', strict);
    expect([refused.status, outcome(refused.text)]).toEqual([400, expect.stringMatching(/did you mean code\?/)]);
    expect((await fhir('Observation?date=yesterday')).status).toBe(400);
    expect((await fhir('Observation?_cursor=nonsense')).status).toBe(400);
  });

  it('splits what is there by :missing, :not and :in with nothing lost', async () => {
    const all = await count('Observation');
    expect(
      (await count('Observation?value-concept:missing=true')) +
        (await count('Observation?value-concept:missing=false')),
    ).toBe(all);
    expect((await count('Observation?status=final')) + (await count('Observation?status:not=final'))).toBe(all);
    const reduced = `${canonicalBase}/ValueSet/power-reduced`;
    const weak = await count(`Observation?value-concept:in=${encodeURIComponent(reduced)}`);
    expect(weak).toBeGreaterThan(5);
    expect(weak + (await count(`Observation?value-concept:not-in=${encodeURIComponent(reduced)}`))).toBe(all);
    // 5 is normal and no reduced power; 0 to 4+ are seven grades. Source: MRC grading, Aids to the Examination, 1976.
    const grades = ['0', '1', '2', '3', '4-', '4', '4+'].map(
      (grade) => `${canonicalBase}/CodeSystem/mrc-power|${grade}`,
    );
    expect(await count(`Observation?value-concept=${encodeURIComponent(grades.join(','))}`)).toBe(weak);
  });

  it('finds what lies below a section of the examination', async () => {
    const below = `${systems.examItem}|section/power`;
    const power = await search(`Observation?code:below=${encodeURIComponent(below)}&_count=500`);
    const codes = (power.entry ?? []).map(({ resource }) => (resource as Observation).code.coding?.[0]?.code ?? '');
    expect(codes.length).toBeGreaterThan(10);
    expect(codes.every((code) => code.startsWith('power/') || code === 'section/power')).toBe(true);
  });

  it('orders by date, and by the number that stands for a grade', async () => {
    const newest = await search('ClinicalImpression?_sort=-date');
    const dates = (newest.entry ?? []).map(({ resource }) =>
      Date.parse((resource as ClinicalImpression).date as string),
    );
    expect(dates).toEqual([...dates].sort((a, b) => b - a));
    const weak = await search('Observation?ordinal=lt3&_count=200');
    const grades = (weak.entry ?? []).map(
      ({ resource }) => (resource as Observation).valueCodeableConcept?.coding?.[0],
    );
    expect(grades.length).toBeGreaterThan(3);
    expect(grades.every((grade) => Number(grade?.extension?.[0]?.valueDecimal) < 3)).toBe(true);
  });

  it('shows a part of each resource, marked as such', async () => {
    const [whole] = (await search('ClinicalImpression?_count=1')).entry ?? [];
    const part = async (query: string) =>
      (await search(`ClinicalImpression?_count=1&${query}`)).entry?.[0]?.resource as ClinicalImpression;
    const text = await part('_summary=text');
    expect(Object.keys(text).sort()).toEqual(['id', 'meta', 'resourceType', 'status', 'subject', 'text']);
    expect(text.meta?.tag?.map(({ code }) => code)).toContain('SUBSETTED');
    expect((await part('_summary=data')).text).toBeUndefined();
    expect(Object.keys(await part('_elements=finding,date')).sort()).toEqual([
      'date',
      'finding',
      'id',
      'meta',
      'resourceType',
      'status',
      'subject',
    ]);
    expect(whole?.resource?.meta?.tag?.map(({ system }) => system)).toEqual([systems.exam]);
    expect((await fhir('Observation?_count=1&_pretty=true')).text).toMatch(/^\{\n {2}"resourceType"/);
    expect((await fhir('Observation?_format=xml')).status).toBe(406);
  });
});

describe('read', () => {
  it('answers 304 to a caller who has the version', async () => {
    const id = (await search('RiskAssessment?_count=1')).entry?.[0]?.resource?.id;
    const first = await fhir(`RiskAssessment/${id}`);
    const etag = first.headers.get('etag') as string;
    expect(etag).toBe('W/"1"');
    const again = await fhir(`RiskAssessment/${id}`, { headers: { 'If-None-Match': etag } });
    expect([again.status, again.text]).toEqual([304, '']);
    expect((await fhir(`RiskAssessment/${id}`, { headers: { 'If-None-Match': 'W/"2"' } })).status).toBe(200);
  });

  it('knows no other id and version, in the words of FHIR', async () => {
    for (const path of ['Observation/none', 'Observation/a%20b', 'Observation/none/_history', 'Device/x/_history/0']) {
      const answer = await fhir(path);
      expect([answer.status, answer.json<OperationOutcome>().resourceType]).toEqual([404, 'OperationOutcome']);
    }
  });
});
