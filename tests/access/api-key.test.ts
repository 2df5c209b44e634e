import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { callerWithKey, hashOf, newKey, readKeys } from '../../src/access/api-key.ts';

const entry = (changes: object = {}) =>
  JSON.stringify({ name: 'ward-7', hash: hashOf('x'), scopes: ['system/exam.c'], ...changes });

describe('a static key', () => {
  it('has 256 random bits, is never made twice, and is kept as its SHA-256', () => {
    const keys = new Set(Array.from({ length: 200 }, newKey));
    expect(keys.size).toBe(200);
    for (const key of keys) {
      expect(Buffer.from(key.replace('neuroexam_', ''), 'base64url')).toHaveLength(32);
      expect(hashOf(key)).toBe(`sha256:${createHash('sha256').update(key).digest('hex')}`);
    }
    // FIPS 180-2, appendix B.1: the SHA-256 of "abc".
    expect(hashOf('abc')).toBe('sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });

  it('is found by its hash, wherever it stands, and nothing else is', () => {
    const made = Array.from({ length: 5 }, newKey);
    const kept = readKeys(made.map((key, n) => entry({ name: `k${n}`, hash: hashOf(key) })).join('\n'));
    for (const [n, key] of made.entries()) expect(callerWithKey(kept, key)?.client).toBe(`key:k${n}`);
    const [first = ''] = made;
    for (const wrong of [newKey(), '', first.slice(0, -1), `${first}A`, first.toUpperCase(), hashOf(first)]) {
      expect(callerWithKey(kept, wrong)).toBeUndefined();
    }
    expect(callerWithKey([], first)).toBeUndefined();
  });

  it('carries the subject that it is limited to', () => {
    const key = newKey();
    const kept = readKeys(`\n${entry({ hash: hashOf(key), subject: 'Patient/4711' })}\n\n`);
    expect(callerWithKey(kept, key)).toEqual({
      client: 'key:ward-7',
      scopes: ['system/exam.c'],
      subject: 'Patient/4711',
    });
  });

  it.each([
    ['no JSON', '{"name":'],
    ['a list', '[]'],
    ['no hash', '{"name":"ward-7","scopes":[]}'],
    ['the key itself', entry({ hash: newKey() })],
    ['another hash', entry({ hash: 'md5:d41d8cd98f00b204e9800998ecf8427e' })],
    ['a scope that is not known', entry({ scopes: ['system/exams.c'] })],
    ['a scope with a query', entry({ scopes: ['system/Observation.rs?category=exam'] })],
    ['scopes that are no list', entry({ scopes: 'system/exam.c' })],
    ['a name with blanks', entry({ name: 'ward 7' })],
    ['a subject that is no reference', entry({ subject: '4711' })],
    ['a property that is not known', entry({ subjects: 'Patient/4711' })],
  ])('is refused in a file with %s, by its line', (_, line) => {
    const secret = /neuroexam_|md5|exams\.c|ward 7/;
    expect(() => readKeys(`${entry()}\n${line}\n`)).toThrow(/^line 2: /);
    try {
      readKeys(`${entry()}\n${line}\n`);
    } catch (error) {
      expect(String(error)).not.toMatch(secret);
    }
  });
});
