import type { Bundle, ClinicalImpression, QuestionnaireResponse, ServiceRequest } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Card } from '../../src/cds/card.ts';
import type { RunningService } from '../../src/service.ts';
import { systems } from '../../src/terminology/systems.ts';
import { ofType } from '../fhir/support/bundle-building.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { type ExamBody, examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

let service: RunningService;
beforeAll(async () => {
  service = await startTestService();
}, 120_000);
afterAll(() => service.stop());

interface Fault {
  readonly pointer: string;
  readonly code: string;
  readonly suggestion?: string;
}

const post = (body: ExamBody) => sendJson(`${service.url}/exams`, body);
const path = (answer: Answer) => String(answer.headers.get('Location'));
const inCatalogue = async () =>
  (await send(`${service.url}/catalogue`)).json<{
    investigations: { key: string; label: string; codes: { system: string; code: string }[] }[];
  }>().investigations;
const codeOf = ({ code }: ServiceRequest) =>
  String(code?.coding?.find(({ system }) => system === systems.investigation)?.code);
const inBrief = (bundle: Bundle) =>
  ofType(bundle, 'ServiceRequest')
    .map((one) => `${codeOf(one)} ${one.status}`)
    .sort();
const impressionOf = (bundle: Bundle): ClinicalImpression => {
  const [impression] = ofType(bundle, 'ClinicalImpression');
  if (impression === undefined) throw new Error('a Bundle has an impression');
  return impression;
};
const left = 'Suggested and not chosen';

