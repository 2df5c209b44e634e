import { describe, expect, it } from 'vitest';
import { movements } from '../../src/anatomy/movements.ts';
import type { Modality } from '../../src/anatomy/probe.ts';
import { reflexes } from '../../src/anatomy/reflexes.ts';
import { type Segment, segmentIndex } from '../../src/anatomy/segments.ts';
import { skinPlace } from '../../src/anatomy/skin-places.ts';
import type { BodySide } from '../../src/kernel/side.ts';
import { motorDeficit, motorItem } from '../../src/localisation/forward/motor.ts';
import { arcState, reflexItem } from '../../src/localisation/forward/reflex-arc.ts';
import { sensoryDeficit, sensoryItem } from '../../src/localisation/forward/sensory.ts';
import { hypothesis } from '../../src/localisation/hypothesis.ts';
import { intact, LesionBuilder } from '../../src/localisation/lesion.ts';

const site = { key: 'test', label: 'Test', side: null, level: null, kind: 'cord' } as const;
const of = (lesion: LesionBuilder) => hypothesis(site, 'test', 1, lesion.build());

function skinLoss(lesion: LesionBuilder, modality: Modality, dermatome: string, side: BodySide): number {
  const place = skinPlace('dermatome', dermatome);
  if (place === undefined) throw new RangeError(dermatome);
  return sensoryDeficit(of(lesion), sensoryItem(place, modality, side)).total;
}

/** Half of the cord cut across at a segment on the right. */
function rightHalfAt(level: Segment): LesionBuilder {
  const segment = segmentIndex(level);
  return new LesionBuilder()
    .cord('corticospinal', 'right', segment, 1)
    .cord('dorsalColumn', 'right', segment, 1)
    .cord('spinothalamic', 'right', segment, 1);
}

// The crossing of each pathway: Blumenfeld, Neuroanatomy through Clinical Cases, chapters on the long tracts (recalled).
describe('half of the cord', () => {
  const half = rightHalfAt('T6');

  it('takes vibration and position below it on its own side', () => {
    expect(skinLoss(half, 'vibration', 'L4', 'right')).toBeGreaterThan(0.9);
    expect(skinLoss(half, 'vibration', 'L4', 'left')).toBeLessThan(0.05);
  });

  it('takes pain and temperature on the other side, from about two segments below it', () => {
    expect(skinLoss(half, 'pinprick', 'T10', 'left')).toBeGreaterThan(0.9);
    expect(skinLoss(half, 'pinprick', 'T6', 'left')).toBeLessThan(0.3);
    expect(skinLoss(half, 'pinprick', 'L4', 'right')).toBeLessThan(0.05);
  });

  it('weakens the leg of its own side from above the anterior horn, and neither arm', () => {
    const right = motorDeficit(of(half), motorItem(movements['ankle-dorsiflexion'], 'right'));
    expect(right.upper).toBeGreaterThan(0.8);
    expect(right.lower).toBeCloseTo(0, 10);
    expect(motorDeficit(of(half), motorItem(movements['ankle-dorsiflexion'], 'left')).total).toBeCloseTo(0, 10);
    expect(motorDeficit(of(half), motorItem(movements['finger-abduction'], 'right')).total).toBeCloseTo(0, 10);
  });

  it('releases the reflexes below it on its own side and leaves their arcs whole', () => {
    const { arc, released } = arcState(of(half), reflexItem(reflexes.knee, 'right'));
    expect(arc).toBeCloseTo(1, 10);
    expect(released).toBe(1);
    expect(arcState(of(half), reflexItem(reflexes.biceps, 'right')).released).toBe(0);
  });
});

describe('one half of the brain', () => {
  const left = new LesionBuilder()
    .brain('left', 'internal-capsule-posterior-limb', 0.9)
    .brain('left', 'ventral-posterolateral-nucleus', 0.5);

  it('serves the other half of the body in every modality', () => {
    expect(motorDeficit(of(left), motorItem(movements['ankle-dorsiflexion'], 'right')).total).toBeGreaterThan(0.8);
    expect(motorDeficit(of(left), motorItem(movements['ankle-dorsiflexion'], 'left')).total).toBe(0);
    expect(skinLoss(left, 'pinprick', 'L5', 'right')).toBeGreaterThan(0.4);
    expect(skinLoss(left, 'vibration', 'L5', 'left')).toBeLessThan(0.01);
  });
});

describe('the middle of the cord', () => {
  it('takes pain and temperature over its own segments on both sides and spares touch, vibration and the legs', () => {
    const middle = new LesionBuilder();
    for (const side of ['left', 'right'] as const) {
      for (const level of ['C5', 'C6', 'C7', 'C8'] as const) middle.cord('crossing', side, segmentIndex(level), 1);
    }
    for (const side of ['left', 'right'] as const) {
      expect(skinLoss(middle, 'pinprick', 'C7', side)).toBeGreaterThan(0.8);
      expect(skinLoss(middle, 'vibration', 'C7', side)).toBeLessThan(0.01);
      expect(skinLoss(middle, 'pinprick', 'L4', side)).toBeLessThan(0.01);
    }
  });
});

describe('a break of the arc', () => {
  // S1 root and the ankle jerk; L3 and L4 roots and the knee jerk: Aids to the Examination of the Peripheral Nervous System (recalled).
  it.each([
    ['S1', 'ankle'],
    ['C7', 'triceps'],
  ] as const)('at the %s root silences the %s reflex', (root, reflex) => {
    const lesion = new LesionBuilder().root('left', root, 0.95, 0.95);
    expect(arcState(of(lesion), reflexItem(reflexes[reflex], 'left')).arc).toBeLessThan(0.25);
    expect(arcState(of(lesion), reflexItem(reflexes[reflex], 'right')).arc).toBeCloseTo(1, 10);
  });
});

describe('nothing damaged', () => {
  it('loses nothing anywhere', () => {
    const healthy = hypothesis(site, 'healthy', 1, intact);
    for (const movement of Object.values(movements)) {
      expect(motorDeficit(healthy, motorItem(movement, movement.paired ? 'left' : 'midline')).total).toBeCloseTo(0, 10);
    }
  });
});
