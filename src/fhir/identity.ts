import type { Identifier } from 'fhir/r4.js';
import { systems } from '../terminology/systems.ts';

/**
 * The identifier by which a server finds the resource again. Its value is not the `urn:uuid` of `fullUrl`, because some
 * servers replace that text wherever they meet it in a transaction, also inside identifiers.
 */
export function ownIdentifier(id: string): Identifier {
  return { system: systems.resourceIdentifier, value: id };
}
