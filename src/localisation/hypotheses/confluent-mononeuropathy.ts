import type { PlaceKey } from '../../anatomy/places.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { severalNerves } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged. */
const percentOfAll = 0.5;

/** The nerves that inflamed vessels starve most often. Source: guideline on vasculitic neuropathy (`vasculitic-neuropathy-2010`, recalled). */
const starved = [
  'common-fibular-nerve',
  'tibial-nerve-popliteal-fossa',
  'ulnar-nerve-elbow',
  'median-nerve-elbow',
] as const satisfies readonly PlaceKey[];

const stems = bodySides.flatMap((side) => starved.map((place) => ({ side, place })));

/**
 * How many of the nerves are hit: fewer are pieced together from single ones, and more look like a neuropathy of the
 * longest axons.
 */
const hit = { least: 4, most: 6 } as const;

/** How deep the nerves are hit, with its share. Judged. */
const depths = [
  { key: 'deep', motor: 0.8, sensory: 0.85, share: 0.5 },
  { key: 'part', motor: 0.4, sensory: 0.6, share: 0.5 },
] as const;

function chosen(bits: number): readonly { readonly side: BodySide; readonly place: PlaceKey }[] {
  return stems.filter((_, index) => ((bits >> index) & 1) === 1);
}

/** Whether the two halves of the body differ, or both hands are hit and no leg; feet and hands alike are no patchwork. */
function isPatchwork(bits: number): boolean {
  const half = starved.length;
  const isUneven = bits >> half !== (bits & ((1 << half) - 1));
  return isUneven || chosen(bits).every(({ place }) => isOfArm(place));
}

const isOfArm = (place: PlaceKey): boolean => place === 'ulnar-nerve-elbow' || place === 'median-nerve-elbow';

/** Nerves of arms and legs hit one after the other until the patches run together: mononeuritis multiplex, late. */
export function confluentMononeuropathyHypotheses(): Hypothesis[] {
  const sets = Array.from({ length: 2 ** stems.length }, (_, bits) => bits).filter((bits) => {
    const { length } = chosen(bits);
    return length >= hit.least && length <= hit.most && isPatchwork(bits);
  });
  return sets.flatMap((bits) =>
    depths.map(({ key, motor, sensory, share }) => {
      const lesion = new LesionBuilder();
      for (const { side, place } of chosen(bits)) lesion.place(side, place, motor, sensory);
      return hypothesis(
        severalNerves,
        `confluent-${bits}-${key}`,
        (percentOfAll * share) / sets.length,
        lesion.build(),
      );
    }),
  );
}
