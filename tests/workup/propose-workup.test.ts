import { describe, expect, it } from 'vitest';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { investigations } from '../../src/exam/catalogue/investigations.ts';
import { resultByKey, resultByLoinc } from '../../src/exam/catalogue/results.ts';
import type { Exam } from '../../src/exam/exam.ts';
import type { Localisation } from '../../src/localisation/localisation.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { systems } from '../../src/terminology/systems.ts';
import { proposeWorkup, workupRules } from '../../src/workup/propose-workup.ts';
import { assessRedFlags, redFlagRules } from '../../src/workup/red-flags.ts';
import {
  bedsideExam,
  exampleRead,
  hba1c,
  localised,
  nothingFound,
  site,
  weakLegsBothSides,
} from '../support/bedside.ts';

function workupOf(exam: Exam, localisation: Localisation) {
  return proposeWorkup(exam, localisation, rankCauses(exam, localisation), assessRedFlags(exam, localisation)).workup;
}

const investigationKeys = new Set(investigations.map((test) => test.key));
const distal = localised(site('length-dependent-polyneuropathy', 'polyneuropathy'));
const chronic = { onset: { pace: 'chronic', durationDays: 900 } };

describe('table of investigations', () => {
  it('holds at least forty-five, each under its own key, with results that the catalogue knows', () => {
    expect(investigations.length).toBeGreaterThanOrEqual(45);
    expect(investigationKeys.size).toBe(investigations.length);
    for (const key of investigations.flatMap((test) => test.results)) expect(resultByKey.has(key), key).toBe(true);
  });

  it('uses each LOINC code once, and for the result that the catalogue gives it', () => {
    const codes = investigations.flatMap((test) => (test.loinc === undefined ? [] : [test.loinc.code]));
    expect(new Set(codes).size).toBe(codes.length);
    for (const test of investigations) {
      const result = test.loinc === undefined ? undefined : resultByLoinc.get(test.loinc.code);
      if (result !== undefined) expect(test.results, test.key).toContain(result.key);
    }
  });

  it('is asked for only by causes and red flags that exist', () => {
    const causes = new Set(allCauses.map((cause) => cause.key));
    const flags = new Set(redFlagRules.map((rule) => rule.key));
    for (const rule of workupRules) {
      expect(rule.tests.filter((test) => !investigationKeys.has(test))).toEqual([]);
      expect((rule.causes ?? []).filter((key) => !causes.has(key))).toEqual([]);
      expect((rule.flags ?? []).filter((key) => !flags.has(key))).toEqual([]);
    }
  });
});

