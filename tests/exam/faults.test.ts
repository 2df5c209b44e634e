import { describe, expect, it } from 'vitest';
import { pointerTo } from '../../src/exam/faults/pointer.ts';
import { footDropRequest, requestWith, requestWithFindings } from './support/exam-request.ts';
import { faultsOf } from './support/read.ts';

const dorsiflexion = { movement: 'ankle-dorsiflexion', side: 'left', grade: '3' };
const pinprick = { modality: 'pinprick', side: 'left', result: 'normal' };
const power = (entry: unknown) => requestWithFindings({ power: [entry] });
const sensation = (entry: unknown) => requestWithFindings({ sensation: [entry] });
const gait = (entry: unknown) => requestWithFindings({ gait: [entry] });

/** What is sent, then the one fault that it has: place, kind, words that its message holds, and suggestion. */
const cases: readonly [
  name: string,
  body: unknown,
  pointer: string,
  code: string,
  words: string,
  suggestion?: string,
][] = [
  [
    'a misspelt movement',
    power({ ...dorsiflexion, movement: 'ankle-dorsiflection' }),
    '/findings/power/0/movement',
    'UNKNOWN_KEY',
    "No such movement 'ankle-dorsiflection'. Did you mean 'ankle-dorsiflexion'?",
    'ankle-dorsiflexion',
  ],
  [
    'words in another order',
    power({ ...dorsiflexion, movement: 'dorsiflexion-ankle' }),
    '/findings/power/0/movement',
    'UNKNOWN_KEY',
    "Did you mean 'ankle-dorsiflexion'?",
    'ankle-dorsiflexion',
  ],
  [
    'an item of another section',
    power({ ...dorsiflexion, movement: 'foot-drop' }),
    '/findings/power/0/movement',
    'WRONG_SECTION',
    'inspection item: it belongs in `findings.inspection`',
    'inspection/foot-drop',
  ],
  [
    'a misspelt item of another section',
    power({ ...dorsiflexion, movement: 'ptosiss' }),
    '/findings/power/0/movement',
    'UNKNOWN_KEY',
    "'ptosis' in `findings.cranialNerves`",
    'cranialNerves/ptosis',
  ],
  [
    'a key like nothing known',
    power({ ...dorsiflexion, movement: 'zzzzqqqqxxxx' }),
    '/findings/power/0/movement',
    'UNKNOWN_KEY',
    'The catalogue lists those that there are.',
  ],
  [
    'a misspelt naming property',
    power({ moveemnt: 'ankle-dorsiflexion', side: 'left', grade: '3' }),
    '/findings/power/0/moveemnt',
    'UNKNOWN_PROPERTY',
    "Did you mean 'movement'?",
    'movement',
  ],
  [
    'a misspelt property',
    power({ movement: 'ankle-dorsiflexion', sid: 'left', grade: '3' }),
    '/findings/power/0/sid',
    'UNKNOWN_PROPERTY',
    "Unknown property 'sid'. Did you mean 'side'?",
    'side',
  ],
  [
    'a property that means nothing',
    power({ ...dorsiflexion, examiner: 'x' }),
    '/findings/power/0/examiner',
    'UNKNOWN_PROPERTY',
    'Known here: movement, side, grade, notTested, note.',
  ],
  [
    'a section in another spelling',
    requestWithFindings({ cranial_nerves: [] }),
    '/findings/cranial_nerves',
    'UNKNOWN_PROPERTY',
    "Did you mean 'cranialNerves'?",
    'cranialNerves',
  ],
  [
    'a grade as a number',
    power({ ...dorsiflexion, grade: 3 }),
    '/findings/power/0/grade',
    'WRONG_TYPE',
    'write "3" in quotes',
  ],
  [
    'a grade that there is not',
    power({ ...dorsiflexion, grade: '6' }),
    '/findings/power/0/grade',
    'UNKNOWN_KEY',
    'Expected 0, 1, 2, 3, 4-, 4, 4+ or 5.',
  ],
  [
    'a side that there is not',
    power({ ...dorsiflexion, side: 'middle' }),
    '/findings/power/0/side',
    'UNKNOWN_KEY',
    'Expected left, right or both.',
  ],
  [
    'a paired item without its side',
    power({ movement: 'ankle-dorsiflexion', grade: '3' }),
    '/findings/power/0',
    'REQUIRED',
    '`side` is required',
    'side',
  ],
  [
    'a midline item with a side',
    gait({ sign: 'waddling', side: 'left', present: true }),
    '/findings/gait/0/side',
    'SIDE_NOT_APPLICABLE',
    'midline',
  ],
  [
    'a task given as present',
    gait({ sign: 'heel-walking', side: 'left', present: true }),
    '/findings/gait/0/present',
    'WRONG_VALUE_PROPERTY',
    '`present` could be read both ways: give `result`: normal, impaired or unable',
    'result',
  ],
  [
    'a sign given as a result',
    gait({ sign: 'romberg', result: 'normal' }),
    '/findings/gait/0/result',
    'WRONG_VALUE_PROPERTY',
    'give `present`: true or false',
    'present',
  ],
  [
    'a value and a reason for none',
    power({ ...dorsiflexion, notTested: 'pain' }),
    '/findings/power/0/notTested',
    'VALUE_AND_NOT_TESTED',
    'stand together',
  ],
  [
    'neither value nor reason',
    power({ movement: 'ankle-dorsiflexion', side: 'left' }),
    '/findings/power/0',
    'VALUE_MISSING',
    'add `grade`, or `notTested`',
    'grade',
  ],
  [
    'a reason that there is not',
    power({ movement: 'ankle-dorsiflexion', side: 'left', notTested: 'asleep' }),
    '/findings/power/0/notTested',
    'UNKNOWN_KEY',
    'Expected pain, declined, unable, not-done, limb-absent or other.',
  ],
  [
    'a sign without its site',
    requestWithFindings({ inspection: [{ sign: 'wasting', side: 'left', present: true }] }),
    '/findings/inspection/0',
    'REQUIRED',
    '`site` is required',
    'site',
  ],
  [
    'a site on a sign that has its own',
    requestWithFindings({ inspection: [{ sign: 'foot-drop', site: 'foot', side: 'left', present: true }] }),
    '/findings/inspection/0/site',
    'SITE_NOT_APPLICABLE',
    'leave out `site`',
  ],
  [
    'sensation without a place',
    sensation(pinprick),
    '/findings/sensation/0',
    'REQUIRED',
    'Give one of `site`, `dermatome`, `territory` or `levelBelow`.',
  ],
  [
    'sensation at two places',
    sensation({ ...pinprick, dermatome: 'L5', site: 'dorsum-of-foot' }),
    '/findings/sensation/0',
    'ONLY_ONE',
    'Give only one of `site`',
  ],
  [
    'a misspelt landmark',
    sensation({ ...pinprick, site: 'dorsum-foot' }),
    '/findings/sensation/0/site',
    'UNKNOWN_KEY',
    "Did you mean 'dorsum-of-foot'?",
    'dorsum-of-foot',
  ],
  [
    'a dermatome as a site',
    sensation({ ...pinprick, site: 'L5' }),
    '/findings/sensation/0/site',
    'WRONG_PLACE_PROPERTY',
    'give it as `dermatome`',
    'dermatome',
  ],
  [
    'a segment that there is not',
    sensation({ ...pinprick, levelBelow: 'T13' }),
    '/findings/sensation/0/levelBelow',
    'UNKNOWN_KEY',
    'Expected C1, ',
  ],
  [
    'a segment in small letters',
    sensation({ ...pinprick, dermatome: 'l5' }),
    '/findings/sensation/0/dermatome',
    'UNKNOWN_KEY',
    "Did you mean 'L5'?",
    'L5',
  ],
  ['an entry that is no object', power(null), '/findings/power/0', 'WRONG_TYPE', 'an object'],
  ['a section that is no list', requestWithFindings({ power: {} }), '/findings/power', 'WRONG_TYPE', 'a list'],
  ['a body that is no object', [], '', 'WRONG_TYPE', 'JSON object'],
  ['blank text', power({ ...dorsiflexion, note: '  ' }), '/findings/power/0/note', 'FORMAT', 'free text'],
  [
    'a control character',
    power({ ...dorsiflexion, note: 'a\u0001b' }),
    '/findings/power/0/note',
    'FORMAT',
    'free text',
  ],
  [
    'a long note',
    power({ ...dorsiflexion, note: 'a'.repeat(2001) }),
    '/findings/power/0/note',
    'TOO_LARGE',
    '2000 characters',
  ],
  [
    'half a beat',
    requestWithFindings({ clonus: [{ site: 'ankle', side: 'left', beats: 2.5 }] }),
    '/findings/clonus/0/beats',
    'WRONG_TYPE',
    'a whole number',
  ],
  [
    'a history key of another list',
    requestWith({ history: { symptoms: [{ key: 'diabetes-mellitus', present: true }] } }),
    '/history/symptoms/0/key',
    'WRONG_SECTION',
    '`history.conditions`',
    'conditions/diabetes-mellitus',
  ],
  [
    'a misspelt history key',
    requestWith({ history: { symptoms: [{ key: 'back-pains', present: true }] } }),
    '/history/symptoms/0/key',
    'UNKNOWN_KEY',
    "No such key 'back-pains'. Did you mean 'back-pain'?",
    'back-pain',
  ],
  [
    'a relation outside the family',
    requestWith({ history: { conditions: [{ key: 'diabetes-mellitus', present: true, relation: 'parent' }] } }),
    '/history/conditions/0/relation',
    'UNKNOWN_PROPERTY',
    'Known here: key, present.',
  ],
  [
    'an age beyond any',
    requestWith({ person: { ageYears: 131 } }),
    '/person/ageYears',
    'OUT_OF_RANGE',
    'from 0 to 130',
  ],
  [
    'a negative duration',
    requestWith({ history: { onset: { durationDays: -1 } } }),
    '/history/onset/durationDays',
    'OUT_OF_RANGE',
    'from 0',
  ],
  [
    'a sex outside the list',
    requestWith({ person: { sex: 'f' } }),
    '/person/sex',
    'UNKNOWN_KEY',
    'male, female, other or unknown',
  ],
  [
    'a subject of the wrong type',
    requestWith({ subject: { reference: 'Practitioner/7' } }),
    '/subject/reference',
    'FORMAT',
    '"Patient/4711"',
  ],
  [
    'a reference to nothing',
    requestWith({ encounter: { display: 'ward round' } }),
    '/encounter',
    'REQUIRED',
    'Give `reference` or `identifier`.',
  ],
  [
    'a fragment',
    requestWith({ performer: [{ reference: '#a' }] }),
    '/performer/0/reference',
    'FORMAT',
    '"Practitioner/4711"',
  ],
  ['a date without a time', requestWith({ examinedAt: '2026-03-14' }), '/examinedAt', 'FORMAT', 'time zone'],
  ['a time without a zone', requestWith({ examinedAt: '2026-03-14T10:20:00' }), '/examinedAt', 'FORMAT', 'time zone'],
  [
    'a day that does not exist',
    requestWith({ examinedAt: '2026-02-29T10:20:00Z' }),
    '/examinedAt',
    'DATE',
    'only 28 days',
  ],
  ['a day before 1900', requestWith({ examinedAt: '1899-12-31T10:20:00Z' }), '/examinedAt', 'DATE', 'before 1900'],
  ['a moment in the future', requestWith({ examinedAt: '2026-03-20T12:05:01Z' }), '/examinedAt', 'DATE', 'future'],
  [
    'a normal statement about no section',
    requestWith({ otherwiseNormal: [{ section: 'powr' }] }),
    '/otherwiseNormal/0/section',
    'UNKNOWN_KEY',
    "Did you mean 'power'?",
    'power',
  ],
  [
    'a normal statement about no region',
    requestWith({ otherwiseNormal: [{ section: 'power', region: 'legs' }] }),
    '/otherwiseNormal/0/region',
    'UNKNOWN_KEY',
    'lower-limbs',
  ],
  [
    'a normal statement that covers nothing',
    requestWith({ otherwiseNormal: [{ section: 'plantars', region: 'head' }] }),
    '/otherwiseNormal/0',
    'NOTHING_COVERED',
    "no item in region 'head'",
  ],
  [
    'a coma-scale part out of range',
    requestWithFindings({ higherFunction: [{ scale: 'glasgow-coma-scale', eye: 5, verbal: 5, motor: 6 }] }),
    '/findings/higherFunction/0/eye',
    'OUT_OF_RANGE',
    'from 1 to 4',
  ],
  [
    'a coma-scale total that is not the sum',
    requestWithFindings({ higherFunction: [{ scale: 'glasgow-coma-scale', eye: 4, verbal: 5, motor: 6, total: 14 }] }),
    '/findings/higherFunction/0/total',
    'CONTRADICTION',
    'add up to 15',
  ],
  [
    'a list without end',
    requestWithFindings({ power: Array(2000).fill(dorsiflexion) }),
    '/findings/power',
    'TOO_LARGE',
    '1000 entries',
  ],
];

