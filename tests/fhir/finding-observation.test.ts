import type { Observation } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { notTestedReasons } from '../../src/exam/finding.ts';
import { findingObservation } from '../../src/fhir/finding-observation.ts';
import { frameOf } from '../../src/fhir/frame.ts';
import { systems } from '../../src/terminology/systems.ts';
import { exam, finding, rows } from './support/exam-fixture.ts';

const frame = frameOf(exam, 'test', 1);
const codes = (concept: Observation['code'] | undefined) =>
  concept?.coding?.map(({ system, code }) => `${system}|${code}`);
const component = (one: Observation) => one.component?.[0]?.valueCodeableConcept?.coding?.[0]?.code;

describe('an Observation of a finding', () => {
  it('holds an MRC grade as a code with its ordinal number', () => {
    const made = findingObservation(finding(rows.dorsiflexion, 'left', '4-', { abnormal: true }), frame);
    expect(made.valueCodeableConcept?.coding?.[0]).toMatchObject({
      code: '4-',
      extension: [{ url: 'http://hl7.org/fhir/StructureDefinition/ordinalValue', valueDecimal: 3.67 }],
    });
    expect(made.interpretation?.[0]?.coding?.[0]?.code).toBe('A');
    expect(made.method?.coding?.[0]?.code).toBe('manual-muscle-testing');
    expect(made.bodySite?.coding?.[0]).toMatchObject({
      code: 'ankle-dorsiflexion-muscles.left',
      display: 'Left ankle dorsiflexion muscles',
    });
  });

  it('holds clonus as a number of beats', () => {
    const made = findingObservation(finding(rows.clonus, 'right', 6, { abnormal: true }), frame);
    expect(made.valueQuantity).toEqual({ value: 6, unit: 'beats', system: systems.ucum, code: '{beats}' });
    expect(component(made)).toBe('HP:0011448');
  });

  it.each(notTestedReasons)('has a reason and neither value nor interpretation when not tested: %s', (notTested) => {
    const made = findingObservation(finding(rows.dorsiflexion, 'left', null, { notTested }), frame);
    expect(made.valueCodeableConcept ?? made.valueQuantity ?? made.interpretation ?? made.method).toBeUndefined();
    expect(made.status).toBe('final');
    expect(codes(made.dataAbsentReason)).toHaveLength(2);
    expect(codes(made.dataAbsentReason)?.[1]).toBe(`${systems.notTestedReason}|${notTested}`);
  });

  it('gives the phenotype term as code only where the value says present or absent', () => {
    const absent = findingObservation(finding(rows.ptosis, 'right', 'absent'), frame);
    expect(codes(absent.code)).toEqual([`${systems.examItem}|cranial-nerves/ptosis`, `${systems.hpo}|HP:0000508`]);
    expect(component(absent)).toBeUndefined();
    const weak = findingObservation(finding(rows.dorsiflexion, 'left', '3', { abnormal: true }), frame);
    expect(codes(weak.code)).toEqual([`${systems.examItem}|power/ankle-dorsiflexion`]);
    expect(component(weak)).toBe('HP:0009027');
  });

  it.each([
    [rows.pinprick, 'reduced', 'HP:0007328'],
    [rows.pinprick, 'increased', undefined],
    [rows.plantar, 'extensor', 'HP:0003487'],
    [rows.plantar, 'mute', undefined],
    [rows.ankleJerk, '0', 'HP:0003438'],
    [rows.ankleJerk, '1', undefined],
    [rows.neckTone, 'rigid', undefined],
  ])('repeats an abnormal finding as a phenotype term only where the term is true of it: %#', (item, value, term) => {
    const made = findingObservation(finding(item, 'left', value, { abnormal: true }), frame);
    expect(component(made)).toBe(term);
  });

  it("tells the examiner's summary statement from a finding of its own", () => {
    const made = findingObservation(finding(rows.dorsiflexion, 'left', '5', { origin: 'otherwise-normal' }), frame);
    expect(made.method?.coding?.[0]?.code).toBe('examiner-summary-statement');
    expect(made.interpretation?.[0]?.coding?.[0]?.code).toBe('N');
  });

  it('says that a reflex was reinforced', () => {
    const made = findingObservation(finding(rows.ankleJerk, 'left', '1', { reinforced: true, abnormal: true }), frame);
    expect(made.method?.coding?.[0]?.code).toBe('reinforcement');
  });

  it('is its own mirror image but for side and identity', () => {
    const [left, right] = (['left', 'right'] as const).map((side) =>
      findingObservation(
        finding(rows.pinprick, side, 'absent', { abnormal: true, place: { kind: 'dermatome', key: 'L5' } }),
        frame,
      ),
    );
    expect(left?.id).not.toBe(right?.id);
    const plain = (one: Observation | undefined) =>
      JSON.stringify(one)
        .replaceAll(one?.id ?? '', 'id')
        .replaceAll(/left|right/gi, 'side');
    expect(plain(left)).toBe(plain(right));
  });

  it('leaves a note of blanks out', () => {
    expect(findingObservation(finding(rows.ptosis, 'left', 'absent', { note: '  ' }), frame).note).toBeUndefined();
  });
});

describe('the time of the exam', () => {
  it.each([
    ['2026-03-14T10:20:00+01:00', '2026-03-14T10:20:00+01:00'],
    ['2026-03-14t10:20:00.5z', '2026-03-14T10:20:00.500Z'],
    ['2026-03-14 10:20:00+15:30', '2026-03-13T18:50:00.000Z'],
  ])('is %s as the FHIR instant %s', (examinedAt, instant) => {
    expect(frameOf({ ...exam, examinedAt }, 'test', 1).examinedAt).toBe(instant);
  });
});
