import type { Bundle } from 'fhir/r4.js';
import { fullUrlOf, type Identified, identified } from './entry.ts';

/**
 * The resources of a transaction as a FHIR server answers them: each with its id, and every reference from entry to entry
 * as `Type/id`. `meta` is as in the transaction; version and time are the server's to add.
 * @throws RangeError when an entry has no resource or no id
 */
export function servedResources(transaction: Bundle): Identified[] {
  const resources = (transaction.entry ?? []).map(identified);
  const addresses = new Map(resources.map(({ id, resourceType }) => [fullUrlOf(id), `${resourceType}/${id}`]));
  return resources.map((resource) => withAddresses(resource, addresses) as Identified);
}

/** A copy in which the references that `addresses` knows are replaced; what holds none of them is shared, not copied. */
function withAddresses(node: unknown, addresses: ReadonlyMap<string, string>): unknown {
  if (typeof node !== 'object' || node === null) return node;
  if (Array.isArray(node)) {
    const copies = node.map((item) => withAddresses(item, addresses));
    return copies.some((copy, index) => copy !== node[index]) ? copies : node;
  }
  let copy: Record<string, unknown> | undefined;
  for (const [key, value] of Object.entries(node)) {
    const next = key === 'reference' ? (addresses.get(value as string) ?? value) : withAddresses(value, addresses);
    if (next === value) continue;
    copy ??= { ...node };
    copy[key] = next;
  }
  return copy ?? node;
}
