import type { Chance } from '../../src/kernel/chance.ts';

/** Stands in a value for text that no value of JSON gives: it is put in after the value was written out. */
const rawMark = '@@raw@@';

/** Texts that JSON allows or nearly allows, and that a double, a database or a second parser sees otherwise. */
const rawTexts = [
  '1e999',
  '-1e999',
  '-0',
  '1e-400',
  '9007199254740993',
  '3.0000000000000001',
  '9'.repeat(400),
  'NaN',
  'Infinity',
  '01',
  '0x10',
  '"\\ud800"',
  '"\\udc00\\ud800"',
  '"a\\u0000b"',
  '"\\x41"',
  "'a'",
  'undefined',
  '{"a":1,"a":2}',
  '{"__proto__":{"polluted":true}}',
  '[1,]',
  '{"a":1,}',
  '/* a */ 1',
] as const;

const values: readonly unknown[] = [
  null,
  true,
  false,
  0,
  -1,
  1.5,
  1e308,
  2 ** 53 - 1,
  '',
  ' ',
  'Invented',
  '2026-02-30',
  '0000-00-00T00:00:00Z',
  '9999-12-31T23:59:59.999999999+14:00',
  'urn:uuid:00000000-0000-0000-0000-000000000000',
  '\u202etxet\u2066',
  'e\u0301'.repeat(200),
  '\u{1f9e0}',
  '\ufeff',
  '\ufffd\uffff',
  '<b onclick="x()">]]></b>&#0;',
  "'; DROP TABLE exam; --",
  '%_\\%00',
  '(a+)+$',
  'a'.repeat(5_000),
  '('.repeat(500),
  'where('.repeat(200),
  'a.'.repeat(1_000),
  [],
  {},
  [[]],
  [null],
];

const keys = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'length',
  'then',
  'toJSON',
  '',
  '$ref',
  'extension',
  '_value',
  'resourceType',
  'x'.repeat(10_000),
];

const one = <T>(chance: Chance, list: readonly T[]): T => list[Math.floor(chance.next() * list.length)] as T;

/** JSON text of a value with one to five changes somewhere in it. */
export function mutated(value: unknown, chance: Chance): string {
  const holder: Record<string, unknown> = { root: structuredClone(value) };
  const raws: string[] = [];
  const changes = 1 + Math.floor(chance.next() * 5);
  for (let n = 0; n < changes && 'root' in holder; n += 1) change(holder, chance, raws);
  const text = JSON.stringify(holder.root ?? null);
  return raws.reduce((all, raw) => all.replace(`"${rawMark}"`, () => raw), text);
}

/** A place in a value: the object or list that holds it, and its name there. */
interface Place {
  readonly parent: Record<string, unknown>;
  readonly key: string;
}

function change(holder: Record<string, unknown>, chance: Chance, raws: string[]): void {
  const places = placesIn(holder);
  const { parent, key } = one(chance, places);
  const found = parent[key];
  switch (Math.floor(chance.next() * 9)) {
    case 0:
      if (Array.isArray(parent)) parent.splice(Number(key), 1);
      else delete parent[key];
      return;
    case 1:
      raws.push(one(chance, rawTexts));
      parent[key] = rawMark;
      return;
    case 2:
      parent[key] = nested(Math.floor(chance.next() ** 3 * 1_000), chance.isSo(0.5));
      return;
    case 3: {
      const other = one(chance, places);
      parent[key] = structuredClone(other.parent[other.key]);
      return;
    }
    case 4:
      if (typeof found === 'object' && found !== null && !Array.isArray(found)) {
        define(found as Record<string, unknown>, one(chance, keys), one(chance, values));
      } else parent[key] = [found, found];
      return;
    case 5:
      if (Array.isArray(found) && found.length > 0) {
        const copies = 1 + Math.floor(chance.next() ** 4 * 1_000);
        for (let n = 0; n < copies; n += 1) found.push(structuredClone(found[n % found.length]));
      } else parent[key] = { [one(chance, keys)]: found };
      return;
    case 6:
      if (typeof found === 'string') parent[key] = spoilt(found, chance);
      else if (typeof found === 'number') parent[key] = one(chance, [-found, found * 1e12, found + 0.5, String(found)]);
      else parent[key] = JSON.stringify(found) ?? '';
      return;
    default:
      parent[key] = structuredClone(one(chance, values));
  }
}

/** Also for names that assignment would take for something else. */
function define(object: Record<string, unknown>, key: string, value: unknown): void {
  Object.defineProperty(object, key, { value, enumerable: true, configurable: true, writable: true });
}

