import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseStrictJson } from '../../src/exam/strict-json.ts';
import { RequestError } from '../../src/kernel/errors.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const parse = (text: string, maxDepth = 20): unknown => parseStrictJson(bytes(text), { maxDepth });

function refusal(body: string | Uint8Array, maxDepth = 20): { readonly code: string; readonly message: string } {
  try {
    parseStrictJson(typeof body === 'string' ? bytes(body) : body, { maxDepth });
  } catch (error) {
    if (error instanceof RequestError) return { code: error.code, message: error.message };
    throw error;
  }
  return { code: 'none', message: '' };
}

describe('strict JSON', () => {
  it('reads what JSON.parse reads, for every value that JSON writes', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
        const text = JSON.stringify(value);
        expect(parse(text)).toEqual(JSON.parse(text));
        expect(parse(JSON.stringify(value, null, 2))).toEqual(JSON.parse(text));
      }),
    );
  });

  it.each([
    ['nothing', '', 'empty'],
    ['spaces only', ' \n ', 'empty'],
    ['a comment', '{} // done', 'not valid JSON'],
    ['a trailing comma', '[1,]', 'not valid JSON'],
    ['an open string', '{"a":"b', 'not valid JSON'],
    ['an escape at the end', '"\\', 'not valid JSON'],
    ['NaN', '[NaN]', 'not valid JSON'],
    ['a byte order mark', '\uFEFF{}', 'byte order mark'],
    ['a property twice', '{"a":{"b":1,"c":[],"b":2}}', '/a/b is there twice'],
    ['a property twice by escape', '{"side":1,"s\\u0069de":2}', '/side is there twice'],
    ['a property twice deep in lists', '[[],{"x":[0,{"y":1,"y":1}]}]', '/1/x/1/y is there twice'],
    ['half a surrogate pair, escaped', '{"note":"\\ud800"}', '/note contains half of a surrogate pair'],
    ['half a surrogate pair in a name', '{"\\udc00":1}', 'half of a surrogate pair'],
    ['a NUL character', '{"a":["x\\u0000y"]}', '/a/0 contains a NUL'],
    ['a number beyond doubles', '{"a":1e999}', 'number at /a'],
    ['a number too small for doubles', '[1e-400]', 'number at /0'],
    ['an integer that would lose digits', '[9007199254740993]', 'number at /0'],
    ['a decimal that would lose digits', '{"a":3.0000000000000001}', 'number at /a'],
    ['an integer of 400 digits', `[1${'0'.repeat(398)}1]`, 'number at /0'],
  ])('refuses %s', (_name, body, words) => {
    expect(refusal(body)).toEqual({ code: 'NOT_JSON', message: expect.stringContaining(words) });
  });

  it.each([
    '0',
    '-0',
    '1e3',
    '1E+2',
    '2.50',
    '0.1',
    '1.7976931348623157e308',
    '5e-324',
    '100000000000000000000',
    '0e9999',
  ])('takes the number %s, which a double holds exactly enough to write again', (literal) => {
    expect(parse(literal)).toBe(Number(literal));
  });

  it('takes whole surrogate pairs, written or escaped', () => {
    expect(parse('["\u{1F9E0}","\\ud83e\\udde0"]')).toEqual(['\u{1F9E0}', '\u{1F9E0}']);
  });

  it('refuses bytes that are not UTF-8', () => {
    expect(refusal(Uint8Array.of(0x22, 0xc3, 0x28, 0x22))).toMatchObject({
      code: 'NOT_JSON',
      message: expect.stringContaining('UTF-8'),
    });
    expect(refusal(new Uint8Array(Buffer.from('{"a":1}', 'utf16le'))).code).toBe('NOT_JSON');
  });

  it('counts depth in the text, so that no depth can exhaust the stack', () => {
    expect(parse('[[[]]]', 3)).toEqual([[[]]]);
    expect(refusal('[[[[]]]]', 3).code).toBe('TOO_DEEP');
    expect(refusal('['.repeat(400_000)).code).toBe('TOO_DEEP');
    expect(refusal('{"a":'.repeat(400_000)).code).toBe('TOO_DEEP');
    expect(refusal(`["${'['.repeat(1000)}"]`, 1).code).toBe('none');
  });

  it('does not confuse "__proto__" with a prototype', () => {
    const value = parse('{"__proto__":{"polluted":true},"constructor":1}');
    expect(Object.keys(value as object)).toEqual(['__proto__', 'constructor']);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(refusal('{"__proto__":1,"__proto__":2}').message).toContain('twice');
  });

  it('says where the text breaks, and never what it says', () => {
    const { message } = refusal('{"note": "Mrs Example",\n "side": oops}');
    expect(message).not.toContain('Example');
    expect(message).not.toContain('oops');
    expect(refusal('{"Mrs Example of 7 Some Street":1,"Mrs Example of 7 Some Street":2}').message).not.toContain(
      'Example',
    );
  });

  it('takes time in proportion to the size', () => {
    const time = (text: string): number => {
      const start = performance.now();
      refusal(text);
      return performance.now() - start;
    };
    const megabyte = 1_000_000;
    for (const text of [
      `["${'\\\\'.repeat(megabyte / 2)}"]`,
      `[${'1,'.repeat(megabyte / 2)}1]`,
      `{${Array.from({ length: megabyte / 12 }, (_, i) => `"k${i}":1`).join(',')}}`,
      '"'.repeat(megabyte),
    ]) {
      expect(time(text)).toBeLessThan(2000);
    }
  });
});
