import type { ClinicalImpression, FhirResource, Observation, Provenance, Reference, ServiceRequest } from 'fhir/r4.js';
import { fullUrlOf, type Identified } from './entry.ts';

/** The parts of a stored examination that a report is made of, in the order in which it tells them. */
export interface ReportedParts {
  readonly examination: Identified<Observation>;
  /** The panels of the sections. */
  readonly sections: readonly Identified<Observation>[];
  readonly impression: Identified<ClinicalImpression>;
  /** What the version computed: localisation, red flags, impression and ranked causes. */
  readonly computed: readonly Identified[];
  readonly proposals: readonly Identified<ServiceRequest>[];
  readonly provenance: Identified<Provenance>;
  /** The software that computed it. */
  readonly device: Reference;
  /** Time of the examination. */
  readonly examinedAt: string;
}

/**
 * Finds the parts by following the references of the Provenance, which every version has once: its source is the
 * examination, its targets are what was computed. What a correction withdrew is led to by neither.
 * @param resources those of one transaction that this service made, each with its id
 * @throws RangeError when a part is missing
 */
export function reportedParts(resources: readonly Identified[]): ReportedParts {
  const byUrl = new Map(resources.map((resource) => [fullUrlOf(resource.id), resource]));
  const provenance = ofType(resources, 'Provenance')[0];
  const [examination] = ofType(
    follow(
      provenance?.entity?.map(({ what }) => what),
      byUrl,
    ),
    'Observation',
  );
  const results = follow(provenance?.target, byUrl);
  const impression = ofType(results, 'ClinicalImpression')[0];
  const device = provenance?.agent[0]?.who;
  const examinedAt = examination?.effectiveDateTime;
  if (!(provenance && examination && impression && device && examinedAt)) {
    throw new RangeError('The Bundle is not a transaction that holds an examination and what was computed from it.');
  }
  return {
    examination,
    sections: ofType(follow(examination.hasMember, byUrl), 'Observation'),
    impression,
    computed: results.filter(({ resourceType }) => resourceType !== 'ServiceRequest'),
    proposals: ofType(results, 'ServiceRequest'),
    provenance,
    device,
    examinedAt,
  };
}

function follow(references: readonly Reference[] = [], byUrl: ReadonlyMap<string, Identified>): Identified[] {
  return references.flatMap(({ reference = '' }) => byUrl.get(reference) ?? []);
}

function ofType<T extends FhirResource['resourceType']>(resources: readonly Identified[], type: T) {
  return resources.filter(
    (one): one is Identified<Extract<FhirResource, { resourceType: T }>> => one.resourceType === type,
  );
}
