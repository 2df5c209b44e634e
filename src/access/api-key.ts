import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { Caller } from './caller.ts';
import { readScope } from './scope.ts';

/** Marks a key as one of this service, for people and for programs that look for secrets in the wrong places. */
const prefix = 'neuroexam_';

const keyForm = /^neuroexam_[A-Za-z0-9_-]{43}$/;
const nameForm = /^[a-z0-9][a-z0-9._-]{0,63}$/;
const hashForm = /^sha256:[0-9a-f]{64}$/;
const subjectForm = /^[A-Z][A-Za-z]+\/[A-Za-z0-9.-]{1,64}$/;

/** A static key as it is kept: by its hash. */
export interface ApiKey {
  readonly name: string;
  /** `sha256:` and 64 hexadecimal digits. */
  readonly hash: string;
  readonly scopes: readonly string[];
  readonly subject?: string;
}

/** A new key: 256 random bits. */
export function newKey(): string {
  return prefix + randomBytes(32).toString('base64url');
}

/**
 * The hash under which a key is kept. A fast one is enough: slow, salted hashes protect what people choose, by making each
 * guess dear; no number of guesses finds 256 random bits, and no two keys are the same.
 * Source: RFC 6819, sections 5.1.4.1.3 (keep hashes alone) and 5.1.4.2.2 (at least 128 random bits); recalled.
 */
export function hashOf(key: string): string {
  return `sha256:${createHash('sha256').update(key, 'utf8').digest('hex')}`;
}

/**
 * The keys in a file: one JSON object a line.
 * @throws Error that names the line and what was expected, and nothing of the content
 */
export function readKeys(text: string): readonly ApiKey[] {
  return text.split('\n').flatMap((line, index) => {
    if (line.trim() === '') return [];
    const fault = (expected: string) => new Error(`line ${index + 1}: ${expected}`);
    const { name, hash, scopes, subject, ...others } = objectIn(line) ?? {};
    const unknown = Object.keys(others).length > 0;
    if (hash === undefined || unknown) throw fault('expected an object with name, hash, scopes and perhaps subject');
    if (!isText(name, nameForm)) throw fault('name takes small letters, digits, dots, dashes and underscores');
    if (!isText(hash, hashForm)) throw fault('hash takes sha256: and 64 hexadecimal digits');
    if (!Array.isArray(scopes) || !scopes.every((one) => typeof one === 'string' && readScope(one) !== undefined)) {
      throw fault('scopes takes a list of scopes such as system/Observation.rs');
    }
    if (subject !== undefined && !isText(subject, subjectForm)) throw fault('subject takes a reference, Patient/4711');
    return [{ name, hash, scopes: scopes as string[], ...(subject === undefined ? {} : { subject }) }];
  });
}

/** Who has a key; undefined for a key that is not there. Every hash is compared in full, whichever it is. */
export function callerWithKey(keys: readonly ApiKey[], key: string): Caller | undefined {
  const hash = Buffer.from(hashOf(keyForm.test(key) ? key : ''));
  const found = keys.filter((one) => timingSafeEqual(Buffer.from(one.hash), hash))[0];
  if (found === undefined) return undefined;
  const { name, scopes, subject } = found;
  return { client: clientOfKey(name), scopes, ...(subject === undefined ? {} : { subject }) };
}

/** Beside the names that an authorisation server gives to its clients; `isNameOfKey` keeps the two apart. */
export function clientOfKey(name: string): string {
  return `key:${name}`;
}

export function isNameOfKey(client: string): boolean {
  return client.startsWith('key:');
}

export function isKeyName(name: string): boolean {
  return nameForm.test(name);
}

export function isSubject(reference: string): boolean {
  return subjectForm.test(reference);
}

function objectIn(line: string): Record<string, unknown> | undefined {
  try {
    const value: unknown = JSON.parse(line);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : undefined;
  } catch {
    return undefined;
  }
}

function isText(value: unknown, form: RegExp): value is string {
  return typeof value === 'string' && form.test(value);
}
