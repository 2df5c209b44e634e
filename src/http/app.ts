import express, { type Express } from 'express';
import { scopes } from '../access/need.ts';
import { NotFoundError } from '../kernel/errors.ts';
import { readCredentials } from './admission.ts';
import type { AppContext } from './app-context.ts';
import { auditTrail } from './audit/audit-trail.ts';
import { errorHandler } from './error-handler.ts';
import { requestLog } from './request-log.ts';
import { apiDescriptionRoutes } from './routes/api-description.ts';
import { auditEventRoutes } from './routes/audit-events.ts';
import { bulkExportRoutes } from './routes/bulk-export.ts';
import { cdsHooksRoutes } from './routes/cds-hooks.ts';
import { deliveryRoutes } from './routes/deliveries.ts';
import { examRoutes } from './routes/exams.ts';
import { extractRoutes } from './routes/extract.ts';
import { fhirRoutes } from './routes/fhir.ts';
import { fhirResourceRoutes } from './routes/fhir-resources.ts';
import { healthRoutes } from './routes/health.ts';
import { indexRoutes } from './routes/index-page.ts';
import { localisationRoutes } from './routes/localisation.ts';
import { measureRoutes } from './routes/measures.ts';
import { metricsRoutes } from './routes/metrics.ts';
import { pageRoutes } from './routes/page.ts';
import { practiceRoutes } from './routes/practice.ts';
import { publishedRoutes } from './routes/published.ts';
import { smartConfigurationRoutes } from './routes/smart-configuration.ts';
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
  const { operation } = context;
  app.set('trust proxy', operation.trustProxy);
  app.use(requestLog(context.logger), securityHeaders, ...operation.guards);
  // Before whatever may refuse a caller, so that refusals are told too.
  app.use(auditTrail(context));
  app.use(readCredentials(context.access, operation.rateLimit));
  app.use(
    examRoutes(context),
    deliveryRoutes(context),
    localisationRoutes(context),
    practiceRoutes(context),
    extractRoutes(context),
    cdsHooksRoutes(context),
    publishedRoutes(context),
    bulkExportRoutes(context),
    terminologyRoutes(context),
    validateRoutes(context),
    measureRoutes(context),
    viewRoutes(context),
    auditEventRoutes(context),
    fhirResourceRoutes(context),
    fhirRoutes(context),
    smartConfigurationRoutes(context),
    healthRoutes(context, isDraining),
    ...(operation.servesMetrics ? [metricsRoutes(operation.metrics.registry, scopes('metrics.r'))] : []),
    apiDescriptionRoutes(context),
    indexRoutes(context),
    pageRoutes(context),
  );
  app.use(() => {
    throw new NotFoundError('There is nothing at this path.');
  });
  app.use(errorHandler(context.logger));
  return app;
}
