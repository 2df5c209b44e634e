import type { NextFunction, Request, Response } from 'express';
import type { Logger } from 'pino';
import { AccessError } from '../access/access-error.ts';
import { operationOutcome } from '../fhir/operation-outcome.ts';
import { ConflictError, RequestError, withSuggestion } from '../kernel/errors.ts';
import { challengeOf } from './admission.ts';
import { answerJson, mediaTypes } from './answer.ts';
import { MethodNotAllowedError } from './method-not-allowed-error.ts';
import { type Problem, problemOf } from './problems.ts';
import { rememberProblem, requestIdOf } from './request-log.ts';

/**
 * The last handler: every error leaves here, as an OperationOutcome below /exams and /fhir and as RFC 9457 problem
 * details elsewhere. An unexpected one is logged by its kind and place in the code; its message may quote the request
 * and stays out of the log and the answer.
 */
export function errorHandler(logger: Logger) {
  // Express knows an error handler by its four parameters.
  return (error: unknown, req: Request, res: Response, _next: NextFunction): void => {
    // A handler that comes to its end after the time for its answer was over finds that answered.
    if (res.writableEnded) return;
    const problem = problemOf(ofFramework(error));
    rememberProblem(res, problem.code);
    if (problem.status >= 500)
      logger.error({ requestId: requestIdOf(res), code: problem.code, ...placeOf(error) }, 'failed');
    else if (error instanceof AccessError) tellRefusal(logger, error, res);
    if (res.headersSent) {
      res.destroy();
      return;
    }
    if (error instanceof MethodNotAllowedError) res.setHeader('Allow', error.allow);
    if (error instanceof ConflictError && error.exam !== undefined) res.setHeader('Location', `/exams/${error.exam}`);
    if (problem.retryAfter !== undefined) res.setHeader('Retry-After', problem.retryAfter);
    if (/^\/(exams|fhir)(\/|$)/.test(req.path)) answerJson(res, problem.status, mediaTypes.fhir, outcomeOf(problem));
    else answerJson(res, problem.status, mediaTypes.problem, problemDetails(problem, requestIdOf(res)));
  };
}

/** Which check a token failed is for whoever runs the service to know, not for whoever sent it. */
function tellRefusal(logger: Logger, error: AccessError, res: Response): void {
  if (error.reason !== undefined) {
    logger.warn({ requestId: requestIdOf(res), code: error.code, reason: error.reason }, 'refused');
  }
  const challenge = challengeOf(error);
  if (challenge !== undefined && !res.headersSent) res.setHeader('WWW-Authenticate', challenge);
}

function outcomeOf(problem: Problem) {
  const severity = problem.status >= 500 ? ('fatal' as const) : ('error' as const);
  if (problem.faults.length === 0) {
    return operationOutcome([{ severity, type: problem.issue, code: problem.code, text: problem.detail }]);
  }
  return operationOutcome(
    problem.faults.map(({ code, pointer, ...fault }) => ({
      severity,
      type: problem.issue,
      code,
      text: withSuggestion(fault),
      pointer,
    })),
  );
}

/** Source: RFC 9457. `type` stays about:blank, so `title` is the meaning and `code` the key for programs. */
function problemDetails(problem: Problem, requestId: string) {
  return {
    type: 'about:blank',
    title: problem.title,
    status: problem.status,
    detail: problem.detail,
    code: problem.code,
    requestId,
    ...(problem.faults.length === 0
      ? {}
      : {
          errors: problem.faults.map(({ pointer, message, code, suggestion }) => ({
            pointer,
            detail: message,
            code,
            ...(suggestion === undefined ? {} : { suggestion }),
          })),
        }),
  };
}

/** Errors that Express throws on its own for a request that it cannot route. */
function ofFramework(error: unknown): unknown {
  if (error instanceof URIError) return new RequestError('BAD_REQUEST', 'The path has a malformed percent-encoding.');
  return error;
}

/** Class, code and the innermost frames; the first lines of a stack repeat the message and are left out. */
function placeOf(error: unknown): Record<string, unknown> {
  if (!(error instanceof Error)) return { kind: typeof error };
  const cause = error.cause instanceof Error ? { cause: { kind: error.cause.name, at: framesOf(error.cause) } } : {};
  return { kind: error.name, at: framesOf(error), ...cause };
}

function framesOf(error: Error): string[] {
  const lines = error.stack?.split('\n') ?? [];
  return lines
    .filter((line) => /^\s+at /.test(line))
    .slice(0, 8)
    .map((line) => line.trim());
}
