import { describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { faultOfTyped, type ReferenceField, referenceOf } from '../../src/page/draft/typed-references.ts';

const reader = createExamReader();

const asReference: readonly (readonly [ReferenceField, string])[] = [
  ['subject', 'Patient/4711'],
  ['subject', ' https://ehr.example/fhir/Patient/a-1 '],
  ['subject', 'urn:uuid:0b6a2a3e-6f1c-4c55-9d0e-2f7a8c1d9e10'],
  ['encounter', 'Encounter/88'],
  ['performer', 'PractitionerRole/7'],
];
const asNumber: readonly (readonly [ReferenceField, string])[] = [
  ['subject', '4711'],
  ['subject', 'MRN 12/2026'],
  ['encounter', 'ward 3'],
  ['performer', 'EX-7'],
];
const wrong: readonly (readonly [ReferenceField, string])[] = [
  ['subject', ''],
  ['subject', 'Practitioner/7'],
  ['subject', 'https://ehr.example/chart?id=4711'],
  ['encounter', 'Patient/4711'],
  ['performer', 'Patients/4711'],
  ['performer', 'x'.repeat(201)],
  ['encounter', 'a\nb'],
];

describe('what is typed to say whom an exam is about', () => {
  it.each(asReference)('is a reference: %s %s', (field, typed) => {
    expect(referenceOf(field, typed)).toEqual({ reference: typed.trim() });
    expect(faultOfTyped(field, typed)).toBeUndefined();
  });

  it.each(asNumber)('is a number that the sender uses: %s %s', (field, typed) => {
    expect(referenceOf(field, typed)).toEqual({ identifier: { value: typed } });
    expect(faultOfTyped(field, typed)).toBeUndefined();
  });

  it.each([...asReference, ...asNumber])('is taken by the service: %s %s', (field, typed) => {
    const value = referenceOf(field, typed);
    const exam = {
      identifier: { system: 'urn:example:exams', value: '1' },
      subject: { reference: 'Patient/1' },
      examinedAt: '2026-03-14T10:20:00+01:00',
      [field]: field === 'performer' ? [value] : value,
    };
    expect(() => reader.read(exam, { purpose: 'record', now: new Date('2026-06-01') })).not.toThrow();
  });

  it.each(wrong)('is told as wrong beside its field: %s "%s"', (field, typed) => {
    expect(faultOfTyped(field, typed)).toMatch(/\w/);
  });

  it('may be left out but for the person', () => {
    expect([faultOfTyped('encounter', ' '), faultOfTyped('performer', '')]).toEqual([undefined, undefined]);
  });
});
