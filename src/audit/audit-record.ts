import { fhirText } from '../fhir/narrative.ts';
import { type Interaction, isInteraction } from './interactions.ts';

/** Whose record it is, as it was referred to: a literal reference, or an identifier where the sender gave no more. */
export type PatientReference =
  | { readonly reference: string }
  | { readonly identifier: { readonly system?: string; readonly value: string } };

/**
 * One entry of the audit trail: who did what to which record, when, and how it ended; never what stands in the record.
 * An AuditEvent is made from it whenever somebody asks, see `audit-event.ts`.
 */
export interface AuditRecord {
  /** ISO 8601, UTC. */
  readonly at: string;
  readonly interaction: Interaction;
  /** Create, read, update, delete, or execute. */
  readonly action: 'C' | 'R' | 'U' | 'D' | 'E';
  /** Success, minor failure (the caller's), serious failure (ours). Source: HL7 FHIR R4, audit-event-outcome. */
  readonly outcome: '0' | '4' | '8';
  /** Why it failed, in general words. */
  readonly reason?: string;
  /** Name of the program that asked, or of the account that ran a command. */
  readonly client: string;
  /** Key of the user behind the program. */
  readonly user?: string;
  /** Address that the request came from. */
  readonly address?: string;
  /** Name of an operation such as `$export`, or method and path of what was refused. */
  readonly operation?: string;
  /** Id of the exam. */
  readonly exam?: string;
  /** `Type/id` or `Type/id/_history/version`. */
  readonly resource?: string;
  /** Id of the bulk export. */
  readonly job?: string;
  readonly patients?: readonly PatientReference[];
  /** Path and parameters that were asked with. */
  readonly query?: string;
  /** Value of X-Request-Id. */
  readonly request?: string;
  /** Version of the service that wrote the entry. */
  readonly software?: string;
}

const keys = [
  'at',
  'interaction',
  'action',
  'outcome',
  'reason',
  'client',
  'user',
  'address',
  'operation',
  'exam',
  'resource',
  'job',
  'patients',
  'query',
  'request',
  'software',
] as const satisfies readonly (keyof AuditRecord)[];

/** The record as it is kept and hashed: JSON with its members in a fixed order. */
export function recordText(record: AuditRecord): string {
  const members = keys.flatMap((key) => (record[key] === undefined ? [] : [[key, record[key]] as const]));
  return JSON.stringify(Object.fromEntries(members));
}

/**
 * A record from its text.
 * @throws SyntaxError, RangeError for text that `recordText` did not make
 */
export function readRecord(text: string): AuditRecord {
  const record = JSON.parse(text) as AuditRecord;
  if (!isInteraction(record.interaction) || Number.isNaN(Date.parse(record.at))) {
    throw new RangeError('This is no record of the audit trail.');
  }
  return record;
}

/** What a record can be found by; stored as numbers, so add at the end. */
export const entryKinds = { patient: 1, exam: 2, resource: 3, agent: 4 } as const;
export type EntryKind = keyof typeof entryKinds;

export interface Entry {
  readonly kind: (typeof entryKinds)[EntryKind];
  readonly value: string;
}

/** The entries of the index for a record, each once. */
export function entriesOf({ patients = [], exam, resource, client, user }: AuditRecord): readonly Entry[] {
  const found = new Map<string, Entry>();
  const add = (kind: EntryKind, value: string | undefined) => {
    if (value !== undefined) {
      const entry = { kind: entryKinds[kind], value: entryValue(value) };
      found.set(`${kind} ${entry.value}`, entry);
    }
  };
  for (const patient of patients) add('patient', patientKey(patient));
  add('exam', exam);
  add('resource', resource?.replace(/\/_history\/.*$/, ''));
  for (const agent of [client, user]) add('agent', agent?.toLowerCase());
  return [...found.values()];
}

/** An index has no room for long texts and takes no NUL; what is looked for is cut the same way. */
export function entryValue(text: string): string {
  return fhirText(text.slice(0, longestValue));
}
const longestValue = 500;

/** A person's record as the index has it: `Patient/4711`, or `system|value`. */
export function patientKey(patient: PatientReference): string {
  if ('reference' in patient) return patient.reference;
  return `${patient.identifier.system ?? ''}|${patient.identifier.value}`;
}
