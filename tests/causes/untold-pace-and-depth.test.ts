import { describe, expect, it } from 'vitest';
import { queryExam } from '../../src/causes/exam-query.ts';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { weighCause } from '../../src/causes/weigh-cause.ts';
import { bedsideExam } from '../support/bedside.ts';

function ratio(key: string, body: Record<string, unknown>): number {
  const cause = allCauses.find((one) => one.key === key);
  if (cause === undefined) throw new Error(`No cause ${key}.`);
  return weighCause(cause, queryExam(bedsideExam(body))).ratio;
}

/** How much likelier the first is than the second in one exam, against another exam. */
function shift(first: string, second: string, now: Record<string, unknown>, before: Record<string, unknown>): number {
  return ratio(first, now) / ratio(second, now) / (ratio(first, before) / ratio(second, before));
}

const told = (...keys: readonly string[]) => ({ symptoms: keys.map((key) => ({ key, present: true })) });
const stiffLegs = { tone: [{ site: 'lower-limb', side: 'both', tone: 'spastic' }] };
const legs = (grade: string) => ({
  power: ['hip-flexion', 'knee-extension', 'ankle-dorsiflexion'].map((movement) => ({ movement, side: 'both', grade })),
});

describe('a pace that nobody tells', () => {
  const sudden = 'spinal-cord-infarction';
  const slow = 'spinal-meningioma-or-nerve-sheath-tumour';

  it('was hardly that of a stroke, where a story was told', () => {
    const story = { history: told('leg-weakness') };
    expect(shift(slow, sudden, story, {})).toBeGreaterThan(1.2);
  });

  it('was slower still where the legs are stiff, which takes weeks', () => {
    const story = { history: told('leg-weakness') };
    expect(shift(slow, sudden, { ...story, findings: stiffLegs }, story)).toBeGreaterThan(1.2);
  });

  it('is not guessed where it was stated', () => {
    const onset = { onset: { pace: 'hyperacute' } };
    const story = { history: { ...onset, ...told('leg-weakness') } };
    expect(shift(slow, sudden, { ...story, findings: stiffLegs }, story)).toBeCloseTo(1);
  });
});

describe('the depth of a weakness of both legs', () => {
  it('speaks for lack of blood and pus where hardly anything moves, and for slow pressure where it is partial', () => {
    for (const quick of ['spinal-cord-infarction', 'spinal-epidural-abscess']) {
      const slow = 'degenerative-cervical-myelopathy';
      expect(shift(quick, slow, { findings: legs('0') }, { findings: legs('4') })).toBeGreaterThan(2);
    }
  });

  it('says nothing of one leg, nor between the two', () => {
    const one = { power: legs('0').power.map((row) => ({ ...row, side: 'left' })) };
    for (const findings of [one, legs('2')]) {
      expect(ratio('spinal-cord-infarction', { findings })).toBeCloseTo(ratio('spinal-cord-infarction', {}));
    }
  });

  it('makes no cause spoken for by itself', () => {
    const cause = allCauses.find(({ key }) => key === 'aortic-dissection-or-occlusion');
    if (cause === undefined) throw new Error('No such cause.');
    expect(weighCause(cause, queryExam(bedsideExam({ findings: legs('0') }))).isSupported).toBe(false);
  });
});

describe('a course that stands still', () => {
  const growing = 'spinal-meningioma-or-nerve-sheath-tumour';
  const standing = (durationDays: number) => ({
    history: { onset: { pace: 'chronic', durationDays }, course: 'static' },
  });
  const open = (durationDays: number) => ({ history: { onset: { pace: 'chronic', durationDays } } });

  it('speaks against what grows, the more the longer it has not grown', () => {
    const short = ratio(growing, standing(100)) / ratio(growing, open(100));
    const long = ratio(growing, standing(700)) / ratio(growing, open(700));
    expect(short).toBeLessThan(0.9);
    expect(long).toBeLessThan(short);
  });
});

describe('what is told and seen too', () => {
  it('is one fact: a fever that was measured counts for less than a fever besides', () => {
    const seen = { autonomic: [{ sign: 'fever', present: true }] };
    const key = 'brainstem-encephalitis';
    const alone = ratio(key, { findings: seen }) / ratio(key, {});
    const besides = ratio(key, { history: told('fever'), findings: seen }) / ratio(key, { history: told('fever') });
    expect(besides).toBeGreaterThan(1);
    expect(besides).toBeLessThan(alone);
  });
});
