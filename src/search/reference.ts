/** What a literal reference names. */
export type ReferenceTarget =
  | { readonly kind: 'relative'; readonly type: string; readonly id: string }
  | { readonly kind: 'absolute'; readonly address: string };

const relative = /^(?<type>[A-Z][A-Za-z]+)\/(?<id>[A-Za-z0-9.-]{1,64})(?:\/_history\/[A-Za-z0-9.-]{1,64})?$/;
const typed = /(?:^|\/)(?<type>[A-Z][A-Za-z]+)\/[A-Za-z0-9.-]{1,64}(?:\/_history\/[A-Za-z0-9.-]{1,64})?$/;
export const uuidForm = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** Splits `Type/id`, with or without a version; anything else is an address to be compared to the letter. */
export function referenceTarget(text: string): ReferenceTarget {
  const { type, id } = relative.exec(text)?.groups ?? {};
  return type === undefined || id === undefined ? { kind: 'absolute', address: text } : { kind: 'relative', type, id };
}

/** Type that a literal reference names in its last parts; undefined for one that does not tell. */
export function typeInReference(text: string): string | undefined {
  return typed.exec(text)?.groups?.type;
}
