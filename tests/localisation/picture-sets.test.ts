import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';

interface Picture {
  readonly name: string;
  readonly expect: {
    readonly sites: readonly string[];
    readonly side?: string;
    readonly level?: string | readonly string[];
    readonly conclusion?: string;
  };
  readonly exam: unknown;
}

const reader = createExamReader();
const localiser = createLocaliser();
const now = new Date('2026-12-31T00:00:00Z');

function pictures(file: string): readonly Picture[] {
  const text = readFileSync(new URL(`../cases/${file}.ndjson`, import.meta.url), 'utf8');
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Picture);
}

/** Shares of right answers over a file; pictures that expect no site count for their conclusion only. */
function score(file: string) {
  const answers = pictures(file).map((picture) => ({
    picture,
    answer: localiser.localise(reader.read(picture.exam, { purpose: 'localise', now })),
  }));
  const placed = answers.filter(({ picture }) => picture.expect.sites.length > 0);
  const rightAmong = (first: number) =>
    placed.filter(({ picture, answer }) =>
      answer.localisations.slice(0, first).some(({ site }) => picture.expect.sites.includes(site)),
    ).length / placed.length;
  const right = placed.filter(({ picture, answer }) =>
    picture.expect.sites.includes(answer.localisations[0]?.site ?? ''),
  );
  const sided = right.filter(({ picture }) => picture.expect.side !== undefined);
  const sideRight = sided.filter(({ picture, answer }) => answer.localisations[0]?.side === picture.expect.side);
  const sureAndWrong = placed.filter(
    ({ picture, answer }) =>
      (answer.localisations[0]?.probability ?? 0) >= 0.95 &&
      !picture.expect.sites.includes(answer.localisations[0]?.site ?? ''),
  );
  return { first: rightAmong(1), firstThree: rightAmong(3), side: sideRight.length / sided.length, sureAndWrong };
}

// The bounds lie a little below what the engine reaches, so that a change that harms it shows.
describe.each([
  ['pictures-one', 0.94, 0.98],
  ['pictures-two', 0.85, 0.95],
] as const)('%s', (file, first, firstThree) => {
  const result = score(file);

  it(`names a right site first in ${first * 100} % and among the first three in ${firstThree * 100} %`, () => {
    expect(result.first).toBeGreaterThanOrEqual(first);
    expect(result.firstThree).toBeGreaterThanOrEqual(firstThree);
  });

  it('names the side right whenever the site is right', () => {
    expect(result.side).toBe(1);
  });

  it('is never sure of a wrong site', () => {
    expect(result.sureAndWrong.map(({ picture }) => picture.name)).toEqual([]);
  });
});
