import type { PlaceKey } from '../../anatomy/places.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type Process, processOf, reached } from '../process.ts';
import { severalNerves } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged. */
const percentOfAll = 0.2;

/**
 * Nerves that are pressed where they lie bare, and the sooner when all nerves are ill: share of the palsies on top of a
 * neuropathy. Source: Preston and Shapiro, hereditary neuropathy with liability to pressure palsies (recalled); judged.
 */
const pressed: readonly (readonly [PlaceKey, number])[] = [
  ['common-fibular-nerve', 0.4],
  ['ulnar-nerve-elbow', 0.26],
  ['radial-nerve-spiral-groove', 0.14],
  ['median-nerve-wrist', 0.12],
  ['sciatic-nerve', 0.08],
];

/** How the nerve is hit, with its share. Judged. */
const depths = [
  { key: 'deep', motor: 0.9, sensory: 0.7, share: 0.55 },
  { key: 'part', motor: 0.5, sensory: 0.5, share: 0.45 },
] as const;

/**
 * What lies beneath: slow fibres everywhere, whose jerks are dull or gone while strength and feeling are kept, or the loss of
 * the longest fibres by diabetes, alcohol or medicines. Judged.
 */
const beneath: readonly { readonly key: string; readonly share: number; readonly process: Process }[] = [
  {
    key: 'slow-fibres',
    share: 0.45,
    process: processOf({
      reflex: ({ lengthCm }) => 0.45 + 0.35 * reached(lengthCm, 75),
      largeFibre: ({ lengthCm }) => 0.25 * reached(lengthCm, 92),
      because: 'all fibres conduct slowly, and one nerve was pressed beside',
    }),
  },
  {
    key: 'long-fibres',
    share: 0.45,
    process: processOf({
      motor: ({ lengthCm }) => 0.3 * reached(lengthCm, 103),
      largeFibre: ({ lengthCm }) => 0.8 * reached(lengthCm, 88),
      smallFibre: ({ lengthCm }) => 0.8 * reached(lengthCm, 84),
      reflex: ({ lengthCm }) => 0.6 * reached(lengthCm, 74),
      because: 'the longest axons fail, and one nerve was pressed beside',
    }),
  },
  {
    key: 'long-fibres-of-hands-too',
    share: 0.1,
    process: processOf({
      motor: ({ lengthCm }) => 0.4 * reached(lengthCm, 70),
      largeFibre: ({ lengthCm }) => 0.85 * reached(lengthCm, 72),
      smallFibre: ({ lengthCm }) => 0.85 * reached(lengthCm, 70),
      reflex: ({ lengthCm }) => 0.6 * reached(lengthCm, 50),
      because: 'the longest axons fail, and one nerve was pressed beside',
    }),
  },
];

/** One nerve pressed in somebody whose nerves are all ill: found as a palsy with jerks or feeling lost where it does not run. */
export function nerveOnNeuropathyHypotheses(): Hypothesis[] {
  return beneath.flatMap((neuropathy) =>
    pressed.flatMap(([place, share]) =>
      bodySides.flatMap((side) =>
        depths.map((depth) =>
          hypothesis(
            severalNerves,
            `${neuropathy.key}-${side}-${place}-${depth.key}`,
            (percentOfAll * neuropathy.share * share * depth.share) / bodySides.length,
            new LesionBuilder().place(side, place, depth.motor, depth.sensory).build(),
            { process: neuropathy.process },
          ),
        ),
      ),
    ),
  );
}
