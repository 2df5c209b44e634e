import { type PlaceKey, placeKeys, placeTable } from '../../anatomy/places.ts';
import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { cmPerUnit, rootExit } from './body-frame.ts';
import { nerveCourses } from './nerve-courses.ts';
import { type Drawing, line, type Outline, type Point } from './shape.ts';

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Places next nearer to the cord, each once. */
function proximalsOf(place: PlaceKey): readonly PlaceKey[] {
  const { proximal } = placeTable[place];
  const all = typeof proximal === 'string' ? [proximal] : Object.values(proximal ?? {});
  return [...new Set(all)] as PlaceKey[];
}

const shown = new Map<PlaceKey, PlaceKey | null>();

/**
 * The place on whose course a place is shown: itself where it has one; a way-station on that of the nerve that it belongs
 * to, nearer to the cord or else further out. Null for what is too small or too many to be drawn.
 */
export function shownAt(place: PlaceKey): PlaceKey | null {
  const known = shown.get(place);
  if (known !== undefined) return known;
  const found = find(place);
  shown.set(place, found);
  return found;
}

/** The place itself or the first towards the cord that has a course. */
function nearestShown(place: PlaceKey): PlaceKey | null {
  if (nerveCourses[place] !== undefined) return place;
  const nearer = proximalsOf(place)[0];
  return nearer === undefined ? null : nearestShown(nearer);
}

function find(place: PlaceKey): PlaceKey | null {
  const nearer = nearestShown(place);
  if (nearer !== null) return nearer;
  return placeKeys.find((other) => nerveCourses[other] !== undefined && proximalsOf(other).includes(place)) ?? null;
}

/** Where the course of a place begins, each with the length of the way to there from the cord, in units. */
function startsOf(place: PlaceKey): readonly { readonly at: Point; readonly length: number }[] {
  const course = nerveCourses[place];
  const roots = (course?.roots ?? []).map((root) => ({ at: rootExit(root), length: 0 }));
  const nearer = [...new Set(proximalsOf(place).flatMap((one) => nearestShown(one) ?? []))];
  const before = nearer.map((one) => ({ at: endOf(one), length: lengthTo(one) }));
  return [...(course?.start ? [{ at: course.start, length: 0 }] : []), ...roots, ...before];
}

function endOf(place: PlaceKey): Point {
  return nerveCourses[place]?.points.at(-1) ?? [0, 0];
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], index) => {
    const [px, py] = points[index - 1] ?? [x, y];
    return sum + Math.hypot(x - px, y - py);
  }, 0);

function lengthTo(place: PlaceKey): number {
  const [start] = startsOf(place);
  return (start?.length ?? 0) + lengthOf([...(start ? [start.at] : []), ...(nerveCourses[place]?.points ?? [])]);
}

/** Length of the way from the cord to the end of a stretch of nerve, in cm along the drawing. */
export function lengthCmTo(place: PlaceKey): number {
  return lengthTo(place) * cmPerUnit;
}

/** Length of the way from the cord to the middle of a stretch of nerve, in cm along the drawing. */
export function lengthCmToMiddle(place: PlaceKey): number {
  const [start] = startsOf(place);
  return ((lengthTo(place) + (start?.length ?? 0)) / 2) * cmPerUnit;
}

/** Each intercostal nerve along its rib, downwards and forwards. */
const ribs = segments.slice(segmentIndex('T2'), segmentIndex('T12') + 1).map((segment: Segment): Outline => {
  const [x, y] = rootExit(segment);
  return line([x, y], [52, y + 8], [66, y + 22], [40, y + 34]);
});

/** Every plexus part and stretch of nerve, and the sympathetic chain. */
export function nerveDrawings(): readonly Drawing[] {
  const places = placeKeys.filter((place) => nerveCourses[place] !== undefined);
  return [
    ...places.map((place): Drawing => {
      const points = nerveCourses[place]?.points ?? [];
      const outlines = startsOf(place).map(({ at }) => line(at, ...points));
      const label = lowerFirst(placeTable[place].label);
      return { name: place, label, paired: true, outlines: place === 'intercostal-nerves' ? ribs : outlines };
    }),
    {
      name: 'sympathetic-chain',
      label: 'sympathetic chain',
      paired: true,
      outlines: [line([5, 190], [6, 260], [5, 340], [6, 430])],
    },
  ];
}
