import { catalogueDocument } from '../exam/catalogue/catalogue-document.ts';
import { respelling, type Spelling } from '../summary/spelling.ts';
import { mediaTypes } from './answer.ts';
import { type Packed, packed } from './packed.ts';

/** The catalogue in both spellings. */
export function packedCatalogue(): Readonly<Record<Spelling, Packed>> {
  const document = catalogueDocument();
  const inSpelling = (spelling: Spelling): Packed => {
    return packed(mediaTypes.json, Buffer.from(JSON.stringify(document, respelling(spelling)), 'utf8'));
  };
  return { uk: inSpelling('uk'), us: inSpelling('us') };
}
