import { describe, expect, it } from 'vitest';
import { findItem } from '../../src/exam/catalogue/catalogue.ts';
import { hypotheses, noLesionIndex } from '../../src/localisation/hypotheses/hypotheses.ts';
import { type ProbeTarget, probeModel } from '../../src/localisation/observation/probe-models.ts';

/** Chance of an abnormal result in a person without a lesion. */
function inHealth(
  target: ProbeTarget | null,
  from60: number,
  abnormalFrom: (value: string | number) => boolean,
): number {
  const model = target === null ? null : probeModel(target);
  const healthy = hypotheses[noLesionIndex];
  if (model === null || healthy === undefined) throw new RangeError('no model');
  const shares = model.distribution(model.state(healthy), { chronicity: 1, from60 });
  return model.values.reduce<number>(
    (sum, value, index) => (abnormalFrom(value) ? sum + (shares[index] ?? 0) : sum),
    0,
  );
}

function target(section: 'reflexes' | 'sensation', key: string, landmark?: string): ProbeTarget | null {
  const item = findItem(section, key);
  if (item === undefined) return null;
  return landmark === undefined
    ? { item, side: 'left' }
    : { item, side: 'left', place: { kind: 'landmark', key: landmark } };
}

// Vrancken 2006, pooled from 50 studies of 9,996 healthy adults: from 60 years on the ankle jerks are absent in 23 % (16 to
// 30), vibration at the great toe in 29 % (18 to 38) and at the ankle in 15 % (11 to 20); under 60 essentially never.
describe('what age alone does, within the published intervals', () => {
  it.each([
    ['reduced or absent ankle jerk', target('reflexes', 'ankle'), ['0', 'trace'], 0.16, 0.3],
    [
      'lost vibration at the great toe',
      target('sensation', 'vibration', 'great-toe'),
      ['reduced', 'absent', 'altered'],
      0.18,
      0.38,
    ],
    [
      'lost vibration at the ankle',
      target('sensation', 'vibration', 'ankle'),
      ['reduced', 'absent', 'altered'],
      0.11,
      0.2,
    ],
  ] as const)('%s from 60 years on', (_, where, values, least, most) => {
    const chance = inHealth(where, 1, (value) => (values as readonly (string | number)[]).includes(value));
    expect(chance).toBeGreaterThanOrEqual(least);
    expect(chance).toBeLessThanOrEqual(most);
  });

  it('hardly ever loses an ankle jerk under 60', () => {
    expect(inHealth(target('reflexes', 'ankle'), 0, (value) => value === '0')).toBeLessThan(0.05);
  });
});
