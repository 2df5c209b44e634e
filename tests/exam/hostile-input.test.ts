import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ExamInvalidError } from '../../src/kernel/errors.ts';
import { footDropRequest, requestWithFindings } from './support/exam-request.ts';
import { faultsOf, read } from './support/read.ts';

/** Reads and returns the faults; anything thrown that is not a list of faults fails the test. */
function survives(body: unknown): void {
  try {
    read(body);
  } catch (error) {
    expect(error).toBeInstanceOf(ExamInvalidError);
    const { faults } = error as ExamInvalidError;
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.length).toBeLessThanOrEqual(100);
    for (const fault of faults) expect(fault.pointer).toMatch(/^(?:\/.*)?$/s);
  }
}

const trickyKeys = fc.constantFrom(
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'side',
  'key',
  '',
  '/',
  '~',
);
const trickyValues = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom<unknown>(
      'left',
      'both',
      'present',
      '3',
      3,
      -0,
      1e308,
      true,
      null,
      '',
      '\ud800',
      '\0',
      'x'.repeat(5000),
    ),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(fc.oneof(trickyKeys, fc.string({ maxLength: 8 })), tie('value'), {
      maxKeys: 4,
      noNullPrototype: false,
    }),
  ),
})).value;

type Path = readonly (string | number)[];

function pathsOf(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const entries: [string | number, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return [path, ...entries.flatMap(([step, inner]) => pathsOf(inner, [...path, step]))];
}

function replaceAt(value: unknown, [step, ...rest]: Path, replacement: unknown): unknown {
  if (step === undefined) return replacement;
  if (Array.isArray(value))
    return value.map((inner, index) => (index === step ? replaceAt(inner, rest, replacement) : inner));
  return Object.fromEntries(
    Object.entries(value as object).map(([name, inner]) => [
      name,
      name === step ? replaceAt(inner, rest, replacement) : inner,
    ]),
  );
}

describe('hostile input', () => {
  it('answers any JSON with faults and nothing else', () => {
    fc.assert(fc.property(fc.jsonValue(), survives), { numRuns: 300 });
  });

  it('answers a right request with one value swapped with faults, or reads it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pathsOf(footDropRequest)), trickyValues, (path, replacement) => {
        survives(replaceAt(footDropRequest, path, replacement));
      }),
      { numRuns: 1000 },
    );
  });

  it('never changes a prototype', () => {
    const before = Reflect.ownKeys(Object.prototype);
    for (const key of ['__proto__', 'constructor', 'toString']) {
      const parsed: unknown = JSON.parse(
        `{"findings":{"power":[{"movement":"${key}","${key}":{"polluted":1}}],"${key}":[]},"${key}":{"polluted":1}}`,
      );
      const pointers = faultsOf(parsed, 'localise').map((fault) => fault.pointer);
      expect(pointers).toContain(`/${key}`);
      expect(pointers).toContain(`/findings/${key}`);
      expect(pointers).toContain('/findings/power/0/movement');
    }
    expect(Reflect.ownKeys(Object.prototype)).toEqual(before);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('does not take an inherited property for one that was sent', () => {
    const inherited: unknown = Object.create({
      identifier: footDropRequest.identifier,
      examinedAt: footDropRequest.examinedAt,
    });
    expect(faultsOf(inherited).map((fault) => fault.suggestion)).toEqual(
      expect.arrayContaining(['identifier', 'examinedAt']),
    );
  });

  it('reads a deep value without running out of stack', () => {
    let deep: unknown = 1;
    for (let depth = 0; depth < 100_000; depth++) deep = [deep];
    expect(faultsOf(deep)).toHaveLength(1);
    expect(faultsOf(requestWithFindings({ power: [deep] })).length).toBeGreaterThan(0);
  });

  it('refuses a flood of wrong entries quickly', () => {
    const flood = (entry: unknown) =>
      requestWithFindings(
        Object.fromEntries(Object.keys(footDropRequest.findings).map((section) => [section, Array(900).fill(entry)])),
      );
    for (const entry of [3, {}, { movement: 'ankle-dorsiflectionnn', sign: 'ptossis', site: 'abcdefg' }]) {
      faultsOf(flood(entry));
      const start = performance.now();
      expect(faultsOf(flood(entry)).length).toBeLessThanOrEqual(100);
      // The target is 50 ms; the margin is for a busy machine.
      expect(performance.now() - start).toBeLessThan(5000);
    }
  });

  it('does not change what it reads', () => {
    const body = structuredClone(footDropRequest);
    read(body);
    expect(body).toEqual(footDropRequest);
  });
});
