import type { Request, Response, Router } from 'express';
import { bundleTypes } from '../../fhir/bundle-forms.ts';
import { ErasedError, NotFoundError } from '../../kernel/errors.ts';
import type { StoredExam } from '../../store/exam-repository.ts';
import { answerBytes, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { etagOf, versionOfIfMatch } from '../etag.ts';
import { oneOf, positiveInteger, readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** Exams that are kept: post, correct, and read again, as sent or as a FHIR Bundle. */
export function examRoutes(context: AppContext): Router {
  const router = newRouter();
  const body = requestBody(context.bodyLimitBytes);

  endpoint(router, '/exams', {
    post: [
      body,
      async (req, res) => {
        readQuery(req, []);
        const { created, exam } = await context.records.record(bytesOf(req));
        answerExam(res, created ? 201 : 200, exam, exam.bundle);
      },
    ],
  });

  endpoint(router, '/exams/:id', {
    get: [
      async (req, res) => {
        const exam = await stored(req, readQuery(req, ['version']).get('version'));
        res.setHeader('ETag', etagOf(exam.version));
        answerBytes(res, 200, mediaTypes.json, exam.raw);
      },
    ],
    put: [
      body,
      async (req, res) => {
        readQuery(req, []);
        const version = versionOfIfMatch(req.headers['if-match']);
        const exam = await context.records.correct(idOf(req), version, bytesOf(req)).catch(async (error: unknown) => {
          throw error instanceof NotFoundError ? await unknown(idOf(req)) : error;
        });
        answerExam(res, 200, exam, exam.bundle);
      },
    ],
  });

  endpoint(router, '/exams/:id/bundle', {
    get: [
      async (req, res) => {
        const query = readQuery(req, ['type', 'version']);
        const type = oneOf('type', query.get('type') ?? 'transaction', bundleTypes);
        const exam = await stored(req, query.get('version'));
        answerExam(res, 200, exam, context.records.bundle(exam, type));
      },
    ],
  });

  endpoint(router, '/exams/:id/questionnaire-response', {
    get: [
      async (req, res) => {
        const exam = await stored(req, readQuery(req, ['version']).get('version'));
        answerExam(res, 200, exam, context.records.asForm(exam));
      },
    ],
  });

  async function stored(req: Request, version: string | undefined): Promise<StoredExam> {
    const number = version === undefined ? undefined : positiveInteger('version', version);
    const exam = await context.exams.find(idOf(req), number);
    if (exam === undefined) throw await unknown(idOf(req));
    return exam;
  }

  /** Why there is nothing: an erased exam is told from one that never was, unless it was posted anew. */
  async function unknown(id: string): Promise<NotFoundError | ErasedError> {
    const erasure = await context.erasures.find(id);
    if (erasure === undefined || (await context.exams.find(id)) !== undefined) return unknownExam();
    return new ErasedError(`This exam was erased at ${erasure.erasedAt}. It may be posted again, as a new exam.`);
  }

  return router;
}

function answerExam(res: Response, status: number, exam: StoredExam, bundle: Buffer): void {
  res.setHeader('Location', `/exams/${exam.id}`);
  res.setHeader('ETag', etagOf(exam.version));
  answerBytes(res, status, mediaTypes.fhir, bundle);
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
