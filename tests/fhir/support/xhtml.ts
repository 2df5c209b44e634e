const allowed = new Set(['div', 'p', 'b', 'ul', 'ol', 'li']);

/**
 * Problems of a narrative fragment as XML: balance of tags, tags that our narratives use, entities that XML knows,
 * characters that XML allows. Source: XML 1.0, productions 1 to 68; FHIR R4 narrative, txt-1 and txt-2.
 */
export function xhtmlProblems(div: string): string[] {
  const problems: string[] = [];
  const open: string[] = [];
  const root = '<div xmlns="http://www.w3.org/1999/xhtml">';
  if (!div.startsWith(root)) problems.push('no XHTML root');
  // biome-ignore lint/suspicious/noControlCharactersInRegex: XML forbids them
  if (/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF\p{Cs}]/u.test(div)) problems.push('a character outside XML');
  for (const [tag, slash, name] of div.matchAll(/<(\/?)([a-z]*)[^>]*>/g)) {
    if (!allowed.has(name ?? '')) problems.push(`tag ${tag}`);
    else if (slash === '') open.push(name ?? '');
    else if (open.pop() !== name) problems.push(`unbalanced ${tag}`);
  }
  if (open.length > 0) problems.push(`left open: ${open.join()}`);
  const text = div.replaceAll(/<\/?[a-z]+(?: xmlns="http:\/\/www\.w3\.org\/1999\/xhtml")?>/g, '');
  if (/[<>]/.test(text)) problems.push('a bare angle bracket');
  if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(text)) problems.push('an entity that XML does not know');
  if (text.trim() === '') problems.push('nothing to read');
  return problems;
}
