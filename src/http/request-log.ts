import { randomUUID } from 'node:crypto';
import type { NextFunction, Request, Response } from 'express';
import type { Logger } from 'pino';

/**
 * One line for each request, made of a fixed list of fields that cannot hold a person's data: never a path parameter, a
 * query string, a header or a body. The id goes back to the caller, so that a report can be matched with its line.
 */
export function requestLog(logger: Logger) {
  return (req: Request, res: Response, next: NextFunction): void => {
    const started = performance.now();
    const requestId = traceIdOf(req.headers.traceparent) ?? randomUUID();
    res.locals.requestId = requestId;
    res.setHeader('X-Request-Id', requestId);
    res.once('close', () => {
      logger.info({
        requestId,
        method: req.method,
        route: routeOf(res),
        // A caller who went away before the answer began has got no status.
        ...(res.headersSent ? { status: res.statusCode } : {}),
        durationMs: Math.round((performance.now() - started) * 10) / 10,
        bytes: Number(res.getHeader('Content-Length') ?? 0),
        ...(res.writableFinished ? {} : { aborted: true }),
      });
    });
    next();
  };
}

export function requestIdOf(res: Response): string {
  return String(res.locals.requestId);
}

/** Keeps the pattern of the matched route for the log: `/exams/:id`, not the id. */
export function rememberRoute(res: Response, pattern: string): void {
  res.locals.route = pattern;
}

function routeOf(res: Response): string {
  return typeof res.locals.route === 'string' ? res.locals.route : 'none';
}

/** The trace id of a W3C Trace Context header, version 00. */
function traceIdOf(header: string | string[] | undefined): string | undefined {
  const match = typeof header === 'string' ? /^00-(?<trace>[0-9a-f]{32})-[0-9a-f]{16}-[0-9a-f]{2}$/.exec(header) : null;
  const trace = match?.groups?.trace;
  return trace === '0'.repeat(32) ? undefined : trace;
}
