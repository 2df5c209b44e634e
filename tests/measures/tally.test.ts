import { expect, it } from 'vitest';
import { count, newTally } from '../../src/measures/tally.ts';

// HL7's reference validator: where subjects are listed, as many are listed as are counted, in each population.
it('lists each exam under every population that counts it, observations included', () => {
  const tally = newTally();
  count(tally, ['initial-population', 'measure-population'], 12, 'one');
  count(tally, ['initial-population', 'measure-population'], undefined, 'two');
  expect(Object.fromEntries(tally.members)).toEqual({
    'initial-population': ['one', 'two'],
    'measure-population': ['one', 'two'],
    'measure-observation': ['one'],
  });
  expect(tally.observations).toEqual([12]);
});

it('lists nobody where no list was asked for', () => {
  const tally = newTally();
  count(tally, ['initial-population'], 3);
  expect([tally.members.size, tally.counts.get('initial-population')]).toEqual([0, 1]);
});
