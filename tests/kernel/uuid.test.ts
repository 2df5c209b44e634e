import { describe, expect, it } from 'vitest';
import { uuidV5 } from '../../src/kernel/uuid.ts';

describe('uuidV5', () => {
  it('gives the example of RFC 9562, appendix A.4', () => {
    const dns = '6ba7b810-9dad-11d1-80b4-00c04fd430c8';
    expect(uuidV5('www.example.com', dns)).toBe('2ed6657d-e927-568b-95e1-2665a8aea6a2');
  });

  it('is lower case with version 5 and the RFC variant for any name', () => {
    for (let n = 0; n < 500; n += 1) {
      expect(uuidV5(`é${n}`, '5b1f8a52-3c0e-4d6b-9b57-0c1f6e2a7d94')).toMatch(
        /^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
      );
    }
  });
});
