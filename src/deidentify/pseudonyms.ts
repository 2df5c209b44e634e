import { createHmac } from 'node:crypto';

/** Stand-ins that only who has the key can work out again; the same key always gives the same ones. */
export interface Pseudonyms {
  /** A UUID in place of an id or a name of the given kind. */
  of(kind: string, text: string): string;
  /** Milliseconds by which every time of a subject is moved, always into the past, by at most a year. */
  shiftMs(subject: string): number;
}

/** Fewest bytes of a key. Source: RFC 2104, section 3: not shorter than the output of the hash. */
export const leastKeyBytes = 32;

const secondsOfYear = 365 * 86_400;

/**
 * Pseudonyms by HMAC-SHA-256, so that nobody without the key can try out names and identifiers.
 * @param key at least `leastKeyBytes` random bytes, kept apart from the data
 * Sources: RFC 2104 and RFC 6234 for the hash; RFC 9562, section 5.8, for UUIDs of one's own making; keyed hashes as
 * pseudonyms: ENISA, Pseudonymisation techniques and best practices (2019), section 5 (from memory).
 */
export function createPseudonyms(key: Uint8Array): Pseudonyms {
  const digest = (purpose: string, text: string) =>
    createHmac('sha256', key).update(`${purpose}\u0000${text}`, 'utf8').digest();
  return {
    of: (kind, text) => uuidV8(digest(`pseudonym ${kind}`, text)),
    shiftMs: (subject) => -(1 + (digest('shift', subject).readUIntBE(0, 6) % secondsOfYear)) * 1000,
  };
}

function uuidV8(bytes: Buffer): string {
  const hex = bytes.toString('hex');
  const variant = ((Number.parseInt(hex.charAt(16), 16) & 0x3) | 0x8).toString(16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
