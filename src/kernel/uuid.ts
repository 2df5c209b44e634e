import { createHash } from 'node:crypto';

/**
 * Name-based UUID, version 5.
 * @param name      any text; the same name always gives the same UUID
 * @param namespace a UUID in its 36-character form
 * @returns lower-case 36-character UUID
 * Source: RFC 9562, section 5.5.
 */
export function uuidV5(name: string, namespace: string): string {
  const digest = createHash('sha1')
    .update(Buffer.from(namespace.replaceAll('-', ''), 'hex'))
    .update(name, 'utf8')
    .digest();
  digest[6] = ((digest[6] ?? 0) & 0x0f) | 0x50;
  digest[8] = ((digest[8] ?? 0) & 0x3f) | 0x80;
  const hex = digest.toString('hex', 0, 16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
