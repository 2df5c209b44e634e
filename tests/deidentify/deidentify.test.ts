import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Bundle, FhirResource, Observation } from 'fhir/r4.js';
import { afterAll, describe, expect, it } from 'vitest';
import { createExamSteps } from '../../src/context.ts';
import { deidentifyLine } from '../../src/deidentify/line.ts';
import { createPseudonyms } from '../../src/deidentify/pseudonyms.ts';
import { readSentExam } from '../../src/questionnaire/read-sent-exam.ts';
import { questionnaireResponse } from '../../src/questionnaire/write-response.ts';
import { systems } from '../../src/terminology/systems.ts';
import { structureProblems } from '../fhir/support/r4-rules.ts';
import { built, root } from '../support/built.ts';
import { type ExamBody, exampleExam, exampleNames } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';

const steps = createExamSteps();
const now = new Date('2026-06-01T00:00:00Z');
const read = (sent: unknown) =>
  readSentExam(sent, steps.formVersion, (exam) => steps.readExam(exam, { purpose: 'record', now }));
const pseudonyms = createPseudonyms(Buffer.alloc(32, 7));

/** Stands in every place of an exam where a sender may write what they like. */
const mark = 'Marked-Person-XQ';
function marked(name: (typeof exampleNames)[number], at = '2026-03-14T10:20:00+01:00'): ExamBody {
  const exam = exampleExam({}, name);
  for (const entries of Object.values(exam.findings ?? {})) for (const entry of entries) entry.note = `${mark} note`;
  return {
    ...exam,
    identifier: { system: `https://${mark.toLowerCase()}.example/exams`, value: `${mark}-${name}` },
    subject: { reference: `Patient/${mark}`, display: mark, identifier: { value: mark } },
    encounter: { reference: `Encounter/${mark}`, display: mark },
    performer: [{ reference: `Practitioner/${mark}`, display: mark }],
    examinedAt: at,
    requests: ['mri-brain'],
    results: [
      {
        code: { system: systems.loinc, code: '4548-4', display: mark, version: mark },
        valueQuantity: { value: 5.3, unit: mark, system: systems.ucum, code: '%' },
        note: mark,
      },
    ],
  };
}
function bundleOf(body: ExamBody): Bundle {
  const exam = steps.readExam(body, { purpose: 'record', now });
  return steps.toBundle(exam, steps.assess(exam), { version: 1 });
}
function linesOf(text: string, by = pseudonyms): Record<string, unknown>[] {
  const result = deidentifyLine(text, by, read);
  if ('fault' in result) throw new Error(result.fault);
  return result.lines.map((line) => JSON.parse(line) as Record<string, unknown>);
}
function sites(exam: unknown) {
  const { localisations } = steps.assess(steps.readExam(exam, { purpose: 'record', now }));
  return localisations.map(({ site, side, probability }) => [site, side, probability]);
}
const observationsIn = (lines: readonly Record<string, unknown>[]) =>
  lines.filter(({ resourceType }) => resourceType === 'Observation') as unknown as Observation[];

describe.each(exampleNames)('%s, with marks in every free text and name', (name) => {
  const body = marked(name);
  const bundle = bundleOf(body);
  const resources = linesOf(JSON.stringify(bundle));
  const [exam] = linesOf(JSON.stringify(body));

  it('lets no mark, id, name, day or sentence out', () => {
    expect(JSON.stringify(bundle)).toContain(mark);
    const text = JSON.stringify([resources, exam]);
    expect(text.toLowerCase()).not.toContain(mark.toLowerCase());
    expect(text).not.toContain('2026-03-14');
    for (const { resource } of bundle.entry ?? []) expect(text).not.toContain(String(resource?.id));
    expect(text).not.toMatch(/"(?:div|note|summary|description|rationale|text)"/);
  });

  it('keeps every finding with its code, value, side and reason', () => {
    const essence = ({ code, valueCodeableConcept, valueQuantity, bodySite, dataAbsentReason }: Observation) =>
      JSON.stringify([code, valueCodeableConcept, bodySite, dataAbsentReason].map((concept) => concept?.coding)) +
      JSON.stringify(valueQuantity);
    const before = (bundle.entry ?? []).flatMap(({ resource }) =>
      resource?.resourceType === 'Observation' ? [essence(resource as Observation)] : [],
    );
    expect(before.length).toBeGreaterThan(20);
    expect(observationsIn(resources).map(essence)).toEqual(before);
  });

  it('is valid FHIR R4 and says that it is pseudonymised', () => {
    const entry = resources.map((resource) => ({ fullUrl: `urn:uuid:${resource.id}`, resource }));
    const collection = { resourceType: 'Bundle', type: 'collection', entry } as unknown as Bundle;
    expect(structureProblems(collection)).toEqual([]);
    for (const resource of resources as unknown as FhirResource[]) {
      expect(resource.meta?.security?.map(({ code }) => code)).toEqual(['PSEUDED']);
    }
  });

  it('keeps what belonged together together', () => {
    const ids = new Set(resources.map(({ id }) => String(id)));
    const referred = [...JSON.stringify(resources).matchAll(/"reference":"urn:uuid:([^"]+)"/g)].map(([, id]) => id);
    expect(referred.length).toBeGreaterThan(20);
    expect(referred.filter((id) => !ids.has(String(id)))).toEqual([]);
    const tags = (resources as unknown as FhirResource[]).flatMap(({ meta }) => meta?.tag ?? []);
    const exams = [...new Set(tags.map(({ code }) => `urn:uuid:${code}`))];
    expect(exams).toEqual([(exam as { identifier: { value: string } }).identifier.value]);
    expect(observationsIn(resources)[0]?.subject).toEqual(exam?.subject);
  });

  it('leaves the same exam of the form that says the same', () => {
    const form = questionnaireResponse(steps.readExam(body, { purpose: 'record', now }), steps.formVersion);
    expect(JSON.stringify(form).toLowerCase()).toContain(mark.toLowerCase());
    const [fromForm] = linesOf(JSON.stringify(form));
    expect(sites(fromForm)).toEqual(sites(exam));
    expect([fromForm?.identifier, fromForm?.subject]).toEqual([exam?.identifier, exam?.subject]);
    expect(JSON.stringify(fromForm).toLowerCase()).not.toContain(mark.toLowerCase());
  });

  it('still is an exam with the same localisation', () => {
    expect(sites(exam)).toEqual(sites(body));
  });
});

