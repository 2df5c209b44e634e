import type { LabelGrid } from './trace.ts';

/** Two cells to the border at least: an area less than three cells wide is a sliver at the edge of what is seen. */
const leastFar = 6;

/**
 * The point of a label's area that lies farthest from its border undefined if the area is a mere sliver, or
 * nowhere.
 * Distances by two sweeps over the grid in steps of 3 and 4 for straight and slanted neighbours: Borgefors, Comput Vision
 * Graph 1986;34:344-71.
 */
export function middleOf(
  { left, top, columns, rows, labels }: LabelGrid,
  label: number,
): readonly [number, number] | undefined {
  if (!labels.includes(label)) return undefined;
  const width = columns + 2;
  const far = new Int32Array(width * (rows + 2));
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (labels[row * columns + column] === label) far[(row + 1) * width + column + 1] = 1 << 20;
    }
  }
  const ahead = [-1, -width - 1, -width, -width + 1] as const;
  const weights = [3, 4, 3, 4] as const;
  let best = 0;
  const sweep = (index: number, sign: 1 | -1) => {
    const here = far[index] ?? 0;
    if (here === 0) return;
    let least = here;
    for (let k = 0; k < 4; k++) least = Math.min(least, (far[index + sign * (ahead[k] ?? 0)] ?? 0) + (weights[k] ?? 0));
    far[index] = least;
  };
  for (let index = width; index < far.length - width; index++) sweep(index, 1);
  for (let index = far.length - width - 1; index >= width; index--) {
    sweep(index, -1);
    if ((far[index] ?? 0) > (far[best] ?? 0)) best = index;
  }
  if ((far[best] ?? 0) < leastFar) return undefined;
  return [(best % width) - 0.5 + left, Math.floor(best / width) - 0.5 + top];
}
