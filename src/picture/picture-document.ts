import { bodyPicture } from './body-picture.ts';

/** Everything that is drawn, as plain JSON. */
export function pictureDocument() {
  return {
    body: bodyPicture(),
  };
}
