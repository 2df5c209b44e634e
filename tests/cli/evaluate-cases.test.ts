import { describe, expect, it } from 'vitest';
import { faultText } from '../../src/cli/evaluate/evaluation-case.ts';
import { lineOf } from '../../src/cli/evaluate/json-place.ts';
import { readCaseFiles } from '../../src/cli/evaluate/read-case-file.ts';
import { reader } from '../exam/support/read.ts';

const reading = { reader, now: new Date('2026-12-31T00:00:00Z') };
const exam = { examinedAt: '2026-03-14T10:20:00+01:00', findings: {} };
const sound = { name: 'sound', expect: { sites: ['nerve-root'], side: 'left', level: 'L5' }, exam };

const read = (file: string, text: string) => readCaseFiles([{ file, text }], reading);
const faultsOf = (...cases: readonly unknown[]) =>
  read('some.ndjson', cases.map((one) => JSON.stringify(one)).join('\n')).faults.map(faultText);

describe('a case file', () => {
  it('has a case a line, in its own words and with its line', () => {
    const text = `\n${JSON.stringify({ ...sound, kind: 'textbook', source: 'a book', picture: 'a picture' })}\r\n\n`;
    const { cases, faults } = read('some.ndjson', text);
    expect(faults).toEqual([]);
    expect(cases).toMatchObject([
      {
        name: 'sound',
        kind: 'textbook',
        source: 'a book',
        picture: 'a picture',
        expect: { sites: ['nerve-root'], sides: ['left'], levels: ['L5'], levelWithin: 1 },
        file: 'some.ndjson',
        line: 2,
      },
    ]);
  });

  it('may be JSON with one case or a list of cases', () => {
    expect(read('one.json', JSON.stringify(sound, null, 2)).cases).toMatchObject([{ name: 'sound', line: 1 }]);
    const list = `[\n${JSON.stringify(sound)},\n${JSON.stringify({ ...sound, name: 'second' })}\n]`;
    expect(read('two.json', list).cases.map(({ name, line }) => [name, line])).toEqual([
      ['sound', 2],
      ['second', 3],
    ]);
  });

  it('takes causes, red flags and tests by key, and names the nearest key for an unknown one', () => {
    const advice = { causes: 'carpal-tunnel-syndrome', redFlags: [], tests: ['mri-brain'], notTests: ['ct-head'] };
    const { cases, faults } = read('some.ndjson', JSON.stringify({ name: 'one', expect: advice, exam }));
    expect(faults).toEqual([]);
    expect(cases[0]?.expect.advice).toEqual({ ...advice, causes: ['carpal-tunnel-syndrome'] });
    const wrong = { causes: ['carpal-tunel-syndrome'], redFlags: ['suspected-strok'], tests: ['mri-brian'] };
    expect(faultsOf({ name: 'two', expect: wrong, exam })).toEqual([
      'some.ndjson:1 /expect/causes/0: Unknown cause "carpal-tunel-syndrome". Did you mean carpal-tunnel-syndrome?',
      'some.ndjson:1 /expect/redFlags/0: Unknown red flag "suspected-strok". Did you mean suspected-stroke?',
      'some.ndjson:1 /expect/tests/0: Unknown test "mri-brian". Did you mean mri-brain?',
    ]);
  });

  it('takes lists of what is right, a side that is none, and a case that asks for the conclusion alone', () => {
    const expectations = [
      { sites: ['nerve-root', 'lower-trunk'], level: ['C8', null], levelWithin: 0, side: [null, 'both'] },
      { conclusion: ['insufficient', 'not-anatomical'] },
    ];
    const text = expectations.map((one, index) => JSON.stringify({ name: `${index}`, expect: one, exam })).join('\n');
    const { cases, faults } = read('some.ndjson', text);
    expect(faults).toEqual([]);
    expect(cases.map((one) => one.expect)).toEqual([
      { sites: ['nerve-root', 'lower-trunk'], levels: ['C8'], levelWithin: 0, advice: {}, sides: [null, 'both'] },
      { sites: [], levelWithin: 1, advice: {}, conclusions: ['insufficient', 'not-anatomical'] },
    ]);
  });
});

