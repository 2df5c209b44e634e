import type { Response } from 'express';
import type { AuditRecord, PatientReference } from '../../audit/audit-record.ts';
import { splitEscaped, unescaped } from '../../search/escaped.ts';
import { systems } from '../../terminology/systems.ts';

/** What a route knows of an access beyond its address, for the audit trail. */
export interface AccessNote {
  readonly exam?: string;
  readonly resource?: string;
  /** Id of a bulk export that the request begins. */
  readonly job?: string;
  readonly patients?: readonly PatientReference[];
  /** Where it is other than the route's. */
  readonly action?: AuditRecord['action'];
  /** The record stands in the trail already, written in the transaction of what it tells. */
  readonly isKept?: boolean;
}

export function noteAccess(res: Response, note: AccessNote): void {
  res.locals.access = { ...accessOf(res), ...note };
}

export function accessOf(res: Response): AccessNote {
  return (res.locals.access as AccessNote | undefined) ?? {};
}

/** Whose record a resource of the store belongs to, and which exam it was made from. */
export function noteResource(res: Response, { json }: { readonly json: string }): void {
  const { subject, meta } = JSON.parse(json) as {
    readonly subject?: Partial<Referring>;
    readonly meta?: { readonly tag?: readonly { readonly system?: string; readonly code?: string }[] };
  };
  const exam = meta?.tag?.find(({ system }) => system === systems.exam)?.code;
  noteAccess(res, { patients: patientsOf(subject), ...(exam === undefined ? {} : { exam }) });
}

interface Referring {
  readonly reference: string | undefined;
  readonly identifier: { readonly system?: string; readonly value?: string };
}

/** The person that a FHIR Reference names, by address or by identifier. */
export function patientsOf(subject: Partial<Referring> | undefined): readonly PatientReference[] {
  if (subject?.reference !== undefined) return [{ reference: subject.reference }];
  const { system, value } = subject?.identifier ?? {};
  if (value === undefined) return [];
  return [{ identifier: { ...(system === undefined ? {} : { system }), value } }];
}

/** More persons than this in one search stand in the query alone. */
const mostPatients = 100;

/** The persons that a search names. */
export function patientsAskedFor(parameters: readonly (readonly [string, string])[]): readonly PatientReference[] {
  const found = new Map<string, PatientReference>();
  for (const [name, values] of parameters) {
    const isIdentifier = /^(patient|subject)(:identifier|(:Patient)?\.identifier)$/.test(name);
    if (!isIdentifier && !/^(patient|subject)(:Patient)?$/.test(name)) continue;
    for (const text of splitEscaped(values, ',')) {
      const patient = isIdentifier ? identified(text) : referred(unescaped(text));
      found.set(JSON.stringify(patient), patient);
    }
  }
  return [...found.values()].slice(0, mostPatients);
}

function identified(text: string): PatientReference {
  const [first = '', second] = splitEscaped(text, '|').map(unescaped);
  if (second === undefined) return { identifier: { value: first } };
  return { identifier: { ...(first === '' ? {} : { system: first }), value: second } };
}

function referred(text: string): PatientReference {
  return { reference: text.includes('/') ? text : `Patient/${text}` };
}

/**
 * Writes the access into the audit trail, before the first byte of an answer that is sent piece by piece; does nothing
 * where no trail is kept.
 * @throws StoreError when it cannot be kept
 */
export async function recordAccess(res: Response): Promise<void> {
  const { recordAccess: record } = (res.locals ?? {}) as { readonly recordAccess?: () => Promise<void> };
  await record?.();
}

/** What `recordAccess` does for this answer. */
export function recordAccessBy(res: Response, record: () => Promise<void>): void {
  res.locals.recordAccess = record;
}
