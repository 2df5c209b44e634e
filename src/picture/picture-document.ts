import { bodyPicture } from './body-picture.ts';

/** Everything that is drawn, as plain JSON. */
export function pictureDocument() {
  return {
    body: bodyPicture(),
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
