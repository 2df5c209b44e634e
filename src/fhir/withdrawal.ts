import type { Bundle, BundleEntry, FhirResource, Narrative } from 'fhir/r4.js';
import { type Identified, identified, innerReferences, updateEntry } from './entry.ts';
import { openedBy, paragraph } from './narrative.ts';

const notice = paragraph('Withdrawn by a correction of the examination.');

/**
 * What a correction has to say about the things that only the corrected version had. A server that took that version in
 * still holds them, and a correction that is silent about them would leave a finding standing that nobody makes any
 * more. Each becomes a conditional update with its old content and a status that takes it back.
 *
 * Things that an earlier correction withdrew are among those of `previous` and stay withdrawn, until a version has them
 * again.
 *
 * @param previous the stored transaction of the version that is corrected
 * @param entries what the new version says
 * @param inError whether the examination as a whole was entered in error
 * @returns the entries to add: software that the withdrawn things name and `entries` lacks, then the withdrawn things,
 *   both in the order of `previous`
 */
export function withdrawals(previous: Bundle, entries: readonly BundleEntry[], inError: boolean): BundleEntry[] {
  const current = new Set(entries.map(({ fullUrl }) => fullUrl));
  const gone = (previous.entry ?? []).filter(({ fullUrl }) => !current.has(fullUrl));
  const withdrawn = gone.filter(isOfOneExam).map((entry) => withdrawal(identified(entry), inError));
  const named = innerReferences(withdrawn);
  const software = gone.filter(
    ({ fullUrl = '', resource }) => resource?.resourceType === 'Device' && named.has(fullUrl),
  );
  return [...software, ...withdrawn];
}

/** Software belongs to all exams, and the Provenance of a version stays true whatever comes after it. */
function isOfOneExam({ resource }: BundleEntry): boolean {
  return resource?.resourceType !== 'Device' && resource?.resourceType !== 'Provenance';
}

function withdrawal(resource: Identified, inError: boolean): BundleEntry {
  const { text } = resource as { text?: Narrative };
  const withdrawn = {
    ...resource,
    ...(text === undefined ? {} : { text: openedBy(notice, text) }),
    status: withdrawnStatus(resource, inError),
  };
  return updateEntry(withdrawn as Identified);
}

/** A proposal that no longer follows from the findings was no error of its own, unless the whole examination was. */
function withdrawnStatus({ resourceType }: FhirResource, inError: boolean): string {
  return resourceType === 'ServiceRequest' && !inError ? 'revoked' : 'entered-in-error';
}
