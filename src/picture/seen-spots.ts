import { regionFinder } from './region-finder.ts';
import type { Part, Region, Spot } from './surface.ts';
import type { LabelGrid } from './trace.ts';
import type { View } from './views.ts';

/** A cell of the grid of a view on which the body is seen. */
interface SeenCell {
  readonly column: number;
  readonly row: number;
  readonly spot: Spot;
}

/** What is seen at every cell of a view, one unit wide, by part; the grids of its patches are filled from it. */
export interface SeenSpots {
  readonly columns: number;
  readonly rows: number;
  readonly byPart: ReadonlyMap<Part, readonly SeenCell[]>;
}

export function seenSpots(view: View): SeenSpots {
  const [columns, rows] = [Math.ceil(view.width / 2), view.height];
  const byPart = new Map<Part, SeenCell[]>();
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const spot = view.spotAt(column + 0.5, row + 0.5);
      if (spot === undefined) continue;
      const cells = byPart.get(spot.part);
      if (cells === undefined) byPart.set(spot.part, [{ column, row, spot }]);
      else cells.push({ column, row, spot });
    }
  }
  return { columns, rows, byPart };
}

/** The whole view under labels from 1; 0 is what lies beside the body. */
export function labelled({ columns, rows, byPart }: SeenSpots, labelAt: (spot: Spot) => number): LabelGrid {
  const labels = new Int16Array(columns * rows);
  for (const cells of byPart.values()) {
    for (const { column, row, spot } of cells) labels[row * columns + column] = labelAt(spot);
  }
  return { left: 0, top: 0, columns, rows, labels };
}

/** The cells that some regions hold under label 1, on no more of the grid than they fill; undefined where none is seen. */
export function masked({ byPart }: SeenSpots, regions: readonly Region[]): LabelGrid | undefined {
  const { holds } = regionFinder(regions);
  const parts = new Set(regions.map(({ part }) => part));
  const cells = [...parts].flatMap((part) => byPart.get(part)?.filter(({ spot }) => holds(spot)) ?? []);
  if (cells.length === 0) return undefined;
  let [left, top, right, bottom] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0, 0];
  for (const { column, row } of cells) {
    left = Math.min(left, column);
    right = Math.max(right, column);
    top = Math.min(top, row);
    bottom = Math.max(bottom, row);
  }
  const columns = right - left + 1;
  const labels = new Int16Array(columns * (bottom - top + 1));
  for (const { column, row } of cells) labels[(row - top) * columns + column - left] = 1;
  return { left, top, columns, rows: bottom - top + 1, labels };
}

/** The part of a grid about one label, with a margin that shows its neighbours; undefined if the label is not on it. */
export function cropped(grid: LabelGrid, label: number): LabelGrid | undefined {
  const { columns, rows, labels } = grid;
  let [left, top, right, bottom] = [columns, -1, -1, 0];
  for (let row = 0; row < rows; row++) {
    const start = row * columns;
    for (let column = 0; column < columns; column++) {
      if (labels[start + column] !== label) continue;
      if (top < 0) top = row;
      bottom = row;
      if (column < left) left = column;
      if (column > right) right = column;
    }
  }
  if (top < 0) return undefined;
  [left, top] = [Math.max(0, left - 1), Math.max(0, top - 1)];
  [right, bottom] = [Math.min(columns - 1, right + 1), Math.min(rows - 1, bottom + 1)];
  const part = new Int16Array((right - left + 1) * (bottom - top + 1));
  for (let row = top; row <= bottom; row++) {
    part.set(labels.subarray(row * columns + left, row * columns + right + 1), (row - top) * (right - left + 1));
  }
  return {
    left: grid.left + left,
    top: grid.top + top,
    columns: right - left + 1,
    rows: bottom - top + 1,
    labels: part,
  };
}