describe('proposed investigations', () => {
  it('are none when nothing is abnormal', () => {
    expect(workupOf(bedsideExam(), nothingFound)).toEqual([]);
  });

  // AAN practice parameter 2009: glucose, vitamin B12 with methylmalonic acid, and immunofixation have the highest yield.
  it('begin a distal symmetric polyneuropathy with the three tests of the 2009 practice parameter', () => {
    const first = workupOf(bedsideExam({ history: chronic }), distal).filter((item) => item.tier === 1);
    expect(first.map((item) => item.key)).toEqual([
      'glucose-or-hba1c',
      'vitamin-b12',
      'methylmalonic-acid',
      'serum-immunofixation',
    ]);
    expect(first[0]?.source).toContain('Neurology 2009;72:185-92');
  });

  // Adams and Victor (recalled): pregnancy and antibodies are looked for in chorea, and not in dystonia.
  it.each([
    ['a woman of 24 with chorea', { ageYears: 24, sex: 'female' }, 'chorea', true, true],
    ['a man of 24 with chorea', { ageYears: 24, sex: 'male' }, 'chorea', true, false],
    ['a woman of 69 with chorea', { ageYears: 69, sex: 'female' }, 'chorea', true, false],
    ['a woman of 24 with dystonia', { ageYears: 24, sex: 'female' }, 'dystonia', false, false],
  ])('ask for antibodies and a pregnancy test where they can help: %s', (_, person, sign, antibodies, pregnancy) => {
    const involuntaryMovements = [{ sign, site: 'neck', present: true }];
    const exam = bedsideExam({ person, history: chronic, findings: { involuntaryMovements } });
    const keys = workupOf(exam, localised(site('hyperkinetic-syndrome', 'basal-ganglia'))).map((item) => item.key);
    expect(keys.includes('antiphospholipid-antibodies')).toBe(antibodies);
    expect(keys.includes('pregnancy-test')).toBe(pregnancy);
  });

  it('leave out what is already known', () => {
    const results = [hba1c(5.3)];
    expect(workupOf(bedsideExam({ history: chronic, results }), distal).map((item) => item.key)).not.toContain(
      'glucose-or-hba1c',
    );
  });

  it('do not image the spine of a chronic length-dependent neuropathy', () => {
    const keys = workupOf(bedsideExam({ history: chronic }), distal).map((item) => item.key);
    expect(keys.filter((key) => key.startsWith('mri'))).toEqual([]);
  });

  // EAN/PNS 2023: vital capacity, conduction study and lumbar puncture.
  it('measure the breathing at once in acute ascending weakness', () => {
    const exam = bedsideExam({
      history: { onset: { pace: 'acute', durationDays: 4 }, course: 'progressive' },
      findings: { power: weakLegsBothSides, reflexes: [{ reflex: 'knee', side: 'both', grade: '0' }] },
    });
    const items = workupOf(exam, localised(site('demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')));
    expect(items[0]).toMatchObject({ key: 'vital-capacity', priority: 'stat', tier: 1 });
    expect(items.map((item) => item.key)).toEqual(
      expect.arrayContaining(['nerve-conduction-study', 'lumbar-puncture']),
    );
  });

  it('begin a foot drop with conduction study and electromyography, coded in LOINC', () => {
    const items = workupOf(exampleRead('foot-drop'), localised(site('common-fibular-nerve', 'nerve')));
    expect(items.slice(0, 2).map((item) => item.code.system)).toEqual([systems.loinc, systems.loinc]);
    expect(items.slice(0, 2).map((item) => item.key)).toEqual(['nerve-conduction-study', 'electromyography']);
  });

  it('look for lead where both wrists drop after colic, and for the gene where chorea or ataxia runs in the family', () => {
    const keysOf = (exam: Exam, localisation: Localisation) => workupOf(exam, localisation).map((item) => item.key);
    const wrists = bedsideExam({
      findings: { inspection: [{ sign: 'wrist-drop', present: true, side: 'both' }] },
      history: { ...chronic, symptoms: [{ key: 'abdominal-pain', present: true }] },
    });
    expect(keysOf(wrists, localised(site('motor-polyneuropathy', 'polyneuropathy')))).toContain('heavy-metals');
    const dystonic = (family: string) =>
      keysOf(
        bedsideExam({
          findings: { involuntaryMovements: [{ sign: 'dystonia', site: 'neck', present: true }] },
          history: { ...chronic, family: [{ key: family, present: true }] },
        }),
        localised(site('hyperkinetic-syndrome', 'basal-ganglia')),
      );
    expect(dystonic('chorea')).toContain('huntingtin-gene');
    expect(dystonic('ataxia')).toContain('ataxia-genes');
  });

  // Care considerations for Duchenne muscular dystrophy (Birnkrant 2018, part 1; recalled): suspicion and a raised creatine kinase leads to the dystrophin gene first.
  it('begin with the gene where the dystrophy is as good as named', () => {
    const boy = bedsideExam({
      person: { ageYears: 5, sex: 'male' },
      history: { ...chronic, course: 'progressive' },
      findings: {
        gait: [
          { sign: 'waddling', present: true },
          { sign: 'gowers-sign', present: true },
        ],
        inspection: [{ sign: 'calf-pseudohypertrophy', side: 'both', present: true }],
        power: [{ movement: 'hip-flexion', side: 'both', grade: '4' }],
      },
    });
    const first = workupOf(boy, localised(site('proximal-myopathy', 'muscle'))).filter(({ tier }) => tier === 1);
    expect(first.slice(0, 3).map(({ key }) => key)).toContain('muscle-disease-genes');
  });

  // Potassium paralyses within hours, and a spastic or limp picture does not tell it from the cord.
  it('measure potassium where all limbs went weak within days', () => {
    const power = (['left', 'right'] as const).flatMap((side) =>
      ['elbow-flexion', 'hip-flexion'].map((movement) => ({ movement, side, grade: '2' })),
    );
    const potassium = (history: unknown) =>
      workupOf(
        bedsideExam({ history, findings: { power } }),
        localised(site('spinal-cord-transverse', 'cord', 1, 'C5')),
      ).some(({ key }) => key === 'potassium');
    expect(potassium({ onset: { pace: 'acute', durationDays: 1 } })).toBe(true);
    expect(potassium(chronic)).toBe(false);
  });

  it('look for blood behind the peritoneum unless the cord is where it is', () => {
    const exam = bedsideExam({
      history: { onset: { pace: 'hyperacute', durationDays: 1 }, symptoms: [{ key: 'back-pain', present: true }] },
      findings: { power: [{ movement: 'hip-flexion', side: 'left', grade: '2' }] },
    });
    const keys = (localisation: Localisation) => workupOf(exam, localisation).map(({ key }) => key);
    expect(keys(localised(site('lumbar-plexus', 'plexus')))).toContain('ct-abdomen');
    expect(keys(localised(site('spinal-cord-hemisection', 'cord', 1, 'T8')))).not.toContain('ct-abdomen');
  });

  it('wait for history and examination where neither a place nor a story is known', () => {
    const oneReflex = bedsideExam({ findings: { reflexes: [{ reflex: 'ankle', side: 'left', grade: '0' }] } });
    const { workup, needless } = createAssessor().assess(oneReflex);
    expect({ workup, needless }).toEqual({ workup: [], needless: [] });
  });

  it('begin where something is plainly wrong, though nobody told a story', () => {
    const sensation = [{ modality: 'joint-position', site: 'great-toe', side: 'both', result: 'reduced' }];
    const keys = createAssessor()
      .assess(bedsideExam({ findings: { sensation } }))
      .workup.map(({ key }) => key);
    expect(keys).toEqual(expect.arrayContaining(['vitamin-b12', 'glucose-or-hba1c', 'nerve-conduction-study']));
  });

  it('leave the nerves of a shoulder alone that hurts and is nearly strong, and not of one that has wasted', () => {
    const history = { symptoms: [{ key: 'shoulder-pain', present: true }] };
    const power = [{ movement: 'shoulder-abduction', side: 'left', grade: '4+' }];
    const strong = createAssessor().assess(bedsideExam({ history, findings: { power } }));
    expect(strong.needless.map(({ key }) => key)).toContain('no-nerve-tests-of-a-painful-joint');
    expect(strong.workup.map(({ key }) => key)).not.toContain('electromyography');
    const inspection = [{ sign: 'wasting', site: 'shoulder', side: 'left', present: true }];
    const thin = createAssessor().assess(bedsideExam({ history, findings: { power, inspection } }));
    expect(thin.workup.map(({ key }) => key)).toContain('electromyography');
  });

  it('ask for no further proof of what a result has proven', () => {
    const junction = localised(site('postsynaptic-junction', 'junction'));
    const lids = { cranialNerves: [{ sign: 'fatigable-ptosis', side: 'left', present: true }] };
    const keysWith = (value: string) =>
      workupOf(bedsideExam({ findings: lids, results: [{ key: 'achr-antibody', value }] }), junction).map(
        ({ key }) => key,
      );
    expect(keysWith('negative')).toContain('musk-antibody');
    for (const test of ['musk-antibody', 'single-fibre-emg', 'repetitive-stimulation'])
      expect(keysWith('positive'), test).not.toContain(test);
    const sugar = (value: number) =>
      workupOf(bedsideExam({ history: chronic, results: [hba1c(value)] }), distal).map(({ key }) => key);
    expect(sugar(8.2)).not.toContain('glucose-tolerance-test');
  });

  it('keep what the leading cause asks for when the list is long', () => {
    const exam = bedsideExam({ history: chronic, findings: {} });
    const cause = (key: string, probability: number) => ({ ...rankCauses(exam, distal)[0], key, probability });
    const many = [
      'leprosy',
      'vasculitic-neuropathy',
      'multiple-system-atrophy',
      'wilson-disease',
      'myasthenia-gravis',
      'neurosarcoidosis',
      'hepatic-encephalopathy',
      'dominant-cerebellar-ataxia',
    ];
    const proposed = (leading: string) =>
      proposeWorkup(
        exam,
        distal,
        [cause(leading, 0.5), ...many.filter((key) => key !== leading).map((key) => cause(key, 0.3))] as never,
        [],
      ).workup.map(({ key }) => key);
    expect(proposed('multiple-system-atrophy')).toHaveLength(16);
    expect(proposed('multiple-system-atrophy')).toEqual(expect.arrayContaining(['autonomic-tests', 'bladder-scan']));
    expect(proposed('leprosy')).toEqual(expect.arrayContaining(['skin-smear', 'nerve-biopsy']));
  });

  it('image a root at its own level', () => {
    const at = (level: string) =>
      workupOf(bedsideExam(), localised(site('nerve-root', 'root', 1, level))).map((item) => item.key);
    expect(at('C7')).toContain('mri-cervical-spine');
    expect(at('L5')).toContain('mri-lumbar-spine');
  });

  it('are urgent, not an emergency, for a red flag that could only not be decided', () => {
    const exam = bedsideExam({
      history: { onset: { pace: 'acute', durationDays: 9 }, symptoms: [{ key: 'back-pain', present: true }] },
      findings: { power: [{ movement: 'great-toe-extension', side: 'right', grade: '3' }] },
    });
    const items = workupOf(exam, localised(site('nerve-root', 'root', 1, 'L5')));
    expect(items.find((item) => item.key === 'mri-lumbar-spine')?.priority).toBe('urgent');
  });

  it('put what cannot wait first', () => {
    const order = ['stat', 'urgent', 'routine'];
    const ranks = workupOf(exampleRead('ascending-weakness'), distal).map((item) => order.indexOf(item.priority));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  });
});

