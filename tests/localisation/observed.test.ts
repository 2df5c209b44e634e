import { describe, expect, it } from 'vitest';
import { scales } from '../../src/exam/scales.ts';
import { softmax } from '../../src/localisation/inference/score.ts';
import {
  plantarDistribution,
  powerDistribution,
  reflexDistribution,
  sensoryDistribution,
  toneDistribution,
} from '../../src/localisation/observation/observed.ts';

const chronic = { chronicity: 1, from60: 0 };
const sum = (shares: readonly number[]): number => shares.reduce((total, share) => total + share, 0);
const at = (scale: keyof typeof scales, key: string): number =>
  scales[scale].grades.findIndex((grade) => grade.key === key);

describe('chances of what is recorded', () => {
  it('sum to 1 whatever the state', () => {
    for (let loss = 0; loss <= 1; loss += 0.1) {
      expect(sum(powerDistribution(loss))).toBeCloseTo(1, 9);
      expect(sum(sensoryDistribution(loss, 0.2))).toBeCloseTo(1, 9);
      for (let released = 0; released <= 1; released += 0.25) {
        expect(sum(reflexDistribution(1 - loss, released, 0.1, chronic))).toBeCloseTo(1, 9);
        expect(sum(plantarDistribution(released, 1 - loss))).toBeCloseTo(1, 9);
        expect(
          sum(toneDistribution({ released, lowerLoss: loss, unrestrained: loss, frontal: released }, chronic)),
        ).toBeCloseTo(1, 9);
      }
    }
  });

  // Isaza Jaramillo 2014: the extensor response found in 50.8 % (41.5 to 60.1) of pyramidal dysfunction, specificity 99 % (97.7 to 100).
  it('agree with the published accuracy of the extensor plantar response', () => {
    const extensor = at('plantar-response', 'extensor');
    expect(plantarDistribution(0, 1)[extensor]).toBeLessThan(1 - 0.977);
    const partial = plantarDistribution(0.5, 1)[extensor] ?? 0;
    expect(partial).toBeGreaterThan(0.415);
    expect(partial).toBeLessThan(0.601);
  });

  // Tawa 2017, sensory testing in lumbar root lesions: sensitivity 0.61 (0.47 to 0.73), here for a loss of half the fibres.
  it('agree with the published sensitivity of sensory testing in root lesions', () => {
    const missed = sensoryDistribution(0.4, 0)[at('sensation', 'normal')] ?? 0;
    expect(1 - missed).toBeGreaterThan(0.47);
    expect(1 - missed).toBeLessThan(0.77);
  });

  it('call full power normal and no power nothing', () => {
    expect(powerDistribution(0)[at('mrc-power', '5')]).toBeGreaterThan(0.85);
    expect(powerDistribution(1)[at('mrc-power', '0')]).toBeGreaterThan(0.5);
  });

  it('make weakness worse as more is lost', () => {
    const mean = (loss: number): number => sum(powerDistribution(loss).map((share, grade) => share * grade));
    for (let loss = 0.1; loss <= 1; loss += 0.1) expect(mean(loss)).toBeLessThan(mean(loss - 0.1));
  });

  it('let the reflexes be flat in the first days of a lesion above them and brisk later', () => {
    const brisk = (chronicity: number): number => {
      const shares = reflexDistribution(1, 0.9, 0.01, { chronicity, from60: 0 });
      return (shares[at('reflex-grade', '3')] ?? 0) + (shares[at('reflex-grade', '4')] ?? 0);
    };
    expect(brisk(1)).toBeGreaterThan(0.7);
    expect(brisk(0)).toBeLessThan(brisk(1) - 0.2);
  });

  // Shock is that of a cord cut through; partial lesions seldom lose their jerks: Ditunno 2004 (from memory).
  it('lets jerks sink in the first days with the depth of the break', () => {
    const sunk = (released: number) => {
      const [absent = 0, trace = 0] = reflexDistribution(1, released, 0.01, { chronicity: 0, from60: 0 });
      return absent + trace;
    };
    expect(sunk(0.95)).toBeGreaterThan(3 * sunk(0.5));
  });
});

describe('probabilities from logs', () => {
  it('sum to 1 and survive very small weights', () => {
    const weights = softmax([-1000, -1001, -1400]);
    expect(sum([...weights])).toBeCloseTo(1, 12);
    expect(weights[0]).toBeCloseTo(1 / (1 + Math.exp(-1)), 9);
  });
});
