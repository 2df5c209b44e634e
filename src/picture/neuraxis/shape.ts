/**
 * The neuraxis as a schematic picture: what lives here is geometry of our own over the tables of the anatomy, and which
 * shapes a site takes. What does not: how a mark looks, and which sites are marked.
 */

/** Views of the picture, in the order of the neuraxis from above downwards and outwards. */
export const viewKeys = ['cortex', 'deep', 'visual', 'brainstem', 'cord', 'cord-section', 'nerves', 'muscles'] as const;
export type ViewKey = (typeof viewKeys)[number];

/** x from the midline, positive towards the person's left; y downwards. */
export type Point = readonly [x: number, y: number];

/** One closed or open figure, drawn on the person's left and mirrored to the right. */
export interface Outline {
  readonly form: 'polygon' | 'smooth' | 'line' | 'ellipse';
  /** Corners; of an ellipse its middle and its two radii. */
  readonly points: readonly Point[];
}

/** A thing that can be marked: one on each side, or one in the midline. */
export interface Drawing {
  readonly name: string;
  /** Name as it reads after "left", or alone in the midline. */
  readonly label: string;
  readonly paired: boolean;
  readonly outlines: readonly Outline[];
}

/** A drawing as SVG, on the person's left where it is paired; on the right it is mirrored at x 0. */
export interface PictureShape {
  readonly name: string;
  readonly view: ViewKey;
  readonly paired: boolean;
  readonly label: string;
  /** A line is stroked, an area filled. */
  readonly kind: 'area' | 'line';
  /** SVG path data. */
  readonly d: string;
  /** Where a number that marks the shape stands. */
  readonly at: Point;
}

export const polygon = (...points: Point[]): Outline => ({ form: 'polygon', points });
export const smooth = (...points: Point[]): Outline => ({ form: 'smooth', points });
export const line = (...points: Point[]): Outline => ({ form: 'line', points });
export const ellipse = (x: number, y: number, rx: number, ry: number): Outline => ({
  form: 'ellipse',
  points: [
    [x, y],
    [rx, ry],
  ],
});

const rounded = (value: number): number => Math.round(value) + 0;
const pair = ([x, y]: Point): string => `${rounded(x)} ${rounded(y)}`;
const between = ([ax, ay]: Point, [bx, by]: Point): Point => [(ax + bx) / 2, (ay + by) / 2];

/** SVG path data of an outline. */
export function pathOf({ form, points }: Outline): string {
  const [first = [0, 0], ...rest] = points;
  if (form === 'ellipse') {
    const [cx, cy] = first;
    const [rx, ry] = (rest[0] ?? [0, 0]).map(Math.abs) as [number, number];
    const arc = `A${rounded(rx)} ${rounded(ry)} 0 1 0 `;
    return `M${pair([cx - rx, cy])}${arc}${pair([cx + rx, cy])}${arc}${pair([cx - rx, cy])}Z`;
  }
  if (form === 'polygon') return `M${pair(first)}L${rest.map(pair).join(' ')}Z`;
  if (form === 'smooth') {
    const turns = points.map((point, place) => {
      const next = points[(place + 1) % points.length] ?? first;
      return `Q${pair(point)} ${pair(between(point, next))}`;
    });
    return `M${pair(between(points.at(-1) ?? first, first))}${turns.join('')}Z`;
  }
  const last = rest.at(-1) ?? first;
  const turns = rest.slice(0, -1).map((point, place) => {
    const next = rest[place + 1] ?? last;
    return `Q${pair(point)} ${pair(place === rest.length - 2 ? next : between(point, next))}`;
  });
  return `M${pair(first)}${turns.length > 0 ? turns.join('') : `L${pair(last)}`}`;
}

/** Middle of the first outline: of a line the point half way along its corners. */
function middleOf(outline: Outline): Point {
  const { form, points } = outline;
  if (form === 'ellipse') return points[0] ?? [0, 0];
  if (form === 'line') {
    const half = points.length / 2;
    const after = points[Math.floor(half)] ?? [0, 0];
    return points.length % 2 === 1 ? after : between(points[half - 1] ?? after, after);
  }
  const sum = points.reduce<Point>(([ax, ay], [x, y]) => [ax + x, ay + y], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

/** A drawing as a shape of its view. */
export function shapeOf(view: ViewKey, { name, label, paired, outlines }: Drawing): PictureShape {
  const first = outlines[0] ?? ellipse(0, 0, 0, 0);
  const [x, y] = middleOf(first);
  return {
    name,
    view,
    paired,
    label,
    kind: first.form === 'line' ? 'line' : 'area',
    d: outlines.map(pathOf).join(''),
    at: [rounded(x), rounded(y)],
  };
}
