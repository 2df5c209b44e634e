import type { StructureKey } from './structures.ts';

/**
 * Where a structure lies, as seen from the side on which the sign shows: on the same side, across the midline, or always
 * on one side of the brain (language). Unpaired structures lie in the midline whatever is said.
 */
export type Where = 'same' | 'other' | 'left' | 'right';

/**
 * What a function of the brain or of a cranial nerve needs, as the wiring has it. The fraction of the function that is
 * lost follows from the fractions of the structures that are lost.
 */
export type Path =
  /** One structure. */
  | { readonly kind: 'at'; readonly structure: StructureKey; readonly where: Where }
  /** One after another: a break anywhere is a break. */
  | { readonly kind: 'series'; readonly parts: readonly Path[] }
  /** Two supplies, of which either suffices: lost only when all are. */
  | { readonly kind: 'either'; readonly parts: readonly Path[] }
  /** Several supplies that carry a share each. */
  | { readonly kind: 'shared'; readonly parts: readonly (readonly [share: number, path: Path])[] }
  /** A structure whose loss shows in only so many of the people who have it. */
  | { readonly kind: 'partly'; readonly share: number; readonly path: Path };

const at =
  (where: Where) =>
  (...keys: readonly StructureKey[]): Path => {
    const parts = keys.map((structure): Path => ({ kind: 'at', structure, where }));
    const [only] = parts;
    return parts.length === 1 && only !== undefined ? only : { kind: 'series', parts };
  };

/** Structures in series on the side of the sign. */
export const same = at('same');
/** Structures in series on the other side. */
export const other = at('other');
export const onLeft = at('left');
export const onRight = at('right');

export const series = (...parts: readonly Path[]): Path => ({ kind: 'series', parts });
export const either = (...parts: readonly Path[]): Path => ({ kind: 'either', parts });
export const partly = (share: number, path: Path): Path => ({ kind: 'partly', share, path });
export const shared = (...parts: readonly (readonly [number, Path])[]): Path => ({ kind: 'shared', parts });

/** Structures whose loss on either side shows. */
export const onEitherSide = (...keys: readonly StructureKey[]): Path => series(onLeft(...keys), onRight(...keys));
/** A structure that one side can stand in for: lost only when both are. */
export const onBothSides = (key: StructureKey): Path => either(onLeft(key), onRight(key));

/** Every structure that a path runs through, once. */
export function structuresOf(path: Path): readonly StructureKey[] {
  switch (path.kind) {
    case 'at':
      return [path.structure];
    case 'partly':
      return structuresOf(path.path);
    case 'shared':
      return [...new Set(path.parts.flatMap(([, part]) => structuresOf(part)))];
    default:
      return [...new Set(path.parts.flatMap(structuresOf))];
  }
}
