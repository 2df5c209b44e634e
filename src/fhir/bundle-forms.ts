import type { Bundle, BundleEntry } from 'fhir/r4.js';
import { resourceId } from '../exam/exam-id.ts';
import { report, reportName } from './composition.ts';
import { fullUrlOf, type Identified, identified, innerReferences } from './entry.ts';
import { ownIdentifier } from './identity.ts';
import { reportedParts } from './reported-parts.ts';

// A stored transaction in its other forms. Both are made from the transaction and nothing else, so that what is read
// today is what was answered then, whatever the service has learnt in between.

export type BundleType = 'transaction' | 'collection' | 'document';
export const bundleTypes: readonly BundleType[] = ['transaction', 'collection', 'document'];

/** Pure: the same transaction gives the same Bundle to the byte. */
export const bundleForms: Readonly<Record<BundleType, (transaction: Bundle) => Bundle>> = {
  transaction: (transaction) => transaction,
  collection: collectionOf,
  document: documentOf,
};

/** The resources of a transaction alone, each with its id; those that it withdraws are among them, with that status. */
export function collectionOf(transaction: Bundle): Bundle {
  const resources = (transaction.entry ?? []).map(identified);
  return {
    resourceType: 'Bundle',
    type: 'collection',
    timestamp: reportedParts(resources).examinedAt,
    entry: resources.map(plainEntry),
  };
}

/** A Composition in front, then the resources of the transaction that it leads to: nothing that was withdrawn. */
export function documentOf(transaction: Bundle): Bundle {
  const resources = (transaction.entry ?? []).map(identified);
  const parts = reportedParts(resources);
  const composition = report(parts);
  const reached = reachedFrom(composition, resources);
  return {
    resourceType: 'Bundle',
    // Every version has a Provenance of its own, and so a document of its own.
    identifier: ownIdentifier(resourceId(parts.provenance.id, reportName)),
    type: 'document',
    timestamp: parts.examinedAt,
    entry: [composition, ...resources.filter(({ id }) => reached.has(fullUrlOf(id)))].map(plainEntry),
  };
}

function plainEntry(resource: Identified): BundleEntry {
  return { fullUrl: fullUrlOf(resource.id), resource };
}

/** `fullUrl`s of everything that a resource refers to, directly or through others. */
function reachedFrom(start: Identified, resources: readonly Identified[]): ReadonlySet<string> {
  const byUrl = new Map(resources.map((resource) => [fullUrlOf(resource.id), resource]));
  const reached = new Set(innerReferences(start));
  // A Set hands out what is added while it is walked.
  for (const url of reached) for (const next of innerReferences(byUrl.get(url))) reached.add(next);
  return reached;
}
