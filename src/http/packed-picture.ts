import { pictureDocument } from '../picture/picture-document.ts';
import { mediaTypes } from './answer.ts';
import { type Packed, packed } from './packed.ts';

/** The pictures as JSON, drawn when first asked for unless that has been done. */
export function packedPicture(): () => Packed {
  let answer: Packed | undefined;
  return () => {
    answer ??= packed(mediaTypes.json, Buffer.from(JSON.stringify(pictureDocument()), 'utf8'));
    return answer;
  };
}
