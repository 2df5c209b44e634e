/** "a", "a and b", "a, b and c". */
export function joinWords(words: readonly string[], last = 'and'): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** The same text with a capital at the start. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A sentence: capital at the start, full stop at the end; empty text stays empty. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  if (trimmed === '') return '';
  return `${capitalised(trimmed)}${/[.!?]$/.test(trimmed) ? '' : '.'}`;
}

/** "an inspection sign", "a gait sign" */
export function withArticle(noun: string): string {
  return `${/^[aeiou]/i.test(noun) ? 'an' : 'a'} ${noun}`;
}
