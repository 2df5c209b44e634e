import type { Observation } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { builtSteps } from '../support/built.ts';

const steps = builtSteps();

/** Invented: found at home, scored and not described. */
const exam = createExamReader().read(
  {
    identifier: { system: 'https://clinic.example/exams', value: 'EX-77' },
    subject: { reference: 'Patient/77' },
    examinedAt: '2026-03-14T10:20:00+01:00',
    history: { onset: { pace: 'hyperacute', durationDays: 0.1 } },
    findings: { higherFunction: [{ scale: 'glasgow-coma-scale', eye: 1, verbal: 2, motor: 4 }] },
  },
  { purpose: 'record', now: new Date('2026-12-01T00:00:00Z') },
);

describe('a coma score without any sign beside it', () => {
  const { entry = [] } = steps.toBundle(exam, steps.assess(exam), { version: 1 });
  const observations = entry.flatMap(({ resource }) =>
    resource?.resourceType === 'Observation' ? [resource as Observation] : [],
  );
  const coded = (code: string) =>
    entry.find(({ resource }) => (resource as Observation).code?.coding?.some((coding) => coding.code === code));

  it('is what the computed observations rest on', () => {
    const total = coded('9269-2');
    expect(total?.fullUrl).toBeDefined();
    const resting = observations.filter(({ derivedFrom = [] }) =>
      derivedFrom.some(({ reference }) => reference === total?.fullUrl),
    );
    expect(resting.length).toBeGreaterThan(0);
  });

  it('is what the red flag of a fallen consciousness rests on, which reads the whole score', () => {
    const flag = observations.find(({ code }) =>
      code.coding?.some((coding) => coding.code?.endsWith('unexplained-fall-in-consciousness')),
    );
    expect(flag?.derivedFrom?.map(({ reference }) => reference)).toContain(coded('9269-2')?.fullUrl);
  });

  it('is not turned into signs that nobody recorded', () => {
    // HP:0001259 is coma.
    expect(
      JSON.stringify(observations.map(({ code, valueCodeableConcept }) => [code, valueCodeableConcept])),
    ).not.toContain('HP:0001259');
    expect(coded('9269-2')).toBeDefined();
  });
});
