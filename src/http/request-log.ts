import type { NextFunction, Request, Response } from 'express';
import type { Logger } from 'pino';
import { traceContextOf } from './trace-context.ts';

/** An id of a caller's own is taken in this form alone: whatever else stands there might say something of a person. */
const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/**
 * One line for each request, made of a fixed list of fields that cannot hold a person's data: never a path parameter, a
 * query string, a header or a body. The id goes back to the caller, so that a report can be matched with its line.
 */
export function requestLog(logger: Logger) {
  return (req: Request, res: Response, next: NextFunction): void => {
    const started = performance.now();
    const trace = traceContextOf(req.headers.traceparent);
    const own = req.headers['x-request-id'];
    const requestId = typeof own === 'string' && uuid.test(own) ? own.toLowerCase() : trace.traceId;
    res.locals.requestId = requestId;
    res.setHeader('X-Request-Id', requestId);
    res.once('close', () => {
      const { traceId, spanId, parentId } = trace;
      const code = problemCodeOf(res);
      logger[isProbe(res) ? 'debug' : 'info'](
        {
          requestId,
          traceId,
          spanId,
          ...(parentId === undefined ? {} : { parentId }),
          method: req.method,
          route: routeOf(res),
          // A caller who went away before the answer began has got no status.
          ...(res.headersSent ? { status: res.statusCode } : {}),
          ...(code === undefined ? {} : { code }),
          durationMs: Math.round((performance.now() - started) * 10) / 10,
          bytes: Number(res.getHeader('Content-Length') ?? 0),
          ...(res.writableFinished ? {} : { aborted: true }),
        },
        'request',
      );
    });
    next();
  };
}

export function requestIdOf(res: Response): string {
  return String(res.locals.requestId);
}

/** What asks every few seconds, and would fill a log with nothing. */
function isProbe(res: Response): boolean {
  return /^\/(health\/|metrics$)/.test(routeOf(res)) && res.statusCode < 400;
}

/** Keeps the pattern of the matched route for the log: `/exams/:id`, not the id. */
export function rememberRoute(res: Response, pattern: string): void {
  res.locals.route = pattern;
}

/** The pattern of the matched route; `none` where there was none. */
export function routeOf(res: Response): string {
  return typeof res.locals.route === 'string' ? res.locals.route : 'none';
}

/** Keeps the code of what went wrong for the log and the metrics. */
export function rememberProblem(res: Response, code: string): void {
  res.locals.problem = code;
}

/** The code of what went wrong; undefined when nothing did. */
export function problemCodeOf(res: Response): string | undefined {
  return typeof res.locals.problem === 'string' ? res.locals.problem : undefined;
}
