import { describe, expect, it } from 'vitest';
import { muscleHypotheses } from '../../src/localisation/hypotheses/muscle-and-junction.ts';
import { Coverage } from '../../src/localisation/inference/coverage.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power } from './case-writing.ts';

const generalised = muscleHypotheses().filter(({ variant }) => variant === 'generalised');

/** Natural log of the odds of myasthenia of all limbs, by what an examination of face and arms leaves out. */
function cost(history: Record<string, unknown> = {}): number {
  const weights = new Float64Array(generalised.length);
  const findings = {
    cranialNerves: [{ sign: 'ptosis', side: 'both', present: true }],
    power: power({ 'shoulder-abduction': '4', 'elbow-flexion': '4' }),
  };
  new Coverage(generalised).discount(weights, bedsideExam({ history, findings }));
  return weights[0] ?? 0;
}

describe('what a lesion would trouble and nobody found', () => {
  it('two legs that nobody looked at are less than two omissions', () => {
    expect(cost()).toBeLessThan(Math.log(0.15));
    expect(cost()).toBeGreaterThan(2 * Math.log(0.15));
  });

  it('legs that the patient told of are no omission', () => {
    expect(cost({ symptoms: [{ key: 'leg-weakness', present: true }] })).toBeGreaterThan(cost() / 4);
  });
});
