import { bulkExportOperations } from './bulk-export.ts';
import { examOperations } from './exams.ts';
import { fhirConformanceOperations } from './fhir-conformance.ts';
import { fhirOperationOperations } from './fhir-operations.ts';
import { fhirResourceOperations } from './fhir-resources.ts';
import { healthOperations } from './health.ts';
import { localisationOperations } from './localisation.ts';
import type { ApiOperation } from './operation.ts';
import { publishedOperations } from './published.ts';
import { viewOperations } from './views.ts';

/** Every method of every path of the service. A route without a row here fails `tests/contract/api-description.test.ts`. */
export const apiOperations: readonly ApiOperation[] = [
  ...localisationOperations,
  ...examOperations,
  ...publishedOperations,
  ...fhirResourceOperations,
  ...fhirConformanceOperations,
  ...fhirOperationOperations,
  ...bulkExportOperations,
  ...viewOperations,
  ...healthOperations,
];
