import { systemStructures } from '../../anatomy/brain/systems.ts';
import { movements } from '../../anatomy/movements.ts';
import { type PlaceKey, pathTo, placeKeys } from '../../anatomy/places.ts';
import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import { allSkinPlaces } from '../../anatomy/skin-places.ts';
import type { Supply } from '../../anatomy/supply.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import type { Hypothesis } from '../../localisation/hypothesis.ts';
import { type FibreSite, facultyKey, type Process } from '../../localisation/process.ts';
import { allBrainDrawings, brainDrawings } from './brain-drawings.ts';
import { cordParts, ganglionName, rootName } from './cord-drawings.ts';
import { addShare, type Shares } from './damage-shares.ts';
import { endPlateName, headMuscles, type MuscleRegion, muscleName } from './muscle-drawings.ts';
import { lengthCmTo, lengthCmToMiddle, shownAt } from './nerve-drawings.ts';

/** Segments whose fibres of one kind run through each stretch of nerve. */
function servedBy(supplies: readonly Supply[]): ReadonlyMap<PlaceKey, ReadonlySet<number>> {
  const served = new Map<PlaceKey, Set<number>>();
  for (const { via, roots } of supplies)
    for (const root of Object.keys(roots) as Segment[])
      for (const place of pathTo(via, root))
        served.set(place, (served.get(place) ?? new Set()).add(segmentIndex(root)));
  return served;
}

const motor = servedBy(Object.values(movements).flatMap(({ supplies }) => supplies));
const sensory = servedBy(allSkinPlaces.flatMap(({ supplies }) => supplies));

const feelingLoss = (process: Process, fibre: FibreSite): number =>
  Math.max(process.largeFibre(fibre), process.smallFibre(fibre));

function mean(segments: ReadonlySet<number> | undefined, lossOf: (segment: number) => number): number {
  if (segments === undefined) return 0;
  return [...segments].reduce((sum, segment) => sum + lossOf(segment), 0) / segments.size;
}

/** Length of the way from the cord to the middle and to the end of each stretch of nerve, in cm. */
const lengths = new Map(
  placeKeys
    .filter((place) => shownAt(place) === place)
    .map((place) => [place, { middle: lengthCmToMiddle(place), end: lengthCmTo(place) }]),
);

type Add = (shares: Shares, hypothesis: Hypothesis, side: BodySide) => void;

/** Stretches of nerve, each as a fibre that ends in the middle of it. */
const addNerves: Add = (shares, { process }, side) => {
  for (const [place, { middle: lengthCm }] of lengths) {
    const weak = mean(motor.get(place), (segment) => process.motor({ side, segment, lengthCm }));
    const numb = mean(sensory.get(place), (segment) => feelingLoss(process, { side, segment, lengthCm }));
    addShare(shares, place, side, Math.max(weak, numb));
  }
};

const autonomic = ['blood-pressure', 'heart-rate', 'sweating', 'gut'] as const;

const addAutonomic: Add = (shares, { faculties }, side) => {
  const chances = autonomic.map((faculty) => faculties.get(facultyKey(faculty, 'midline')) ?? 0);
  addShare(shares, 'sympathetic-chain', side, Math.max(...chances));
};

/** The longest fibres of each segment, for processes that begin at its root or in its ganglion. */
const longestCm = segments.map((_, segment) =>
  Math.max(
    5,
    ...[...lengths].flatMap(([place, { end }]) =>
      motor.get(place)?.has(segment) || sensory.get(place)?.has(segment) ? [end] : [],
    ),
  ),
);

const addBySegment =
  (name: (segment: Segment) => string): Add =>
  (shares, { process }, side) =>
    segments.forEach((segment, index) => {
      const fibre = { side, segment: index, lengthCm: longestCm[index] ?? 5 };
      addShare(
        shares,
        name(segment),
        side,
        Math.max(process.motor(fibre), feelingLoss(process, fibre), process.reflex(fibre)),
      );
    });

const addMuscles =
  (name: (region: MuscleRegion) => string): Add =>
  (shares, { process, faculties }, side) => {
    for (const { group, dominantRoot, lengthCm } of Object.values(movements)) {
      const unit = { side, segment: segmentIndex(dominantRoot), lengthCm, group };
      addShare(shares, name(group), side, process.motor(unit));
    }
    for (const [region, signs] of Object.entries(headMuscles) as [keyof typeof headMuscles, readonly string[]][]) {
      const chances = signs.flatMap((sign) => [side, 'midline'].map((on) => faculties.get(`${sign}|${on}`) ?? 0));
      addShare(shares, name(region), side, Math.max(...chances));
    }
  };

/** Descending control that lets go of reflexes before strength fails. */
const addRelease: Add = (shares, { process }, side) => {
  const released = segments.map((_, segment) => process.release({ side, segment }));
  addShare(shares, cordParts.corticospinal, side, Math.max(...released));
};

const addAll =
  (names: readonly string[]): Add =>
  (shares, _, side) => {
    for (const name of names) addShare(shares, name, side, 1);
  };

const basalGanglia = new Set<string>(systemStructures['basal-ganglia']);
const namesOf = (drawings: readonly { readonly name: string }[]) => drawings.map(({ name }) => name);

/** What a process of each kind shows as: the class of structure that it chooses, as far as it reaches. */
const shownAs: Readonly<Partial<Record<SiteKind, readonly Add[]>>> = {
  polyneuropathy: [addNerves, addAutonomic],
  polyradiculoneuropathy: [addBySegment(rootName), addNerves],
  'motor-neuron-system': [addRelease],
  ganglion: [addBySegment(ganglionName)],
  muscle: [addMuscles(muscleName)],
  junction: [addMuscles(endPlateName)],
  encephalopathy: [
    addAll(namesOf(brainDrawings.cortex.filter(({ name }) => /cortex|lobule|gyrus|field|lobe|pole/.test(name)))),
  ],
};

/** The same for processes of the brain without a damaged structure of their own. */
const shownWithoutDamage: Readonly<Partial<Record<SiteKind, readonly Add[]>>> = {
  'basal-ganglia': [
    addAll(namesOf(allBrainDrawings.filter(({ holds }) => holds.some((key) => basalGanglia.has(key))))),
  ],
};

/** What the process of a hypothesis is in the picture. */
export function addProcess(shares: Shares, hypothesis: Hypothesis): void {
  const { kind } = hypothesis.site;
  const adds = shownAs[kind] ?? (shares.size === 0 ? shownWithoutDamage[kind] : undefined) ?? [];
  for (const add of adds) for (const side of bodySides) add(shares, hypothesis, side);
}
