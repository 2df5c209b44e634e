import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { problemCodeOf, routeOf } from '../request-log.ts';
import type { ServiceMetrics } from './service-metrics.ts';

/** Methods by name; a server is sent all sorts of others. */
const methods = ['GET', 'HEAD', 'POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'];

/** Counts each request when its answer ends; `none` is the route of what has none and the status of what got none. */
export function countRequests(metrics: ServiceMetrics): RequestHandler {
  return (req: Request, res: Response, next: NextFunction) => {
    const started = performance.now();
    res.once('close', () => {
      const labels = {
        method: methods.includes(req.method) ? req.method : 'other',
        route: routeOf(res),
        status: res.headersSent ? `${Math.floor(res.statusCode / 100)}xx` : 'none',
      };
      metrics.requests.inc(labels);
      metrics.requestSeconds.observe(labels, (performance.now() - started) / 1000);
      const code = problemCodeOf(res);
      if (code !== undefined) metrics.problems.inc({ code });
    });
    next();
  };
}