describe('a request with one fault', () => {
  it.each(cases)(
    'answers %s with one fault that names the place and the remedy',
    (_name, body, pointer, code, words, suggestion) => {
      const faults = faultsOf(body);
      expect(faults).toEqual([
        { pointer, code, message: expect.stringContaining(words), ...(suggestion === undefined ? {} : { suggestion }) },
      ]);
    },
  );
});

describe('all faults at once', () => {
  it('shows faults of form and of content together', () => {
    const faults = faultsOf({
      ...footDropRequest,
      examinedAt: '2027-01-01T00:00:00Z',
      person: { ageYears: -1 },
      findings: {
        power: [dorsiflexion, { ...dorsiflexion, grade: '4' }, { ...dorsiflexion, movement: 'hip-flexon' }],
        tone: [{ site: 'lower-limb', side: 'left', tone: 'stiff' }],
      },
    });
    expect(faults.map(({ pointer, code }) => `${pointer} ${code}`).sort()).toEqual([
      '/examinedAt DATE',
      '/findings/power/0 CONTRADICTION',
      '/findings/power/1 CONTRADICTION',
      '/findings/power/2/movement UNKNOWN_KEY',
      '/findings/tone/0/tone UNKNOWN_KEY',
      '/person/ageYears OUT_OF_RANGE',
    ]);
  });

  it('lists at most a hundred and says how many there are besides', () => {
    const faults = faultsOf(requestWithFindings({ power: Array(200).fill({ ...dorsiflexion, side: 'x' }) }));
    expect(faults).toHaveLength(100);
    expect(faults.at(-1)).toMatchObject({ code: 'MORE_FAULTS', message: expect.stringContaining('101 more faults') });
  });

  it.each(['Mrs Example, born 1950-01-01', 'Mary Example 1950'])('never repeats text about a person: %s', (name) => {
    const body = requestWithFindings({
      power: [
        { movement: name, side: name, grade: name },
        { ...dorsiflexion, grade: name, [name]: name },
      ],
      [name]: [],
    });
    const faults = faultsOf({ ...body, status: name, identifier: { system: name, value: 1 } });
    expect(faults.length).toBeGreaterThan(5);
    expect(JSON.stringify(faults)).not.toMatch(/Example|1950/);
  });
});

describe('pointers', () => {
  it('escapes tilde and slash as RFC 6901 section 3 says', () => {
    expect(pointerTo('a/b', 'm~n', 0)).toBe('/a~1b/m~0n/0');
  });
});
