/** Text as it may stand in HTML, also in an attribute. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

/** The little Markdown that descriptions use: code between backticks, and bold. */
export function inlineHtml(text: string): string {
  return escapeHtml(text)
    .replace(/`([^`]+)`/g, '<code>$1</code>')
    .replace(/\*\*([^*]+)\*\*/g, '<strong>$1</strong>');
}

export function paragraphs(text: string): string {
  return text
    .split('\n\n')
    .map((paragraph) => `<p>${inlineHtml(paragraph)}</p>`)
    .join('\n');
}

/** A name for an address within the page. */
export function anchorOf(...parts: readonly string[]): string {
  return parts
    .join('-')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase();
}
