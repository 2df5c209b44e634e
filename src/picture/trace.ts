/** What lies on each cell of a part of a picture, row by row; a cell is one unit wide. */
export interface LabelGrid {
  /** Where the grid lies in the picture. */
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
  /** 0 for what belongs to nothing. */
  readonly labels: Int16Array;
}

export type Ring = readonly (readonly [x: number, y: number])[];

const cell = ({ columns, rows, labels }: LabelGrid, column: number, row: number): number =>
  column < 0 || row < 0 || column >= columns || row >= rows ? 0 : (labels[row * columns + column] ?? 0);

/**
 * The borders of what carries one of some labels, as rings in units, outer rings and holes alike. A border that two
 * labels share comes out of both with the very same points, so that patches tile: it is cut where three labels meet, and
 * each piece is smoothed and thinned on its own, always from the same end.
 * @param tolerance how far, in units, a thinned border may lie from the smoothed one
 */
export function traceRings(grid: LabelGrid, isIn: (label: number) => boolean, tolerance: number): readonly Ring[] {
  return cornerRings(grid, isIn)
    .map((corners) => tidied(grid, corners, tolerance))
    .filter((ring) => ring.length > 2);
}

type Corner = readonly [column: number, row: number];

const steps: readonly Corner[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];

/** From a corner, the cell on the right and the one on the left of the edge that leaves it in each of the directions. */
const besides: readonly (readonly [Corner, Corner])[] = [
  [
    [0, 0],
    [0, -1],
  ],
  [
    [-1, 0],
    [0, 0],
  ],
  [
    [-1, -1],
    [-1, 0],
  ],
  [
    [0, -1],
    [-1, -1],
  ],
];

/** Rings of grid corners with the inside on the right hand. */
function cornerRings(grid: LabelGrid, isIn: (label: number) => boolean): readonly (readonly Corner[])[] {
  /** Whether the edge that leaves a corner in a direction has the inside on its right and the outside on its left. */
  const isBorder = (column: number, row: number, direction: number): boolean => {
    const [right, left] = besides[direction] ?? [
      [0, 0],
      [0, 0],
    ];
    return isIn(cell(grid, column + right[0], row + right[1])) && !isIn(cell(grid, column + left[0], row + left[1]));
  };
  const width = grid.columns + 1;
  const seen = new Uint8Array(width * (grid.rows + 1));
  const rings: Corner[][] = [];
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      if (seen[row * width + column] === 1 || !isBorder(column, row, 0)) continue;
      const ring: Corner[] = [];
      let [x, y, direction] = [column, row, 0];
      do {
        ring.push([x, y]);
        if (direction === 0) seen[y * width + x] = 1;
        const [dx, dy] = steps[direction] ?? [0, 0];
        x += dx;
        y += dy;
        // Turning right first keeps cells that touch only at a corner apart.
        if (isBorder(x, y, (direction + 1) % 4)) direction = (direction + 1) % 4;
        else if (!isBorder(x, y, direction)) direction = (direction + 3) % 4;
      } while (x !== column || y !== row || direction !== 0);
      rings.push(ring);
    }
  }
  return rings;
}

/** Whether three borders or more meet at a corner, or a border meets the middle of the picture, where the other half begins. */
function isJunction(grid: LabelGrid, [column, row]: Corner): boolean {
  const around = [
    cell(grid, column, row),
    cell(grid, column - 1, row),
    cell(grid, column - 1, row - 1),
    cell(grid, column, row - 1),
  ];
  const isAtMiddle = grid.left === 0 && column === 0 && around[0] !== around[3];
  return isAtMiddle || around.filter((label, index) => label !== around[(index + 1) % 4]).length > 2;
}

function tidied(grid: LabelGrid, corners: readonly Corner[], tolerance: number): Ring {
  const first = corners.findIndex((corner) => isJunction(grid, corner));
  const toUnits = (points: readonly (readonly [number, number])[]): Ring =>
    points.map(([x, y]) => [Math.round(x + grid.left), Math.round(y + grid.top)]);
  const start = first >= 0 ? first : lowest(corners);
  const turned = [...corners.slice(start), ...corners.slice(0, start)];
  const points: (readonly [number, number])[] = [];
  let chain: Corner[] = [];
  for (const [index, corner] of [...turned, ...turned.slice(0, 1)].entries()) {
    chain.push(corner);
    const ends = index > 0 && (index === turned.length || (first >= 0 && isJunction(grid, corner)));
    if (!ends) continue;
    points.push(...smoothed(chain, tolerance).slice(0, -1));
    chain = [corner];
  }
  return withoutRepeats(toUnits(points));
}

function lowest(corners: readonly Corner[]): number {
  let best = 0;
  corners.forEach((corner, index) => {
    if (isBefore(corner, corners[best] ?? corner)) best = index;
  });
  return best;
}

const isBefore = ([x, y]: readonly [number, number], [otherX, otherY]: readonly [number, number]): boolean =>
  y < otherY || (y === otherY && x < otherX);

/** A chain smoothed and thinned with its ends kept, the same whichever way it is walked. */
function smoothed(chain: readonly Corner[], tolerance: number): Ring {
  const [first, last] = [chain[0], chain.at(-1)];
  if (first === undefined || last === undefined) return [];
  const isClosed = first[0] === last[0] && first[1] === last[1];
  const [second, beforeLast] = [chain[1] ?? first, chain.at(-2) ?? last];
  const isReversed = isClosed ? isBefore(beforeLast, second) : isBefore(last, first);
  const walked = isReversed ? [...chain].reverse() : chain;
  const ring = thinned(relaxed(walked), tolerance);
  return isReversed ? [...ring].reverse() : ring;
}

/** Takes the stairs out of a chain of grid corners: each point moves to the mean of itself and its neighbours. */
function relaxed(chain: Ring, rounds = 5): Ring {
  let points: Ring = chain;
  for (let round = 0; round < rounds; round++) {
    const from = points;
    points = from.map((point, index) => {
      const [before, after] = [from[index - 1], from[index + 1]];
      if (before === undefined || after === undefined) return point;
      return [(before[0] + 2 * point[0] + after[0]) / 4, (before[1] + 2 * point[1] + after[1]) / 4];
    });
  }
  return points;
}

/** Douglas and Peucker's thinning of a line: Cartographica 1973;10:112-22. */
function thinned(points: Ring, tolerance: number): Ring {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < 3) return points;
  let farthest = 0;
  let most = -1;
  for (let index = 1; index < points.length - 1; index++) {
    const distance = distanceTo(first, last, points[index] ?? first);
    if (distance > most) [farthest, most] = [index, distance];
  }
  const isLoop = first[0] === last[0] && first[1] === last[1];
  if (most <= tolerance && !isLoop) return [first, last];
  return [
    ...thinned(points.slice(0, farthest + 1), tolerance).slice(0, -1),
    ...thinned(points.slice(farthest), tolerance),
  ];
}

function distanceTo(from: readonly [number, number], to: readonly [number, number], at: readonly [number, number]) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const part = square === 0 ? 0 : Math.max(0, Math.min(1, ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / square));
  return Math.hypot(at[0] - from[0] - dx * part, at[1] - from[1] - dy * part);
}

function withoutRepeats(ring: Ring): Ring {
  return ring.filter(([x, y], index) => {
    const [beforeX, beforeY] = ring.at(index - 1) ?? [Number.NaN, Number.NaN];
    return ring.length < 2 || x !== beforeX || y !== beforeY;
  });
}
