import { RequestError } from '../kernel/errors.ts';
import { echoedName } from './faults/echo.ts';
import { pointerInto } from './faults/pointer.ts';

/**
 * JSON as it may be stored and answered again without change: JSON.parse lets through what a database, a second parser
 * or the reader of an answer would see otherwise. Refused are bytes that are not UTF-8, a byte order mark, the same
 * property twice in one object, half surrogate pairs, NUL characters, and numbers that do not survive as a double.
 *
 * Takes time in proportion to the number of bytes. Messages name places, never content.
 * @param bytes           the body as received, decompressed
 * @param limits.maxDepth objects and arrays inside one another that are allowed; checked before anything is parsed
 * @throws RequestError TOO_DEEP; NOT_JSON for everything else
 * Source: RFC 8259; RFC 7493 (I-JSON) for names, numbers and characters.
 */
export function parseStrictJson(bytes: Uint8Array, limits: { readonly maxDepth: number }): unknown {
  const text = decode(bytes);
  checkDepth(text, limits.maxDepth);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw notJson(`The body is not valid JSON${place(text, error)}.`);
  }
  checkTokens(text);
  return value;
}

function decode(bytes: Uint8Array): string {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw notJson('The body is not valid UTF-8.');
  }
  if (text.startsWith('\uFEFF')) throw notJson('The body begins with a byte order mark; send UTF-8 without one.');
  if (text.trim() === '') throw notJson('The body is empty; a JSON object was expected.');
  return text;
}

const quote = 0x22;
const backslash = 0x5c;

/** Index of the quote that ends the string opened at `start`, or the length of the text if none does. */
function endOfString(text: string, start: number): number {
  let at = start + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === quote) return at;
    at += code === backslash ? 2 : 1;
  }
  return text.length;
}

/** Brackets are counted in the text itself: a recursive parser or walk could run out of stack first. */
function checkDepth(text: string, maxDepth: number): void {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === quote) at = endOfString(text, at);
    else if (code === 0x7b || code === 0x5b) {
      depth++;
      if (depth > maxDepth) {
        throw new RequestError('TOO_DEEP', `The body is nested more than ${maxDepth} levels deep.`);
      }
    } else if (code === 0x7d || code === 0x5d) depth--;
  }
}

interface OpenContainer {
  /** Names met so far; null in an array. */
  readonly names: Set<string> | null;
  /** The name or index of the value being read. */
  step: string | number;
  expectsName: boolean;
}

/** Goes over the tokens of a text that is known to be JSON. */
function checkTokens(text: string): void {
  const open: OpenContainer[] = [];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    const here = open.at(-1);
    if (code === quote) {
      const end = endOfString(text, at);
      const content = stringContent(text, at, end);
      if (here?.expectsName === true) enterName(open, here, content);
      checkCharacters(open, content);
      at = end;
    } else if (code === 0x7b) open.push({ names: new Set(), step: '', expectsName: true });
    else if (code === 0x5b) open.push({ names: null, step: 0, expectsName: false });
    else if (code === 0x7d || code === 0x5d) open.pop();
    else if (code === 0x2c && here !== undefined) {
      if (here.names !== null) here.expectsName = true;
      else here.step = Number(here.step) + 1;
    } else if (code === 0x2d || (code >= 0x30 && code <= 0x39)) {
      const end = endOfNumber(text, at);
      if (!survivesAsDouble(text.slice(at, end))) {
        throw notJson(
          `The number at ${pointerOf(open)} has more digits or a larger exponent than can be kept exactly.`,
        );
      }
      at = end - 1;
    }
  }
}

function stringContent(text: string, start: number, end: number): string {
  const raw = text.slice(start + 1, end);
  return raw.includes('\\') ? (JSON.parse(`"${raw}"`) as string) : raw;
}

function enterName(open: readonly OpenContainer[], here: OpenContainer, name: string): void {
  here.step = echoedName(name);
  here.expectsName = false;
  if (here.names?.has(name) === true) throw notJson(`The property ${pointerOf(open)} is there twice.`);
  here.names?.add(name);
}

function checkCharacters(open: readonly OpenContainer[], content: string): void {
  if (content.includes('\0')) throw notJson(`The text at ${pointerOf(open)} contains a NUL character.`);
  if (!isWellFormed(content)) throw notJson(`The text at ${pointerOf(open)} contains half of a surrogate pair.`);
}

/** Whether every surrogate has its other half; a surrogate that matches `u` as a code point of its own has not. */
function isWellFormed(content: string): boolean {
  return !/\p{Surrogate}/u.test(content);
}

function endOfNumber(text: string, start: number): number {
  let end = start + 1;
  while (end < text.length && /[0-9.eE+-]/.test(text.charAt(end))) end++;
  return end;
}

/** Whether the decimal number written here is the one that comes out when the double is written again. */
function survivesAsDouble(literal: string): boolean {
  // Up to 15 significant digits always survive; an exponent is the only other way to lose anything.
  if (literal.length <= 15 && !/[eE]/.test(literal)) return true;
  const value = Number(literal);
  return Number.isFinite(value) && canonicalDecimal(literal) === canonicalDecimal(String(value));
}

/** Digits without leading and trailing zeros, and the power of ten of the last of them. */
function canonicalDecimal(literal: string): string {
  const [mantissa = '', exponent = '0'] = literal.toLowerCase().replace(/^-/, '').split('e');
  const [whole = '', fraction = ''] = mantissa.split('.');
  const digits = (whole + fraction).replace(/^0+/, '');
  const significant = digits.replace(/0+$/, '');
  if (significant === '') return '0';
  return `${significant}e${Number(exponent) - fraction.length + digits.length - significant.length}`;
}

function pointerOf(open: readonly OpenContainer[]): string {
  const pointer = open.reduce((path, container) => pointerInto(path, container.step), '');
  return pointer === '' ? 'the top' : pointer;
}

/** Where the parser stopped, as line and column, if the runtime says so. */
function place(text: string, error: unknown): string {
  const position = /at position (\d+)(?: \(line \d+ column \d+\))?$/.exec(error instanceof Error ? error.message : '');
  const offset = position === null ? Number.NaN : Number(position[1]);
  if (!(offset <= text.length)) return '';
  const before = text.slice(0, offset);
  return ` (line ${before.split('\n').length}, column ${offset - before.lastIndexOf('\n')})`;
}

function notJson(message: string): RequestError {
  return new RequestError('NOT_JSON', message);
}
