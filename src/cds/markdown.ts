/** Longest summary in characters. Source: CDS Hooks 2.0, card attributes: "a one-sentence, <140-character summary". */
const summaryLength = 139;

/** A summary that is cut at a word where it is too long. */
export function summaryOf(text: string): string {
  if (text.length <= summaryLength) return text;
  const cut = text.slice(0, summaryLength - 1);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 1))}…`;
}

/** Text as Markdown that means just this text; labels and reasons never hold markup of their own. */
export function plain(text: string): string {
  return text.replaceAll(/[\\`*_[\]<>#|~]/g, (mark) => `\\${mark}`);
}

export function bullets(lines: readonly string[]): string {
  return lines.map((line) => `- ${line}`).join('\n');
}

/** Paragraphs and lists with an empty line between; what is empty is left out. */
export function paragraphs(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join('\n\n');
}

export function percent(probability: number): string {
  const whole = Math.round(probability * 100);
  if (whole === 0) return 'below 1 %';
  return whole === 100 ? 'above 99 %' : `${whole} %`;
}
