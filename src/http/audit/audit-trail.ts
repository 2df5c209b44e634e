import type { NextFunction, Request, Response, Router } from 'express';
import type { AppContext } from '../app-context.ts';
import { newRouter } from '../endpoint.ts';
import { errorHandler } from '../error-handler.ts';
import { accessOf, recordAccessBy } from './access-note.ts';
import { type AuditedRoute, auditedRoutes } from './audited-routes.ts';
import { type AuditedRequest, recordOf } from './record-of.ts';

/**
 * Holds every answer that the audit trail tells of until its record is on disk, and refuses it when the record cannot be
 * kept: nothing stored leaves without one. What is refused anyway stays refused.
 */
export function auditTrail(context: Pick<AppContext, 'audit' | 'logger' | 'now' | 'software'>): Router {
  const { audit, logger } = context;
  const router = newRouter();
  const answerError = errorHandler(logger);

  router.use((req: Request, res: Response, next: NextFunction) => {
    const send = { end: res.end.bind(res), write: res.write.bind(res) };
    const before = new Set(res.getHeaderNames());
    let state: 'open' | 'writing' | 'written' = 'open';

    /** Once, whatever comes of it: an answer that says why it failed is not held up again. */
    async function record(): Promise<void> {
      if (state !== 'open' || !isAudited(res)) return;
      state = 'writing';
      try {
        await audit.append(recordOf(context, req, res));
      } finally {
        state = 'written';
      }
    }
    recordAccessBy(res, record);

    res.end = ((...content: Parameters<typeof send.end>) => {
      if (state !== 'open' || !isAudited(res)) return send.end(...content);
      record().then(
        () => send.end(...content),
        (error: unknown) => {
          if (res.statusCode >= 400 || routeOf(res)?.isStateless === true) {
            logger.error({ requestId: res.locals.requestId, code: 'AUDIT_FAILED' }, 'failed');
            send.end(...content);
            return;
          }
          for (const name of res.getHeaderNames()) if (!before.has(name)) res.removeHeader(name);
          answerError(error, req, res, () => {});
        },
      );
      return res;
    }) as typeof res.end;

    res.write = ((...content: Parameters<typeof send.write>) => {
      if (state !== 'written' && isAudited(res)) throw new Error('An answer was begun before it was recorded.');
      return send.write(...content);
    }) as typeof res.write;
    next();
  });

  const finders = routeFinders();
  router.use((req: Request, res: Response, next: NextFunction) => {
    const find = finders.get(beginningOf(req.path));
    if (find === undefined) next();
    else find(req, res, next);
  });
  return router;
}

/**
 * Tells which row a request belongs to, by the same matching of paths as the routes have. One router for each beginning
 * of a path, so that a request is not held against every row.
 */
function routeFinders(): ReadonlyMap<string, Router> {
  const finders = new Map<string, Router>();
  for (const route of auditedRoutes) {
    const beginning = beginningOf(route.path);
    const router = finders.get(beginning) ?? newRouter();
    finders.set(beginning, router);
    // Not by method, since a router answers OPTIONS by itself for the methods that it knows.
    router.all(route.path, (req: Request, res: Response, next: NextFunction) => {
      const method = req.method === 'HEAD' ? 'get' : req.method.toLowerCase();
      if (method === route.method) res.locals.audited ??= { route, params: req.params } satisfies AuditedRequest;
      next();
    });
  }
  return finders;
}

/** `/exams`, or `/fhir/Observation`. */
function beginningOf(path: string): string {
  return /^\/(?:fhir\/)?[^/]*/.exec(path)?.[0] ?? path;
}

function routeOf(res: Response): AuditedRoute | undefined {
  return (res.locals.audited as AuditedRequest | undefined)?.route;
}

/** Refusals of access are told wherever they happen. */
function isAudited(res: Response): boolean {
  if (accessOf(res).isKept === true) return false;
  // Who asks too often is kept off before anything is looked at, and must not fill the trail.
  if (res.statusCode === 429) return false;
  return routeOf(res) !== undefined || res.statusCode === 401 || res.statusCode === 403;
}
