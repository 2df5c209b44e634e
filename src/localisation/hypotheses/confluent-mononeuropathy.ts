import type { PlaceKey } from '../../anatomy/places.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type PaceFactors } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { severalNerves } from './process-signs.ts';

/** Percent of all focal and diffuse findings: patches that have run together, two limbs, three nerves, one limb, and skin alike on both sides. Judged. */
const percent = {
  confluent: 0.45,
  twoLimbs: 0.35,
  threeNerves: 0.3,
  oneArm: 0.12,
  withFace: 0.1,
  skinAlike: 0.06,
  worseOnOneSide: 0.12,
} as const;

/** The nerves that inflamed vessels starve most often. Source: guideline on vasculitic neuropathy (`vasculitic-neuropathy-2010`, recalled). */
const starved = [
  'common-fibular-nerve',
  'tibial-nerve-popliteal-fossa',
  'ulnar-nerve-elbow',
  'median-nerve-elbow',
] as const satisfies readonly PlaceKey[];

interface Stem {
  readonly side: BodySide;
  readonly place: PlaceKey;
}

const stems = bodySides.flatMap((side) => starved.map((place): Stem => ({ side, place })));

/** How many of the nerves are hit where they run together; more look like a neuropathy of the longest axons. */
const hit = { least: 4, most: 5 } as const;

/** How deep the nerves are hit, with its share. Judged. */
const depths = [
  { key: 'deep', motor: 0.8, sensory: 0.85, share: 0.5 },
  { key: 'part', motor: 0.4, sensory: 0.6, share: 0.5 },
] as const;

function chosen(bits: number): readonly Stem[] {
  return stems.filter((_, index) => ((bits >> index) & 1) === 1);
}

/** Whether the two halves of the body differ, or both hands are hit and no leg; feet and hands alike are no patchwork. */
function isPatchwork(bits: number): boolean {
  const half = starved.length;
  const isUneven = bits >> half !== (bits & ((1 << half) - 1));
  return isUneven || chosen(bits).every(({ place }) => isOfArm(place));
}

const ofArms: readonly PlaceKey[] = ['ulnar-nerve-elbow', 'median-nerve-elbow', 'radial-nerve-spiral-groove'];
const ofLegs: readonly PlaceKey[] = ['common-fibular-nerve', 'tibial-nerve-popliteal-fossa'];
const isOfArm = (place: PlaceKey): boolean => ofArms.includes(place);

/** One depth between the two, for many nerves, of which hardly two are hit alike. */
const between = [{ key: 'uneven', motor: 0.6, sensory: 0.75, share: 1 }] as const;
const manyNerves = 5;

function severalAt(variant: string, frequency: number, nerves: readonly Stem[], paces?: PaceFactors): Hypothesis[] {
  return (nerves.length < manyNerves ? depths : between).map(({ key, motor, sensory, share }) => {
    const lesion = new LesionBuilder();
    for (const { side, place } of nerves) lesion.place(side, place, motor, sensory);
    return hypothesis(severalNerves, `${variant}-${key}`, frequency * share, lesion.build(), {
      ...(paces !== undefined && { paces }),
    });
  });
}

/** Nerves of arms and legs hit one after the other until the patches run together: mononeuritis multiplex, late. */
function confluent(): Hypothesis[] {
  const sets = Array.from({ length: 2 ** stems.length }, (_, bits) => bits).filter((bits) => {
    const { length } = chosen(bits);
    return length >= hit.least && length <= hit.most && isPatchwork(bits);
  });
  return sets.flatMap((bits) => severalAt(`confluent-${bits}`, percent.confluent / sets.length, chosen(bits)));
}

const everyNerve = bodySides.flatMap((side) => [...ofArms, ...ofLegs].map((place): Stem => ({ side, place })));
const limbOf = ({ side, place }: Stem): string => `${side}-${isOfArm(place)}`;
const nameOf = (nerves: readonly Stem[]): string => nerves.map(({ side, place }) => `${side}-${place}`).join('-');

/**
 * Two nerves of two limbs, as when mononeuritis multiplex begins: one place in brain, cord or horns would explain them too,
 * so that they are never pieced together. The same nerve on both sides is left to that nerve.
 */
function twoLimbs(): Hypothesis[] {
  const pairs = everyNerve.flatMap((one, index) =>
    everyNerve
      .slice(index + 1)
      .filter((other) => other.place !== one.place && limbOf(other) !== limbOf(one))
      .map((other) => [one, other] as const),
  );
  return pairs.flatMap((pair) => severalAt(nameOf(pair), percent.twoLimbs / pairs.length, pair));
}

/** Three nerves of two or three limbs, the next step of the same illness. */
function threeNerves(): Hypothesis[] {
  const triples = everyNerve.flatMap((one, first) =>
    everyNerve.slice(first + 1).flatMap((two, second) =>
      everyNerve
        .slice(first + second + 2)
        .map((three) => [one, two, three] as const)
        .filter((nerves) => new Set(nerves.map(limbOf)).size > 1),
    ),
  );
  return triples.flatMap((triple) => severalAt(nameOf(triple), percent.threeNerves / triples.length, triple));
}

/**
 * Nerves of one arm that one mishap takes together: a fracture at the elbow, a tight compartment, a tourniquet or a plaster, a
 * fistula for dialysis that robs the hand of blood. Which go together is judged.
 */