describe('pseudonyms', () => {
  it('keep the time between two exams of a subject, and move subjects apart', () => {
    const at = (exam: ExamBody) => Date.parse(String(linesOf(JSON.stringify(exam))[0]?.examinedAt));
    const [first, later] = [marked('foot-drop'), marked('foot-drop', '2026-04-14T10:20:00+01:00')];
    expect(at(later) - at(first)).toBe(31 * 86_400_000);
    expect(at({ ...first, subject: { reference: 'Patient/other' } })).not.toBe(at(first));
  });

  it('are the same for the same key and others for another, and move times by a second to a year into the past', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 32, maxLength: 32 }), fc.string(), (key, text) => {
        const [one, again, other] = [key, key, key.map((byte) => byte ^ 1)].map(createPseudonyms);
        expect(one?.of('id', text)).toBe(again?.of('id', text));
        expect(one?.of('id', text)).not.toBe(other?.of('id', text));
        expect(one?.of('id', text)).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
        expect(one?.shiftMs(text)).toBeLessThan(0);
        expect(one?.shiftMs(text)).toBeGreaterThanOrEqual(-365 * 86_400_000);
      }),
    );
  });

  it('put ages above 90 together (45 CFR 164.514(b)(2)(i)(C): ages over 89)', () => {
    const old = linesOf(JSON.stringify({ ...marked('foot-drop'), person: { ageYears: 101, sex: 'female' } }))[0];
    expect(old?.person).toEqual({ ageYears: 90, sex: 'female' });
  });
});

describe('lines that are not understood', () => {
  it.each([
    ['no JSON', `{"name": "${mark}`],
    ['a list', `["${mark}"]`],
    ['a type that is not made here', JSON.stringify({ resourceType: 'Patient', id: mark })],
    ['an exam with a field that nobody knows', JSON.stringify({ ...marked('foot-drop'), [mark]: mark })],
  ])('are left out and told without their content: %s', (_name, text) => {
    const result = deidentifyLine(text, pseudonyms, read);
    expect(result).toHaveProperty('fault');
  });
});

describe('neuroexam deidentify', () => {
  const folder = temporaryFolder();
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const run = (...args: string[]) =>
    spawnSync(process.execPath, [...built('cli/neuroexam.js'), 'deidentify', ...args], { cwd: root, encoding: 'utf8' });

  it('makes a key that only its owner reads, and goes through a file with it, faulty lines left out', () => {
    const [key, input, output] = ['key', 'in.ndjson', 'out.ndjson'].map((name) => join(folder, name));
    expect(run('--new-key', String(key)).status).toBe(0);
    expect(statSync(String(key)).mode & 0o077).toBe(0);
    expect(run('--new-key', String(key)).status).toBe(2);
    const bundle = bundleOf(marked('foot-drop'));
    writeFileSync(
      String(input),
      `${JSON.stringify(marked('foot-drop'))}\n{"a":"${mark}"}\n${JSON.stringify(bundle)}\n`,
    );
    const ran = run(String(input), '--key', String(key), '--out', String(output));
    expect(ran.status).toBe(1);
    expect(ran.stderr).toMatch(/^line 2: A sound exam was expected/);
    expect(ran.stderr).not.toContain(mark);
    const lines = readFileSync(String(output), 'utf8').trimEnd().split('\n');
    const left = (bundle.entry ?? []).filter(({ resource }) => resource?.resourceType !== 'Provenance').length;
    expect(lines).toHaveLength(1 + left);
    expect(lines.join('')).not.toContain(mark);
    expect(run(String(input)).status).toBe(2);
  });
});
