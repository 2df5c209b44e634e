import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import { errorTitles, faultCodes } from '../../kernel/fault-codes.ts';
import { capitalised } from '../../kernel/words.ts';
import { localCodeSystem } from './code-systems.ts';
import type { Release } from './header.ts';

/** The codes in the OperationOutcomes and problem details of the service. */
export function faultResources(release: Release): (CodeSystem | ValueSet)[] {
  return localCodeSystem(release, {
    id: 'fault',
    title: 'Errors and faults',
    description: 'Why a request was refused: errors of the request as a whole, and faults of the examination in it.',
    allCodes: 'faults',
    concepts: [
      ...Object.entries(errorTitles).map(([code, display]) => ({ code, display })),
      ...Object.entries(faultCodes).map(([code, definition]) => ({ code, display: words(code), definition })),
    ],
  });
}

/** `WRONG_VALUE_PROPERTY` is "Wrong value property". */
function words(code: string): string {
  return capitalised(code.replaceAll('_', ' ').toLowerCase());
}
