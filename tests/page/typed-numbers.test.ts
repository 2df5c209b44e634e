import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countIn, daysOf, durationOf, durationUnits } from '../../src/page/story/duration.ts';
import { offeredUnits, printedUnit, unitTyped } from '../../src/page/story/printed-unit.ts';
import { changeOfFirst, ordinal } from '../../src/page/story/rank-words.ts';
import { readNumber } from '../../src/page/story/read-number.ts';
import { durationWords } from '../../src/summary/opening.ts';
import { catalogue } from './catalogue.ts';

const units = catalogue.results.flatMap(({ units: codes = [] }) => codes);

describe('a typed number', () => {
  it.each([
    ['5.3', { value: 5.3 }],
    [' .5 ', { value: 0.5 }],
    ['<5', { value: 5, comparator: '<' }],
    ['≥ 0.80', { value: 0.8, comparator: '>=' }],
    ['=> 2', { value: 2, comparator: '>=' }],
    ['-3', { value: -3 }],
    ['−3', { value: -3 }],
    ['98 mg/dL', { value: 98, unit: 'mg/dL' }],
    ['5.3%', { value: 5.3, unit: '%' }],
    ['1,234.5', { value: 1234.5 }],
    ['1,200,000', { value: 1_200_000 }],
  ])('%s', (text, read) => expect(readNumber(text)).toEqual(read));

  it.each([
    ['1,4', /1\.4 or 14\b/],
    ['1,400', /1\.400 or 1400\b/],
    [',5', /0\.5/],
    ['1.2.3', /one point/],
    ['1.200,5', /one point/],
    ['5-10', /one number/],
    ['1 200', /without spaces/],
    ['', /Write a number/],
    ['high', /Write a number/],
    ['<', /Write a number/],
  ])('does not guess at %j', (text, words) => {
    expect(readNumber(text)).toMatchObject({ problem: expect.stringMatching(words) });
  });

  it('offers what a single comma may mean, to be taken as it stands', () => {
    const read = readNumber('<1,400 mg/L');
    expect(read).toMatchObject({ meanings: ['<1.400', '<1400'] });
    expect(['<1.400', '<1400'].map(readNumber)).toEqual([
      { value: 1.4, comparator: '<' },
      { value: 1400, comparator: '<' },
    ]);
    expect(readNumber(',5')).toMatchObject({ meanings: ['0.5'] });
  });

  it('comes back as it was written', () => {
    const value = fc.integer({ min: -1e9, max: 1e9 }).map((number) => number / 1000);
    fc.assert(
      fc.property(value, fc.constantFrom('', '<', '<=', '>', '>='), (number, sign) => {
        expect(readNumber(`${sign}${number.toFixed(3)}`)).toEqual({
          value: number,
          ...(sign !== '' && { comparator: sign }),
        });
      }),
    );
  });
});

describe('a unit', () => {
  it('is printed as laboratories do', () => {
    const prints = ['umol/L', '10*9/L', 'mm[Hg]', 'cm[H2O]', 'm[IU]/L', '/uL', 'Cel', '{ratio}', 'mL/min/{1.73_m2}'];
    expect(prints.map(printedUnit)).toEqual([
      'µmol/L',
      '×10⁹/L',
      'mmHg',
      'cmH₂O',
      'mIU/L',
      '/µL',
      '°C',
      '',
      'mL/min/1.73 m²',
    ]);
  });

  it('shows no sign of UCUM for any result of the catalogue', () => {
    expect(units.map(printedUnit).filter((print) => /[[\]{}*]/.test(print))).toEqual([]);
  });

  it('is understood as code and as print, without capitals', () => {
    for (const { units: codes = [] } of catalogue.results) {
      for (const { code, print } of offeredUnits(codes)) {
        expect(unitTyped(code, codes)).toBe(code);
        if (print !== '') expect(unitTyped(print.toLowerCase(), codes)).toBe(code);
      }
    }
  });

  it('goes as it was typed where it is not known', () => {
    expect(unitTyped('furlongs', ['mg/L'])).toBe('furlongs');
    expect(unitTyped('µkat/L', ['mg/L'])).toBe('ukat/L');
  });
});

describe('how long it has lasted', () => {
  it('comes back in the unit that it was stated in, or in one that says as much', () => {
    fc.assert(
      fc.property(fc.constantFrom(...durationUnits), fc.integer({ min: 1, max: 99 }), (unit, count) => {
        const days = daysOf({ count, unit });
        expect(countIn(days, unit)).toBe(count);
        expect(daysOf(durationOf(days))).toBe(days);
      }),
    );
  });

  it('is told by the service as it was stated', () => {
    for (const [count, unit] of [
      [5, 'hours'],
      [3, 'days'],
      [6, 'weeks'],
      [3, 'months'],
      [18, 'months'],
      [12, 'years'],
    ] as const) {
      expect(durationWords(daysOf({ count, unit }))).toBe(`${count} ${unit}`);
    }
  });
});

describe('the rank of the leading cause', () => {
  const ranked = (...keys: string[]) => keys.map((key) => ({ key, label: key }));

  it('is told beside the rank that it had', () => {
    expect(changeOfFirst(ranked('a', 'b'), ranked('b', 'c', 'a'))).toBe('(was 3rd)');
    expect(changeOfFirst(ranked('a'), ranked('a', 'b'))).toBe('(as before)');
    expect(changeOfFirst(ranked('a'), ranked('b'))).toBe('(not listed before)');
    expect(changeOfFirst(ranked('a'), undefined)).toBe('');
    expect(changeOfFirst([], ranked('a'))).toBe('');
  });

  it('is an English ordinal', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 101, 111].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '101st',
      '111th',
    ]);
  });
});
