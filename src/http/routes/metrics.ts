import type { Router } from 'express';
import type { Registry } from 'prom-client';
import type { Need } from '../../access/need.ts';
import { endpoint, newRouter } from '../endpoint.ts';

/** Path of the metrics, on whichever port. */
export const metricsPath = '/metrics';

/** What is counted, in the text format of Prometheus. */
export function metricsRoutes(registry: Registry, need: Need): Router {
  const router = newRouter();
  endpoint(
    router,
    metricsPath,
    need,
    {
      get: [
        async (_req, res) => {
          const text = await registry.metrics();
          res.setHeader('Content-Type', registry.contentType);
          res.end(text);
        },
      ],
    },
    // A scraper names versions of the format that are not made here; the text is what it takes in any case.
    'later',
  );
  return router;
}
