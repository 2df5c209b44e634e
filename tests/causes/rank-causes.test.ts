import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RankedCause } from '../../src/causes/ranked-cause.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, hba1c, localised, nothingFound, site } from '../support/bedside.ts';

const lengthDependent = localised(site('length-dependent-polyneuropathy', 'polyneuropathy'));
const probability = (causes: readonly RankedCause[], key: string) =>
  causes.find((cause) => cause.key === key)?.probability ?? 0;
const chronic = { onset: { pace: 'chronic', durationDays: 900 }, course: 'progressive' };

describe('ranking of causes', () => {
  it('names no cause when nothing is abnormal', () => {
    expect(rankCauses(bedsideExam(), nothingFound)).toEqual([]);
  });

  it('returns at most eight causes, likeliest first, with a sum of at most one', () => {
    const causes = rankCauses(bedsideExam({ history: chronic }), lengthDependent);
    expect(causes.length).toBeLessThanOrEqual(8);
    expect(causes.length).toBeGreaterThan(4);
    const values = causes.map((cause) => cause.probability);
    expect(values).toEqual([...values].sort((a, b) => b - a));
    expect(values.reduce((sum, value) => sum + value, 0)).toBeLessThanOrEqual(1 + 1e-9);
  });

  it('puts a disease that strikes each of several places before one of either', () => {
    const eye = site('optic-nerve', 'visual-pathway', 0.9);
    const cord = site('spinal-cord-transverse', 'cord', 0.8, 'T5');
    const exam = bedsideExam({ person: { ageYears: 32 }, history: { onset: { pace: 'subacute' } } });
    const single = rankCauses(exam, localised(eye, cord));
    const several = rankCauses(exam, { ...localised(eye, cord), conclusion: 'multiple-sites' });
    const gain = (key: string): number => probability(several, key) / probability(single, key);
    expect(gain('multiple-sclerosis')).toBeGreaterThan(1);
    expect(gain('optic-neuritis')).toBeLessThan(1);
  });

  it('leaves the causes of several places as they are where one of them is a nerve', () => {
    const sites = [site('median-nerve-wrist', 'nerve', 0.9), site('spinal-cord-transverse', 'cord', 0.8, 'C6')];
    const exam = bedsideExam({ history: chronic });
    expect(rankCauses(exam, { ...localised(...sites), conclusion: 'multiple-sites' })).toEqual(
      rankCauses(exam, localised(...sites)),
    );
  });

  it('says once what speaks for a cause by several rows', () => {
    const history = { ...chronic, medications: [{ key: 'phenytoin', present: true }] };
    const findings = { gait: [{ sign: 'ataxic', present: true }] };
    const causes = rankCauses(bedsideExam({ history, findings }), localised(site('cerebellar-vermis', 'cerebellum')));
    const drug = causes.find(({ key }) => key === 'drug-induced-ataxia');
    const pointers = drug?.supporting.map(({ pointer }) => pointer) ?? [];
    expect(pointers).toContain('/history/medications/0');
    expect(new Set(pointers).size).toBe(pointers.length);
  });

  // Numb skin belongs to whatever cuts its path: it is no sign of a cavity in the medulla where the lesion lies at the knee.
  it('takes a deficit that only says where for no sign of a cause elsewhere', () => {
    const findings = {
      sensation: [{ modality: 'pinprick', site: 'dorsum-of-foot', side: 'left', result: 'reduced' }],
      power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '3' }],
    };
    const causes = rankCauses(bedsideExam({ findings }), localised(site('common-fibular-nerve', 'nerve')));
    expect(causes.length).toBeGreaterThan(2);
    expect(causes.map(({ key }) => key)).not.toContain('syringobulbia');
  });

  // Who has numb feet falls; that the fall is all that is told does not make a disease of the midbrain of it.
  it('gives little to a distant cause when a single word is all that speaks for any', () => {
    const symptoms = [{ key: 'falls', present: true }];
    const causes = rankCauses(
      bedsideExam({ person: { ageYears: 66 }, history: { ...chronic, symptoms } }),
      lengthDependent,
    );
    expect(probability(causes, 'progressive-supranuclear-palsy')).toBeLessThan(0.1);
  });

  it('leaves out what is below half a percent, but for the first three', () => {
    const acute = { onset: { pace: 'hyperacute', durationDays: 1 } };
    const family = [{ key: 'similar-disorder', present: false }];
    for (const history of [
      { ...chronic, family },
      { ...acute, family },
    ]) {
      const causes = rankCauses(bedsideExam({ history, results: [hba1c(11)] }), lengthDependent);
      expect(causes.length).toBeGreaterThanOrEqual(3);
      for (const cause of causes.slice(3)) expect(cause.probability, cause.key).toBeGreaterThanOrEqual(0.005);
    }
  });

  it('denies what it calls by an article without the article', () => {
    const history = { ...chronic, family: [{ key: 'similar-disorder', present: false }] };
    const causes = rankCauses(bedsideExam({ history }), lengthDependent);
    const texts = causes.flatMap(({ supporting, against }) => [...supporting, ...against]).map(({ text }) => text);
    expect(texts).toContain('no similar disorder in the family');
    expect(texts.filter((text) => /^no an? /.test(text))).toEqual([]);
  });

  // American Diabetes Association, Standards of Care: diabetes is HbA1c 6.5 % or more, fasting glucose 7.0 mmol/L or more.
  it.each([
    ['at the HbA1c threshold of 6.5 %', 6.5, 'more'],
    ['just below it', 6.4, 'less'],
  ])('weighs diabetic polyneuropathy by the ADA threshold: %s', (_, value, direction) => {
    const without = rankCauses(bedsideExam({ history: chronic }), lengthDependent);
    const withResult = rankCauses(bedsideExam({ history: chronic, results: [hba1c(value)] }), lengthDependent);
    const change = probability(withResult, 'diabetic-polyneuropathy') - probability(without, 'diabetic-polyneuropathy');
    expect(Math.sign(change)).toBe(direction === 'more' ? 1 : -1);
  });

  it('lowers a cause by a normal result and does not remove it', () => {
    const causes = rankCauses(bedsideExam({ history: chronic, results: [hba1c(5.3)] }), lengthDependent);
    const diabetic = causes.find((cause) => cause.key === 'diabetic-polyneuropathy');
    expect(diabetic?.probability).toBeGreaterThan(0);
    expect(diabetic?.against.map((reason) => reason.pointer)).toContain('/results/0');
  });

  it('shifts to hereditary neuropathy when the feet are deformed since long', () => {
    const feet = {
      history: { ...chronic, family: [{ key: 'similar-disorder', present: true, relation: 'parent' }] },
      findings: {
        inspection: [
          { sign: 'pes-cavus', side: 'both', present: true },
          { sign: 'hammer-toes', side: 'both', present: true },
        ],
      },
    };
    const causes = rankCauses(bedsideExam(feet), lengthDependent);
    expect(causes[0]?.key).toMatch(/^charcot-marie-tooth-disease-type-/);
    expect(causes[0]?.supporting.map((reason) => reason.pointer)).toContain('/findings/inspection/0');
  });

  // Pes cavus stands in about one adult of ten (J Orthop Traumatol 2010;11:195-201): alone it is weak evidence.
  it('does not make a high arch alone outweigh the common causes in an older person', () => {
    const exam = bedsideExam({
      person: { ageYears: 68, sex: 'male' },
      history: { ...chronic, conditions: [{ key: 'diabetes-mellitus', present: true }] },
      findings: { inspection: [{ sign: 'pes-cavus', side: 'both', present: true }] },
      results: [hba1c(8.2)],
    });
    expect(rankCauses(exam, lengthDependent)[0]?.key).toBe('diabetic-polyneuropathy');
  });

  // EAN/PNS guidelines: the nadir of Guillain-Barré syndrome is within four weeks, CIDP progresses over eight or more.
  it.each([
    [6, 'acute', 'guillain-barre-syndrome'],
    [120, 'subacute', 'chronic-inflammatory-demyelinating-polyradiculoneuropathy'],
  ])('tells acute from chronic polyradiculoneuropathy after %i days', (durationDays, pace, expected) => {
    const exam = bedsideExam({ history: { onset: { pace, durationDays }, course: 'progressive' } });
    const sites = localised(site('demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy'));
    expect(rankCauses(exam, sites)[0]?.key).toBe(expected);
  });

  it('takes the region of the spine from the level', () => {
    const exam = bedsideExam({ person: { ageYears: 40 }, history: { onset: { pace: 'subacute' } } });
    const leading = (level: string) => rankCauses(exam, localised(site('nerve-root', 'root', 1, level)))[0]?.key;
    expect(leading('C7')).toBe('cervical-spondylotic-radiculopathy');
    expect(leading('L5')).toBe('lumbar-disc-herniation');
  });

  it('finds causes for a site that no row names, by its kind', () => {
    expect(rankCauses(bedsideExam(), localised(site('some-new-nerve', 'nerve'))).length).toBeGreaterThan(2);
  });

  it('answers the same whatever the order of the history', () => {
    const statements = [
      { key: 'weight-loss', present: true },
      { key: 'burning-feet', present: true },
      { key: 'back-pain', present: false },
      { key: 'fever', present: false },
    ];
    const texts = (symptoms: readonly unknown[]) =>
      rankCauses(bedsideExam({ history: { ...chronic, symptoms } }), lengthDependent).map((cause) => [
        cause.key,
        cause.probability,
        cause.supporting.map((reason) => reason.text),
      ]);
    const expected = texts(statements);
    fc.assert(
      fc.property(fc.shuffledSubarray(statements, { minLength: 4 }), (shuffled) => {
        expect(texts(shuffled)).toEqual(expected);
      }),
      { numRuns: 10 },
    );
  });

  // HL7 FHIR R4 Quantity.comparator: the number is a bound, not the value.
  it.each([
    ['<', 5, 'against'],
    ['>', 7, 'supporting'],
    ['<', 9, 'neither'],
    ['>', 4, 'neither'],
  ])('takes HbA1c %s %d %% for a bound', (comparator, value, expected) => {
    const result = { ...hba1c(value), valueQuantity: { ...hba1c(value).valueQuantity, comparator } };
    const causes = rankCauses(bedsideExam({ history: chronic, results: [result] }), lengthDependent);
    const diabetic = causes.find(({ key }) => key === 'diabetic-polyneuropathy');
    const isIn = (list: 'supporting' | 'against') => diabetic?.[list].some(({ pointer }) => pointer === '/results/0');
    expect([isIn('supporting'), isIn('against')]).toEqual([expected === 'supporting', expected === 'against']);
  });

  // After a birth with an epidural a headache and nothing to find is of the veins until shown otherwise, not of a nerve in the groin.
  it('names first what is met without a sign where nothing abnormal was found', () => {
    const history = {
      symptoms: [{ key: 'new-headache', present: true }],
      conditions: [{ key: 'pregnancy', present: true }],
      exposures: [{ key: 'lumbar-puncture-or-epidural', present: true }],
    };
    const causes = rankCauses(bedsideExam({ history }), nothingFound).map(({ key }) => key);
    expect(causes.slice(0, 3)).toContain('cerebral-venous-thrombosis');
  });
});
