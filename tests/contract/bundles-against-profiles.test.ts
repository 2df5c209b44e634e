import { validateResource } from '@medplum/core';
import type { CodeableConcept, FhirResource, StructureDefinition } from 'fhir/r4.js';
import fhirpath, { type Model } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { canonicalBase } from '../../src/terminology/systems.ts';
import { builtSteps } from '../support/built.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';
import { isInValueSet, published, unknownCodings } from './codings.ts';

type ValidatorProfile = NonNullable<NonNullable<Parameters<typeof validateResource>[1]>['profile']>;

const steps = builtSteps();
// Later than any example, so that no example lies in the future.
const now = new Date('2030-01-01T00:00:00Z');

beforeAll(() => {
  indexR4Definitions();
});

describe.each(exampleNames)('the Bundle of the example %s', (name) => {
  const exam = steps.readExam(exampleExam({}, name), { purpose: 'record', now });
  const bundle = steps.toBundle(exam, steps.assess(exam), { version: 1 });
  const resources = (bundle.entry ?? []).flatMap(({ resource }) => (resource as FhirResource | undefined) ?? []);
  const profiled = resources.flatMap((resource) => {
    const [url] = resource.meta?.profile ?? [];
    return url === undefined ? [] : [{ resource, profile: published.byUrl(url) as StructureDefinition | undefined }];
  });

  it('names only profiles that are published, and all of them', () => {
    const used = new Set(profiled.map(({ profile }) => profile?.id));
    expect([...used].sort()).toEqual(published.ofType('StructureDefinition').map(({ id }) => id));
  });

  it('keeps its profiles by an independent validator', () => {
    for (const { resource, profile } of profiled) {
      const problems = validateResource(resource as Parameters<typeof validateResource>[0], {
        profile: profile as ValidatorProfile,
      });
      expect(
        problems.filter(({ severity }) => severity !== 'warning'),
        label(resource),
      ).toEqual([]);
    }
  });

  it('takes every bound code from the value set of the profile', () => {
    for (const { resource, profile } of profiled) expect(unbound(resource, profile), label(resource)).toEqual([]);
  });

  it('has only codes that are published or shipped, each under its name', () => {
    expect(unknownCodings(resources)).toEqual([]);
  });
});

/** Elements whose value has no coding in the value set of ours that the profile requires. */
function unbound(resource: FhirResource, profile: StructureDefinition | undefined): string[] {
  return (profile?.differential?.element ?? []).flatMap(({ path, binding, sliceName }) => {
    const valueSet = binding?.valueSet ?? '';
    if (!valueSet.startsWith(canonicalBase) || binding?.strength !== 'required') return [];
    const expression = `${path.replace('[x]', '')}${sliceName === 'valueCodeableConcept' ? '.ofType(CodeableConcept)' : ''}`;
    const values = fhirpath.evaluate(structuredClone(resource), expression, undefined, r4 as Model, {
      async: false,
      traceFn: () => undefined,
    });
    return (values as CodeableConcept[])
      .filter(({ coding }) => !isInValueSet(valueSet, coding))
      .map((value) => `${path}: ${JSON.stringify(value)}`);
  });
}

function label(resource: FhirResource): string {
  const { code } = resource as { code?: CodeableConcept };
  return `${resource.resourceType} ${code?.text ?? ''}`;
}
