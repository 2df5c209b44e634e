import { describe, expect, it } from 'vitest';
import { convulsionShifts } from '../../src/localisation/inference/convulsion-pattern.ts';
import { bedsideExam } from '../support/bedside.ts';
import { oddsBy } from './odds.ts';

const seen = (side: string) => [{ sign: 'seizure-seen', present: true, side }];
const eyes = (side: string) => [{ sign: 'forced-gaze-deviation', present: true, side }];

// The eyes and the head turn away from the cortex that discharges, to the half that jerks (Adams and Victor, epilepsy; recalled).
describe('a seizure that is seen', () => {
  const ofSide = (side: 'left' | 'right') => oddsBy(convulsionShifts, side);

  it.each([
    ['right', 'left'],
    ['left', 'right'],
  ] as const)('on the %s speaks for the %s hemisphere, and eyes driven away from it too', (jerks, cortex) => {
    for (const findings of [
      { involuntaryMovements: seen(jerks) },
      { involuntaryMovements: seen('both'), cranialNerves: eyes(cortex) },
    ]) {
      expect(ofSide(cortex)({ findings }, 'cortex-frontal', 'hemisphere')).toBeGreaterThan(1);
      expect(ofSide(jerks)({ findings }, 'cortex-frontal', 'hemisphere')).toBeLessThan(1);
    }
  });

  it('takes the eyes from the brainstem', () => {
    const draft = { findings: { involuntaryMovements: seen('right'), cranialNerves: eyes('left') } };
    expect(oddsBy(convulsionShifts)(draft, 'pons-tegmentum', 'brainstem')).toBeLessThan(1);
  });

  it('says nothing of eyes that are driven without one', () => {
    expect(convulsionShifts(bedsideExam({ findings: { cranialNerves: eyes('left') } }))).toEqual([]);
  });

  it('says nothing of a side where both halves jerk', () => {
    expect(convulsionShifts(bedsideExam({ findings: { involuntaryMovements: seen('both') } }))).toEqual([]);
  });
});
