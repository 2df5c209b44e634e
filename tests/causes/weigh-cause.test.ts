import { describe, expect, it } from 'vitest';
import { queryExam } from '../../src/causes/exam-query.ts';
import { type Cause, sided, tempos, told } from '../../src/causes/table/cause.ts';
import { weighCause } from '../../src/causes/weigh-cause.ts';
import { fromMemory } from '../../src/kernel/cite.ts';
import { bedsideExam } from '../support/bedside.ts';

const youthful: Cause = {
  key: 'some-disease',
  label: 'Some disease',
  group: 'hereditary',
  produces: [],
  tempo: tempos.chronic,
  age: { from: 5, to: 40, outside: 0.2 },
  history: [told('vomiting', 5), told('headache', 1.2)],
  source: fromMemory,
};

/** Of which a pace that nobody tells says nothing. */
const atAnyPace: Cause = { ...youthful, tempo: { hyperacute: 0.25, acute: 0.25, subacute: 0.25, chronic: 0.25 } };

const weigh = (parts: Record<string, unknown>) => weighCause(youthful, queryExam(bedsideExam(parts)));

describe('weight of a cause', () => {
  // A hereditary neuropathy is often seen first late in life; the foot tells that it began in childhood (Saporta 2011).
  it('takes the age at which it began, and a deformed foot as a sign that it began long before', () => {
    const person = { ageYears: 65 };
    const inspection = [{ sign: 'pes-cavus', side: 'both', present: true }];
    const objections = (onset: unknown, findings = {}) =>
      weigh({ person, history: { onset }, findings })
        .reasons()
        .against.filter(({ pointer }) => pointer === '/person/ageYears')
        .map(({ text }) => text);
    const noticedLastYear = { pace: 'chronic', durationDays: 365 };
    expect(objections(noticedLastYear)).toEqual(['onset at about 64 is above the usual 40']);
    expect(objections({ pace: 'acute' })).toEqual(['age 65 is above the usual 40']);
    expect(objections({ pace: 'chronic', durationDays: 365 * 40 })).toEqual([]);
    // Without a number it may be ten years, and hardly three times as many.
    expect(objections({ pace: 'chronic' })).toEqual(['age 65 is above the usual 40']);
    expect(objections({ pace: 'chronic' }, { inspection })).toEqual([]);
    expect(objections(noticedLastYear, { inspection })).toEqual([]);
  });

  it('takes what began last week to have begun at the age in whole years that is stated', () => {
    const { against } = weigh({
      person: { ageYears: 5 },
      history: { onset: { pace: 'chronic', durationDays: 7 } },
    }).reasons();
    expect(against.filter(({ pointer }) => pointer === '/person/ageYears')).toEqual([]);
  });

  // Amyotrophic lateral sclerosis is not met in an infant, and hardly in a girl of fifteen (juvenile forms are hereditary).
  it('counts a beginning under half of the usual age twice', () => {
    const grown: Cause = { ...youthful, age: { from: 30, to: 90, outside: 0.1 } };
    const ratio = (ageYears: number) => weighCause(grown, queryExam(bedsideExam({ person: { ageYears } }))).ratio;
    expect(ratio(40)).toBe(1);
    expect(ratio(20)).toBeCloseTo(0.1 ** 0.75, 6);
    expect(ratio(6)).toBeCloseTo(0.1 ** 1.5, 6);
  });

  // Essential tremor is of both hands (consensus of 2018, recalled); a complaint of one hand says so before anybody has looked.
  it('takes the side of a complaint for that of its sign, until the sign is looked for', () => {
    const sides = [sided(['involuntary-movements/action-tremor'], { one: 0.4, both: 1.1 })];
    const shaking: Cause = { ...youthful, age: { from: 0, to: 110, outside: 1 }, sides };
    const ratio = (side: string | undefined, findings = {}) =>
      weighCause(
        shaking,
        queryExam(bedsideExam({ history: { symptoms: [{ key: 'tremor', present: true, side }] }, findings })),
      ).ratio;
    expect(ratio('left')).toBeLessThan(ratio(undefined));
    expect(ratio('both')).toBeGreaterThan(ratio(undefined));
    const seen = (side: string) => [{ sign: 'action-tremor', site: 'hand', side, present: true }];
    expect(ratio('left', { involuntaryMovements: seen('both') })).toBe(
      ratio('both', { involuntaryMovements: seen('both') }),
    );
  });

  it('is supported by what speaks for it by itself, not by tempo, age or soft hints', () => {
    const symptoms = (key: string, present: boolean) => ({
      history: { onset: { pace: 'chronic' }, symptoms: [{ key, present }] },
    });
    expect(weigh(symptoms('vomiting', true)).isSupported).toBe(true);
    expect(weigh(symptoms('vomiting', false)).isSupported).toBe(false);
    expect(weigh(symptoms('headache', true)).isSupported).toBe(false);
  });

  // A stroke whose onset is called acute and lies within the day came within hours; a patient with a plexus that was
  // irradiated tells of the radiotherapy, and one who is not known to carry a virus cannot tell of it.
  it('counts what began today half as sudden, and silence about what makes a cause as half a denial', () => {
    const sudden: Cause = { ...youthful, tempo: tempos.sudden, history: [told('radiotherapy', 40, 0.01)] };
    const ratio = (cause: Cause, history: Record<string, unknown>) =>
      weighCause(cause, queryExam(bedsideExam({ history }))).ratio;
    const today = ratio(sudden, { onset: { pace: 'acute', durationDays: 0 } });
    expect(today).toBeGreaterThan(ratio(sudden, { onset: { pace: 'acute', durationDays: 3 } }));
    expect(today).toBeLessThan(ratio(sudden, { onset: { pace: 'hyperacute', durationDays: 0 } }));

    const nothingTold = ratio(sudden, {});
    const silent = ratio(sudden, { symptoms: [{ key: 'arm-pain', present: true }] });
    const denied = ratio(sudden, { exposures: [{ key: 'radiotherapy', present: false }] });
    expect(nothingTold).toBe(1);
    expect(silent).toBeLessThan(nothingTold);
    expect(silent).toBeGreaterThan(denied);
    const hidden: Cause = { ...atAnyPace, history: [told('hiv-infection', 25, 0.02)] };
    expect(ratio(hidden, { symptoms: [{ key: 'arm-pain', present: true }] })).toBeCloseTo(1, 6);
  });

  // Age and noise dull both ears, a schwannoma one; a one-sided loss is what asks for a scan.
  it('tells one side from both, and is not supported by that alone', () => {
    const oneEar: Cause = { ...youthful, sides: [sided(['cranial-nerves/hearing-loss'], { one: 3, both: 0.2 })] };
    const weight = (side: string) =>
      weighCause(
        oneEar,
        queryExam(bedsideExam({ findings: { cranialNerves: [{ sign: 'hearing-loss', side, present: true }] } })),
      );
    expect(weight('left').ratio).toBeCloseTo(3 ** 0.75, 6);
    expect(weight('right').ratio).toBeCloseTo(3 ** 0.75, 6);
    expect(weight('both').ratio).toBeCloseTo(0.2 ** 0.75, 6);
    expect(weight('left').isSupported).toBe(false);
    expect(
      weight('both')
        .reasons()
        .against.map(({ text }) => text),
    ).toEqual(['hearing loss on both sides']);
  });

  // A cord that was broken two years ago and has not changed since is told as a trouble of years.
  it('does not hold a long standstill against what begins at once', () => {
    const sudden: Cause = { ...youthful, tempo: tempos.sudden };
    const ratio = (course: string) =>
      weighCause(sudden, queryExam(bedsideExam({ history: { onset: { pace: 'chronic' }, course } }))).ratio;
    expect(ratio('static')).toBeCloseTo((0.1 / 0.25) ** 0.75, 6);
    expect(ratio('progressive')).toBeCloseTo((0.01 / 0.25) ** 0.75, 6);
  });

  it('takes nausea for a lesser vomiting where nobody speaks of vomiting', () => {
    const sick: Cause = { ...atAnyPace, history: [told('vomiting', 4, 0.8)] };
    const ratio = (...symptoms: readonly { readonly key: string; readonly present: boolean }[]) =>
      weighCause(sick, queryExam(bedsideExam({ history: { symptoms } }))).ratio;
    const nausea = { key: 'nausea', present: true };
    expect(ratio(nausea)).toBeCloseTo(4 ** (0.5 * 0.75), 6);
    expect(ratio(nausea, { key: 'vomiting', present: true })).toBeCloseTo(4 ** 0.75, 6);
    expect(ratio(nausea, { key: 'vomiting', present: false })).toBeCloseTo(0.8 ** 0.75, 6);
  });

  it('takes silence for no denial where the examiner saw what nobody told', () => {
    const feverish: Cause = { ...atAnyPace, history: [told('fever', 5, 0.1)] };
    const ratio = (fever: boolean) =>
      weighCause(
        feverish,
        queryExam(
          bedsideExam({
            history: { symptoms: [{ key: 'headache', present: true }] },
            findings: { autonomic: [{ sign: 'fever', present: fever }] },
          }),
        ),
      ).ratio;
    expect(ratio(true)).toBeCloseTo(1, 6);
    expect(ratio(false)).toBeCloseTo(0.1 ** (0.7 * 0.75), 6);
  });

  it('counts silence about a complaint half where not one complaint was written down', () => {
    const feverish: Cause = { ...atAnyPace, history: [told('fever', 5, 0.1)] };
    const ratio = (history: Record<string, unknown>) => weighCause(feverish, queryExam(bedsideExam({ history }))).ratio;
    const ofAStory = ratio({ symptoms: [{ key: 'headache', present: true }] });
    expect(ratio({ exposures: [{ key: 'dental-procedure', present: true }] })).toBeCloseTo(Math.sqrt(ofAStory), 6);
  });

  it('counts an upper limit half, and a length told as a pace as such, where nobody says whether it still grows', () => {
    const limits = { to: 21, outside: 0.1, source: fromMemory };
    const overSoon: Cause = { ...atAnyPace, durationDays: limits };
    const weighed = (course: string | undefined, cause: Cause, pace: string) =>
      weighCause(cause, queryExam(bedsideExam({ history: { onset: { pace, durationDays: 60 }, course } }))).ratio;
    const ofTheLimit = (course?: string) =>
      weighed(course, overSoon, 'subacute') / weighed(course, atAnyPace, 'subacute');
    expect(ofTheLimit('progressive')).toBeCloseTo(0.1 ** 0.75, 6);
    expect(ofTheLimit()).toBeCloseTo(0.1 ** (0.5 * 0.75), 6);
    expect(ofTheLimit('static')).toBe(1);
    const sudden: Cause = { ...atAnyPace, tempo: tempos.sudden };
    const [growing, untold, standing] = ['progressive', undefined, 'static'].map((course) =>
      weighed(course, sudden, 'chronic'),
    );
    expect(growing).toBeLessThan(untold ?? 0);
    expect(untold).toBeLessThan(standing ?? 0);
  });

  // Two types of one hereditary disease share feet, family and age; the velocity of the nerve tells which leads.
  it('keeps the order of two causes for which far more speaks than the range allows', () => {
    const supported = (ratio: number): Cause => ({
      ...atAnyPace,
      history: [told('vomiting', 100), told('headache', ratio)],
    });
    const symptoms = ['vomiting', 'headache'].map((key) => ({ key, present: true }));
    const ratio = (cause: Cause) => weighCause(cause, queryExam(bedsideExam({ history: { symptoms } }))).ratio;
    expect(ratio(supported(100))).toBeCloseTo(500 * (10000 ** 0.75 / 500) ** 0.3, 6);
    expect(ratio(supported(200))).toBeGreaterThan(ratio(supported(100)));
    expect(ratio(supported(2))).toBeCloseTo(200 ** 0.75, 6);
  });

  // Many who come with a trapped nerve smoke; hardly anybody who is not ill by it breathes nitrous oxide.
  it('lets an exposure that few have stand by itself, and one that many have count as a hint among others', () => {
    const ratio = (key: string) =>
      weighCause(
        { ...atAnyPace, history: [told(key, 5)] },
        queryExam(bedsideExam({ history: { exposures: [{ key, present: true }] } })),
      ).ratio;
    expect(ratio('nitrous-oxide')).toBeCloseTo(5, 6);
    expect(ratio('tobacco')).toBeCloseTo(5 ** 0.75, 6);
  });

  it('objects twice to what begins half as old again as the oldest, and to no age within the first year that is not told', () => {
    const inBabies: Cause = { ...atAnyPace, age: { from: 0.1, to: 12, outside: 0.2 }, history: [] };
    const at = (ageYears: number, durationDays = 0) => {
      const history = { onset: { pace: 'acute', durationDays } };
      return weighCause(inBabies, queryExam(bedsideExam({ person: { ageYears }, history }))).ratio;
    };
    expect(at(0)).toBe(at(5));
    expect(at(0.01)).toBeLessThan(at(5));
    expect(at(0.5)).toBe(at(5));
    expect(at(30)).toBeLessThan(at(15));
  });

  it('lets relatives with the like speak for no disease by themselves', () => {
    const inherited: Cause = {
      ...atAnyPace,
      inheritance: ['autosomal-dominant'],
      history: [told('family/similar-disorder', 6), told('drooping-eyelids', 2)],
    };
    const family = [{ key: 'similar-disorder', present: true, relation: 'parent' }];
    const isSupported = (symptoms: readonly string[]) => {
      const history = { family, symptoms: symptoms.map((key) => ({ key, present: true })) };
      return weighCause(inherited, queryExam(bedsideExam({ history }))).isSupported;
    };
    expect(isSupported(['hearing-loss'])).toBe(false);
    expect(isSupported(['hearing-loss', 'drooping-eyelids'])).toBe(true);
  });

  it('takes a crooked spine for older than the day on which it was noticed', () => {
    const inborn: Cause = { ...youthful, tempo: tempos.lifelong, history: [] };
    const ratio = (findings = {}) => {
      const history = { onset: { pace: 'subacute' } };
      return weighCause(inborn, queryExam(bedsideExam({ history, findings }))).ratio;
    };
    const inspection = [{ sign: 'scoliosis', present: true }];
    expect(ratio({ inspection })).toBeGreaterThan(3 * ratio());
  });
});