describe('a puncture and what forbids it', () => {
  const measuredAs = (key: string, value: number, code: string) => ({
    key,
    valueQuantity: { value, unit: code, code, system: 'http://unitsofmeasure.org' },
  });
  const where = localised(site('diffuse-encephalopathy', 'encephalopathy'));
  const testsWith = (results: readonly object[], seizure = false) => {
    const exam = bedsideExam({
      history: {
        onset: { pace: 'acute', durationDays: 3 },
        symptoms: [
          { key: 'fever', present: true },
          { key: 'behaviour-change', present: true },
          ...(seizure ? [{ key: 'seizure', present: true }] : []),
        ],
      },
      findings: { higherFunction: [{ sign: 'confusion', present: true }] },
      results,
    });
    const flags = assessRedFlags(exam, where);
    return proposeWorkup(exam, where, [], flags).workup.map(({ key }) => key);
  };

  it('is blood that does not clot: few platelets or a high INR, and not a count that is nearly normal', () => {
    expect(testsWith([])).toContain('lumbar-puncture');
    expect(testsWith([measuredAs('platelets', 120, '10*9/L')])).toContain('lumbar-puncture');
    expect(testsWith([measuredAs('platelets', 30, '10*9/L')])).not.toContain('lumbar-puncture');
    expect(testsWith([measuredAs('inr', 2.4, '{INR}')])).not.toContain('lumbar-puncture');
  });

  it('comes after an image where there was a fit', () => {
    expect(testsWith([], true)).toContain('ct-head');
  });
});
