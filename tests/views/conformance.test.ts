import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compileView } from '../../src/views/compile-view.ts';
import { parseLossless } from '../../src/views/lossless-json.ts';

interface Case {
  readonly title: string;
  readonly view: unknown;
  readonly expect?: readonly Record<string, unknown>[];
  readonly expectCount?: number;
  readonly expectColumns?: readonly string[];
  readonly expectError?: boolean;
}

const folder = new URL('sql-on-fhir/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.json'));

/** Order of rows is not significant in the published cases, nor that of cells. */
const unordered = (rows: readonly object[]) =>
  rows.map((row) => JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)))).sort();

it('has all published cases', () => {
  const cases = files.flatMap((file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')).tests);
  expect([files.length, cases.length]).toEqual([22, 134]);
});

describe.each(files)('%s', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const { resources } = parseLossless(text) as { resources: unknown[] };
  const { tests } = JSON.parse(text) as { tests: Case[] };
  it.each(tests.map((test) => [test.title, test] as const))('%s', (_title, test) => {
    const run = () => {
      const view = compileView(test.view);
      return { view, rows: resources.flatMap((resource) => view.rowsOf(resource)) };
    };
    if (test.expectError === true) {
      expect(run).toThrow();
      return;
    }
    const { view, rows } = run();
    if (test.expect !== undefined) expect(unordered(rows)).toEqual(unordered(test.expect));
    if (test.expectCount !== undefined) expect(rows).toHaveLength(test.expectCount);
    if (test.expectColumns !== undefined) expect(view.columns.map(({ name }) => name)).toEqual(test.expectColumns);
  });
});
