import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import { problemKinds } from '../../http/problems.ts';
import { faultCodes } from '../../kernel/fault-codes.ts';
import { localCodeSystem } from './code-systems.ts';
import type { Release } from './header.ts';

/** The codes in the OperationOutcomes and problem details of the service. */
export function faultResources(release: Release): (CodeSystem | ValueSet)[] {
  return localCodeSystem(release, {
    id: 'fault',
    title: 'Errors and faults',
    description:
      'Why a request was refused: errors of the request as a whole, each with its HTTP status, and faults of the examination in it.',
    allCodes: 'faults',
    properties: { status: 'HTTP status of an error; a fault comes with the status of EXAM_INVALID.' },
    concepts: [
      ...Object.entries(problemKinds).map(([code, { title, status }]) => ({
        code,
        display: title,
        properties: { status: String(status) },
      })),
      ...Object.entries(faultCodes).map(([code, definition]) => ({ code, display: words(code), definition })),
    ],
  });
}

/** `WRONG_VALUE_PROPERTY` is "Wrong value property". */
function words(code: string): string {
  const plain = code.replaceAll('_', ' ').toLowerCase();
  return plain.charAt(0).toUpperCase() + plain.slice(1);
}
