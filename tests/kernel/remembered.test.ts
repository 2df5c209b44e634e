import { expect, it } from 'vitest';
import { remembered, rememberedWith } from '../../src/kernel/remembered.ts';

it('makes each answer once, and begins anew when it is full', () => {
  const made: number[] = [];
  const square = remembered(2, (n: number) => {
    made.push(n);
    return n * n;
  });
  expect([3, 3, 4, 3].map(square)).toEqual([9, 9, 16, 9]);
  expect(made).toEqual([3, 4]);
  expect([5, 3].map(square)).toEqual([25, 9]);
  expect(made).toEqual([3, 4, 5, 3]);
});

it('makes each answer once for an object, though there be none', () => {
  const made: object[] = [];
  const first = rememberedWith((list: readonly number[]) => {
    made.push(list);
    return list[0];
  });
  const [some, empty] = [[7, 8], []];
  expect([first(some), first(empty), first(some), first(empty)]).toEqual([7, undefined, 7, undefined]);
  expect(made).toEqual([some, empty]);
});