describe('the investigations that an exam asks for', () => {
  it('are listed in the catalogue by key, label and codes', async () => {
    const listed = await inCatalogue();
    expect(new Set(listed.map(({ key }) => key)).size).toBe(listed.length);
    // LOINC 29755-6, Nerve conduction study.
    expect(listed).toContainEqual({
      key: 'nerve-conduction-study',
      label: 'Nerve conduction study',
      otherNames: expect.arrayContaining(['NCS']),
      codes: [expect.objectContaining({ system: systems.loinc, code: '29755-6' })],
    });
  });

  it('are all that become ServiceRequests; the rest of what is suggested is told in the impression', async () => {
    const all = (await post(examNumbered('R-1'))).json<Bundle>();
    const suggested = ofType(all, 'ServiceRequest').map(codeOf);
    expect(suggested).toEqual(expect.arrayContaining(['nerve-conduction-study', 'electromyography']));
    expect(JSON.stringify(impressionOf(all))).not.toContain(left);

    const requests = ['mri-brain', 'nerve-conduction-study'];
    const chosen = (await post(examNumbered('R-2', { requests }))).json<Bundle>();
    expect(inBrief(chosen)).toEqual(['mri-brain draft', 'nerve-conduction-study draft']);
    const byCode = new Map(ofType(chosen, 'ServiceRequest').map((one) => [codeOf(one), one]));
    expect(byCode.get('mri-brain')?.note?.[0]?.text).toMatch(/^The examiner asked for it; /);
    expect(byCode.get('nerve-conduction-study')?.note?.[0]?.text).toMatch(/^First line: /);
    const { note = [], summary, text } = impressionOf(chosen);
    for (const said of [note.map((one) => one.text).join(), summary, text?.div]) {
      expect(said).toContain(left);
      expect(said?.toLowerCase()).toContain('electromyography');
    }
    expect(ofType(chosen, 'Observation').length).toBe(ofType(all, 'Observation').length);

    const none = (await post(examNumbered('R-3', { requests: [] }))).json<Bundle>();
    expect(inBrief(none)).toEqual([]);
    expect(impressionOf(none).summary).toContain('The examiner asked for no investigation.');
  });

  it('do not change what is suggested by a localisation', async () => {
    const { identifier: _i, subject: _s, ...body } = examNumbered('');
    const workup = async (changes: object) =>
      (await sendJson(`${service.url}/localisation`, { ...body, ...changes })).json().workup;
    expect(await workup({ requests: [] })).toEqual(await workup({}));
  });

  it('are others in a correction, which takes back what is not wanted any more', async () => {
    const at = path(await post(examNumbered('R-4', { requests: ['nerve-conduction-study'] })));
    const corrected = await sendJson(
      `${service.url}${at}`,
      examNumbered('R-4', { status: 'amended', requests: ['electromyography'] }),
      { method: 'PUT', headers: { 'If-Match': 'W/"1"' } },
    );
    expect(corrected.status).toBe(200);
    expect(inBrief(corrected.json())).toEqual(['electromyography draft', 'nerve-conduction-study revoked']);
    const found = await send(`${service.url}/fhir/ServiceRequest?_tag=${at.replace('/exams/', '')}&status=draft`);
    expect(ofType(found.json<Bundle>(), 'ServiceRequest').map(codeOf)).toEqual(['electromyography']);
  });

  it('are another content under the same identifier', async () => {
    const status = async (changes: ExamBody) => (await post(examNumbered('R-5', changes))).status;
    expect(await status({ requests: ['mri-brain', 'ct-head'] })).toBe(201);
    expect(await status({ requests: ['ct-head', 'mri-brain'] })).toBe(200);
    expect(await status({ requests: ['ct-head'] })).toBe(409);
    expect(await status({})).toBe(409);
  });

  it('go out as a form and come back from it', async () => {
    const requests = ['electromyography', 'mri-brain'];
    const made = await post(examNumbered('R-6', { requests }));
    const form = (await send(`${service.url}${path(made)}/questionnaire-response`)).json<QuestionnaireResponse>();
    expect(form.item?.find(({ linkId }) => linkId === 'requests')?.answer).toHaveLength(2);
    const extracted = await sendJson(`${service.url}/fhir/QuestionnaireResponse/$extract`, form);
    expect(extracted.json()).toEqual(made.json());
  });

  it.each([
    ['/exams', (answer: Answer) => answer.json<{ issue: { expression: string[] }[] }>().issue],
    ['/localisation', (answer: Answer) => answer.json<{ errors: Fault[] }>().errors],
  ])('are refused with the place and the nearest key: %s', async (route, faultsOf) => {
    const body = examNumbered('R-7', { requests: ['nerve-conduction-studies', 'mri-brain', 'mri-brain'] });
    const answer = await sendJson(`${service.url}${route}`, body);
    expect(answer.status).toBe(422);
    expect(faultsOf(answer)).toHaveLength(2);
    for (const said of ['/requests/0', '/requests/2', 'nerve-conduction-study', 'REPEATED']) {
      expect(answer.text).toContain(said);
    }
  });

  it('are what the cards offer as drafts; a card tells what was left', async () => {
    const cardOf = async (value: string, requests?: readonly string[]) => {
      const subject = { reference: `Patient/${value}` };
      await post(examNumbered(value, { subject, ...(requests && { requests }) }));
      const body = {
        hook: 'encounter-discharge',
        hookInstance: 'd1577c69-dfbe-44ad-ba6d-3e05e953b2ea',
        context: { userId: 'Practitioner/7', patientId: value, encounterId: '88' },
      };
      const { cards } = (await sendJson(`${service.url}/cds-services/neuroexam-before-discharge`, body)).json<{
        cards: Card[];
      }>();
      return cards.find(({ summary }) => summary.includes('proposed'));
    };
    const drafted = (card: Card | undefined) =>
      card?.suggestions?.flatMap(({ actions }) => actions.map(({ resource }) => codeOf(resource)));
    expect(drafted(await cardOf('R-8'))).toContain('electromyography');
    const chosen = await cardOf('R-9', ['mri-brain', 'nerve-conduction-study']);
    expect(drafted(chosen)).toEqual(['nerve-conduction-study', 'mri-brain']);
    expect(chosen?.detail).toContain('Suggested and not chosen by the examiner: Needle electromyography');
    const none = await cardOf('R-10', []);
    expect(none?.summary).toMatch(/^No investigation is proposed/);
    expect(none).not.toHaveProperty('suggestions');
  });
});
