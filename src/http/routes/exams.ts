import type { Request, Response, Router } from 'express';
import type { Caller } from '../../access/caller.ts';
import { narrowed, scopes } from '../../access/need.ts';
import { bundleTypes } from '../../fhir/bundle-forms.ts';
import { ErasedError, NotFoundError } from '../../kernel/errors.ts';
import type { StoredExam } from '../../store/exam-repository.ts';
import { answerBytes, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { callerOf } from '../caller-of.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { etagOf, versionOfIfMatch } from '../etag.ts';
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
        const { created, exam } = await context.records.record(bytesOf(req));
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
          const exam = await stored(req, callerOf(res), readQuery(req, ['version']).get('version'));
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
            await stored(req, callerOf(res), undefined);
            requireOwnExam(callerOf(res), bytesOf(req));
          }
          const exam = await context.records.correct(idOf(req), version, bytesOf(req)).catch(async (error: unknown) => {
            throw error instanceof NotFoundError ? await unknown(idOf(req), callerOf(res)) : error;
          });
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
        const exam = await stored(req, callerOf(res), query.get('version'));
        answerExam(res, 200, exam, context.records.bundle(exam, type));
      },
    ],
  });

  async function stored(req: Request, caller: Caller, version: string | undefined): Promise<StoredExam> {
    const number = version === undefined ? undefined : positiveInteger('version', version);
    const exam = await context.exams.find(idOf(req), number);
    if (exam === undefined) throw await unknown(idOf(req), caller);
    if (!seesExam(caller, exam)) throw unknownExam();
    return exam;
  }

  /** Why there is nothing: an erased exam is told from one that never was, unless it was posted anew. */
  async function unknown(id: string, { subject }: Caller): Promise<NotFoundError | ErasedError> {
    // Whose exam it was is not known any more.
    if (subject !== undefined) return unknownExam();
    const erasure = await context.erasures.find(id);
    if (erasure === undefined || (await context.exams.find(id)) !== undefined) return unknownExam();
    return new ErasedError(`This exam was erased at ${erasure.erasedAt}. It may be posted again, as a new exam.`);
  }

  return router;
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
