/**
 * Line, counted from 1, on which the value of a JSON Pointer begins; where the text ends before the pointer does, the line
 * of the nearest value around it.
 * @param text valid JSON
 */
export function lineOf(text: string, steps: readonly string[]): number {
  return text.slice(0, offsetOf(text, steps)).split('\n').length;
}

function offsetOf(text: string, steps: readonly string[]): number {
  let at = skipSpace(text, 0);
  for (const step of steps) {
    const next = text[at] === '{' ? memberOf(text, at, step) : text[at] === '[' ? elementOf(text, at, step) : null;
    if (next === null) return at;
    at = next;
  }
  return at;
}

/** Offset of the value of a property of the object that begins at `start`; null when it has no such property. */
function memberOf(text: string, start: number, name: string): number | null {
  let at = skipSpace(text, start + 1);
  while (text[at] === '"') {
    const end = endOfString(text, at);
    const value = skipSpace(text, skipSpace(text, end) + 1);
    if (JSON.parse(text.slice(at, end)) === name) return value;
    at = skipSpace(text, skipSpace(text, endOfValue(text, value)) + 1);
  }
  return null;
}

function elementOf(text: string, start: number, index: string): number | null {
  let at = skipSpace(text, start + 1);
  for (let left = Number(index); at < text.length && text[at] !== ']'; left -= 1) {
    if (left === 0) return at;
    at = skipSpace(text, skipSpace(text, endOfValue(text, at)) + 1);
  }
  return null;
}

function skipSpace(text: string, start: number): number {
  let at = start;
  while (at < text.length && ' \t\r\n'.includes(text.charAt(at))) at += 1;
  return at;
}

/** Offset behind the closing quote. */
function endOfString(text: string, start: number): number {
  let at = start + 1;
  while (at < text.length && text[at] !== '"') at += text[at] === '\\' ? 2 : 1;
  return at + 1;
}

function endOfValue(text: string, start: number): number {
  let depth = 0;
  let at = start;
  while (at < text.length) {
    const sign = text.charAt(at);
    if (depth === 0 && ',}]'.includes(sign)) return at;
    if (sign === '"') at = endOfString(text, at) - 1;
    else if (sign === '{' || sign === '[') depth += 1;
    else if (sign === '}' || sign === ']') depth -= 1;
    at += 1;
  }
  return at;
}
