import type { Bundle, BundleEntry, BundleEntryRequest, FhirResource } from 'fhir/r4.js';
import type { Exam } from '../exam/exam.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment } from '../workup/assessment.ts';
import { clinicalImpression, impressionName } from './clinical-impression.ts';
import { report, reportName } from './composition.ts';
import {
  evidenceIds,
  localisationName,
  localisationObservation,
  redFlagName,
  redFlagObservation,
} from './derived-observation.ts';
import { device } from './device.ts';
import { findingObservation } from './finding-observation.ts';
import { type Frame, frameOf } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { examinationPanel, sectionPanel, sectionsOf } from './panel-observation.ts';
import { provenance } from './provenance.ts';
import { rankedCauses, rankedCausesName } from './risk-assessment.ts';
import { scaleObservation } from './scale-observation.ts';
import { proposedRequest, requestName } from './service-request.ts';
import { distinctStatements, isObserved, statementObservation } from './summary-statement.ts';

export type BundleType = 'transaction' | 'collection' | 'document';
export const bundleTypes: readonly BundleType[] = ['transaction', 'collection', 'document'];

export interface BundleOptions {
  readonly type: BundleType;
  /** Version of the exam, counted from 1; above 1 it is a correction. */
  readonly version: number;
}

/**
 * Everything that the service says about one exam, as FHIR R4 (4.0.1): an Observation for each finding, scale and
 * statement that the rest was normal, panels, derived Observations, the impression, the ranked causes, the proposals, the software, and who assembled it.
 *
 * Pure: the same exam, assessment and options give the same Bundle to the byte, on any process and in any time zone.
 * All times are the time of the examination. When the exam was received is known to the store, and when a server took a
 * resource in is that server's `meta.lastUpdated`; neither can be part of a Bundle that is rebuilt at will.
 *
 * - `transaction`, version 1: conditional creates, so that sending it twice makes no duplicates. Above version 1:
 *   conditional updates by the same identifiers. Updated resources carry no `id`, since the receiving server has given
 *   them one of its own and would refuse another. What only an earlier version proposed is not withdrawn by it.
 * - `collection`: the resources alone, each with its id.
 * - `document`: a Composition in front, the rest as its parts.
 *
 * @throws ExamInvalidError when the exam has no identifier or no subject
 */
export function buildBundle(exam: Exam, assessment: Assessment, options: BundleOptions): Bundle {
  const frame = frameOf(exam, assessment.modelVersion, options.version);
  const resources = examResources(exam, assessment, frame);
  if (options.type === 'transaction') {
    return {
      resourceType: 'Bundle',
      type: 'transaction',
      entry: resources.map((resource) => transactionEntry(resource, options.version)),
    };
  }
  if (options.type === 'collection') {
    return {
      resourceType: 'Bundle',
      type: 'collection',
      timestamp: frame.examinedAt,
      entry: resources.map(plainEntry),
    };
  }
  const composition = report(sectionsOf(exam), assessment, frame);
  return {
    resourceType: 'Bundle',
    identifier: ownIdentifier(frame.id(`${reportName}/${options.version}`)),
    type: 'document',
    timestamp: frame.examinedAt,
    entry: [composition, ...resources].map(plainEntry),
  };
}

function examResources(exam: Exam, assessment: Assessment, frame: Frame): FhirResource[] {
  const sections = sectionsOf(exam);
  const evidence = evidenceIds(exam, frame);
  const computedNames = [
    localisationName,
    ...assessment.redFlags.map(redFlagName),
    rankedCausesName,
    impressionName,
    ...assessment.workup.map(requestName),
  ];
  return [
    device(assessment.modelVersion),
    ...distinctStatements(exam).map((statement) => statementObservation(statement, frame)),
    ...exam.findings.filter(isObserved).map((finding) => findingObservation(finding, frame)),
    ...exam.scales.map((scale) => scaleObservation(scale, frame)),
    ...sections.map((content) => sectionPanel(content, frame)),
    examinationPanel(sections, frame),
    localisationObservation(assessment, evidence, frame),
    ...assessment.redFlags.map((flag) => redFlagObservation(flag, evidence, frame)),
    rankedCauses(assessment, evidence, frame),
    clinicalImpression(exam, assessment, sections, frame),
    ...assessment.workup.map((item) => proposedRequest(item, assessment, frame)),
    provenance(computedNames, frame),
  ];
}

function plainEntry(resource: FhirResource): BundleEntry {
  return { fullUrl: `urn:uuid:${resource.id}`, resource };
}

function transactionEntry(resource: FhirResource, version: number): BundleEntry {
  const fullUrl = `urn:uuid:${resource.id}`;
  const request = requestFor(resource, version);
  if (request.method === 'POST') return { fullUrl, resource, request };
  const { id: _given, ...withoutId } = resource;
  return { fullUrl, resource: withoutId as FhirResource, request };
}

const identifierQuery = `identifier=${encodeURIComponent(`${systems.resourceIdentifier}|`)}`;
const tagQuery = `_tag=${encodeURIComponent(`${systems.resourceTag}|`)}`;

function requestFor(resource: FhirResource, version: number): BundleEntryRequest {
  const type = resource.resourceType;
  const query = `${type === 'Provenance' ? tagQuery : identifierQuery}${resource.id}`;
  // The software is the same for all versions of all exams, and every version of an exam has a Provenance of its own.
  const fixed = type === 'Device' || type === 'Provenance';
  return version === 1 || fixed
    ? { method: 'POST', url: type, ifNoneExist: query }
    : { method: 'PUT', url: `${type}?${query}` };
}
