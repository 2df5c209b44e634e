import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, contentHash } from '../../src/store/content-hash.ts';

describe('the content hash', () => {
  it('does not change with white space or the order of keys', () => {
    const sent = JSON.parse('{ "b": [1, {"y": null, "x": "é"}], "a": true }');
    const again = JSON.parse('{"a":true,"b":[1,{"x":"\\u00e9","y":null}]}');
    expect(contentHash(sent)).toBe(contentHash(again));
  });

  it('changes with the order of an array, with a value, and with the type of a value', () => {
    const hashes = [[1, 2], [2, 1], [1, 3], ['1', '2'], { 0: 1, 1: 2 }, [[1], 2], null].map(contentHash);
    expect(new Set(hashes).size).toBe(hashes.length);
  });

  it('writes JSON that means the same as what it was given', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('tells keys of an object apart from its prototype', () => {
    expect(canonicalJson(JSON.parse('{"__proto__": {"x": 1}, "a": 2}'))).toBe('{"__proto__":{"x":1},"a":2}');
  });
});
