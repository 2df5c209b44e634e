import { movements } from '../../anatomy/movements.ts';
import { type Place, type PlaceKey, pathTo, placeKeys, placeTable } from '../../anatomy/places.ts';
import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { allSkinPlaces } from '../../anatomy/skin-places.ts';
import type { Supply } from '../../anatomy/supply.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import type { FacultyChances } from '../process.ts';
import { facultyKey } from '../process.ts';

/**
 * How much of a nerve, plexus part or root a focal lesion takes, and how often it is so. Motor and sensory fibres are hit
 * unequally often enough that an examination of one kind alone must not count against the site. Judged.
 */
const extents = [
  { key: 'severe', motor: 0.95, sensory: 0.9, share: 0.3 },
  { key: 'partial', motor: 0.5, sensory: 0.55, share: 0.4 },
  { key: 'mainly-sensory', motor: 0.06, sensory: 0.6, share: 0.15 },
  { key: 'mainly-motor', motor: 0.6, sensory: 0.08, share: 0.15 },
] as const;

type Extent = (typeof extents)[number];

/** Share of all focal findings that each group of sites stands for, in percent. Judged. */
const groupFrequency = { nerve: 22, plexus: 3, root: 20, adjacentRoots: 3, wholePlexus: 1.2 } as const;

/** How often a single root is the one affected, in percent of root lesions. Judged from the dominance of L5, S1, C7 and C6. */
const rootFrequency: Readonly<Partial<Record<Segment, number>>> = {
  C3: 0.3,
  C4: 0.7,
  C5: 5,
  C6: 14,
  C7: 20,
  C8: 5,
  T1: 1.2,
  L1: 0.5,
  L2: 1,
  L3: 2.5,
  L4: 7,
  L5: 22,
  S1: 18,
  S2: 0.5,
  S3: 0.3,
}; // prettier kept as two rows by region

const thoracicRootFrequency = 0.6;

const limbPairs: readonly (readonly [Segment, Segment, number])[] = [
  ['C5', 'C6', 3],
  ['C6', 'C7', 3],
  ['C7', 'C8', 2],
  ['C8', 'T1', 0.6],
  ['L2', 'L3', 1.5],
  ['L3', 'L4', 2],
  ['L4', 'L5', 3],
  ['L5', 'S1', 4],
  ['S1', 'S2', 1],
];

const motorSupplies: readonly Supply[] = Object.values(movements).flatMap((movement) => movement.supplies);
const sensorySupplies: readonly Supply[] = allSkinPlaces.flatMap((place) => place.supplies);

function placesServing(supplies: readonly Supply[]): ReadonlySet<PlaceKey> {
  return new Set(
    supplies.flatMap((supply) => {
      const roots = Object.keys(supply.roots) as Segment[];
      return roots.length === 0
        ? [...(supply.via === null ? [] : [supply.via])]
        : roots.flatMap((root) => pathTo(supply.via, root));
    }),
  );
}

/** Extents that make a difference for a structure that may carry only one kind of fibre. */
function extentsOf(carriesMotor: boolean, carriesSensory: boolean): readonly Extent[] {
  const fitting = extents.filter(
    (extent) =>
      (carriesMotor || extent.motor < 0.5 || extent.sensory >= 0.5) &&
      (carriesSensory || extent.sensory < 0.5 || extent.motor >= 0.5),
  );
  return fitting.filter((extent) => (carriesMotor && extent.motor >= 0.5) || (carriesSensory && extent.sensory >= 0.5));
}

/** Lesions of one named nerve or plexus part, on each side, in each extent. */
function placeHypotheses(): Hypothesis[] {
  const motor = placesServing(motorSupplies);
  const sensory = placesServing(sensorySupplies);
  const sites = placeKeys.filter((key) => placeTable[key].lesionSite);
  return (['nerve', 'plexus'] as const).flatMap((kind) => {
    const keys = sites.filter((key) => placeTable[key].kind === kind);
    const total = keys.reduce((sum, key) => sum + placeTable[key].frequency, 0);
    return keys.flatMap((key) => {
      const place: Place = placeTable[key];
      const fitting = extentsOf(motor.has(key), sensory.has(key));
      const shares = fitting.reduce((sum, extent) => sum + extent.share, 0);
      return bodySides.flatMap((side) =>
        fitting.map((extent) =>
          hypothesis(
            { key, label: place.label, side, level: null, kind },
            extent.key,
            (groupFrequency[kind] * place.frequency * extent.share) / (total * shares * 2),
            new LesionBuilder().place(side, key, extent.motor, extent.sensory).build(),
            { faculties: hornerOf(key === 'lower-trunk' ? 0.3 * extent.motor : 0, side) },
          ),
        ),
      );
    });
  });
}

/**
 * Where a nerve's divisions lie apart inside it, one is often hit harder: the fibular division of the sciatic nerve is the
 * more exposed. Source: Preston and Shapiro, sciatic neuropathy (recalled); fractions judged.
 */
const fascicular = [
  { key: 'fibular-severe', fibular: 0.92, tibial: 0.35 },
  { key: 'fibular-partial', fibular: 0.55, tibial: 0.12 },
] as const;

function fascicularHypotheses(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    fascicular.map(({ key, fibular, tibial }) => {
      const lesion = new LesionBuilder();
      lesion.place(side, 'sciatic-nerve-fibular-division', fibular, fibular);
      lesion.place(side, 'sciatic-nerve-tibial-division', tibial, tibial);
      const place: Site = {
        key: 'sciatic-nerve',
        label: placeTable['sciatic-nerve'].label,
        side,
        level: null,
        kind: 'nerve',
      };
      return hypothesis(place, key, 0.15, lesion.build());
    }),
  );
}

