import type { Probe } from '../../anatomy/probe.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import { type BodySide, sidesOf } from '../../kernel/side.ts';
import { facultyChance } from '../forward/faculty.ts';
import { type MotorItem, motorDeficit } from '../forward/motor.ts';
import { sensoryDeficit, sensoryItem } from '../forward/sensory.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { signModel } from './abnormality.ts';
import { coarse, fine, type ProbeModel } from './probe-model.ts';
import { limbSegment, mean, motorItems, type ProbeTarget } from './probe-target.ts';

/** Axons from the spindles that steer a limb: those of calf and of forearm, in cm from the cord. */
const spindleLengthCm = { upper: 55, lower: 80 } as const;

/** Loss of muscle-spindle afferents of a limb. */
function spindleLoss(hypothesis: Hypothesis, side: BodySide, limb: 'upper' | 'lower'): number {
  return hypothesis.process.spindle({
    side,
    segment: segmentIndex(limbSegment[limb]),
    lengthCm: spindleLengthCm[limb],
  });
}

/** Many sway with closed eyes who have lost nothing; fingers hardly ever wander. Judged. */
const inHealth = { lower: 0.03, upper: 0.002 } as const;

/** Standing and reaching without sight need the far joints of both sides. */
export function proprioception({ item, side }: ProbeTarget, limb: 'upper' | 'lower'): ProbeModel | null {
  // One nerve takes a few fingers; the hand loses its posture when all have lost their position.
  const places = (limb === 'lower' ? ['great-toe'] : ['index-finger', 'little-finger']).flatMap(
    (key) => skinPlace('landmark', key) ?? [],
  );
  if (places.length === 0) return null;
  const items = sidesOf(side).map((one) => ({
    side: one,
    joints: places.map((place) => sensoryItem(place, 'vibration', one)),
  }));
  return signModel({
    item,
    family: 'proprioception',
    steps: [fine],
    fractions: (hypothesis) => [
      Math.min(
        ...items.map(({ side: one, joints }) =>
          Math.max(
            Math.min(...joints.map((joint) => sensoryDeficit(hypothesis, joint).total)),
            spindleLoss(hypothesis, one, limb),
          ),
        ),
      ),
    ],
    chance: ([loss = 0]) => inHealth[limb] + 0.75 * loss ** 1.5,
  });
}

const coordinationMuscles = {
  'upper-limb': ['shoulder-abduction', 'finger-extension'],
  'lower-limb': ['hip-flexion', 'ankle-dorsiflexion'],
  midline: ['hip-flexion'],
} as const;

/** What holds a standing body up; the weakest of them decides. */
const antigravity = ['hip-extension', 'knee-extension'] as const;

/** How much of the weakness of a limb, of the legs in a balance task, and of the legs in standing shows as failure. Judged. */
const failsByWeakness = { limb: 0.45, midline: 0.25, standing: 0.9 } as const;

/** Balance tasks that healthy people from 60 fail, such as walking heel to toe: nearly a third, more in great age. Judged. */
const taskFailedFrom60 = 0.3;

/** Loss of a movement that one side may stand in for. */
function lossOf(hypothesis: Hypothesis, both: readonly MotorItem[]): number {
  return Math.min(...both.map((item) => motorDeficit(hypothesis, item).total));
}

/** Clumsiness is cerebellar, or made by weakness, or by lost position sense; the last two in part only. */
export function cerebellar(
  { item, side }: ProbeTarget,
  { part, bearsWeight }: Extract<Probe, { kind: 'cerebellar' }>,
): ProbeModel {
  const byWeakness = failsByWeakness[bearsWeight ? 'standing' : part === 'midline' ? 'midline' : 'limb'];
  const holding = antigravity.map((movement) => sidesOf(side).flatMap((one) => motorItems([movement], one)));
  const muscles = sidesOf(side).flatMap((one) => motorItems(coordinationMuscles[part], one));
  // One nerve or root takes the position of a few fingers, and the hand still finds its way by the others.
  const places = (part === 'upper-limb' ? ['index-finger', 'little-finger'] : ['great-toe']).flatMap(
    (key) => skinPlace('landmark', key) ?? [],
  );
  const failedInHealth = item.scale === 'performance' ? taskFailedFrom60 : 0;
  const joints = sidesOf(side).map((one) => places.map((place) => sensoryItem(place, 'joint-position', one)));
  return signModel({
    item,
    family: `coordination|${part === 'midline'}|${byWeakness}|${failedInHealth}`,
    steps: [coarse, 4, 4],
    fractions: (hypothesis) => {
      const faculty = part === 'midline' ? 'trunk-coordination' : 'limb-coordination';
      const spindles = sidesOf(side).map((one) =>
        spindleLoss(hypothesis, one, part === 'upper-limb' ? 'upper' : 'lower'),
      );
      return [
        Math.max(...sidesOf(side).map((one) => facultyChance(hypothesis, faculty, one)), 0.85 * Math.max(...spindles)),
        bearsWeight
          ? Math.max(...holding.map((both) => lossOf(hypothesis, both)))
          : mean(muscles.map((muscle) => motorDeficit(hypothesis, muscle).total)),
        mean(joints.map((one) => Math.min(...one.map((joint) => sensoryDeficit(hypothesis, joint).total)))),
      ];
    },
    chance: ([ataxia = 0, weakness = 0, position = 0], { from60 }) => {
      const inHealth = 0.02 + failedInHealth * from60;
      return (
        inHealth +
        (0.98 - inHealth) *
          (1 - (1 - 0.92 * ataxia) * (1 - byWeakness * weakness) * (1 - (part === 'midline' ? 0.3 : 0.35) * position))
      );
    },
  });
}
