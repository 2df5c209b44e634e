import type { AuditRecord } from '../../audit/audit-record.ts';
import type { Interaction } from '../../audit/interactions.ts';
import { cdsServices } from '../../cds/services.ts';
import { searchedTypes } from '../../search/parameters.ts';
import { checkedTypes } from '../../validation/r4-definitions.ts';

/** A request that the audit trail tells of. */
export interface AuditedRoute {
  readonly method: 'get' | 'post' | 'put' | 'delete';
  /** As the route has it; the first row that fits a request counts. */
  readonly path: string;
  readonly interaction: Interaction;
  readonly action: AuditRecord['action'];
  /** Name of the operation. */
  readonly operation?: string;
  /** What `:id` in the path is; a type of resource, or one of ours. */
  readonly about?: string;
  /** Path and parameters are kept also where there are no parameters. */
  readonly hasQuery?: boolean;
  /** Nothing that is stored is touched, so the answer need not wait until the trail can be written again. */
  readonly isStateless?: boolean;
}

const operation = (
  method: AuditedRoute['method'],
  path: string,
  name: string,
  rest: Partial<AuditedRoute> = {},
): AuditedRoute => ({ method, path, interaction: 'operation', action: 'E', operation: name, ...rest });

const exams: readonly AuditedRoute[] = [
  { method: 'post', path: '/exams', interaction: 'create', action: 'C' },
  { method: 'get', path: '/exams/:id', interaction: 'read', action: 'R', about: 'exam' },
  { method: 'put', path: '/exams/:id', interaction: 'update', action: 'U', about: 'exam' },
  { method: 'get', path: '/exams/:id/bundle', interaction: 'read', action: 'R', about: 'exam' },
  { method: 'get', path: '/exams/:id/questionnaire-response', interaction: 'read', action: 'R', about: 'exam' },
  { method: 'get', path: '/exams/:id/deliveries', interaction: 'read', action: 'R', about: 'exam' },
  { ...operation('post', '/exams/:id/deliveries/retry', 'retry-deliveries'), about: 'exam' },
];

const operations: readonly AuditedRoute[] = [
  operation('post', '/localisation', '$localise', { isStateless: true }),
  operation('post', '/fhir/QuestionnaireResponse/$extract', '$extract', { isStateless: true }),
  ...cdsServices.map(({ id }) => operation('post', `/cds-services/${id}`, 'cds-hook')),
  ...checkedTypes.flatMap((type) => [
    operation('post', `/fhir/${type}/$validate`, '$validate', { isStateless: true }),
    // Without a resource in the body it is the stored one that is checked.
    operation('post', `/fhir/${type}/:id/$validate`, '$validate', { about: type }),
  ]),
  ...(['get', 'post'] as const).flatMap((method) => [
    operation(method, '/fhir/$export', '$export', { hasQuery: true }),
    operation(method, '/fhir/Measure/$evaluate-measure', '$evaluate-measure', { hasQuery: true }),
    operation(method, '/fhir/Measure/:id/$evaluate-measure', '$evaluate-measure', {
      about: 'Measure',
      hasQuery: true,
    }),
    ...['/fhir/$viewdefinition-run', '/fhir/ViewDefinition/$viewdefinition-run'].map((path) =>
      operation(method, path, '$viewdefinition-run', { hasQuery: true }),
    ),
    operation(method, '/fhir/ViewDefinition/:id/$viewdefinition-run', '$viewdefinition-run', { hasQuery: true }),
  ]),
  operation('get', '/fhir/export-status/:id', '$export', { about: 'job', action: 'R' }),
  operation('delete', '/fhir/export-status/:id', '$export', { about: 'job', action: 'D', interaction: 'delete' }),
  operation('get', '/fhir/export-files/:id/:file', '$export', { about: 'job', action: 'R', hasQuery: true }),
  // A view without a format is its definition, and nobody's data.
  ...['csv', 'ndjson', 'json'].map((format) =>
    operation('get', `/views/:name.${format}`, '$viewdefinition-run', { hasQuery: true }),
  ),
];

const readsOf = (type: string): readonly AuditedRoute[] => [
  { method: 'get', path: `/fhir/${type}`, interaction: 'search', action: 'E', hasQuery: true },
  { method: 'get', path: `/fhir/${type}/_search`, interaction: 'search', action: 'E', hasQuery: true },
  { method: 'post', path: `/fhir/${type}/_search`, interaction: 'search', action: 'E', hasQuery: true },
  { method: 'get', path: `/fhir/${type}/_history`, interaction: 'history-type', action: 'R', hasQuery: true },
  { method: 'get', path: `/fhir/${type}/:id`, interaction: 'read', action: 'R', about: type },
  {
    method: 'get',
    path: `/fhir/${type}/:id/_history`,
    interaction: 'history-instance',
    action: 'R',
    about: type,
    hasQuery: true,
  },
  { method: 'get', path: `/fhir/${type}/:id/_history/:version`, interaction: 'vread', action: 'R', about: type },
];

/**
 * Every request that touches what is stored of exams, or that brings an exam to be worked on. Others are told only when
 * they are refused: what is published, health, and the terminology hold nobody's data. A test holds this against the
 * routes that there are.
 */
export const auditedRoutes: readonly AuditedRoute[] = [
  ...exams,
  ...operations,
  ...searchedTypes.flatMap(readsOf),
  ...readsOf('AuditEvent').filter(({ path }) => !path.includes('_history')),
  { method: 'post', path: '/fhir/Measure', interaction: 'create', action: 'C' },
  { method: 'put', path: '/fhir/Measure/:id', interaction: 'update', action: 'U', about: 'Measure' },
  { method: 'post', path: '/fhir/Subscription', interaction: 'create', action: 'C' },
  { method: 'put', path: '/fhir/Subscription/:id', interaction: 'update', action: 'U', about: 'Subscription' },
  { method: 'delete', path: '/fhir/Subscription/:id', interaction: 'delete', action: 'D', about: 'Subscription' },
];