function hornerOf(chance: number, side: BodySide): FacultyChances {
  return chance === 0 ? new Map() : new Map([[facultyKey('sympathetic-eye', side), chance]]);
}

function rootSite(side: BodySide, level: Segment): Site {
  return { key: 'nerve-root', label: `${level} nerve root`, side, level, kind: 'root' };
}

/** Single roots from C3 to S3, and two neighbours at once. */
function rootHypotheses(): Hypothesis[] {
  const weights = segments
    .filter((segment) => segmentIndex(segment) >= segmentIndex('C3') && segmentIndex(segment) <= segmentIndex('S3'))
    .map((segment) => [segment, rootFrequency[segment] ?? thoracicRootFrequency] as const);
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  const single = weights.flatMap(([segment, weight]) =>
    bodySides.flatMap((side) =>
      extents.map((extent) =>
        hypothesis(
          rootSite(side, segment),
          extent.key,
          (groupFrequency.root * weight * extent.share) / (total * 2),
          new LesionBuilder().root(side, segment, extent.motor, extent.sensory).build(),
          { faculties: hornerOf(segment === 'T1' ? 0.35 : segment === 'C8' ? 0.1 : 0, side) },
        ),
      ),
    ),
  );
  const pairTotal = limbPairs.reduce((sum, [, , weight]) => sum + weight, 0);
  const pairs = limbPairs.flatMap(([upper, lower, weight]) =>
    bodySides.flatMap((side) =>
      extents.map((extent) =>
        hypothesis(
          {
            key: 'adjacent-nerve-roots',
            label: `${upper} and ${lower} nerve roots`,
            side,
            level: upper,
            span: [upper, lower],
            kind: 'root',
          },
          extent.key,
          (groupFrequency.adjacentRoots * weight * extent.share) / (pairTotal * 2),
          new LesionBuilder()
            .root(side, upper, extent.motor, extent.sensory)
            .root(side, lower, extent.motor, extent.sensory)
            .build(),
          { faculties: hornerOf(lower === 'T1' ? 0.4 : 0, side) },
        ),
      ),
    ),
  );
  return [...single, ...pairs];
}

const wholePlexuses = [
  {
    key: 'brachial-plexus',
    label: 'Whole brachial plexus',
    parts: ['upper-trunk', 'middle-trunk', 'lower-trunk'],
    horner: 0.3,
  },
  {
    key: 'lumbosacral-plexus',
    label: 'Lumbosacral plexus',
    parts: ['lumbar-plexus', 'lumbosacral-trunk', 'sacral-plexus'],
    horner: 0,
  },
] as const;

/** A plexus is seldom hit evenly: share of the full damage that its upper, middle and lower part take. Judged. */
const plexusSpreads = [
  { key: 'even', parts: [1, 1, 1], share: 0.4 },
  { key: 'upper-worse', parts: [1, 0.45, 0.1], share: 0.35 },
  { key: 'lower-worse', parts: [0.1, 0.6, 1], share: 0.25 },
] as const;

function wholePlexusHypotheses(): Hypothesis[] {
  return wholePlexuses.flatMap(({ key, label, parts, horner }) =>
    bodySides.flatMap((side) =>
      plexusSpreads.flatMap((spread) =>
        extents.slice(0, 2).map((extent) => {
          const lesion = new LesionBuilder();
          parts.forEach((part, place) => {
            const depth = spread.parts[place] ?? 1;
            lesion.place(side, part, extent.motor * depth, extent.sensory * depth);
          });
          return hypothesis(
            { key, label, side, level: null, kind: 'plexus' },
            `${spread.key}-${extent.key}`,
            (groupFrequency.wholePlexus * spread.share) / 8,
            lesion.build(),
            { faculties: hornerOf(spread.key === 'upper-worse' ? 0 : horner * extent.motor, side) },
          );
        }),
      ),
    ),
  );
}

/** Cauda equina: how far up the lowest roots are taken, and whether evenly on both sides. Judged. */
const caudaSpreads = [
  { key: 'from-L2', top: 'L2', frequency: 0.3 },
  { key: 'from-L4', top: 'L4', frequency: 0.5 },
  { key: 'from-L5', top: 'L5', frequency: 0.6 },
  { key: 'from-S1', top: 'S1', frequency: 0.6 },
  { key: 'from-S2', top: 'S2', frequency: 0.25 },
] as const;

const caudaSides = [
  { key: 'even', left: 1, right: 1 },
  { key: 'left-worse', left: 1, right: 0.35 },
  { key: 'right-worse', left: 0.35, right: 1 },
] as const;

function caudaHypotheses(): Hypothesis[] {
  return caudaSpreads.flatMap(({ key, top, frequency }) =>
    caudaSides.flatMap((sides) =>
      [0.9, 0.5].map((depth) => {
        const lesion = new LesionBuilder();
        for (const segment of segments.slice(segmentIndex(top))) {
          for (const side of bodySides) lesion.root(side, segment, depth * sides[side], depth * sides[side]);
        }
        return hypothesis(
          { key: 'cauda-equina', label: 'Cauda equina', side: 'both', level: null, kind: 'cauda-equina' },
          `${key}-${sides.key}-${depth}`,
          frequency / 6,
          lesion.build(),
        );
      }),
    ),
  );
}

/** Every focal lesion outside the cord and brain. */
export function peripheralHypotheses(): Hypothesis[] {
  return [
    ...placeHypotheses(),
    ...fascicularHypotheses(),
    ...rootHypotheses(),
    ...wholePlexusHypotheses(),
    ...caudaHypotheses(),
  ];
}