describe('the faults of a case file', () => {
  it('name the file, the line, the pointer and the nearest known key, all at once', () => {
    expect(
      faultsOf(
        { ...sound, expect: { sites: ['comon-fibular-nerve'], side: 'lefft' } },
        { ...sound, name: 'other', kind: 'textbok', expects: {} },
        {
          ...sound,
          name: 'third',
          expect: { sites: ['nerve-root'], level: 'L9', levelWithin: -1, conclusion: 'sure' },
        },
      ),
    ).toEqual([
      'some.ndjson:1 /expect/sites/0: Unknown site "comon-fibular-nerve". Did you mean common-fibular-nerve?',
      'some.ndjson:1 /expect/side: Expected left, right, both or null. Did you mean left?',
      'some.ndjson:2 /expects: Unknown property "expects". Did you mean expect?',
      'some.ndjson:2 /kind: Expected textbook or published. Did you mean textbook?',
      'some.ndjson:3 /expect/level: A segment, C1 to S5, or a list of segments.',
      expect.stringMatching(/^some\.ndjson:3 \/expect\/conclusion: Expected single-site, .* or insufficient\.$/),
      'some.ndjson:3 /expect/levelWithin: A whole number of segments, 0 or more.',
    ]);
  });

  it('are those of the exam too, with the pointer from the case on', () => {
    const findings = { power: [{ movement: 'ankle-dorsiflexon', side: 'left', grade: '3' }] };
    const [fault = ''] = faultsOf({ ...sound, exam: { ...exam, findings } });
    expect(fault).toMatch(/^some\.ndjson:1 \/exam\/findings\/power\/0\/movement: .*ankle-dorsiflexion/);
  });

  it('say what is missing', () => {
    expect(faultsOf({}, [], { name: ' ', expect: {}, exam })).toEqual([
      'some.ndjson:1 /name: Words are needed here.',
      'some.ndjson:1: `expect` is missing: an object with `sites` or `conclusion`.',
      'some.ndjson:1: `exam` is missing: the body of a localisation request.',
      'some.ndjson:2: A case is a JSON object.',
      'some.ndjson:3 /name: Words are needed here.',
      'some.ndjson:3 /expect: Without `sites` there must be a `conclusion`, a cause, a red flag or a test.',
    ]);
  });

  it('show in a file of several lines the line of the value itself', () => {
    const text = JSON.stringify([{ ...sound, expect: { sites: ['nerve-root', 'nowhere'] } }], null, 2);
    const line = text.split('\n').findIndex((one) => one.includes('nowhere')) + 1;
    expect(read('some.json', text).faults.map(faultText)).toEqual([
      `some.json:${line} /0/expect/sites/1: Unknown site "nowhere".`,
    ]);
  });

  it('take nothing for JSON that is not, nor a property that is there twice', () => {
    const [broken, twice] = read('some.ndjson', '{"name": \n{"name": "a", "name": "b"}').faults.map(faultText);
    expect(broken).toMatch(/^some\.ndjson:1: The text is not valid JSON/);
    expect(twice).toMatch(/^some\.ndjson:2: The property \/name is there twice/);
    const [deep] = read('some.json', '[\n  {},\n  {"name" 1}\n]').faults;
    expect(deep).toMatchObject({ line: 3, message: 'The text is not valid JSON (column 11).' });
  });

  it('has a name only once in a file', () => {
    expect(faultsOf(sound, sound)).toEqual(['some.ndjson:2 /name: The case on line 1 has the same name.']);
  });
});

describe('the line of a JSON Pointer', () => {
  const text = '{\n "a,]": "x\\"}",\n "b": [1,\n {"c": {},\n "d": [2, 3]}, \n null]\n}';
  it.each([
    [[], 1],
    [['a,]'], 2],
    [['b'], 3],
    [['b', '1', 'c'], 4],
    [['b', '1', 'd', '1'], 5],
    [['b', '2'], 6],
    [['b', '9'], 3],
    [['none', '1'], 1],
  ] as const)('%j is on line %i', (steps, line) => {
    expect(lineOf(text, steps)).toBe(line);
  });
});
