import { examId } from '../exam/exam-id.ts';
import type { Pseudonyms } from './pseudonyms.ts';
import { movedTime, nameIn, pseudonymousReference } from './subject.ts';

/** System of the identifiers of de-identified exams. Source: FHIR R4, datatype Identifier: values that are URIs. */
const uriSystem = 'urn:ietf:rfc:3986';

/**
 * Years above which no age is told. Source: 45 CFR 164.514(b)(2)(i)(C), ages over 89 to be put together (from memory).
 */
const highestAge = 90;

type Fields = Readonly<Record<string, unknown>>;

/**
 * An exam as it was sent without what could name a person: pseudonyms for exam and subject, times moved, no encounter,
 * no examiner, no free text. All other texts of an exam are keys of the catalogue and codes.
 * @param exam a body that the reader has found sound
 */
export function deidentifyExam(exam: Fields, pseudonyms: Pseudonyms): Fields {
  const subject = nameIn(exam.subject);
  const identifier = exam.identifier as Parameters<typeof examId>[0] | undefined;
  // Without a subject nothing belongs together but the exam itself.
  const shift = pseudonyms.shiftMs(subject ?? JSON.stringify(identifier ?? exam));
  const { person, status, history, findings, otherwiseNormal, results, requests } = exam;
  const { ageYears, ...others } = (person ?? {}) as { ageYears?: number };
  const kept: Record<string, unknown> = {
    identifier: identifier && {
      system: uriSystem,
      // As the tag of the resources that were made from it.
      value: `urn:uuid:${pseudonyms.of('id', examId(identifier))}`,
    },
    status,
    subject: subject === undefined ? undefined : pseudonymousReference('Patient', subject, pseudonyms),
    examinedAt: movedTime(String(exam.examinedAt), shift),
    person: person && { ...others, ...(ageYears === undefined ? {} : { ageYears: Math.min(ageYears, highestAge) }) },
    history,
    findings,
    otherwiseNormal,
    results,
    requests,
  };
  return withoutFreeText(Object.fromEntries(Object.entries(kept).filter(([, value]) => value !== undefined))) as Fields;
}

/** Names of what an examiner writes in words of their own, wherever in an exam it stands. */
const freeTexts: ReadonlySet<string> = new Set(['note', 'display', 'version']);

function withoutFreeText(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutFreeText);
  if (typeof value !== 'object' || value === null) return value;
  const hasCode = 'code' in value && 'value' in value;
  return Object.fromEntries(
    Object.entries(value)
      // The unit in print is free beside its code; without one it is what was understood as the unit.
      .filter(([name]) => !freeTexts.has(name) && !(name === 'unit' && hasCode))
      .map(([name, inner]) => [name, withoutFreeText(inner)]),
  );
}
