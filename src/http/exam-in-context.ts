import type { ClinicalImpression } from 'fhir/r4.js';
import type { HookBody } from '../cds/hook-body.ts';
import { responseKey } from '../cds/services.ts';
import type { Exam } from '../exam/exam.ts';
import { pointerTo } from '../exam/faults/pointer.ts';
import { ExamInvalidError, PrefetchMissingError } from '../kernel/errors.ts';
import { isObject, type Json } from '../questionnaire/json-object.ts';
import { isQuestionnaireResponse } from '../questionnaire/read-response.ts';
import { readSearch } from '../search/read-search.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment } from '../workup/assessment.ts';
import type { AppContext } from './app-context.ts';

export interface ExamInContext {
  readonly exam: Exam;
  readonly assessment: Assessment;
}

/**
 * The exam that a hook is about: the form in the prefetch, or else the patient's newest exam that is kept here. Nothing is
 * fetched from the caller's server.
 * @param mayReadStore whether the caller may hear of what is kept about this patient
 * @returns undefined when there is none, or the one there is was entered in error
 * @throws ExamInvalidError  when the form has faults, or is about another patient
 * @throws PrefetchMissingError when the client sent no prefetch, and nothing is kept either
 */
export async function examInContext(
  context: AppContext,
  { context: { patientId }, prefetch }: HookBody,
  mayReadStore: boolean,
): Promise<ExamInContext | undefined> {
  const fetched = responseIn(prefetch?.[responseKey]);
  if (fetched !== undefined) return valid(assessForm(context, fetched, patientId));
  const kept = mayReadStore ? await newestExam(context, patientId) : undefined;
  if (kept !== undefined) return valid(assessKept(context, kept));
  if (prefetch === undefined || !Object.hasOwn(prefetch, responseKey)) {
    throw new PrefetchMissingError(
      `Send the prefetch ${responseKey}, null where there is none: no exam of this patient is kept here, and nothing is fetched.`,
    );
  }
  return undefined;
}

function valid(found: ExamInContext | undefined): ExamInContext | undefined {
  return found?.exam.status === 'entered-in-error' ? undefined : found;
}

interface Fetched {
  readonly response: Json;
  readonly pointer: string;
}

/** The template is a search, so that a Bundle comes; some clients send the resource itself. */
function responseIn(sent: unknown): Fetched | undefined {
  const at = pointerTo('prefetch', responseKey);
  if (isQuestionnaireResponse(sent)) return { response: sent, pointer: at };
  if (!isObject(sent) || sent.resourceType !== 'Bundle' || !Array.isArray(sent.entry)) return undefined;
  for (const [index, entry] of sent.entry.entries()) {
    const resource: unknown = isObject(entry) ? entry.resource : undefined;
    if (isQuestionnaireResponse(resource)) return { response: resource, pointer: `${at}/entry/${index}/resource` };
  }
  return undefined;
}

/** Advice on another patient would be worse than none. */
function assessForm({ records }: AppContext, { response, pointer }: Fetched, patientId: string): ExamInContext {
  try {
    const found = records.assess(response);
    const reference = found.exam.subject?.reference;
    if (reference !== undefined && !`/${reference}`.split('/_history/')[0]?.endsWith(`/Patient/${patientId}`)) {
      const message = 'The subject of the response is not the patient of the context.';
      throw new ExamInvalidError([{ pointer: '/subject/reference', code: 'OTHER_PATIENT', message }]);
    }
    return found;
  } catch (error) {
    if (!(error instanceof ExamInvalidError)) throw error;
    throw new ExamInvalidError(error.faults.map((fault) => ({ ...fault, pointer: `${pointer}${fault.pointer}` })));
  }
}

/** What an earlier version took and this one refuses gives no advice. */
function assessKept({ records }: AppContext, raw: Buffer): ExamInContext | undefined {
  try {
    return records.assess(JSON.parse(raw.toString('utf8')));
  } catch (error) {
    if (error instanceof ExamInvalidError) return undefined;
    throw error;
  }
}

/** The newest exam by its clinical date of which the impression still stands. */
async function newestExam(
  { resources, exams, terminology }: AppContext,
  patientId: string,
): Promise<Buffer | undefined> {
  const asked = [
    ['subject', `Patient/${patientId}`],
    ['status:not', 'entered-in-error'],
    ['_sort', '-date'],
    ['_count', '1'],
  ] as const;
  const { query } = readSearch('ClinicalImpression', asked, { strict: true, ...terminology });
  const [newest] = (await resources.search(query)).matches;
  if (newest === undefined) return undefined;
  const { meta } = JSON.parse(newest.json) as ClinicalImpression;
  const id = meta?.tag?.find(({ system }) => system === systems.exam)?.code;
  return id === undefined ? undefined : (await exams.find(id))?.raw;
}
