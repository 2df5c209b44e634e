import { createHash } from 'node:crypto';

/**
 * SHA-256 of a JSON value by its meaning: white space and the order of keys do not matter, the order of arrays does,
 * because an array is ordered for JSON and the stored exam is answered as it was sent.
 * @param value what a JSON parser returned
 * @returns 64 hexadecimal digits
 * Source: the ordering and number format of RFC 8785 (JSON Canonicalization Scheme), recalled.
 */
export function contentHash(value: unknown): string {
  return createHash('sha256').update(canonicalJson(value), 'utf8').digest('hex');
}

/** JSON text with the keys of every object in UTF-16 order and no white space. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`);
    return `{${members.join(',')}}`;
  }
  return JSON.stringify(value);
}
