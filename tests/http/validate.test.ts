import fc from 'fast-check';
import type { Bundle, CapabilityStatement, OperationOutcome } from 'fhir/r4.js';
import fhirpath, { type Model } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { canonicalBase, profileUrl, systems } from '../../src/terminology/systems.ts';
import { checkedTypes } from '../../src/validation/r4-definitions.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

type Json = Record<string, unknown>;

let service: RunningService;
const bundles: Bundle[] = [];
let made: Json[] = [];
beforeAll(async () => {
  service = await startTestService();
  for (const name of exampleNames) {
    bundles.push((await sendJson(`${service.url}/exams`, exampleExam({}, name))).json<Bundle>());
  }
  made = bundles.flatMap(({ entry = [] }) => entry.map(({ resource }) => resource as unknown as Json));
});
afterAll(() => service.stop());

const validate = (type: string, body: unknown, query = '') =>
  sendJson(`${service.url}/fhir/${type}/$validate${query}`, body);
const issuesOf = (answer: { json<T>(): T }) => answer.json<OperationOutcome>().issue;
const faults = (answer: { json<T>(): T }) =>
  issuesOf(answer)
    .filter(({ severity }) => severity === 'error')
    .map(({ expression, details }) => `${expression?.[0]}: ${details?.text}`);
const oneOf = (type: string, profile?: string): Json => {
  const found = made.find(
    ({ resourceType, meta }) =>
      resourceType === type && (profile === undefined || JSON.stringify(meta).includes(profile)),
  );
  return structuredClone(found ?? {});
};

it('finds no fault in the Bundles that it made', async () => {
  for (const bundle of bundles) {
    const answer = await validate('Bundle', bundle);
    expect([answer.status, faults(answer)]).toEqual([200, []]);
    expect(issuesOf(answer)).toEqual([
      {
        severity: 'information',
        code: 'informational',
        details: { text: 'No faults were found.' },
        expression: ['Bundle'],
      },
    ]);
  }
}, 60_000);

describe('what is kept', () => {
  it('is checked by its id, with or without a resource', async () => {
    const kept = (await send(`${service.url}/fhir/Observation?_count=1`)).json<Bundle>().entry?.[0]?.resource;
    const path = `Observation/${kept?.id}`;
    const asked = { resourceType: 'Parameters', parameter: [{ name: 'mode', valueCode: 'update' }] };
    expect(faults(await validate(path, asked))).toEqual([]);
    expect(faults(await validate(path, kept))).toEqual([]);
    expect(faults(await validate(path, { ...kept, id: 'other' }))).toEqual([
      'Observation.id: The resource must have the id that the address has.',
    ]);
    expect((await validate('Observation/none', asked)).status).toBe(404);
  });

  it('is said to be checked by the CapabilityStatement, type by type', async () => {
    const { rest = [] } = (await send(`${service.url}/fhir/metadata`)).json<CapabilityStatement>();
    const said = rest[0]?.resource?.filter(({ operation = [] }) => operation.some(({ name }) => name === 'validate'));
    expect(new Set(said?.map(({ type }) => type))).toEqual(new Set(checkedTypes));
  });
});

describe('a fault', () => {
  it.each<[string, string, (resource: Json) => void, string]>([
    ['a missing element', 'Observation', (r) => delete r.code, 'Observation.code'],
    ['an unknown element', 'Observation', (r) => Object.assign(r, { colour: 'x' }), 'Observation'],
    ['a value of another type', 'Observation', (r) => Object.assign(r, { issued: 4 }), 'Observation.issued'],
    ['a code that R4 does not have', 'Observation', (r) => Object.assign(r, { status: 'done' }), 'Observation.status'],
    ['one value for a list', 'RiskAssessment', (r) => Object.assign(r, { note: { text: 'x' } }), 'RiskAssessment.note'],
    [
      'a broken invariant',
      'RiskAssessment',
      (r) => Object.assign(r, { prediction: [{ probabilityDecimal: 101 }] }),
      'RiskAssessment.prediction[0]',
    ],
    [
      'a code that a value set of ours does not have',
      'ServiceRequest',
      (r) => Object.assign(r, { intent: 'wish' }),
      'ServiceRequest.intent',
    ],
    [
      'a code that we do not have',
      'Observation',
      (r) => Object.assign(r, { bodySite: { coding: [{ system: systems.bodySite, code: 'tail' }] } }),
      'Observation.bodySite.coding[0]',
    ],
    [
      'what the profile asks for',
      'ServiceRequest',
      (r) => Object.assign(r, { intent: 'order' }),
      'ServiceRequest.intent',
    ],
  ])('is %s, told at its place', async (_, type, change, expression) => {
    const resource = oneOf(type);
    change(resource);
    const answer = await validate(type, resource);
    expect(answer.status).toBe(200);
    expect(
      issuesOf(answer)
        .filter(({ severity }) => severity === 'error')
        .map((one) => one.expression?.[0]),
    ).toContain(expression);
  });

  it('is another type than the path says', async () => {
    const answer = await validate('Observation', oneOf('Device'));
    expect([answer.status, faults(answer)]).toEqual([200, ['Observation: The resource is no Observation.']]);
  });

  it('repeats nothing that was sent but element names', async () => {
    const resource = {
      ...oneOf('Observation'),
      'Jo Sample born in 1970': 'x',
      issued: 'Jo Sample',
      subject: { reference: 'Jo Sample/1' },
    };
    expect((await validate('Observation', resource)).text).not.toMatch(/Jo|Sample/);
  });
});