const together: readonly (readonly PlaceKey[])[] = [
  ['median-nerve-wrist', 'ulnar-nerve-wrist'],
  ['median-nerve-elbow', 'ulnar-nerve-elbow'],
  ['median-nerve-upper-arm', 'ulnar-nerve-upper-arm'],
  ['median-nerve-upper-arm', 'ulnar-nerve-upper-arm', 'radial-nerve-spiral-groove'],
];

/** The facial nerve with one nerve of a limb or two, as in sarcoidosis, leprosy, borreliosis and vasculitis. */
function withFace(): Hypothesis[] {
  const sets = everyNerve.flatMap((one, index) => [
    [one],
    ...everyNerve
      .slice(index + 1)
      .filter((other) => limbOf(other) !== limbOf(one))
      .map((other) => [one, other]),
  ]);
  return bodySides.flatMap((face) =>
    sets.map((nerves) => {
      const lesion = new LesionBuilder().brain(face, 'facial-nerve-in-canal', 0.8);
      for (const { side, place } of nerves) lesion.place(side, place, 0.65, 0.75);
      const frequency = percent.withFace / (sets.length * bodySides.length);
      return hypothesis(severalNerves, `face-${face}-${nameOf(nerves)}`, frequency, lesion.build());
    }),
  );
}

/** A mishap strikes within hours, unlike the illnesses that pick out nerves. Judged. */
const ofAMishap: PaceFactors = { hyperacute: 3, acute: 1.3, subacute: 0.7, chronic: 0.6 };

function oneArm(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    together.flatMap((places) =>
      severalAt(
        `${side}-${places.join('-')}`,
        percent.oneArm / (together.length * bodySides.length),
        places.map((place) => ({ side, place })),
        ofAMishap,
      ),
    ),
  );
}

/** Share of these mishaps that take all three nerves in both arms: two cuffs, or arms that lay under the body. Judged. */
const inBothArms = 0.15;

function bothArms(): Hypothesis[] {
  const places: readonly PlaceKey[] = ['median-nerve-upper-arm', 'ulnar-nerve-upper-arm', 'radial-nerve-spiral-groove'];
  const nerves = bodySides.flatMap((side) => places.map((place) => ({ side, place })));
  return severalAt('both-arms', percent.oneArm * inBothArms, nerves, { ...ofAMishap, subacute: 0.2, chronic: 0.05 });
}

/** Nerves by which the skin of hand and foot feels, and where leprosy and inflamed vessels take that from them. */
const skinOfHand: readonly PlaceKey[] = [
  'median-nerve-wrist',
  'ulnar-nerve-elbow',
  'superficial-radial-nerve',
  'dorsal-branch-of-ulnar-nerve',
];
const skinOfFoot: readonly PlaceKey[] = [
  'superficial-fibular-nerve',
  'common-fibular-nerve',
  'sural-nerve',
  'saphenous-nerve',
  'tibial-nerve-tarsal-tunnel',
];

/**
 * One nerve of the hands and one of the feet on both sides, feeling lost before strength, as in leprosy: a patchwork that looks
 * even, in which whatever lies between the patches feels as it should.
 */
function skinAlike(): Hypothesis[] {
  const pairs = skinOfHand.flatMap((hand) => skinOfFoot.map((foot) => [hand, foot] as const));
  return pairs.map((pair) => {
    const lesion = new LesionBuilder();
    for (const side of bodySides) for (const place of pair) lesion.place(side, place, 0.1, 0.75);
    return hypothesis(severalNerves, `skin-${pair.join('-')}`, percent.skinAlike / pairs.length, lesion.build());
  });
}

/** How deep the nerves of a limb are hit that is the worse of its pair, the better, or alike to its fellow. Judged. */
const worn = { worse: 0.8, better: 0.3, alike: 0.65 } as const;

/**
 * Every nerve of all limbs in the end, after years: what is left of the patchwork is that arms or legs differ by side. Source:
 * guideline on vasculitic neuropathy (`vasculitic-neuropathy-2010`, recalled).
 */
function worseOnOneSide(): Hypothesis[] {
  const ways = ['alike', ...bodySides] as const;
  const pairs = ways
    .flatMap((arms) => ways.map((legs) => ({ arms, legs })))
    .filter(({ arms, legs }) => arms !== 'alike' || legs !== 'alike');
  const depthOf = (way: (typeof ways)[number], side: BodySide): number =>
    way === 'alike' ? worn.alike : way === side ? worn.worse : worn.better;
  return pairs.map(({ arms, legs }) => {
    const lesion = new LesionBuilder();
    for (const { side, place } of everyNerve) {
      const depth = depthOf(isOfArm(place) ? arms : legs, side);
      lesion.place(side, place, depth, depth);
    }
    return hypothesis(
      severalNerves,
      `all-arms-${arms}-legs-${legs}`,
      percent.worseOnOneSide / pairs.length,
      lesion.build(),
      {
        paces: { hyperacute: 0.02, acute: 0.1, subacute: 0.6, chronic: 1.5 },
      },
    );
  });
}

/** Several nerves hit in the same illness or by the same mishap. */
export function confluentMononeuropathyHypotheses(): Hypothesis[] {
  return [
    ...confluent(),
    ...twoLimbs(),
    ...threeNerves(),
    ...oneArm(),
    ...bothArms(),
    ...withFace(),
    ...skinAlike(),
    ...worseOnOneSide(),
  ];
}
