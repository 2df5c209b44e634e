import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';

/** Texts that go out in links and come back, and that nobody in between can read or make. */
export interface SealedText {
  /** @param about what the text belongs to; it can be opened for the same alone */
  seal(text: string, about: string): string;
  /** @returns undefined for what was not sealed with this key for this purpose */
  open(sealed: string, about: string): string | undefined;
}

const cipher = 'aes-256-gcm';
/** Bytes. Source: NIST SP 800-38D, sections 5.2.1.1 and 8.2.2 (random nonces, 2^32 under one key). */
const nonceLength = 12;
const tagLength = 16;

/** @param key 32 bytes */
export function createSealedText(key: Buffer): SealedText {
  return {
    seal(text, about) {
      const nonce = randomBytes(nonceLength);
      const box = createCipheriv(cipher, key, nonce).setAAD(Buffer.from(about, 'utf8'));
      return Buffer.concat([nonce, box.update(text, 'utf8'), box.final(), box.getAuthTag()]).toString('base64url');
    },
    open(sealed, about) {
      const bytes = Buffer.from(sealed, 'base64url');
      // Other spellings of the same bytes are not ours.
      if (bytes.length < nonceLength + tagLength || bytes.toString('base64url') !== sealed) return undefined;
      const tag = bytes.subarray(bytes.length - tagLength);
      try {
        const box = createDecipheriv(cipher, key, bytes.subarray(0, nonceLength), { authTagLength: tagLength });
        box.setAAD(Buffer.from(about, 'utf8')).setAuthTag(tag);
        const text = box.update(bytes.subarray(nonceLength, bytes.length - tagLength));
        return Buffer.concat([text, box.final()]).toString('utf8');
      } catch {
        return undefined;
      }
    },
  };
}
