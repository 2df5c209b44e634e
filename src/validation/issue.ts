import type { OperationOutcomeIssue } from 'fhir/r4.js';

/** One thing that a check found, at a place in the resource. */
export interface ValidationIssue {
  readonly severity: 'error' | 'warning' | 'information';
  /** FHIR issue type. */
  readonly type: OperationOutcomeIssue['code'];
  /** Names elements, types, codes of ours and rules of HL7; never a value of the resource. */
  readonly text: string;
  /** FHIRPath of the place. */
  readonly expression: string;
}

export type Json = Readonly<Record<string, unknown>>;

export function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Items of a list, or the one value that is there; nothing for none. */
export function itemsOf(value: unknown): readonly unknown[] {
  if (value === undefined || value === null) return [];
  return Array.isArray(value) ? value : [value];
}

/** FHIRPath of an item: with its index in a list. */
export function itemPath(path: string, value: unknown, index: number): string {
  return Array.isArray(value) ? `${path}[${index}]` : path;
}
