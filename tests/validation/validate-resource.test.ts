import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import type { Bundle, StructureDefinition } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundleForms, bundleTypes } from '../../src/fhir/bundle-forms.ts';
import { loadConformance } from '../../src/terminology/load.ts';
import { systems } from '../../src/terminology/systems.ts';
import type { ValidationIssue } from '../../src/validation/issue.ts';
import { type CheckedType, checkedTypes } from '../../src/validation/r4-definitions.ts';
import { createValidator, type ValidateResource } from '../../src/validation/validate-resource.ts';
import { builtSteps } from '../support/built.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { hl7Folder, hl7Resource } from '../terminology/hl7-package.ts';

type Json = Record<string, unknown>;

const root = fileURLToPath(new URL('../..', import.meta.url));
let validate: ValidateResource;
beforeAll(async () => {
  validate = await createValidator(loadConformance(root));
});

async function errors(resource: Json, profile?: string): Promise<readonly ValidationIssue[]> {
  const issues = await validate(resource.resourceType as CheckedType, resource, profile);
  return issues.filter(({ severity }) => severity === 'error');
}
const places = async (resource: Json) => (await errors(resource)).map(({ expression }) => expression);

// HL7's own examples of R4, in the package hl7.fhir.r4.examples.
const exampleFiles = readdirSync(hl7Folder).filter((file) => checkedTypes.some((type) => file.startsWith(`${type}-`)));
const example = (file: string) => hl7Resource(file) as Json;

// The same fullUrl stands there several times without a version, which bdl-7 forbids.
const brokenExample = 'Bundle-dataelements.json';

const steps = builtSteps();
const made = exampleNames.map((name) => {
  const exam = steps.readExam(exampleExam({}, name), { purpose: 'record', now: new Date('2030-01-01T00:00:00Z') });
  return steps.toBundle(exam, steps.assess(exam), { version: 1 });
});
const inForm = (bundle: Bundle, form: (typeof bundleTypes)[number]): Json =>
  structuredClone(bundleForms[form](bundle)) as unknown as Json;

describe('no fault is found', () => {
  it.each(checkedTypes)(
    'in the examples that HL7 has of %s',
    async (type) => {
      const files = exampleFiles.filter((file) => file.startsWith(`${type}-`) && file !== brokenExample);
      expect(files.length).toBeGreaterThan(0);
      for (const file of files) expect(await errors(example(file)), file).toEqual([]);
    },
    60_000,
  );

  it.each(bundleTypes)(
    'in the Bundles that are made, as a %s',
    async (form) => {
      for (const bundle of made) {
        expect(await validate('Bundle', inForm(bundle, form), undefined)).toEqual([]);
      }
    },
    60_000,
  );

  it('in the Measures that are shipped', async () => {
    const folder = `${root}/profiles/measures`;
    for (const file of readdirSync(folder)) {
      expect(await errors(JSON.parse(readFileSync(`${folder}/${file}`, 'utf8'))), file).toEqual([]);
    }
  });
});

