import type { Narrative } from 'fhir/r4.js';

/**
 * Text from outside as it may stand in a FHIR string: characters that R4 strings (and XML) exclude become U+FFFD.
 * Source: HL7 FHIR R4 datatypes, string; XML 1.0, Char.
 */
export function fhirText(text: string): string {
  return beyondPlain.test(text) ? text.replace(excluded, '\uFFFD') : text;
}

/** Anything but the characters of which nearly every text consists: the slow way is taken only when there is need. */
const beyondPlain = /[^\t\n\r -~\u00A0-\uD7FF]/;

// `Cs` is a surrogate without its partner; it cannot be written as UTF-8.
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is being looked for
const excluded = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF\p{Cs}]/gu;

/** Whether a text has something to read in it; R4 forbids empty strings. */
export function isBlank(text: string | undefined): boolean {
  return text === undefined || text.trim() === '';
}

/** Text for XHTML content and attribute values. */
function escapeXhtml(text: string): string {
  if (!unsafe.test(text)) return text;
  return fhirText(text).replace(special, (character) => entities.get(character) ?? '');
}

const unsafe = /[^\t\n\r !#-%(-;=?-~\u00A0-\uD7FF]/;
const special = /[&<>"']/g;
const entities = new Map([
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
  ['"', '&quot;'],
  ["'", '&#39;'],
]);

/** A paragraph for each part that blank lines set apart; the text is escaped. Empty for a blank text. */
export function paragraph(text: string): string {
  return isBlank(text) ? '' : `<p>${escapeXhtml(text).replaceAll(/\n{2,}/g, '</p><p>')}</p>`;
}

/** A list, ordered when rank matters; empty for no items. */
export function list(items: readonly string[], kind: 'ul' | 'ol' = 'ul'): string {
  return items.length === 0
    ? ''
    : `<${kind}>${items.map((item) => `<li>${escapeXhtml(item)}</li>`).join('')}</${kind}>`;
}

/** A bold heading with what follows it; empty when nothing follows. `body` is XHTML already. */
export function titled(title: string, body: string): string {
  return body === '' ? '' : `<p><b>${escapeXhtml(title)}</b></p>${body}`;
}

const opening = '<div xmlns="http://www.w3.org/1999/xhtml">';

/** Wraps XHTML made by the functions above as the generated narrative of a resource. */
export function narrative(xhtml: string): Narrative {
  return { status: 'generated', div: `${opening}${xhtml}</div>` };
}

/** A narrative made by `narrative` with `xhtml` in front of what it says; unchanged when it begins so already. */
export function openedBy(xhtml: string, { div, ...rest }: Narrative): Narrative {
  const said = div.slice(opening.length);
  return { ...rest, div: said.startsWith(xhtml) ? div : `${opening}${xhtml}${said}` };
}
