import { describe, expect, it } from 'vitest';
import { createAssessor } from '../../src/summary/assess.ts';
import { countWords, fullest, withinAMinute, wordsOfAMinute } from '../../src/summary/detail.ts';
import { bedsideExam } from '../support/bedside.ts';

describe('the length of a presentation', () => {
  it('counts words as they are said', () => {
    expect(countWords('Knee extension 4/5 on the left (56 %); nothing else.')).toBe(11);
  });

  it('says all that a listener can hold where that fits into a minute', () => {
    expect(withinAMinute(({ tests }) => 'word '.repeat(tests))).toBe('word '.repeat(fullest.tests));
  });

  it('gives up no more than it must', () => {
    const words = (tests: number) => 'word '.repeat(wordsOfAMinute + 1 - fullest.tests + tests);
    expect(withinAMinute(({ tests }) => words(tests))).toBe(words(fullest.tests - 1));
  });

  it('says the shortest where even that is too long', () => {
    const text = withinAMinute(
      ({ hasBedside }) => `${'word '.repeat(wordsOfAMinute)}${hasBedside ? 'examine' : 'end'}`,
    );
    expect(text).toMatch(/end$/);
  });

  it('leaves out no red flag and no positive finding of a long one', () => {
    const symptoms = ['weakness', 'numbness', 'back-pain', 'fever', 'falls', 'fatigue', 'weight-loss', 'unsteadiness'];
    const exam = bedsideExam({
      history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: symptoms.map((key) => ({ key, present: true })) },
      findings: {
        power: ['hip-flexion', 'knee-extension', 'ankle-dorsiflexion'].map((movement, index) => ({
          movement,
          side: 'both',
          grade: String(index + 1),
        })),
        reflexes: ['knee', 'ankle'].map((reflex) => ({ reflex, side: 'both', grade: '0' })),
        sensation: [{ modality: 'pinprick', levelBelow: 'T8', side: 'both', result: 'absent' }],
        sphincters: [{ sign: 'urinary-retention', present: true }],
        tone: [{ site: 'lower-limb', side: 'both', tone: 'reduced' }],
      },
    });
    const { presentation, redFlags } = createAssessor().assess(exam);
    for (const { label, state } of redFlags)
      if (state === 'present') expect(presentation.toLowerCase()).toContain(label.toLowerCase());
    for (const part of [
      /hip flexion 1\/5/i,
      /ankle dorsiflexion 3\/5/,
      /reflexes absent/,
      /below T8/,
      /urinary retention/i,
    ])
      expect(presentation).toMatch(part);
  });
});
