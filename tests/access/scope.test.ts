import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { covers, readScope } from '../../src/access/scope.ts';

// Forms and meanings: SMART App Launch 2.2.0, "Scopes for requesting FHIR Resources" and "Scopes for v1 apps".

describe('a scope', () => {
  it.each([
    ['system/Observation.rs', { context: 'system', resource: 'Observation', actions: 'rs' }],
    ['patient/*.cruds', { context: 'patient', resource: '*', actions: 'cruds' }],
    ['user/Encounter.d', { context: 'user', resource: 'Encounter', actions: 'd' }],
    ['system/Observation.read', { context: 'system', resource: 'Observation', actions: 'rs' }],
    ['system/Observation.write', { context: 'system', resource: 'Observation', actions: 'cud' }],
    ['patient/*.*', { context: 'patient', resource: '*', actions: 'cruds' }],
    ['system/exam.cru', { context: 'system', resource: 'exam', actions: 'cru' }],
  ])('%s is taken apart', (text, expected) => {
    expect(readScope(text)).toEqual(expected);
  });

  it.each([
    'system/Observation.sr',
    'system/Observation.rr',
    'system/Observation.',
    'system/Observation',
    'system/Observation.rs?category=exam',
    'system/Observation.rsx',
    'System/Observation.rs',
    'admin/Observation.rs',
    'system/exams.c',
    'system/observation.rs',
    'system/**.rs',
    'system/Observation.rs ',
    ' system/Observation.rs',
    'system//Observation.rs',
    'openid',
    'launch/patient',
    '*',
    '',
  ])('%j gives nothing', (text) => {
    expect(readScope(text)).toBeUndefined();
    expect(covers([text], 'Observation.r', true)).toBe(false);
  });

  it.each([
    [['system/*.rs'], 'Observation.rs', true],
    [['system/*.rs'], 'Observation.c', false],
    [['system/Observation.r', 'system/Observation.s'], 'Observation.rs', true],
    [['system/Observation.r'], 'Observation.rs', false],
    [['system/Observation.rs'], 'ClinicalImpression.r', false],
    [['system/Observation.rs?category=exam'], 'Observation.r', false],
    [['system/*.*'], 'exam.c', false],
    [['system/*.*'], 'localisation.c', false],
    [['system/exam.c'], 'exam.c', true],
    [['system/exam.c'], 'exam.r', false],
    [['user/*.rs'], 'Observation.r', false],
    [['user/exam.c'], 'exam.c', false],
    [['user/localisation.c'], 'localisation.c', true],
    [['patient/localisation.c'], 'localisation.c', true],
    [['patient/Observation.rs'], 'Observation.r', false],
    [[], 'Observation.r', false],
  ] as const)('%j for %s: %s', (held, permission, expected) => {
    expect(covers(held, permission, false)).toBe(expected);
  });

  it('of a patient counts beside the patient alone', () => {
    expect(covers(['patient/Observation.rs'], 'Observation.rs', true)).toBe(true);
    expect(covers(['patient/Observation.rs'], 'Observation.rs', false)).toBe(false);
  });

  it('never gives less when others stand beside it, and never more than all of them do', () => {
    const scope = fc
      .tuple(
        fc.constantFrom('system', 'user', 'patient'),
        fc.constantFrom('*', 'Observation', 'Device', 'exam', 'localisation'),
        fc.subarray(['c', 'r', 'u', 'd', 's'], { minLength: 1 }),
      )
      .map(([context, resource, letters]) => `${context}/${resource}.${letters.join('')}`);
    const permission = fc
      .tuple(fc.constantFrom('Observation', 'exam', 'localisation'), fc.constantFrom('c', 'r', 'u', 'd', 's'))
      .map(([resource, letter]) => `${resource}.${letter}` as const);
    fc.assert(
      fc.property(fc.array(scope), permission, fc.boolean(), (held, wanted, hasSubject) => {
        const each = held.some((one) => covers([one], wanted, hasSubject));
        expect(covers(held, wanted, hasSubject)).toBe(each);
      }),
    );
  });
});
