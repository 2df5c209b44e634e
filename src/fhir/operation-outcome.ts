import type { OperationOutcome, OperationOutcomeIssue } from 'fhir/r4.js';
import { systems } from '../terminology/systems.ts';

/** One thing that went wrong, in the terms of the service. */
export interface OutcomeIssue {
  readonly severity: 'fatal' | 'error' | 'warning';
  /** FHIR issue type. */
  readonly type: OperationOutcomeIssue['code'];
  /** The service's own stable code, upper snake case. */
  readonly code: string;
  readonly text: string;
  /** JSON Pointer into the request body. */
  readonly pointer?: string;
}

/**
 * Tells a FHIR client what went wrong. The body of a request is an exam and no FHIR resource, so `expression`, which
 * must be a FHIRPath, stays empty and the JSON Pointer stands in `diagnostics`.
 * @param issues at least one
 */
export function operationOutcome(issues: readonly OutcomeIssue[]): OperationOutcome {
  return {
    resourceType: 'OperationOutcome',
    issue: issues.map(({ severity, type, code, text, pointer }) => ({
      severity,
      code: type,
      details: { coding: [{ system: systems.fault, code }], text },
      ...(pointer === undefined || pointer === '' ? {} : { diagnostics: pointer }),
    })),
  };
}
