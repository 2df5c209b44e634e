/** What is typed to say whom an exam is about, and who examined: a FHIR reference, or a number that the sender uses. */

export interface ReferenceValue {
  readonly reference?: string;
  readonly type?: string;
  readonly identifier?: { readonly system?: string; readonly value: string };
  readonly display?: string;
}

/** The types that each field takes. Source: FHIR R4, Observation.subject, .encounter and .performer, as far as the service takes them. */
export const referredTypes = {
  subject: ['Patient'],
  encounter: ['Encounter'],
  performer: ['Practitioner', 'PractitionerRole', 'Organization', 'CareTeam', 'Patient', 'RelatedPerson'],
} as const;
export type ReferenceField = keyof typeof referredTypes;

/** `Patient/4711` is a reference; anything else is a number that the sender knows the person or stay by. */
export function referenceOf(field: ReferenceField, typed: string): ReferenceValue | undefined {
  const text = typed.trim();
  if (text === '') return undefined;
  return isReference(field, text) ? { reference: text } : { identifier: { value: text } };
}

/** What would have to be typed for this reference; undefined when it says more than the field can hold. */
export function typedFor(field: ReferenceField, value: ReferenceValue): string | undefined {
  const text = value.reference ?? value.identifier?.value ?? '';
  const again = referenceOf(field, text);
  return again !== undefined && isSameJson(again, value) ? text : undefined;
}

/** What is wrong with what was typed, in words for the field; undefined when it can be sent. */
export function faultOfTyped(field: ReferenceField, typed: string): string | undefined {
  const text = typed.trim();
  const types: readonly string[] = referredTypes[field];
  if (text === '') {
    return field === 'subject' ? 'An exam that is kept has to say whom it is about: give a number.' : undefined;
  }
  if (text.length > 200 && !isReference(field, text)) return 'It is too long: 200 characters at most.';
  // Control characters cannot be typed, but they can be pasted.
  if ([...text].some((character) => character < ' ')) return 'It may not hold line breaks or tabs.';
  if (/^([A-Z][A-Za-z]{3,}\/|https?:\/\/|urn:)/.test(text) && !isReference(field, text)) {
    return `As a reference it has to be like ${types[0]}/4711${types.length > 1 ? ` (or ${types.slice(1).join(', ')})` : ''}.`;
  }
  return undefined;
}

const id = '[A-Za-z0-9.-]{1,64}';
const uuidUrn = /^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

function isReference(field: ReferenceField, text: string): boolean {
  const types = referredTypes[field].join('|');
  return new RegExp(`^(https?://[^\\s#?]+/)?(${types})/${id}(/_history/${id})?$`).test(text) || uuidUrn.test(text);
}

function isSameJson(one: ReferenceValue, other: ReferenceValue): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
