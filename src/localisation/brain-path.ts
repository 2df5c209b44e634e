import type { FunctionRow } from '../anatomy/brain/function-row.ts';
import type { Path, Where } from '../anatomy/brain/path.ts';
import { brainStructures, type StructureKey, structureKeys } from '../anatomy/brain/structures.ts';
import { type BodySide, opposite } from '../kernel/side.ts';

const places = new Map<StructureKey, number>(structureKeys.map((key, index) => [key, index]));

/** Cells of the brain array of a damage: every structure on the left, then every one on the right. */
export const brainCells = structureKeys.length * 2;

/** Cell of a structure; what lies in the midline has one cell, whichever side is asked for. */
export function brainIndex(side: BodySide, structure: StructureKey): number {
  const place = places.get(structure) ?? 0;
  return side === 'left' || !brainStructures[structure].paired ? place : structureKeys.length + place;
}

function sideOf(where: Where, side: BodySide): BodySide {
  if (where === 'same') return side;
  return where === 'other' ? opposite(side) : where;
}

/**
 * Fraction of a function that is lost on a side of the body.
 * @param brain [brainCells] fraction lost of every structure
 */
export function lostOf(path: Path, brain: Float64Array, side: BodySide): number {
  switch (path.kind) {
    case 'at':
      return brain[brainIndex(sideOf(path.where, side), path.structure)] ?? 0;
    case 'series': {
      let kept = 1;
      for (const part of path.parts) kept *= 1 - lostOf(part, brain, side);
      return 1 - kept;
    }
    case 'either': {
      let lost = 1;
      for (const part of path.parts) lost *= lostOf(part, brain, side);
      return lost;
    }
    case 'shared': {
      let lost = 0;
      for (const [share, part] of path.parts) lost += share * lostOf(part, brain, side);
      return lost;
    }
    case 'partly':
      return path.share * lostOf(path.path, brain, side);
  }
}

/** The path of a function to one side of the body. */
export function pathOf({ path }: FunctionRow, side: BodySide): Path {
  return 'kind' in path ? path : path[side];
}

/** A damaged structure on a path, with what its damage alone costs the function. */
export interface BrainBreak {
  readonly structure: StructureKey;
  /** Side of the structure; null in the midline. */
  readonly side: BodySide | null;
  readonly share: number;
}

/** The damaged structures of a path, the one that costs most first. */
export function breaksOn(path: Path, brain: Float64Array, side: BodySide): readonly BrainBreak[] {
  const found = new Map<number, BrainBreak>();
  collect(path, brain, side, 1, found);
  return [...found.values()].sort((a, b) => b.share - a.share);
}

function collect(
  path: Path,
  brain: Float64Array,
  side: BodySide,
  weight: number,
  found: Map<number, BrainBreak>,
): void {
  switch (path.kind) {
    case 'at': {
      const own = sideOf(path.where, side);
      const index = brainIndex(own, path.structure);
      const share = weight * (brain[index] ?? 0);
      if (share <= (found.get(index)?.share ?? 0)) return;
      found.set(index, {
        structure: path.structure,
        side: brainStructures[path.structure].paired ? own : null,
        share,
      });
      return;
    }
    case 'partly':
      collect(path.path, brain, side, weight * path.share, found);
      return;
    case 'shared':
      for (const [share, part] of path.parts) collect(part, brain, side, weight * share, found);
      return;
    case 'either': {
      // Each supply matters as far as the others are gone.
      for (const part of path.parts) {
        const rest = path.parts.filter((one) => one !== part).reduce((lost, one) => lost * lostOf(one, brain, side), 1);
        collect(part, brain, side, weight * rest, found);
      }
      return;
    }
    case 'series':
      for (const part of path.parts) collect(part, brain, side, weight, found);
  }
}
