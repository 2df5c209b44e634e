import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';

const localiser = createLocaliser();

/** A third nerve palsy with its pupil: nerve, midbrain, cavernous sinus and orbital apex come into question. */
const thirdNerve = bedsideExam({
  findings: {
    cranialNerves: [
      { sign: 'third-nerve-palsy', side: 'right', present: true },
      { sign: 'dilated-pupil', side: 'right', present: true },
    ],
  },
});

describe('what to examine next', () => {
  const { nextExamination } = localiser.localise(thirdNerve);

  it('names the place that holds the fibres: the optic nerve runs in the apex of the orbit (Brazis, ocular motor nerves)', () => {
    const sight = nextExamination.filter(({ item }) => /colour-vision|relative-afferent/.test(item));
    expect(sight.length).toBeGreaterThan(0);
    for (const { because } of sight)
      expect(because).toMatch(/^likely to be affected by a lesion of the right orbital apex/);
  });

  it('goes to what every examination tries before what few do, though that tells a little more', () => {
    const eyes = bedsideExam({
      history: { onset: { pace: 'acute', durationDays: 2 } },
      findings: {
        cranialNerves: [
          { sign: 'ptosis', side: 'both', present: true },
          { sign: 'ophthalmoplegia', side: 'both', present: true },
        ],
      },
    });
    const items = localiser.localise(eyes).nextExamination.map(({ item }) => item);
    expect(items.filter((item) => /^reflexes.(knee|ankle|adductor|medial-hamstring)$/.test(item))).toHaveLength(1);
    expect(items).not.toContain('reflexes/anal');
    expect(items).not.toContain('power/toe-abduction');
  });

  it('proposes one failure once, by whatever names it goes', () => {
    const failures = nextExamination.filter(({ item }) => /eye-abduction-weakness|sixth-nerve-palsy/.test(item));
    expect(failures).toHaveLength(1);
  });

  it('names the side that the leading site affects: the left temporal lobe holds the upper half of the right field', () => {
    const encephalitis = bedsideExam({
      history: {
        onset: { pace: 'acute', durationDays: 4 },
        course: 'progressive',
        symptoms: ['fever', 'headache', 'behaviour-change', 'seizure'].map((key) => ({ key, present: true })),
      },
      findings: {
        higherFunction: ['confusion', 'receptive-aphasia'].map((sign) => ({ sign, present: true })),
        autonomic: [{ sign: 'fever', present: true }],
      },
    });
    const fields = localiser.localise(encephalitis).nextExamination.filter(({ item }) => /anopia/.test(item));
    expect(fields.map(({ side }) => side)).toEqual(fields.map(() => 'right'));
    expect(fields.length).toBeGreaterThan(0);
  });

  it('asks for no side of what was said to be there without one', () => {
    const findings = { involuntaryMovements: [{ sign: 'chorea', present: true }] };
    const { nextExamination: next } = localiser.localise(bedsideExam({ findings }));
    expect(next.map(({ item }) => item)).not.toContain('involuntary-movements/chorea');
  });
});

describe('what to examine next in a patient who cannot be asked', () => {
  it.each([
    ['was found comatose', [{ sign: 'coma', present: true }]],
    ['was only scored', [{ scale: 'glasgow-coma-scale', eye: 1, verbal: 1, motor: 4 }]],
  ])('is what needs no answer and no will, and not how awake: one who %s', (_, higherFunction) => {
    const exam = bedsideExam({
      history: { onset: { pace: 'hyperacute', durationDays: 0.1 } },
      findings: { higherFunction, cranialNerves: [{ sign: 'unreactive-pupil', side: 'left', present: true }] },
    });
    const { nextExamination } = localiser.localise(exam);
    expect(nextExamination.length).toBeGreaterThan(2);
    for (const { item } of nextExamination)
      expect(item).not.toMatch(/^(power|sensation|coordination|gait|higher-function)\//);
  });

  it('is in a child of sixteen months neither reading nor the field of vision', () => {
    const exam = bedsideExam({
      person: { ageYears: 1.3 },
      history: { onset: { pace: 'hyperacute' }, symptoms: [{ key: 'seizure', present: true }] },
      findings: { higherFunction: [{ sign: 'drowsiness', present: false }] },
    });
    const { nextExamination } = localiser.localise(exam);
    expect(nextExamination.length).toBeGreaterThan(0);
    for (const { item } of nextExamination)
      expect(item).not.toMatch(/anopia|aphasia|agraphia|alexia|neglect|coma|sensation/);
  });
});