function placesIn(holder: Record<string, unknown>): Place[] {
  const places: Place[] = [];
  const open: Record<string, unknown>[] = [holder];
  while (open.length > 0 && places.length < 5_000) {
    const parent = open.pop() as Record<string, unknown>;
    for (const key of Object.keys(parent)) {
      places.push({ parent, key });
      const value = parent[key];
      if (typeof value === 'object' && value !== null) open.push(value as Record<string, unknown>);
    }
  }
  return places;
}

function nested(depth: number, isList: boolean): unknown {
  let value: unknown = 1;
  for (let n = 0; n < depth; n += 1) value = isList ? [value] : { a: value };
  return value;
}

function spoilt(text: string, chance: Chance): string {
  const at = Math.floor(chance.next() * (text.length + 1));
  const piece = one(chance, [
    '\u0301',
    '\u200b',
    '|',
    ',',
    '/',
    '\\',
    '-',
    '0',
    'é',
    '\u{10ffff}',
    '\n',
    '\u0001',
    ' ',
  ]);
  return chance.isSo(0.3) ? text.slice(0, at) : text.slice(0, at) + piece + text.slice(at);
}

/** Bytes with flips, a cut, a splice or a stretch of chance; sometimes nothing but chance. */
export function brokenBytes(text: string, chance: Chance): Buffer {
  const bytes = Buffer.from(text, 'utf8');
  const at = () => Math.floor(chance.next() * (bytes.length + 1));
  switch (Math.floor(chance.next() * 5)) {
    case 0: {
      const flips = 1 + Math.floor(chance.next() * 8);
      for (let n = 0; n < flips; n += 1) bytes[at() % Math.max(1, bytes.length)] = Math.floor(chance.next() * 256);
      return bytes;
    }
    case 1:
      return bytes.subarray(0, at());
    case 2:
      return Buffer.concat([bytes.subarray(0, at()), bytes.subarray(at())]);
    case 3: {
      const cut = at();
      return Buffer.concat([bytes.subarray(0, cut), random(40, chance), bytes.subarray(cut)]);
    }
    default:
      return random(1 + Math.floor(chance.next() * 2_000), chance);
  }
}

function random(length: number, chance: Chance): Buffer {
  return Buffer.from(Array.from({ length }, () => Math.floor(chance.next() * 256)));
}

/** A query or form with one to three of its values or names spoilt. */
export function spoiltForm(form: string, chance: Chance): string {
  const parts = form.split('&');
  const changes = 1 + Math.floor(chance.next() * 3);
  for (let n = 0; n < changes; n += 1) {
    const at = Math.floor(chance.next() * parts.length);
    const [name = '', value = ''] = (parts[at] ?? '').split('=');
    parts[at] = one(chance, [
      `${name}=${encoded(spoilt(value, chance))}`,
      `${name}=${one(chance, hostileValues)}`,
      `${encoded(spoilt(name, chance))}=${value}`,
      `${name}${one(chance, [':not', ':missing', ':text', ':in', ':below', ':exact', ':identifier', '.name'])}=${value}`,
      `${name}=${Array.from({ length: 300 }, (_, k) => k).join(',')}`,
      `_cursor=${one(chance, forgedCursors)}`,
      `${parts[at]}&${parts[at]}`,
    ]);
  }
  return parts.join('&');
}

/** Half a surrogate pair becomes the replacement character, as in a browser. */
const encoded = (text: string): string => new URLSearchParams([['', text]]).toString().slice(1);

const hostileValues = [
  '%00',
  'a%00b',
  '%ED%A0%80',
  '%FF',
  '%',
  '%F0%9F%A7%A0',
  '1e999',
  '-1',
  '9'.repeat(400),
  '9223372036854775808',
  '0000-00',
  '9999-12-31T23:59:60Z',
  'ge999999-01-01',
  '%7C%7C%7C',
  '%24%24',
  '%5C',
  "'%20OR%201=1--",
  'Patient%2F..%2F..',
  'a'.repeat(3_000),
  '',
];

/** What no link has given, though some of it has the form. */
export const forgedCursors: readonly string[] = [
  '{"value":1.5,"key":1}',
  '{"value":"a","key":1}',
  '{"value":"a\\u0000","key":1}',
  '{"value":"\\ud800","key":1}',
  '{"value":1e308,"key":9007199254740991}',
  '{"value":-1e18,"key":0}',
  '{"value":null,"key":1}',
  '{"value":{"a":1},"key":1}',
  '{"updated":1,"id":"a\\u0000","version":1}',
  '{"updated":9007199254740991,"id":"\\ud800","version":9007199254740991}',
  'null',
  '[]',
].map((text) => Buffer.from(text).toString('base64url'));
