import { expect, it } from 'vitest';
import type { Session } from '../../src/store/engine.ts';
import { type KnownRows, type MatchRow, rowsAt } from '../../src/store/search/find-matches.ts';

const row = (key: number): MatchRow => ({ key, type: 0, id: String(key), version: 1, updated: 0, chunk: 0, slot: 0 });

it('drops no row of a page while another page empties what is known', async () => {
  const known: KnownRows = new Map([1, 2].map((key) => [key, row(key)]));
  const asked: unknown[] = [];
  const session = {
    dialect: 'sqlite',
    all: async ({ values }: { readonly values: readonly unknown[] }) => {
      asked.push(...values);
      known.clear();
      return [row(3)];
    },
  } as unknown as Session;
  expect((await rowsAt(session, [2, 3, 1], known)).map(({ key }) => key)).toEqual([2, 3, 1]);
  expect(asked).toEqual(['[3]']);
});
