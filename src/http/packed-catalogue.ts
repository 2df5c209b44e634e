import { catalogueDocument } from '../exam/catalogue/catalogue-document.ts';
import { type Spelling, spell } from '../summary/spelling.ts';
import { mediaTypes } from './answer.ts';
import { type Packed, packed } from './packed.ts';

/** The catalogue in both spellings. Only labels are spelt: keys and what code systems print stay as they are. */
export function packedCatalogue(): Readonly<Record<Spelling, Packed>> {
  const document = catalogueDocument();
  const inSpelling = (spelling: Spelling): Packed => {
    const json = JSON.stringify(document, (name, value: unknown) =>
      name === 'label' && typeof value === 'string' ? spell(value, spelling) : value,
    );
    return packed(mediaTypes.json, Buffer.from(json, 'utf8'));
  };
  return { uk: inSpelling('uk'), us: inSpelling('us') };
}
