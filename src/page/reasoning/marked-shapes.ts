/** Which shapes of the picture an answer marks, and where the numbers of its sites stand. */
import type { Localisation, LocalisationAnswer, Picture } from '../../client/generated/api-types.ts';
import { namesAPlace, siteName, sitesTogether } from './answer-words.ts';

export type Neuraxis = Picture['neuraxis'];
export type Shape = Neuraxis['shapes'][number];
export type ViewKey = Shape['view'];
export type Point = readonly [x: number, y: number];

/** A shape on one side, or in the midline. */
export interface MarkedShape {
  readonly shape: Shape;
  readonly side: 'left' | 'right' | 'midline';
}

/** A site that is marked, by its place in the list of sites. */
export interface MarkedSite {
  readonly rank: number;
  readonly name: string;
  readonly shapes: readonly MarkedShape[];
}

const segmentOrder = /^(?:segment|root)-([cltsx])(\d+)$/;
const regionOrder = 'ctls';

function orderOf(name: string): number {
  const [, region = 'c', number = '0'] = segmentOrder.exec(name) ?? [];
  return regionOrder.indexOf(region) * 20 + Number(number);
}

/** The shapes that a site takes on its side, the most damaged first. */
export function shapesOfSite(
  { shapes, sites }: Neuraxis,
  { site, side, level, levelRange, kind }: Pick<Localisation, 'site' | 'side' | 'level' | 'levelRange' | 'kind'>,
): readonly MarkedShape[] {
  const mapped = sites[site];
  if (mapped === undefined) return [];
  const byName = new Map(shapes.map((shape) => [shape.name, shape]));
  const levels = levelsOf(shapes, level, kind === 'root' ? levelRange : null);
  const on = (names: readonly string[], sides: readonly ('left' | 'right')[]): MarkedShape[] =>
    names
      .flatMap((name) => (name.endsWith('-@') ? levels.map((one) => name.replace('@', one)) : [name]))
      .flatMap((name) => byName.get(name) ?? [])
      .flatMap((shape): MarkedShape[] =>
        shape.paired ? sides.map((one) => ({ shape, side: one })) : [{ shape, side: 'midline' }],
      );
  if (side !== 'left' && side !== 'right') return on([...mapped.own, ...mapped.other], ['left', 'right']);
  return [...on(mapped.own, [side]), ...on(mapped.other, [side === 'left' ? 'right' : 'left'])];
}

/** Segments that a site names: its level, or of roots every one in its range. */
function levelsOf(
  shapes: readonly Shape[],
  level: string | null,
  range: Localisation['levelRange'],
): readonly string[] {
  if (level === null) return [];
  if (range === null) return [level.toLowerCase()];
  const [top, bottom] = range.map((one) => orderOf(`root-${one.toLowerCase()}`));
  return shapes
    .filter(({ name }) => /^root-/.test(name) && orderOf(name) >= (top ?? 0) && orderOf(name) <= (bottom ?? 0))
    .map(({ name }) => name.slice('root-'.length));
}

/** Sites less likely than this are not marked beside the leading one. Judged. */
const markedFrom = 0.05;
const markedAtMost = 3;

/**
 * The sites that the picture marks, none where no place is concluded. Where several single nerves or roots are named by
 * the process that picks them out, these are marked themselves.
 */
export function markedSites(picture: Neuraxis, answer: LocalisationAnswer): readonly MarkedSite[] {
  if (!namesAPlace(answer)) return [];
  const { localisations } = answer;
  const together = answer.conclusion === 'multiple-sites' ? sitesTogether(answer) : [];
  const rest = localisations.filter(
    (one, place) => (place === 0 || one.probability >= markedFrom) && one.kind !== 'none',
  );
  const chosen = (together.length > 1 ? together : rest).slice(0, markedAtMost);
  return chosen
    .map((site) => ({
      rank: localisations.indexOf(site) + 1,
      name: siteName(site),
      shapes: shapesOfSite(picture, site),
    }))
    .filter(({ shapes }) => shapes.length > 0);
}

/** A point on the side of a shape, in the coordinates of its view. */
export function pointOn({ shape, side }: MarkedShape): Point {
  const [x = 0, y = 0] = shape.at;
  return [side === 'right' ? -x : x, y];
}

