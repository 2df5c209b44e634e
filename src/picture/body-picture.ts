import { segments } from '../anatomy/segments.ts';
import type { DermatomeKey } from '../anatomy/skin.ts';
import { dermatomesBelow } from '../anatomy/skin-places.ts';
import type { BodySide } from '../kernel/side.ts';
import { marks } from './marks.ts';
import { outlineOf } from './outline.ts';
import { dermatomeGrid, type PicturePatch, patchesOf } from './patches.ts';
import { openPathData } from './path-data.ts';
import { seenSpots } from './seen-spots.ts';
import { type View, type ViewKey, views } from './views.ts';

export interface PictureView {
  readonly key: ViewKey;
  readonly label: string;
  readonly width: number;
  readonly height: number;
  /** The patient's side on the right of the viewer, whose half is drawn; the other half is the mirror of it. */
  readonly drawnSide: BodySide;
  /** Border of the drawn half; open at the middle where both halves meet. */
  readonly outline: string;
  /** Lines of the drawn half that help to find one's way. */
  readonly marks: string;
  readonly patches: readonly PicturePatch[];
}

export interface BodyPicture {
  readonly views: readonly PictureView[];
  /** For a segment, the first of the dermatomes that lie below it; every later one does too. S4 and S5 have none. */
  readonly firstBelow: Readonly<Record<string, DermatomeKey>>;
}

/**
 * The body with every place at which sensation can be recorded, as plain JSON. The surface and what lies on it are tables;
 * each view asks for the place at every cell of a grid, and the borders of equal cells are traced.
 */
export function bodyPicture(): BodyPicture {
  const below = segments.flatMap((segment) => {
    const first = dermatomesBelow(segment)[0];
    return first === undefined ? [] : [[segment, first] as const];
  });
  return { views: [...drawBody()], firstBelow: Object.fromEntries(below) };
}

const drawn = new Map<ViewKey, PictureView>();

/** Draws one view after the other and remembers them: they take a good part of a second together. */
export function* drawBody(): Iterable<PictureView> {
  for (const view of views) {
    const picture = drawn.get(view.key) ?? pictureView(view);
    drawn.set(view.key, picture);
    yield picture;
  }
}

function pictureView(view: View): PictureView {
  const { key, label, width, height, drawnSide } = view;
  const seen = seenSpots(view);
  const dermatomes = dermatomeGrid(seen);
  return {
    key,
    label,
    width,
    height,
    drawnSide,
    outline: outlineOf(view, seen),
    marks: (marks[key] ?? []).map((line) => openPathData(line, width / 2)).join(''),
    patches: patchesOf(view, seen, dermatomes),
  };
}
