/**
 * Splits at a separator that has no backslash before it; the backslashes stay for a later split.
 * Source: FHIR R4, Search, 3.1.1.5.8 Escaping Search Parameters.
 */
export function splitEscaped(text: string, separator: ',' | '|' | '$'): readonly string[] {
  const parts: string[] = [];
  let start = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '\\') at += 1;
    else if (text[at] === separator) {
      parts.push(text.slice(start, at));
      start = at + 1;
    }
  }
  parts.push(text.slice(start));
  return parts;
}

/** Takes the backslashes off; one before any other sign stands for itself. */
export function unescaped(text: string): string {
  return text.replace(/\\([,|$\\])/g, '$1');
}
