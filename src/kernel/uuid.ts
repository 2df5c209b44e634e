import { hash } from 'node:crypto';

/**
 * Name-based UUID, version 5.
 * @param name      any text; the same name always gives the same UUID
 * @param namespace a UUID in its 36-character form
 * @returns lower-case 36-character UUID
 * Source: RFC 9562, section 5.5.
 */
export function uuidV5(name: string, namespace: string): string {
  const bytes = Buffer.concat([Buffer.from(namespace.replaceAll('-', ''), 'hex'), Buffer.from(name, 'utf8')]);
  const hex = hash('sha1', bytes, 'hex');
  const variant = ((Number.parseInt(hex.charAt(16), 16) & 0x3) | 0x8).toString(16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-5${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
