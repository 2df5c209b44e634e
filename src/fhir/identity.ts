import type { Identifier, Meta } from 'fhir/r4.js';
import { profileUrl, systems } from '../terminology/systems.ts';
import { shared } from './codings.ts';
import { remembered } from './remembered.ts';

/**
 * The identifier by which a server finds the resource again. Its value is not the `urn:uuid` of `fullUrl`, because some
 * servers replace that text wherever they meet it in a transaction, also inside identifiers.
 */
export function ownIdentifier(id: string): Identifier {
  return { system: systems.resourceIdentifier, value: id };
}

/** `meta` with one profile of ours; the same object for every resource. */
export const profiled = remembered((name: string): Meta => shared({ profile: [profileUrl(name)] }));
