import express, { type Express } from 'express';
import { NotFoundError } from '../kernel/errors.ts';
import type { AppContext } from './app-context.ts';
import { errorHandler } from './error-handler.ts';
import { requestLog } from './request-log.ts';
import { apiDescriptionRoutes } from './routes/api-description.ts';
import { bulkExportRoutes } from './routes/bulk-export.ts';
import { examRoutes } from './routes/exams.ts';
import { fhirRoutes } from './routes/fhir.ts';
import { fhirResourceRoutes } from './routes/fhir-resources.ts';
import { healthRoutes } from './routes/health.ts';
import { indexRoutes } from './routes/index-page.ts';
import { localisationRoutes } from './routes/localisation.ts';
import { measureRoutes } from './routes/measures.ts';
import { publishedRoutes } from './routes/published.ts';
import { terminologyRoutes } from './routes/terminology.ts';
import { validateRoutes } from './routes/validate.ts';
import { viewRoutes } from './routes/views.ts';
import { securityHeaders } from './security-headers.ts';

/**
 * The HTTP side of the service: what comes in, in order, and what goes out when something is wrong.
 * @param isDraining whether the process is on its way out, so that a balancer sends nothing more
 */
export function createApp(context: AppContext, isDraining: () => boolean): Express {
  const app = express();
  app.disable('x-powered-by');
  app.set('etag', false);
  app.use(requestLog(context.logger), securityHeaders);
  app.use(
    examRoutes(context),
    localisationRoutes(context),
    publishedRoutes(context),
    bulkExportRoutes(context),
    terminologyRoutes(context),
    validateRoutes(context),
    measureRoutes(context),
    viewRoutes(context),
    fhirResourceRoutes(context),
    fhirRoutes(context),
    healthRoutes(context, isDraining),
    apiDescriptionRoutes(context),
    indexRoutes(context),
  );
  app.use(() => {
    throw new NotFoundError('There is nothing at this path.');
  });
  app.use(errorHandler(context.logger));
  return app;
}
