import express, { type Express } from 'express';
import type { Logger } from 'pino';
import type { Registry } from 'prom-client';
import { open } from '../access/need.ts';
import { NotFoundError } from '../kernel/errors.ts';
import { errorHandler } from './error-handler.ts';
import { metricsRoutes } from './routes/metrics.ts';
import { securityHeaders } from './security-headers.ts';

/** What answers on a port that is for the metrics alone; what is asked of it is not logged. */
export function createMetricsApp(registry: Registry, logger: Logger): Express {
  const app = express();
  app.disable('x-powered-by');
  app.use(securityHeaders, metricsRoutes(registry, open), () => {
    throw new NotFoundError('Here are the metrics alone, at /metrics.');
  });
  app.use(errorHandler(logger));
  return app;
}
