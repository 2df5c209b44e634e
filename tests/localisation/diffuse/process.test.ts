import { describe, expect, it } from 'vitest';
import { segmentIndex } from '../../../src/anatomy/segments.ts';
import { bodySides, opposite } from '../../../src/kernel/side.ts';
import { hypotheses } from '../../../src/localisation/hypotheses/hypotheses.ts';
import type { Hypothesis } from '../../../src/localisation/hypothesis.ts';
import { isDiffuse } from '../../../src/localisation/localisation.ts';
import { combineProcesses, type FibreSite, noProcess, processOf } from '../../../src/localisation/process.ts';

const diffuse = hypotheses.filter(({ site, process }) => isDiffuse(site) && process.because !== '');
const grid: readonly FibreSite[] = bodySides.flatMap((side) =>
  [null, 'C2', 'C5', 'C8', 'T6', 'L3', 'S1'].flatMap((name) =>
    [10, 35, 60, 80, 105].map((lengthCm) => ({
      side,
      segment: name === null ? null : segmentIndex(name as 'C2'),
      lengthCm,
    })),
  ),
);
const losses = ({ process }: Hypothesis, fibre: FibreSite): readonly number[] => [
  process.motor({ ...fibre, group: 'hip' }),
  process.motor({ ...fibre, group: 'hand-thenar' }),
  process.motor(fibre),
  process.largeFibre(fibre),
  process.smallFibre(fibre),
  process.spindle(fibre),
  process.reflex(fibre),
  process.release(fibre),
];

describe('every diffuse process', () => {
  it('answers fractions', () => {
    const out = diffuse.filter((one) =>
      grid.some((fibre) => losses(one, fibre).some((loss) => !(loss >= 0 && loss <= 1))),
    );
    expect(out.map(({ site, variant }) => `${site.key} ${variant}`)).toEqual([]);
  });

  it('that is worse on one side has a mirror image as common as itself', () => {
    const byName = new Map(diffuse.map((one) => [`${one.site.key}|${one.variant}`, one]));
    const lopsided = diffuse.filter(({ variant }) => /left|right/.test(variant));
    expect(lopsided.length).toBeGreaterThan(50);
    const unmatched = lopsided.filter((one) => {
      const mirrored = one.variant.replace(/left|right/g, (side) => opposite(side as 'left' | 'right'));
      const other = byName.get(`${one.site.key}|${mirrored}`);
      if (other === undefined || Math.abs(other.frequency - one.frequency) > 1e-12) return true;
      return grid.some(
        (fibre) =>
          JSON.stringify(losses(one, fibre)) !==
          JSON.stringify(losses(other, { ...fibre, side: opposite(fibre.side) })),
      );
    });
    expect(unmatched.map(({ site, variant }) => `${site.key} ${variant}`)).toEqual([]);
  });

  it('has a name of its own', () => {
    const names = diffuse.map(({ site, variant }) => `${site.key}|${variant}`);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('two processes at once', () => {
  const half = processOf({ motor: () => 0.5, wasting: 'block', because: 'one' });

  it('leave over what both leave over', () => {
    const both = combineProcesses(half, processOf({ motor: () => 0.5, because: 'two' }));
    expect(both.motor({ side: 'left', segment: 0, lengthCm: 10 })).toBeCloseTo(0.75);
    expect(both.because).toBe('one; two');
  });

  it('waste muscle as the worse of the two does', () => {
    expect(combineProcesses(half, { ...noProcess, wasting: 'muscle' }).wasting).toBe('muscle');
  });
});

describe('a length-dependent process', () => {
  const feet = diffuse.find(({ variant }) => variant === 'sensory-first-knee-and-hands-deep');

  // The rule of thumb of every textbook: the fingers when the loss in the legs has come to the knees.
  it('reaches the fingers when it has reached the knees', () => {
    const knee = feet?.process.largeFibre({ side: 'left', segment: segmentIndex('L4'), lengthCm: 62 }) ?? 0;
    const finger = feet?.process.largeFibre({ side: 'left', segment: segmentIndex('C8'), lengthCm: 76 }) ?? 0;
    expect(Math.abs(knee - finger)).toBeLessThan(0.15);
  });

  it('takes more the longer the axon', () => {
    const at = (lengthCm: number) =>
      feet?.process.smallFibre({ side: 'left', segment: segmentIndex('L5'), lengthCm }) ?? 0;
    expect([40, 60, 80, 100].map(at)).toEqual([40, 60, 80, 100].map(at).toSorted((a, b) => a - b));
  });
});
