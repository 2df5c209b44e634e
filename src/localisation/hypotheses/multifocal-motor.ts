import type { PlaceKey } from '../../anatomy/places.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { processOf } from '../process.ts';
import { severalNerves } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged. */
const percentOfAll = 0.35;

/**
 * Stretches of arm nerves at which motor fibres are blocked while sensory ones in the same nerve conduct; one or
 * more in an arm, and two at least in all, make the picture. Source: guideline on multifocal motor neuropathy (`mmn-efns-2010`, recalled); shares judged.
 */
const armBlocks: readonly { readonly places: readonly PlaceKey[]; readonly share: number }[] = [
  { places: ['radial-nerve-elbow'], share: 0.25 },
  { places: ['ulnar-nerve-elbow'], share: 0.2 },
  { places: ['radial-nerve-elbow', 'ulnar-nerve-elbow'], share: 0.25 },
  { places: ['ulnar-nerve-elbow', 'median-nerve-elbow'], share: 0.15 },
  { places: ['radial-nerve-elbow', 'ulnar-nerve-elbow', 'median-nerve-elbow'], share: 0.15 },
  // Fingers that drop while the wrist stays up.
  { places: ['posterior-interosseous-nerve'], share: 0.12 },
  { places: ['median-nerve-elbow'], share: 0.08 },
  // In about a third some block lies near the plexus, and the upper arm fails with the hand.
  {
    places: ['axillary-nerve', 'musculocutaneous-nerve', 'radial-nerve-axilla', 'median-nerve-upper-arm'],
    share: 0.12,
  },
];

/** What else is blocked, and less: nothing, nerves of the other arm, one of a leg, or both. */
const elsewhere: readonly {
  readonly key: string;
  readonly share: number;
  readonly same: readonly PlaceKey[];
  readonly other: readonly PlaceKey[];
}[] = [
  { key: 'one-arm', share: 0.1, same: [], other: [] },
  { key: 'other-radial', share: 0.25, same: [], other: ['radial-nerve-elbow'] },
  { key: 'other-posterior-interosseous', share: 0.1, same: [], other: ['posterior-interosseous-nerve'] },
  { key: 'other-ulnar', share: 0.25, same: [], other: ['ulnar-nerve-elbow'] },
  { key: 'other-median', share: 0.08, same: [], other: ['median-nerve-elbow'] },
  { key: 'other-median-and-ulnar', share: 0.1, same: [], other: ['median-nerve-elbow', 'ulnar-nerve-elbow'] },
  { key: 'fibular', share: 0.1, same: ['common-fibular-nerve'], other: [] },
  { key: 'other-fibular', share: 0.1, same: [], other: ['common-fibular-nerve'] },
  { key: 'other-ulnar-and-fibular', share: 0.1, same: [], other: ['ulnar-nerve-elbow', 'common-fibular-nerve'] },
  { key: 'fibular-and-other-ulnar', share: 0.1, same: ['common-fibular-nerve'], other: ['ulnar-nerve-elbow'] },
];

const block = { worst: 0.75, elsewhere: 0.55 } as const;

function blocks(side: BodySide, arm: (typeof armBlocks)[number], other: (typeof elsewhere)[number]): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const place of arm.places) lesion.place(side, place, block.worst, 0);
  for (const place of other.same) lesion.place(side, place, block.elsewhere, 0);
  for (const place of other.other) lesion.place(opposite(side), place, block.elsewhere, 0);
  return lesion;
}

const total =
  armBlocks.reduce((sum, { share }) => sum + share, 0) * elsewhere.reduce((sum, { share }) => sum + share, 0);

/** Motor fibres blocked in several nerves, feeling kept. */
export function multifocalMotorHypotheses(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    armBlocks.flatMap((arm) =>
      elsewhere
        .filter((other) => arm.places.length + other.same.length + other.other.length > 1)
        .map((other) =>
          hypothesis(
            severalNerves,
            `motor-${side}-${arm.places.join('+')}-${other.key}`,
            (percentOfAll * arm.share * other.share) / (2 * total),
            blocks(side, arm, other).build(),
            {
              process: processOf({
                because: 'motor fibres are blocked in several nerves',
                // A blocked fibre is not a dead one: such arms are weaker than they are thin.
                wasting: 'muscle',
                // Half of those with multifocal motor neuropathy twitch (guideline, recalled).
                twitching: 0.6,
              }),
            },
          ),
        ),
    ),
  );
}
