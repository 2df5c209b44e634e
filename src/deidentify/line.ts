import { AppError, ExamInvalidError } from '../kernel/errors.ts';
import { isQuestionnaireResponse } from '../questionnaire/read-response.ts';
import type { SentExam } from '../questionnaire/read-sent-exam.ts';
import { deidentifyExam } from './exam.ts';
import type { Pseudonyms } from './pseudonyms.ts';
import { deidentifyResource, UnknownTypeError } from './resource.ts';

type Fields = Readonly<Record<string, unknown>>;

/**
 * Reads what was sent as an exam, in its own JSON or as a QuestionnaireResponse.
 * @throws ExamInvalidError for one that is not sound: only of a sound one it is known where text can stand
 */
export type ReadSent = (sent: unknown) => Pick<SentExam, 'body'>;

/** What became of one line. */
export type LineResult =
  | { readonly lines: readonly string[]; readonly omitted: number }
  /** What was expected, without any of the content. */
  | { readonly fault: string };

/**
 * One line of NDJSON: an exam as it was sent, in its own JSON or as a QuestionnaireResponse, of which the exam is left; a
 * resource; or a Bundle, whose resources become a line each.
 * @param text JSON of one object
 */
export function deidentifyLine(text: string, pseudonyms: Pseudonyms, read: ReadSent): LineResult {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { fault: 'JSON was expected.' };
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) {
    return { fault: 'An exam, a resource or a Bundle was expected.' };
  }
  const line = parsed as Fields;
  try {
    if (line.resourceType === undefined || isQuestionnaireResponse(parsed)) {
      const { body } = read(parsed);
      return { lines: [JSON.stringify(deidentifyExam(body as Fields, pseudonyms))], omitted: 0 };
    }
    const resources = line.resourceType === 'Bundle' ? resourcesIn(line.entry) : [line];
    const kept = resources.flatMap((resource) => deidentifyResource(resource, pseudonyms) ?? []);
    return { lines: kept.map((resource) => JSON.stringify(resource)), omitted: resources.length - kept.length };
  } catch (error) {
    if (error instanceof UnknownTypeError)
      return { fault: 'A resource of a type that this service makes was expected.' };
    if (error instanceof ExamInvalidError) {
      const places = error.faults.map(({ pointer }) => (pointer === '' ? '(whole exam)' : pointer)).slice(0, 3);
      return { fault: `A sound exam was expected; it has faults at ${places.join(', ')}. See neuroexam check.` };
    }
    if (error instanceof AppError) return { fault: error.message };
    throw error;
  }
}

function resourcesIn(entries: unknown): readonly Fields[] {
  if (!Array.isArray(entries)) return [];
  return entries.flatMap((entry: { resource?: unknown } | null) => {
    const resource = entry?.resource;
    return typeof resource === 'object' && resource !== null ? [resource as Fields] : [];
  });
}
