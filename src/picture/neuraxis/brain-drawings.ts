import { brainstemDrawings } from './brainstem-drawings.ts';
import { cortexDrawings } from './cortex-drawings.ts';
import { type BrainDrawing, deepDrawings, visualDrawings } from './deep-drawings.ts';

/** Everything of the head that is drawn, with the structures that each drawing stands for. */
export const brainDrawings = {
  cortex: cortexDrawings(),
  deep: deepDrawings(),
  visual: visualDrawings(),
  brainstem: brainstemDrawings(),
} as const satisfies Readonly<Record<string, readonly BrainDrawing[]>>;

export const allBrainDrawings: readonly BrainDrawing[] = Object.values(brainDrawings).flat();
