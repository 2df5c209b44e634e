import { describe, expect, it } from 'vitest';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { historyRows } from '../../src/exam/catalogue/history.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { historyShifts, historyWeightRows } from '../../src/localisation/inference/history-weights.ts';
import { signShifts, signWeightRows } from '../../src/localisation/inference/sign-weights.ts';
import { bedsideExam } from '../support/bedside.ts';

const keys: ReadonlySet<string> = new Set(
  historyRows.map(({ kind, key }) => (kind === 'family' ? `family/${key}` : key)),
);

const itemKeys: ReadonlySet<string> = new Set(items.map(({ key }) => key));

describe('the weights of recorded signs', () => {
  it('name signs of the catalogue that no pathway decides, so that none counts twice', () => {
    const decided = items.filter(({ probe }) => probe.kind !== 'recorded-only').map(({ key }) => key);
    expect(signWeightRows.filter(({ key }) => !itemKeys.has(key) || decided.includes(key))).toEqual([]);
  });

  it('apply to a site that exists, and stay small', () => {
    for (const { key, applies, present } of signWeightRows) {
      const isHypothesis = hypotheses.some(({ site }) => applies(site));
      expect(isHypothesis, key).toBe(true);
      expect(present, key).toBeLessThanOrEqual(6);
      expect(present, key).toBeGreaterThanOrEqual(0.4);
    }
  });
});

describe('a sign on the skin of one half', () => {
  const shingles = (...sides: readonly string[]) =>
    signShifts(
      bedsideExam({
        findings: { inspection: sides.map((side) => ({ sign: 'vesicular-rash', side, present: true })) },
      }),
    );
  const root = (side: 'left' | 'right'): Site => ({ key: 'nerve-root', label: '', side, level: 'L3', kind: 'root' });

  // Zoster lives in the ganglia of the side of its rash; Jones 2014 (read).
  it('speaks for sites of its half, and on both halves for either', () => {
    const factors = (site: Site, ...sides: readonly string[]) =>
      shingles(...sides).filter(({ applies }) => applies(site)).length;
    expect([factors(root('right'), 'right'), factors(root('left'), 'right')]).toEqual([1, 0]);
    expect([factors(root('right'), 'left', 'right'), factors(root('left'), 'left', 'right')]).toEqual([1, 1]);
  });
});

describe('eyes that are drawn to one side', () => {
  it('speak for the medulla of that side alone', () => {
    const medulla = (side: 'left' | 'right'): Site => ({
      key: 'medulla-lateral',
      label: '',
      side,
      level: null,
      kind: 'brainstem',
    });
    for (const side of ['left', 'right'] as const) {
      const shifts = signShifts(
        bedsideExam({ findings: { cranialNerves: [{ sign: 'eye-lateropulsion', side, present: true }] } }),
      );
      const spoken = (['left', 'right'] as const).filter((one) => shifts.some(({ applies }) => applies(medulla(one))));
      expect(spoken).toEqual([side]);
    }
  });
});

describe('the weights of the history', () => {
  it('name statements of the catalogue', () => {
    expect(historyWeightRows.filter(({ key }) => !keys.has(key)).map(({ key }) => key)).toEqual([]);
  });

  it('apply to a site that exists, and not to every one', () => {
    for (const { key, applies } of historyWeightRows) {
      const count = hypotheses.filter(({ site }) => applies(site)).length;
      expect(count, key).toBeGreaterThan(0);
      expect(count, key).toBeLessThan(hypotheses.length);
    }
  });

  it('count what is told under two names once', () => {
    const told = (...names: readonly string[]) =>
      historyShifts(bedsideExam({ history: { symptoms: names.map((key) => ({ key, present: true })) } })).length;
    expect(told('headache', 'new-headache')).toBe(told('headache'));
    expect(told('headache', 'eye-pain')).toBe(told('headache') + told('eye-pain'));
  });

  it('stay small, so that the examination decides', () => {
    expect(
      historyWeightRows.filter(({ present, denied }) => present > 6 || present < 0.4 || denied < 0.4 || denied > 1.3),
    ).toEqual([]);
  });
});
