import type { Parameters } from 'fhir/r4.js';
import { NotFoundError } from '../kernel/errors.ts';
import type { Codes } from './hierarchy.ts';

/**
 * Answer of `CodeSystem/$subsumes`. @throws NotFoundError when the system or a code is not here
 * Source: http://hl7.org/fhir/R4/codesystem-operation-subsumes.html
 */
export function subsumption(codes: Codes, system: string, codeA: string, codeB: string): Parameters {
  const known = codes.concepts(system);
  if (!known?.has(codeA) || !known.has(codeB)) throw new NotFoundError('The system or one of the codes is not here.');
  const valueCode = outcome(codes, system, codeA, codeB);
  return { resourceType: 'Parameters', parameter: [{ name: 'outcome', valueCode }] };
}

function outcome(codes: Codes, system: string, codeA: string, codeB: string): string {
  if (codeA === codeB) return 'equivalent';
  // Of a hierarchy that only groups, R4 lets no relation be assumed.
  if (codes.codeSystem(system)?.hierarchyMeaning !== 'is-a') return 'not-subsumed';
  if (codes.subsumes(system, codeA, codeB)) return 'subsumes';
  return codes.subsumes(system, codeB, codeA) ? 'subsumed-by' : 'not-subsumed';
}
