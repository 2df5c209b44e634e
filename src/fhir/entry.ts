import type { BundleEntry, FhirResource } from 'fhir/r4.js';
import { systems } from '../terminology/systems.ts';

/** A resource that has its id, as every resource of a Bundle has when it is made. */
export type Identified<R extends FhirResource = FhirResource> = R & { readonly id: string };

const scheme = 'urn:uuid:';

export function fullUrlOf(id: string): string {
  return `${scheme}${id}`;
}

/** The resource of an entry with the id that its `fullUrl` says; updates in a transaction carry none of their own. */
export function identified({ fullUrl, resource }: BundleEntry): Identified {
  if (fullUrl?.startsWith(scheme) !== true || resource === undefined) {
    throw new RangeError('An entry has no resource, or no fullUrl that says its id.');
  }
  const { resourceType } = resource;
  const id = fullUrl.slice(scheme.length);
  // The type in front, then the id, as in the resources that still have it.
  return Object.assign({ resourceType, id }, resource, { id }) as Identified;
}

/** Conditional create: the server makes the resource unless it has it. */
export function createEntry(resource: Identified): BundleEntry {
  const { id, resourceType } = resource;
  return {
    fullUrl: fullUrlOf(id),
    resource,
    request: { method: 'POST', url: resourceType, ifNoneExist: searchFor(resourceType, id) },
  };
}

/**
 * Conditional update: the server replaces the resource, or makes it. It carries no `id`, since the server has given the
 * resource one of its own and would refuse another.
 */
export function updateEntry(resource: Identified): BundleEntry {
  const { id, ...withoutId } = resource;
  const { resourceType } = resource;
  return {
    fullUrl: fullUrlOf(id),
    resource: withoutId as FhirResource,
    request: { method: 'PUT', url: `${resourceType}?${searchFor(resourceType, id)}` },
  };
}

const identifierQuery = `identifier=${encodeURIComponent(`${systems.resourceIdentifier}|`)}`;
const tagQuery = `_tag=${encodeURIComponent(`${systems.resourceTag}|`)}`;

function searchFor(type: FhirResource['resourceType'], id: string): string {
  return `${type === 'Provenance' ? tagQuery : identifierQuery}${id}`;
}

/** The targets inside the Bundle of every reference anywhere in a value, as `fullUrl`s. */
export function innerReferences(node: unknown, found: Set<string> = new Set()): ReadonlySet<string> {
  if (typeof node !== 'object' || node === null) return found;
  for (const [key, value] of Object.entries(node)) {
    if (key === 'reference' && typeof value === 'string' && value.startsWith(scheme)) found.add(value);
    else innerReferences(value, found);
  }
  return found;
}
