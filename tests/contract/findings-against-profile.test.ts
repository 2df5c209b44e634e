import { validateResource } from '@medplum/core';
import type { Observation } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { findingObservation } from '../../src/fhir/finding-observation.ts';
import { frameOf } from '../../src/fhir/frame.ts';
import { canonicalBase, systems } from '../../src/terminology/systems.ts';
import { exam } from '../fhir/support/exam-fixture.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';
import { isInValueSet, published, unknownCodings } from './codings.ts';
import { everyFinding } from './every-finding.ts';

const frame = frameOf(exam, 'test', 1);
const observations = everyFinding().map((finding) => findingObservation(finding, frame));
const valueSet = (id: string) => `${canonicalBase}/ValueSet/${id}`;
const outside = (of: (observation: Observation) => string | undefined) => [
  ...new Set(observations.map(of).filter((said) => said !== undefined)),
];

beforeAll(() => {
  indexR4Definitions();
});

// Every value of every item on every side and at every place: what any exam can be made of.
describe('Observations of all findings that an exam can state', () => {
  it('are many', () => {
    expect(observations.length).toBeGreaterThan(3000);
  });

  it('keep the profile by an independent validator', () => {
    const profile = published.get('StructureDefinition', 'neuro-exam-finding');
    const samples = observations.filter((_, index) => index % 17 === 0);
    for (const observation of samples) {
      const problems = validateResource(observation as Parameters<typeof validateResource>[0], {
        profile: profile as NonNullable<NonNullable<Parameters<typeof validateResource>[1]>['profile']>,
      });
      expect(problems, JSON.stringify(observation.code)).toEqual([]);
    }
  });

  it('have only codes that are published or shipped, each under its name', () => {
    expect(unknownCodings(observations)).toEqual([]);
  });

  it('are bound as the profile says', () => {
    expect(
      outside(({ code }) => (isInValueSet(valueSet('exam-items'), code.coding) ? undefined : code.text)),
      'code',
    ).toEqual([]);
    expect(
      outside(({ valueCodeableConcept: value }) =>
        value === undefined || isInValueSet(valueSet('exam-grades'), value.coding) ? undefined : value.text,
      ),
      'value',
    ).toEqual([]);
    expect(
      outside(({ bodySite: site }) =>
        site === undefined || isInValueSet(valueSet('body-sites'), site.coding) ? undefined : site.text,
      ),
      'body site',
    ).toEqual([]);
    expect(
      outside(({ dataAbsentReason: reason }) =>
        reason === undefined || reason.coding?.some(({ system }) => system === systems.dataAbsentReason)
          ? undefined
          : reason.text,
      ),
      'reason',
    ).toEqual([]);
  });

  it('take their value from the scale that the code system names for the item', () => {
    const items = published.get('CodeSystem', 'exam-item')?.concept?.flatMap(({ concept = [] }) => concept) ?? [];
    const scaleOf = new Map(
      items.map(({ code, property = [] }) => [code, property.find((one) => one.code === 'scale')?.valueString]),
    );
    expect(
      outside(({ code, valueCodeableConcept: value }) => {
        if (value === undefined) return undefined;
        const scale = scaleOf.get(code.coding?.[0]?.code ?? '');
        return value.coding?.[0]?.system === `${canonicalBase}/CodeSystem/${scale}` ? undefined : code.text;
      }),
    ).toEqual([]);
  });
});
