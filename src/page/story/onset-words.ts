import type { Draft } from '../draft/draft.ts';

export type Pace = NonNullable<Draft['onset']['pace']>;
export type Course = NonNullable<Draft['course']>;
export type Sex = NonNullable<Draft['person']['sex']>;

interface Words {
  readonly label: string;
  readonly hint?: string;
}

/** From the first symptom to the worst; what each word means to the service. */
export const paces: Readonly<Record<Pace, Words>> = {
  hyperacute: { label: 'Hyperacute', hint: 'seconds to hours' },
  acute: { label: 'Acute', hint: 'days' },
  subacute: { label: 'Subacute', hint: 'weeks' },
  chronic: { label: 'Chronic', hint: 'months to years' },
};

export const courses: Readonly<Record<Course, Words>> = {
  progressive: { label: 'Progressive', hint: 'worse and worse' },
  static: { label: 'Static', hint: 'unchanged since' },
  improving: { label: 'Improving' },
  'relapsing-remitting': { label: 'Relapsing-remitting', hint: 'attacks with recovery' },
  fluctuating: { label: 'Fluctuating', hint: 'varies by the hour or day' },
  monophasic: { label: 'Monophasic', hint: 'one attack' },
};

/** FHIR's administrative gender. */
export const sexes: Readonly<Record<Sex, Words>> = {
  female: { label: 'Female' },
  male: { label: 'Male' },
  other: { label: 'Other' },
  unknown: { label: 'Unknown' },
};

/** The rows of such a table as choices, in its order. */
export function choicesOf<Key extends string>(
  table: Readonly<Record<Key, Words>>,
): readonly (Words & { readonly key: Key })[] {
  return (Object.entries(table) as [Key, Words][]).map(([key, words]) => ({ key, ...words }));
}
