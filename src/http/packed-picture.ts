import { pictureDocument } from '../picture/picture-document.ts';
import { mediaTypes } from './answer.ts';
import { type Packed, packed } from './packed.ts';

/** The pictures, drawn when first asked for unless that was done after the start, and then kept. */
export function rememberedPicture(): () => Packed {
  let drawn: Packed | undefined;
  return () => {
    drawn ??= packed(mediaTypes.json, Buffer.from(JSON.stringify(pictureDocument()), 'utf8'));
    return drawn;
  };
}
