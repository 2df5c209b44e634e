import { describe, expect, it } from 'vitest';
import { courses } from '../../src/exam/exam.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { courseShifts } from '../../src/localisation/inference/course-weights.ts';
import { crossedShift } from '../../src/localisation/inference/crossed-signs.ts';
import type { Shift } from '../../src/localisation/inference/shift.ts';
import { signShifts } from '../../src/localisation/inference/sign-weights.ts';
import { bedsideExam } from '../support/bedside.ts';

const siteOf = (key: string): Site => {
  const found = hypotheses.find(({ site }) => site.key === key);
  if (found === undefined) throw new RangeError(key);
  return found.site;
};
const factorOf = (shifts: readonly Shift[], key: string): number =>
  shifts.reduce((product, { applies, factor }) => (applies(siteOf(key)) ? product * factor : product), 1);

describe('the course of an illness', () => {
  const factor = (course: string, key: string) => factorOf(courseShifts(bedsideExam({ history: { course } })), key);

  it('speaks against what would have gone on when it stands still', () => {
    expect(factor('static', 'motor-neuron-system')).toBeLessThan(0.5);
    expect(factor('static', 'akinetic-rigid-syndrome')).toBeLessThan(1);
    expect(factor('static', 'internal-capsule')).toBeGreaterThan(1);
  });

  it('speaks for the junction when it waxes and wanes, and for places of demyelination when it comes in attacks', () => {
    expect(factor('fluctuating', 'postsynaptic-junction')).toBeGreaterThan(2);
    expect(factor('relapsing-remitting', 'medial-longitudinal-fasciculus')).toBeGreaterThan(1.5);
  });

  it('shifts the odds of some sites at every course but one that says nothing of what follows, and by little', () => {
    for (const course of courses) {
      const shifts = courseShifts(bedsideExam({ history: { course } }));
      expect(shifts.length > 0, course).toBe(course !== 'monophasic');
      for (const { factor: size } of shifts) expect(Math.abs(Math.log(size))).toBeLessThanOrEqual(Math.log(4));
    }
    expect(courseShifts(bedsideExam())).toEqual([]);
  });
});

describe('a tremor of one hand at rest', () => {
  const factor = (key: string, ...others: readonly Record<string, unknown>[]) =>
    factorOf(
      signShifts(
        bedsideExam({
          findings: {
            involuntaryMovements: [
              { sign: 'resting-tremor', site: 'hand', side: 'right', present: true },
              ...others.filter(({ sign }) => sign !== undefined),
            ],
            coordination: others.filter(({ test }) => test !== undefined),
          },
        }),
      ),
      key,
    );

  it('comes from thalamus or red nucleus where it grows on aiming, and from the nigra where it does not', () => {
    const aims = { sign: 'intention-tremor', site: 'hand', side: 'right', present: true };
    expect(factor('thalamus', aims)).toBeGreaterThan(3 * factor('thalamus'));
    expect(factor('akinetic-rigid-syndrome', aims)).toBeLessThan(factor('akinetic-rigid-syndrome'));
    expect(factor('thalamus', { test: 'finger-nose', side: 'left', result: 'impaired' })).toBe(factor('thalamus'));
  });
});

describe('a cranial nerve of one half with limbs of the other', () => {
  const picture = (limb: 'left' | 'right') =>
    bedsideExam({
      findings: {
        cranialNerves: [{ sign: 'facial-weakness', side: 'left', present: true }],
        sensation: [{ modality: 'light-touch', site: 'whole-arm', side: limb, result: 'reduced' }],
      },
    });

  it('speaks against the nerve outside the brainstem, and not when both are of one half', () => {
    expect(factorOf(crossedShift(picture('right')), 'facial-nerve')).toBeLessThan(0.5);
    expect(factorOf(crossedShift(picture('right')), 'pons-tegmentum')).toBe(1);
    expect(crossedShift(picture('left'))).toEqual([]);
  });
});

describe('unsteadiness alone', () => {
  const ataxia = { coordination: [{ test: 'finger-nose', side: 'both', result: 'impaired' }] };

  it('speaks against ganglia and roots unless a loss of feeling was found or told', () => {
    expect(factorOf(signShifts(bedsideExam({ findings: ataxia })), 'sensory-ganglionopathy')).toBeLessThan(0.5);
    const numb = bedsideExam({ findings: ataxia, history: { symptoms: [{ key: 'numbness', present: true }] } });
    expect(factorOf(signShifts(numb), 'sensory-ganglionopathy')).toBe(1);
  });
});