describe('the question', () => {
  const parameters = (...parameter: unknown[]) => ({ resourceType: 'Parameters', parameter });
  const finding = () => oneOf('Observation', 'neuro-exam-finding');

  it('may come as Parameters with a profile, which then counts', async () => {
    const resource = finding();
    delete resource.meta;
    delete resource.interpretation;
    const profile = profileUrl('neuro-exam-finding');
    const bare = await validate('Observation', parameters({ name: 'resource', resource }));
    expect(faults(bare)).toEqual([]);
    const wrongProfile = profileUrl('neuro-exam-panel');
    const other = await validate(
      'Observation',
      parameters(
        { name: 'resource', resource },
        { name: 'profile', valueUri: wrongProfile },
        { name: 'mode', valueCode: 'profile' },
      ),
    );
    expect(faults(other).length).toBeGreaterThan(0);
    const query = await validate('Observation', finding(), `?profile=${encodeURIComponent(profile)}&mode=create`);
    expect(faults(query)).toEqual([]);
  });

  it.each([
    ['no resource', parameters(), '', 400],
    ['an unknown parameter', parameters({ name: 'x' }), '', 400],
    ['a mode that there is not', {}, '?mode=delete', 400],
    ['a profile that is not here', {}, '?profile=urn:x', 404],
    ['a profile of another type', {}, `?profile=${canonicalBase}/StructureDefinition/neuro-exam-impression`, 400],
    ['a list', [], '', 400],
  ])('is refused with %s', async (_, body, query, status) => {
    const sent = 'parameter' in body || Array.isArray(body) ? body : finding();
    expect((await validate('Observation', sent, query)).status).toBe(status);
  });

  it('is not taken for types that are not made here', async () => {
    expect((await validate('Patient', { resourceType: 'Patient' })).status).toBe(404);
    expect((await send(`${service.url}/fhir/Observation/$validate`)).status).toBe(405);
  });
});

it('never makes the service fail, and every place is a FHIRPath', async () => {
  const junk = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      0,
      '',
      'x',
      true,
      [],
      {},
      [null],
      [[]],
      { extension: [{}] },
      { resourceType: 'Patient' },
    ),
    fc.jsonValue({ maxDepth: 3 }),
  );
  const names = fc.constantFrom(
    'code',
    'value',
    'valueQuantity',
    '_status',
    'contained',
    'component',
    'extension',
    'meta',
    'subject',
    'text',
    'identifier',
    '__proto',
    'a b',
    'prediction',
    'finding',
    'resourceType',
  );
  const inside = fc.constantFrom('', 'code', 'component', 'meta', 'text', 'subject');
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...checkedTypes),
      fc.array(fc.tuple(inside, names, junk), { minLength: 1, maxLength: 4 }),
      async (type, changes) => {
        // Copies, since a value that is put into itself is no JSON.
        const resource: Json = { resourceType: type, ...structuredClone(oneOf(type)) };
        for (const [place, name, value] of changes) {
          const target = place === '' ? resource : resource[place];
          if (typeof target === 'object' && target !== null) {
            Object.assign(target, { [name]: structuredClone(value) });
          }
        }
        const answer = await validate(type, resource);
        expect(answer.status).toBeLessThan(500);
        if (answer.status !== 200) return;
        for (const { expression = [] } of issuesOf(answer)) {
          for (const path of expression) expect(() => fhirpath.compile(path, r4 as Model)).not.toThrow();
        }
      },
    ),
    { numRuns: 100 },
  );
}, 60_000);