describe('a changed example of HL7', () => {
  const files = exampleFiles.filter((file) => !file.startsWith('Bundle-'));
  const anyExample = fc.constantFrom(...files).map(example);
  /** Elements at the top of a type, from HL7's own definition. */
  const elementsOf = (type: unknown) =>
    ((hl7Resource(`StructureDefinition-${type}.json`) as StructureDefinition).snapshot?.element ?? []).filter(
      ({ path }) => path.split('.').length === 2,
    );
  const nameOf = (path: string) => path.slice(path.indexOf('.') + 1);

  it('lacks an element that the definition requires', async () => {
    await fc.assert(
      fc.asyncProperty(anyExample, fc.nat(), async (original, pick) => {
        const resource = structuredClone(original);
        const required = elementsOf(resource.resourceType).filter(
          ({ min = 0, path }) => min > 0 && nameOf(path) in resource,
        );
        const element = required[pick % required.length];
        fc.pre(element !== undefined);
        delete resource[nameOf(element?.path ?? '')];
        expect(await places(resource)).toContain(element?.path);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('has an element of another type', async () => {
    await fc.assert(
      fc.asyncProperty(anyExample, fc.nat(), async (original, pick) => {
        const resource = structuredClone(original);
        const present = elementsOf(resource.resourceType).filter(
          ({ path }) => nameOf(path) in resource && !['id', 'contained', 'extension'].includes(nameOf(path)),
        );
        const element = present[pick % present.length];
        fc.pre(element !== undefined);
        const name = nameOf(element?.path ?? '');
        // No element at the top of these types is a number.
        resource[name] = Array.isArray(resource[name]) ? [4711] : 4711;
        const expected = [element?.path, `${element?.path}[0]`];
        expect((await places(resource)).some((place) => expected.some((one) => one && place.startsWith(one)))).toBe(
          true,
        );
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('has an element that its type does not know', async () => {
    await fc.assert(
      fc.asyncProperty(anyExample, fc.stringMatching(/^[a-z]{3,8}$/), fc.boolean(), async (resource, name, isDeep) => {
        const key = `${name}Zz`;
        const meta = { ...(resource.meta as Json | undefined), ...(isDeep && { [key]: 'x' }) };
        const changed = isDeep ? { ...resource, meta } : { ...resource, [key]: 'x' };
        expect(await places(changed)).toContain(isDeep ? `${resource.resourceType}.meta` : resource.resourceType);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('has a code that a datatype inside does not take', async () => {
    const resource = example('Observation-example.json');
    Object.assign(resource, {
      valueQuantity: { value: 1, comparator: '~' },
      identifier: [{ use: 'mine', value: '1' }],
    });
    expect(await places(resource)).toEqual(
      expect.arrayContaining(['Observation.value.comparator', 'Observation.identifier[0].use']),
    );
  });
});

describe('inside a Bundle', () => {
  const entryOf = (bundle: Json, type: string) => {
    const entries = bundle.entry as { fullUrl: string; resource: Json }[];
    const index = entries.findIndex(({ resource }) => resource.resourceType === type);
    return { index, entries, ...(entries[index] as { fullUrl: string; resource: Json }) };
  };
  const transaction = () => inForm(made[0] as Bundle, 'transaction');

  it('a fault is told at its entry', async () => {
    const bundle = transaction();
    const { index, resource } = entryOf(bundle, 'ServiceRequest');
    delete resource.intent;
    expect(await places(bundle)).toEqual([`Bundle.entry[${index}].resource.intent`]);
  });

  it('a reference must lead to an entry', async () => {
    const bundle = transaction();
    const { index, resource } = entryOf(bundle, 'RiskAssessment');
    resource.basis = [{ reference: 'urn:uuid:00000000-0000-4000-8000-000000000000' }];
    expect(await places(bundle)).toEqual([`Bundle.entry[${index}].resource.basis[0].reference`]);
  });

  it('a reference must lead to an entry of a type that is expected', async () => {
    const bundle = transaction();
    const { index, resource, entries } = entryOf(bundle, 'RiskAssessment');
    const device = entries.find((one) => one.resource.resourceType === 'Device');
    resource.subject = { reference: device?.fullUrl };
    expect(await places(bundle)).toContain(`Bundle.entry[${index}].resource.subject`);
  });

  it('two entries may not have one address', async () => {
    expect((await errors(example(brokenExample))).map(({ text }) => text)).toEqual([expect.stringContaining('bdl-7')]);
    const bundle = inForm(made[0] as Bundle, 'collection');
    const entries = bundle.entry as { fullUrl: string }[];
    Object.assign(entries[1] ?? {}, { fullUrl: entries[0]?.fullUrl });
    expect((await errors(bundle)).map(({ text }) => text)).toContainEqual(expect.stringContaining('bdl-7'));
  }, 30_000);
});

it('names the nearest code that is known', async () => {
  const resource = example('Observation-example.json');
  resource.bodySite = { coding: [{ system: systems.bodySite, code: 'footz' }] };
  const [fault] = await errors(resource);
  expect(fault?.expression).toBe('Observation.bodySite.coding[0]');
  expect(fault?.text).toMatch(/The nearest known code is [a-z-]+\.$/);
});

it('finds a contained resource that is not there', async () => {
  const resource = { ...example('Observation-example.json'), specimen: { reference: '#none' } };
  expect(await places(resource)).toEqual(['Observation.specimen.reference']);
});
