import type { Bundle, FhirResource } from 'fhir/r4.js';
import type { Exam } from '../../../src/exam/exam.ts';
import { buildBundle } from '../../../src/fhir/bundle.ts';
import { type BundleType, bundleForms } from '../../../src/fhir/bundle-forms.ts';
import type { Assessment } from '../../../src/workup/assessment.ts';

/** The Bundle of an exam in one of its forms, as the service makes it: the transaction first, the form from that. */
export function bundleAs(type: BundleType, exam: Exam, assessment: Assessment, version = 1): Bundle {
  return bundleForms[type](buildBundle(exam, assessment, { version }));
}

/** The transactions of the versions of one exam, each a correction of the one before. */
export function versionsOf(...versions: readonly (readonly [Exam, Assessment])[]): readonly Bundle[] {
  const made: Bundle[] = [];
  for (const [exam, assessment] of versions) {
    const previous = made.at(-1);
    const version = made.length + 1;
    made.push(buildBundle(exam, assessment, previous === undefined ? { version } : { version, previous }));
  }
  return made;
}

export function ofType<T extends FhirResource['resourceType']>(bundle: Bundle, type: T) {
  return (bundle.entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === type ? [resource as Extract<FhirResource, { resourceType: T }>] : [],
  );
}
