import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { bedsideExam } from '../support/bedside.ts';

const assessor = createAssessor(createLocaliser());

interface Complaint {
  readonly symptoms: readonly string[];
  readonly days?: number;
  readonly course?: string;
  readonly exposures?: readonly string[];
  readonly results?: readonly { readonly key: string; readonly value: string }[];
}

const rows = (keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

function workupOf({ symptoms, days, course, exposures = [], results = [] }: Complaint) {
  const exam = bedsideExam({
    person: { ageYears: 52, sex: 'female' },
    history: {
      ...(days === undefined ? {} : { onset: { pace: days > 60 ? 'chronic' : 'subacute', durationDays: days } }),
      ...(course === undefined ? {} : { course }),
      symptoms: rows(symptoms),
      exposures: rows(exposures),
    },
    results,
  });
  return assessor.assess(exam).workup;
}

const testsOf = (complaint: Complaint): readonly string[] => workupOf(complaint).map(({ key }) => key);

// Six weeks: the term after which guidance no longer waits for a root to mend (RACGP 2013, NICE NG59).
describe('tests for a complaint of a limb that nobody has examined', () => {
  it.each([
    ['a foot that hurts and tingles for months', ['foot-pain', 'paraesthesiae'], 150, 'nerve-conduction-study'],
    ['the same, where a nerve may be swollen', ['foot-pain', 'paraesthesiae'], 150, 'nerve-ultrasound'],
    ['neck and arm', ['neck-pain', 'radicular-arm-pain', 'paraesthesiae'], 70, 'mri-cervical-spine'],
    ['back and leg', ['back-pain', 'leg-pain', 'numbness'], 90, 'mri-lumbar-spine'],
    ['feet that burn', ['burning-feet', 'numbness'], 400, 'glucose-or-hba1c'],
    ['a painful, weak shoulder', ['shoulder-pain', 'arm-weakness'], 10, 'electromyography'],
  ])('are proposed for %s', (_, symptoms, days, test) => {
    expect(testsOf({ symptoms, days })).toContain(test);
  });

  it.each([
    ['pain alone', ['arm-pain'], 90],
    ['tingling of two weeks', ['arm-pain', 'paraesthesiae'], 14],
    ['tingling with complaints of the head', ['hand-pain', 'paraesthesiae', 'vertigo'], 90],
  ])('are not proposed for %s', (_, symptoms, days) => {
    const asked = workupOf({ symptoms, days });
    expect(asked.filter(({ because }) => because.includes('weeks'))).toEqual([]);
  });

  it('are not proposed for what is mending', () => {
    expect(testsOf({ symptoms: ['foot-pain', 'paraesthesiae'], days: 150, course: 'improving' })).toEqual([]);
  });

  it('look at the apex of the lung in somebody who smokes', () => {
    const arm = { symptoms: ['arm-pain', 'paraesthesiae'], days: 120 };
    expect(testsOf({ ...arm, exposures: ['tobacco'] })).toContain('chest-radiograph');
    expect(testsOf(arm)).not.toContain('chest-radiograph');
  });

  it('go on to the plexus where the spine is clear', () => {
    const leg = { symptoms: ['radicular-leg-pain', 'paraesthesiae'], days: 200 };
    expect(testsOf(leg)).toContain('mri-lumbar-spine');
    const after = testsOf({ ...leg, results: [{ key: 'mri-lumbar-spine', value: 'normal' }] });
    expect(after).toContain('mri-lumbosacral-plexus');
    expect(after).not.toContain('mri-lumbar-spine');
  });

  it('an enzyme of muscle where muscles ache beside a medicine that harms them', () => {
    const onStatin = bedsideExam({
      person: { ageYears: 72 },
      history: { symptoms: rows(['muscle-pain', 'difficulty-with-stairs']), medications: rows(['statin']) },
    });
    expect(assessor.assess(onStatin).workup.map(({ key }) => key)).toContain('creatine-kinase');
  });
});
