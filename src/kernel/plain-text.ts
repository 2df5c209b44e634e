/**
 * Text, number or truth value as text, and nothing of anything else: an object that somebody sends may have a property of
 * the name `toString`, and cannot be made a text of by JavaScript's own means.
 */
export function plainText(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';
}
