import { bodyPicture } from './body-picture.ts';
import { neuraxisPicture } from './neuraxis/neuraxis-picture.ts';

/** Everything that is drawn, as plain JSON. */
export function pictureDocument() {
  return {
    body: bodyPicture(),
    neuraxis: neuraxisPicture(),
  };
}
