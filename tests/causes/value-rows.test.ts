import { describe, expect, it } from 'vitest';
import { queryExam } from '../../src/causes/exam-query.ts';
import { type Cause, reads, tempos } from '../../src/causes/table/cause.ts';
import { ratioOf, valueRowsOf } from '../../src/causes/value-rows.ts';
import { fromMemory } from '../../src/kernel/cite.ts';
import { bedsideExam } from '../support/bedside.ts';

const withRows = (...values: Cause['values'] & object): Cause => ({
  key: 'some-disease',
  label: 'Some disease',
  group: 'hereditary',
  produces: [],
  tempo: tempos.chronic,
  values,
  source: fromMemory,
});

/** The product of what a cause's rows say of one result. */
const says = (cause: Cause, key: string, value: string) =>
  valueRowsOf(cause, queryExam(bedsideExam({ results: [{ key, value }] })))
    .filter(({ result }) => result === key)
    .reduce((product, row) => product * (ratioOf(row, value) ?? 1), 1);

const cervical = reads('mri-cervical-spine', [
  ['cord-compression', 8],
  ['dorsal-column-signal', 5],
  ['normal', 0.02],
]);
const whole = reads('mri-whole-spine', [
  ['infection-or-abscess', 60],
  ['normal', 0.02],
]);

describe('rows of results', () => {
  it('take changes that explain nothing nearly as a normal image, and an equivocal test as a weak positive one', () => {
    const incidental = ratioOf(whole, 'incidental') ?? 1;
    expect(incidental).toBeGreaterThan(0.02);
    expect(incidental).toBeLessThan(1);
    const antibody = reads('achr-antibody', [
      ['positive', 30],
      ['negative', 0.3],
    ]);
    const equivocal = ratioOf(antibody, 'equivocal') ?? 1;
    expect(equivocal).toBeGreaterThan(1);
    expect(equivocal).toBeLessThan(30);
    expect(ratioOf(antibody, undefined)).toBeUndefined();
  });

  it('take the whole spine for its parts, and a part for what is told of the whole alone', () => {
    expect(says(withRows(cervical), 'mri-whole-spine', 'cord-compression')).toBe(8);
    expect(says(withRows(cervical), 'mri-whole-spine', 'normal')).toBe(0.02);
    expect(says(withRows(whole), 'mri-cervical-spine', 'infection-or-abscess')).toBe(60);
    // What a neck does not show may lie below it.
    expect(says(withRows(whole), 'mri-cervical-spine', 'normal')).toBe(1);
  });

  it('keep a disease of one region to its region, but for what is the same everywhere', () => {
    expect(says(withRows(cervical), 'mri-thoracic-spine', 'cord-compression')).toBe(1);
    expect(says(withRows(cervical), 'mri-thoracic-spine', 'dorsal-column-signal')).toBe(5);
    expect(says(withRows(cervical, whole), 'mri-whole-spine', 'cord-compression')).toBe(1);
  });
});
