import type { Bundle, BundleEntry } from 'fhir/r4.js';
import type { Exam } from '../exam/exam.ts';
import type { Assessment } from '../workup/assessment.ts';
import { clinicalImpression, impressionName } from './clinical-impression.ts';
import {
  evidenceIds,
  localisationName,
  localisationObservation,
  redFlagName,
  redFlagObservation,
} from './derived-observation.ts';
import { device } from './device.ts';
import { createEntry, type Identified, updateEntry } from './entry.ts';
import { findingObservation } from './finding-observation.ts';
import { type Frame, frameOf } from './frame.ts';
import { examinationPanel, sectionPanel, sectionsOf } from './panel-observation.ts';
import { provenance } from './provenance.ts';
import { rankedCauses, rankedCausesName } from './risk-assessment.ts';
import { scaleObservation } from './scale-observation.ts';
import { proposedRequest, requestName } from './service-request.ts';
import { distinctStatements, isObserved, statementObservation } from './summary-statement.ts';
import { withdrawals } from './withdrawal.ts';

export interface BundleOptions {
  /** Version of the exam, counted from 1; above 1 it is a correction. */
  readonly version: number;
  /** The stored transaction of the version that is corrected; what only that one had is withdrawn. */
  readonly previous?: Bundle;
}

/**
 * Everything that the service says about one exam, as a FHIR R4 (4.0.1) transaction: an Observation for each finding, scale
 * and statement that the rest was normal, panels, derived Observations, the impression, the ranked causes, the proposals,
 * the software, and who assembled it.
 *
 * Pure: the same exam, assessment and options give the same Bundle to the byte, on any process and in any time zone.
 * All times are the time of the examination. When the exam was received is known to the store, and when a server took a
 * resource in is that server's `meta.lastUpdated`; neither can be part of a Bundle that is rebuilt at will.
 *
 * Version 1 consists of conditional creates, so that sending it twice makes no duplicates. Above version 1: conditional
 * updates by the same identifiers, and the withdrawal of what only earlier versions had.
 *
 * @throws ExamInvalidError when the exam has no identifier or no subject
 */
export function buildBundle(exam: Exam, assessment: Assessment, { version, previous }: BundleOptions): Bundle {
  const frame = frameOf(exam, assessment.modelVersion, version);
  const entries = examResources(exam, assessment, frame).map((resource) => transactionEntry(resource, version));
  const withdrawn = previous === undefined ? [] : withdrawals(previous, entries, frame.inError);
  return { resourceType: 'Bundle', type: 'transaction', entry: [...entries, ...withdrawn] };
}

function examResources(exam: Exam, assessment: Assessment, frame: Frame): Identified[] {
  const sections = sectionsOf(exam);
  const evidence = evidenceIds(exam, frame);
  const computedNames = [
    localisationName,
    ...assessment.redFlags.map(redFlagName),
    impressionName,
    rankedCausesName,
    ...assessment.proposed.map(requestName),
  ];
  const resources = [
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
    ...assessment.proposed.map((item) => proposedRequest(item, assessment, frame)),
    provenance(computedNames, frame),
  ];
  return resources as Identified[];
}

function transactionEntry(resource: Identified, version: number): BundleEntry {
  // The software is the same for all versions of all exams, and every version of an exam has a Provenance of its own.
  const fixed = resource.resourceType === 'Device' || resource.resourceType === 'Provenance';
  return version === 1 || fixed ? createEntry(resource) : updateEntry(resource);
}
