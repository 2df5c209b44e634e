import type { CodeableConcept, Coding } from 'fhir/r4.js';
import type { Coding as KernelCoding } from '../kernel/coding.ts';
import { systems } from '../terminology/systems.ts';
import { type LocalCode, localCodes } from './local-codes.ts';
import { fhirText } from './narrative.ts';

/**
 * Freezes a value that is shared between the resources of many Bundles, so that a caller who changes one Bundle gets an
 * error instead of changing all of them.
 */
export function shared<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) shared(part);
  }
  return value;
}

export function coding(system: string, code: string, display: string): Coding {
  return { system, code, display };
}

/** A concept with one coding; `text` defaults to the display. */
export function concept(system: string, code: string, display: string, text = display): CodeableConcept {
  return { coding: [coding(system, code, display)], text };
}

/** A coding of the assessment as a concept; the text is the service's own label, which may differ from the display. */
export function conceptOf(code: KernelCoding, text: string): CodeableConcept {
  return { coding: [codingOf(code)], text: fhirText(text) };
}

/** A row of a table as a concept: the open code where it has one, and its own code always, which stands in a hierarchy. */
export function rowConcept(
  row: { readonly key: string; readonly label: string; readonly code: KernelCoding },
  system: string,
): CodeableConcept {
  const { key, label, code } = row;
  const own = code.system === system ? [] : [coding(system, key, label)];
  return { coding: [codingOf(code), ...own], text: fhirText(label) };
}

function codingOf({ system, version, code, display }: KernelCoding): Coding {
  return { system, ...(version === undefined ? {} : { version }), code, display };
}

/** A code of the local exam-item code system as a shared concept. */
export function localConcept(name: keyof typeof localCodes): CodeableConcept {
  return localConcepts[name];
}

const localConcepts = Object.fromEntries(
  Object.entries(localCodes).map(([name, row]: [string, LocalCode]) => [
    name,
    shared(concept(row.system, row.code, row.display)),
  ]),
) as Record<keyof typeof localCodes, CodeableConcept>;

export const examCategory = shared([{ coding: [coding(systems.observationCategory, 'exam', 'Exam')] }]);

export const interpretations = shared({
  normal: [{ coding: [coding(systems.interpretation, 'N', 'Normal')] }],
  abnormal: [{ coding: [coding(systems.interpretation, 'A', 'Abnormal')] }],
});
