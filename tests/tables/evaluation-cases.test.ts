import { existsSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { findCaseFiles } from '../../src/cli/evaluate/case-files.ts';
import { faultText } from '../../src/cli/evaluate/evaluation-case.ts';
import { readCaseFiles } from '../../src/cli/evaluate/read-case-file.ts';
import { reader } from '../exam/support/read.ts';

const root = fileURLToPath(new URL('../evaluation', import.meta.url));

function casesOf(half: string) {
  const folder = `${root}/${half}`;
  if (!existsSync(folder)) return { cases: [], faults: [] };
  const files = findCaseFiles(folder).map(({ file, text }) => ({ file: relative(root, file), text }));
  return readCaseFiles(files, { reader, now: new Date('2026-12-31T00:00:00Z') });
}

const halves = ['development', 'reporting', 'held-back'].map((half) => ({ half, ...casesOf(half) }));

describe('the cases of the evaluation', () => {
  it.each(halves)(
    'of $half have no fault, and each tells its kind, its picture and its source',
    ({ cases, faults }) => {
      expect(faults.map(faultText)).toEqual([]);
      const wanting = cases.filter(({ kind, picture, source }) => [kind, picture, source].includes(undefined));
      expect(wanting.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
    },
  );

  it('of one half are not those of the other', () => {
    const [development, reporting, heldBack] = halves.map(
      ({ cases }) => new Set(cases.map(({ exam }) => JSON.stringify(exam.findings))),
    );
    const shared = (a?: ReadonlySet<string>, b?: ReadonlySet<string>) => [...(a ?? [])].filter((one) => b?.has(one));
    expect(shared(development, reporting)).toEqual([]);
    expect(shared(heldBack, reporting)).toEqual([]);
  });
});
