import { createHash } from 'node:crypto';

/** What the first entry follows: 32 bytes of zero. */
export const genesis: Buffer = Buffer.alloc(32);

/**
 * The hash of an entry: SHA-256 over the hash of the entry before it (32 bytes) followed by the text of this one in
 * UTF-8. Whoever changes, removes or moves an entry has to change the hash of every later one.
 */
export function linkHash(previous: Uint8Array, text: string): Buffer {
  return createHash('sha256').update(previous).update(text, 'utf8').digest();
}
