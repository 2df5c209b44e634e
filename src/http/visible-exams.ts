import type { Bundle, Reference } from 'fhir/r4.js';
import { AccessError } from '../access/access-error.ts';
import type { Caller } from '../access/caller.ts';
import { parseStrictJson } from '../exam/strict-json.ts';
import type { StoredExam } from '../store/exam-repository.ts';
import { maxDepth } from './exam-records.ts';

/** Whether a caller may see an exam: one that is limited to a subject sees those of this subject alone. */
export function seesExam({ subject }: Caller, exam: StoredExam): boolean {
  return subject === undefined || subjectIn(exam.raw) === subject;
}

/**
 * Refuses an exam of somebody else from a caller that is limited to one subject.
 * @throws AccessError INSUFFICIENT_SCOPE; RequestError for bytes that are no JSON
 */
export function requireOwnExam({ subject }: Caller, bytes: Buffer): void {
  if (subject === undefined || subjectIn(bytes) === subject) return;
  throw new AccessError('INSUFFICIENT_SCOPE', { reason: 'subject' });
}

/**
 * A Bundle as a caller may see it. That of a correction takes back what only earlier versions had, and these may have been
 * of somebody else: a wrong patient is what exams are corrected for.
 */
export function ownPart({ subject }: Caller, bundle: Buffer): Buffer {
  if (subject === undefined) return bundle;
  const { entry = [], ...rest } = JSON.parse(bundle.toString('utf8')) as Bundle;
  const own = entry.filter(({ resource }) => {
    const about = (resource as { subject?: Reference } | undefined)?.subject;
    return about === undefined || about.reference === subject;
  });
  return Buffer.from(JSON.stringify({ ...rest, entry: own }), 'utf8');
}

/** Literal reference of the subject. */
function subjectIn(bytes: Buffer): unknown {
  const exam = parseStrictJson(bytes, { maxDepth }) as { subject?: { reference?: unknown } | null } | null;
  return exam?.subject?.reference;
}
