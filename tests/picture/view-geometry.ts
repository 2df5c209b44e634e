import { type BodyPicture, bodyPicture, type PictureView } from '../../src/picture/body-picture.ts';
import type { PicturePatch } from '../../src/picture/patches.ts';
import { ringsOf } from '../../src/picture/path-data.ts';
import { isInside } from '../../src/picture/surface.ts';
import type { Ring } from '../../src/picture/trace.ts';

export const picture: BodyPicture = bodyPicture();

export function viewOf(key: string): PictureView {
  const view = picture.views.find((candidate) => candidate.key === key);
  if (view === undefined) throw new Error(`no view ${key}`);
  return view;
}

export const dermatomesOf = (view: PictureView): readonly PicturePatch[] =>
  view.patches.filter(({ kind }) => kind === 'dermatome');

export const ringsOfPatch = ({ path = '' }: PicturePatch): readonly Ring[] => ringsOf(path);

/** Whether a point lies in path data under the even-odd rule, as a browser fills rings and holes. */
export const covers = (rings: readonly Ring[], x: number, y: number): boolean =>
  rings.filter((ring) => isInside(ring, x, y)).length % 2 === 1;

/** The border of the drawn half, closed along the middle of the picture. */
export const outlineRings = (view: PictureView): readonly Ring[] => ringsOf(view.outline);
