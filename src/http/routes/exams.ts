import type { Request, Response, Router } from 'express';
import type { Caller } from '../../access/caller.ts';
import { narrowed, scopes } from '../../access/need.ts';
import type { ReferenceValue } from '../../exam/exam.ts';
import { bundleTypes } from '../../fhir/bundle-forms.ts';
import { ErasedError, NotFoundError } from '../../kernel/errors.ts';
import type { StoredExam } from '../../store/exam-repository.ts';
import { answerBytes, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { type AccessNote, noteAccess, patientsOf } from '../audit/access-note.ts';
import { recordOf } from '../audit/record-of.ts';
import { callerOf } from '../caller-of.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { etagOf, versionOfIfMatch } from '../etag.ts';
import type { AuditOfExam } from '../exam-records.ts';
import { oneOf, positiveInteger, readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';
import { ownPart, requireOwnExam, seesExam } from '../visible-exams.ts';

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

const reading = narrowed(scopes('exam.r'));
/** The answer shows what the earlier version had and this one has not, so it takes reading too. */
const correcting = narrowed(scopes('exam.ru'));

/** Exams that are kept: post, correct, and read again, as sent or as a FHIR Bundle. */
export function examRoutes(context: AppContext): Router {
  const router = newRouter();
  const body = requestBody(context.bodyLimitBytes);

  endpoint(router, '/exams', narrowed(scopes('exam.c')), {
    post: [
      body,
      async (req, res) => {
        readQuery(req, []);
        requireOwnExam(callerOf(res), bytesOf(req));
        const { created, exam } = await context.records.record(bytesOf(req), auditOf(req, res));
        // A repeat writes nothing: what is there is read.
        noteAccess(res, created ? { isKept: true } : { ...aboutExam(exam), action: 'R' });
        answerExam(res, created ? 201 : 200, exam, exam.bundle);
      },
    ],
  });

  endpoint(
    router,
    '/exams/:id',
    { get: reading, put: correcting },
    {
      get: [
        async (req, res) => {
          const exam = await stored(req, res, readQuery(req, ['version']).get('version'));
          res.setHeader('ETag', etagOf(exam.version));
          answerBytes(res, 200, mediaTypes.json, exam.raw);
        },
      ],
      put: [
        body,
        async (req, res) => {
          readQuery(req, []);
          const version = versionOfIfMatch(req.headers['if-match']);
          if (callerOf(res).subject !== undefined) {
            await stored(req, res, undefined);
            requireOwnExam(callerOf(res), bytesOf(req));
          }
          const exam = await context.records
            .correct(idOf(req), version, bytesOf(req), auditOf(req, res))
            .catch(async (error: unknown) => {
              throw error instanceof NotFoundError ? await unknown(idOf(req), callerOf(res)) : error;
            });
          noteAccess(res, { isKept: true });
          answerExam(res, 200, exam, exam.bundle);
        },
      ],
    },
  );

  endpoint(router, '/exams/:id/bundle', reading, {
    get: [
      async (req, res) => {
        const query = readQuery(req, ['type', 'version']);
        const type = oneOf('type', query.get('type') ?? 'transaction', bundleTypes);
        const exam = await stored(req, res, query.get('version'));
        answerExam(res, 200, exam, context.records.bundle(exam, type));
      },
    ],
  });

  endpoint(router, '/exams/:id/questionnaire-response', reading, {
    get: [
      async (req, res) => {
        const exam = await stored(req, res, readQuery(req, ['version']).get('version'));
        answerExam(res, 200, exam, context.records.asForm(exam));
      },
    ],
  });

  /** What the trail says when the exam is kept; if it is refused after all, of what. */
  const auditOf =
    (req: Request, res: Response): AuditOfExam =>
    (exam, subject) => {
      noteAccess(res, { exam, patients: patientsOf(subject) });
      return recordOf(context, req, res);
    };

  async function stored(req: Request, res: Response, version: string | undefined): Promise<StoredExam> {
    const number = version === undefined ? undefined : positiveInteger('version', version);
    const exam = await context.exams.find(idOf(req), number);
    const caller = callerOf(res);
    if (exam === undefined) throw await unknown(idOf(req), caller);
    if (!seesExam(caller, exam)) throw unknownExam();
    noteAccess(res, aboutExam(exam));
    return exam;
  }

  const unknown = (id: string, caller: Caller) => whyUnknown(context, id, caller);
  return router;
}

/** Id of the exam that an address names. @throws NotFoundError, ErasedError */
export async function requireExam(context: AppContext, req: Request, caller: Caller): Promise<string> {
  const id = idOf(req);
  if ((await context.exams.history(id)).length === 0) throw await whyUnknown(context, id, caller);
  return id;
}

/** Why there is nothing: an erased exam is told from one that never was, unless it was posted anew. */
async function whyUnknown(context: AppContext, id: string, { subject }: Caller): Promise<NotFoundError | ErasedError> {
  // Whose exam it was is not known any more.
  if (subject !== undefined) return unknownExam();
  const erasure = await context.erasures.find(id);
  if (erasure === undefined || (await context.exams.find(id)) !== undefined) return unknownExam();
  return new ErasedError(`This exam was erased at ${erasure.erasedAt}. It may be posted again, as a new exam.`);
}

function aboutExam({ id, raw }: StoredExam): AccessNote {
  const { subject } = JSON.parse(raw.toString('utf8')) as { readonly subject?: ReferenceValue };
  return { exam: id, patients: patientsOf(subject) };
}

function answerExam(res: Response, status: number, exam: StoredExam, bundle: Buffer): void {
  const own = ownPart(callerOf(res), bundle);
  res.setHeader('Location', `/exams/${exam.id}`);
  res.setHeader('ETag', etagOf(exam.version));
  answerBytes(res, status, mediaTypes.fhir, own);
}

/** What is no UUID cannot be the id of an exam, so the store is not asked. */
function idOf(req: Request): string {
  const { id } = req.params;
  if (typeof id !== 'string' || !uuid.test(id)) throw unknownExam();
  return id;
}

function unknownExam(): NotFoundError {
  return new NotFoundError('There is no exam with this id, or no such version of it.');
}
