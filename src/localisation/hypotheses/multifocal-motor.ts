import type { PlaceKey } from '../../anatomy/places.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { processOf } from '../process.ts';
import { comesOnSlowly, severalNerves } from './process-signs.ts';

/** Percent of all focal and diffuse findings: motor fibres alone, and those of the skin too. Judged. */
const percentOfAll = { motor: 0.35, withFeeling: 0.2 } as const;

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

type Elsewhere = (typeof elsewhere)[number];

/** @param feeling share of the loss that the sensory fibres of the same nerve have */
function blocks(side: BodySide, arm: readonly PlaceKey[], other: Elsewhere, feeling = 0): LesionBuilder {
  const lesion = new LesionBuilder();
  const hit = (one: BodySide, places: readonly PlaceKey[], depth: number): void => {
    for (const place of places) lesion.place(one, place, depth, depth * feeling);
  };
  hit(side, arm, block.worst);
  hit(side, other.same, block.elsewhere);
  hit(opposite(side), other.other, block.elsewhere);
  return lesion;
}

const shareOfAll = (rows: readonly { readonly share: number }[]): number =>
  rows.reduce((sum, { share }) => sum + share, 0);
const total = shareOfAll(armBlocks) * shareOfAll(elsewhere);

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
            (percentOfAll.motor * arm.share * other.share) / (2 * total),
            blocks(side, arm.places, other).build(),
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

/** What the jerks of all limbs lose beside those of the blocked nerves, where all fibres conduct slowly. Judged. */
const slowedReflex = 0.3;

/**
 * The same patchwork with the skin of the blocked nerves and with duller jerks: multifocal inflammatory demyelinating
 * neuropathy, which takes the arms more than the legs (guideline `ean-pns-cidp-2021`, recalled).
 */
export function multifocalSensorimotorHypotheses(): Hypothesis[] {
  const others = elsewhere.filter(({ key }) => key !== 'one-arm');
  const ways = 2 * shareOfAll(armBlocks) * shareOfAll(others);
  return bodySides.flatMap((side) =>
    armBlocks.flatMap((arm) =>
      others.map((other) =>
        hypothesis(
          severalNerves,
          `sensorimotor-${side}-${arm.places.join('+')}-${other.key}`,
          (percentOfAll.withFeeling * arm.share * other.share) / ways,
          blocks(side, arm.places, other, 0.9).build(),
          {
            process: processOf({
              reflex: () => slowedReflex,
              because: 'myelin is lost in several nerves',
              wasting: 'muscle',
            }),
            paces: comesOnSlowly,
          },
        ),
      ),
    ),
  );
}
