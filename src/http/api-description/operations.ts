import { auditOperations } from './audit.ts';
import { bulkExportOperations } from './bulk-export.ts';
import { cdsHooksOperations } from './cds-hooks.ts';
import { deliveryOperations } from './deliveries.ts';
import { examOperations } from './exams.ts';
import { extractOperations } from './extract.ts';
import { fhirConformanceOperations } from './fhir-conformance.ts';
import { fhirOperationOperations } from './fhir-operations.ts';
import { fhirResourceOperations } from './fhir-resources.ts';
import { healthOperations } from './health.ts';
import { localisationOperations } from './localisation.ts';
import { metricsOperations } from './metrics.ts';
import type { ApiOperation } from './operation.ts';
import { practiceOperations } from './practice.ts';
import { publishedOperations } from './published.ts';
import { smartConfigurationOperations } from './smart-configuration.ts';
import { subscriptionOperations } from './subscriptions.ts';
import { viewOperations } from './views.ts';

/** Every method of every path of the service. A route without a row here fails `tests/contract/api-description.test.ts`. */
export const apiOperations: readonly ApiOperation[] = [
  ...localisationOperations,
  ...practiceOperations,
  ...examOperations,
  ...deliveryOperations,
  ...cdsHooksOperations,
  ...publishedOperations,
  ...fhirResourceOperations,
  ...extractOperations,
  ...subscriptionOperations,
  ...auditOperations,
  ...fhirConformanceOperations,
  ...fhirOperationOperations,
  ...bulkExportOperations,
  ...viewOperations,
  ...healthOperations,
  ...metricsOperations,
  ...smartConfigurationOperations,
];
