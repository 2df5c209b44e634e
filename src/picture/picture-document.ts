import { bodyPicture } from './body-picture.ts';
import { neuraxisPicture } from './neuraxis/neuraxis-picture.ts';

/** Everything that is drawn, as plain JSON. */
export function pictureDocument() {
  return {
    body: bodyPicture(),
    neuraxis: neuraxisPicture(),
  };
}

/** The document as JSON bytes, drawn when first asked for, which takes a good part of a second, and then kept. */
export function rememberedPicture(): () => Buffer {
  let bytes: Buffer | undefined;
  return () => {
    bytes ??= Buffer.from(JSON.stringify(pictureDocument()), 'utf8');
    return bytes;
  };
}
