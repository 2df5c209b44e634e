import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAssessor } from '../../src/summary/assess.ts';
import { localisationAnswer } from '../../src/summary/localisation-answer.ts';
import { bedsideExam, exampleRead } from '../support/bedside.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';

const assessor = createAssessor();

describe('assessment of the invented examples', () => {
  it.each([
    ['foot-drop', 'common-fibular-nerve', 'fibular-compression-at-fibular-neck'],
    ['cervical-cord', 'spinal-cord-transverse', 'degenerative-cervical-myelopathy'],
    ['ascending-weakness', 'demyelinating-polyradiculoneuropathy', 'guillain-barre-syndrome'],
  ] as const)('%s is placed at %s and put down to %s', (name, place, cause) => {
    const assessment = assessor.assess(exampleRead(name));
    expect(assessment.localisations[0]?.site).toBe(place);
    expect(assessment.causes[0]?.key).toBe(cause);
  });

  it('says in each example that it is invented', () => {
    for (const name of exampleNames) expect(JSON.stringify(exampleExam({}, name))).toContain('Invented example');
  });

  it('points every reason of a cause and flag into the request', () => {
    for (const name of exampleNames) {
      const body: unknown = exampleExam({}, name);
      const { causes, redFlags } = assessor.assess(exampleRead(name));
      const reasons = [
        ...causes.flatMap((c) => [...c.supporting, ...c.against]),
        ...redFlags.flatMap((f) => f.because),
      ];
      for (const { pointer } of reasons) {
        if (pointer === null) continue;
        const found = pointer
          .split('/')
          .slice(1)
          .reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], body);
        expect(found, pointer).toBeDefined();
      }
    }
  });

  it('reasons from a coma score alone, as from the signs that it stands for', () => {
    const feverish = (eye: number, verbal: number) =>
      assessor.assess(
        bedsideExam({
          person: { ageYears: 61, sex: 'male' },
          history: {
            onset: { pace: 'acute', durationDays: 2 },
            symptoms: ['headache', 'fever'].map((key) => ({ key, present: true })),
          },
          findings: { higherFunction: [{ scale: 'glasgow-coma-scale', eye, verbal, motor: 6 }] },
        }),
      );
    const drowsy = feverish(3, 4);
    expect(drowsy.localisations[0]?.site).toBe('diffuse-encephalopathy');
    const raised = (state: string) => drowsy.redFlags.filter((flag) => flag.state === state).map(({ key }) => key);
    expect(raised('present')).toEqual(
      expect.arrayContaining(['suspected-meningitis', 'suspected-encephalitis', 'unexplained-fall-in-consciousness']),
    );
    expect(drowsy.presentation).toContain('The Glasgow coma scale is 13 of 15.');
    expect(drowsy.presentation).not.toContain('nothing abnormal');
    const awake = feverish(4, 5);
    expect(awake.presentation).toContain(
      'On examination nothing abnormal was found. The Glasgow coma scale is 15 of 15.',
    );
    expect(awake.redFlags.map(({ key }) => key)).not.toContain('unexplained-fall-in-consciousness');
  });

  it('raises a fall of consciousness where a tube leaves the score without a total, and says each statement once', () => {
    const because = (scores: Record<string, unknown>) =>
      assessor
        .assess(
          bedsideExam({
            history: { onset: { pace: 'hyperacute', durationDays: 0.1 } },
            findings: { higherFunction: [{ scale: 'glasgow-coma-scale', ...scores }] },
          }),
        )
        .redFlags.find(({ key }) => key === 'unexplained-fall-in-consciousness')
        ?.because.map(({ text }) => text);
    expect(because({ eye: 1, verbal: { notTested: 'unable' }, motor: 4 })).toEqual(['coma']);
    expect(because({ eye: 1, verbal: 1, motor: 4 })).toEqual(['Glasgow coma scale 6 of 15']);
  });

  // Common causes of each complaint: Adams and Victor, chapters on tremor, sight, epilepsy and the cauda equina (recalled).
  it.each([
    ['chronic', 700, ['tremor'], ['essential-tremor', 'parkinson-disease']],
    ['hyperacute', 0.1, ['seizure'], ['epilepsy']],
    ['acute', 1, ['bladder-disturbance', 'leg-weakness'], ['lumbar-disc-herniation', 'spinal-cord-infarction']],
    ['subacute', 30, ['drooping-eyelids', 'diplopia'], ['myasthenia-gravis']],
  ] as const)(
    'puts common causes first where only complaints are known: %s, %d days, %j',
    (pace, durationDays, told, causes) => {
      const exam = bedsideExam({
        person: { ageYears: 62, sex: 'male' },
        history: { onset: { pace, durationDays }, symptoms: told.map((key) => ({ key, present: true })) },
      });
      expect(causes).toContain(assessor.assess(exam).causes[0]?.key);
    },
  );

  it('says that a breath that grows short in weakness was not measured, before anybody has tried the limbs', () => {
    const { redFlags } = assessor.assess(
      bedsideExam({
        history: {
          onset: { pace: 'acute', durationDays: 3 },
          symptoms: ['weakness', 'breathlessness'].map((key) => ({ key, present: true })),
        },
      }),
    );
    expect(redFlags.find(({ key }) => key === 'neuromuscular-respiratory-failure')?.state).toBe('not-assessable');
  });

  it('gives the same causes, flags and tests whatever the order of the findings', () => {
    const example = exampleExam({}, 'cervical-cord') as { findings: Record<string, unknown[]>; [key: string]: unknown };
    const essence = (findings: Record<string, unknown[]>) => {
      const { causes, redFlags, workup } = assessor.assess(
        bedsideExam({ ...example, findings, identifier: undefined, subject: undefined }),
      );
      return {
        causes: causes.map((cause) => [cause.key, cause.probability.toFixed(6)]),
        redFlags: redFlags.map((flag) => [flag.key, flag.state, flag.because.map((reason) => reason.text)]),
        workup,
      };
    };
    const expected = essence(example.findings);
    const power = example.findings.power ?? [];
    fc.assert(
      fc.property(fc.shuffledSubarray(power, { minLength: power.length }), (shuffled) => {
        expect(essence({ ...example.findings, power: shuffled })).toEqual(expected);
      }),
      { numRuns: 5 },
    );
  });
});

describe('localisation answer', () => {
  const exam = exampleRead('ascending-weakness');
  const answer = localisationAnswer(assessor.assess(exam));

  it('has the properties of the contract, in its order, and the tests that are needless after them', () => {
    expect(Object.keys(answer)).toEqual([
      'localisations',
      'pattern',
      'conclusion',
      'causes',
      'redFlags',
      'workup',
      'nextExamination',
      'presentation',
      'caution',
      'modelVersion',
      'needless',
    ]);
    expect(answer.localisations[0]?.supporting[0]).toEqual({
      finding: expect.stringMatching(/^\/findings\//),
      side: expect.any(String),
      text: expect.any(String),
      weight: expect.any(Number),
      because: expect.any(String),
    });
  });

  it('lists no absent red flag, and present ones first', () => {
    const states = answer.redFlags.map((flag) => flag.state);
    expect(states).not.toContain('absent');
    expect(states).toEqual([...states].sort((a, b) => Number(a !== 'present') - Number(b !== 'present')));
  });

  it('rounds every number to four decimals and is the same on repeat', () => {
    const again = localisationAnswer(createAssessor().assess(exampleRead('ascending-weakness')));
    expect(JSON.stringify(again)).toBe(JSON.stringify(answer));
    expect(JSON.stringify(answer)).not.toMatch(/\d\.\d{5,}/);
  });
});