/** A box in a view. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function boxOf(viewBox: string): Box {
  const [x = 0, y = 0, width = 0, height = 0] = viewBox.split(' ').map(Number);
  return { x, y, width, height };
}

/** A number beside the picture, and the shape that it points to. */
export interface Callout {
  readonly rank: number;
  readonly from: Point;
  readonly to: Point;
}

/** Numbers at the edge of the box on the side of their shapes, at least `apart` from each other. */
export function calloutsOf(sites: readonly MarkedSite[], view: ViewKey, box: Box, apart: number): readonly Callout[] {
  const targets = sites
    .flatMap(({ rank, shapes }) => {
      const first = shapes.find(({ shape }) => shape.view === view);
      return first === undefined ? [] : [{ rank, to: pointOn(first) }];
    })
    .sort((one, other) => one.to[1] - other.to[1]);
  const middle = box.x + box.width / 2;
  const taken = { left: Number.NEGATIVE_INFINITY, right: Number.NEGATIVE_INFINITY };
  return targets.map(({ rank, to }) => {
    const edge = to[0] < middle ? 'left' : 'right';
    const y = Math.max(to[1], taken[edge] + apart, box.y + 1.4 * apart);
    taken[edge] = y;
    const x = edge === 'left' ? box.x + apart * 0.6 : box.x + box.width - apart * 0.6;
    return { rank, from: [x, Math.min(y, box.y + box.height - apart * 0.6)] as Point, to };
  });
}

/** All points of SVG path data that the service draws, which has absolute coordinates alone. */
function pointsOf(d: string): readonly Point[] {
  const arcs = d.replace(/A[\d.-]+ [\d.-]+ 0 1 0 /g, 'L');
  const numbers = (arcs.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
  return numbers.flatMap((x, place) => (place % 2 === 0 ? [[x, numbers[place + 1] ?? 0] as Point] : []));
}

/**
 * The part of a view around its marks, no smaller than `least` of the view each way and inside it; null where that would
 * be most of the view, so that an enlargement shows nothing new.
 */
export function enlargedBox(marks: readonly MarkedShape[], box: Box, least: number): Box | null {
  const points = marks.flatMap(({ shape, side }) =>
    pointsOf(shape.d).map(([x, y]): Point => [side === 'right' ? -x : x, y]),
  );
  if (points.length === 0) return null;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const size = least * box.height;
  const width = Math.max(size, 1.35 * (Math.max(...xs) - Math.min(...xs)));
  const height = Math.max(size, 1.35 * (Math.max(...ys) - Math.min(...ys)));
  if (height > 0.5 * box.height || width > box.width) return null;
  const within = (middle: number, wide: number, from: number, whole: number): number =>
    Math.min(Math.max(middle - wide / 2, from), from + whole - wide);
  return {
    x: within((Math.max(...xs) + Math.min(...xs)) / 2, width, box.x, box.width),
    y: within((Math.max(...ys) + Math.min(...ys)) / 2, height, box.y, box.height),
    width,
    height,
  };
}

/** What a view shows, for those who do not see it. */
export function viewAlternative(label: string, view: ViewKey, sites: readonly MarkedSite[]): string {
  const marked = sites.flatMap(({ rank, name, shapes }) => {
    const here = shapes.filter(({ shape }) => shape.view === view);
    return here.length === 0 ? [] : [`${rank}, ${name}: ${partsInWords(here)}`];
  });
  return marked.length === 0 ? `${label}. Nothing is marked.` : `${label}. Marked: ${marked.join('. ')}.`;
}

const namedAtMost = 5;

function partsInWords(marks: readonly MarkedShape[]): string {
  const sides = new Map<string, Set<string>>();
  for (const { shape, side } of marks) sides.set(shape.label, (sides.get(shape.label) ?? new Set()).add(side));
  const words = [...sides].map(([label, on]) =>
    on.has('midline') ? label : on.size === 2 ? `${label} on both sides` : `${[...on][0]} ${label}`,
  );
  const rest = words.length - namedAtMost;
  return rest > 0 ? `${words.slice(0, namedAtMost).join(', ')} and ${rest} more` : words.join(', ');
}
