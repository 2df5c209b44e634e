import type { ServiceRequest } from 'fhir/r4.js';
import { systems } from '../terminology/systems.ts';
import type { Assessment, WorkupItem } from '../workup/assessment.ts';
import { impressionName } from './clinical-impression.ts';
import { rowConcept } from './codings.ts';
import { localisationName, redFlagName, unreviewed } from './derived-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { fhirText, narrative, paragraph } from './narrative.ts';
import { rankedCausesName } from './risk-assessment.ts';

export function requestName(item: Pick<WorkupItem, 'key'>): string {
  return `request/${item.key}`;
}

/** Order of investigations in words: first those that nearly everybody needs. */
const tierTexts = { 1: 'First line', 2: 'Second line', 3: 'Targeted' } as const;

/**
 * One suggested investigation, as a proposal in draft: nothing is ordered until a clinician does so. R4 allows neither
 * ClinicalImpression nor RiskAssessment as reason, so those stand in `supportingInfo`.
 */
export function proposedRequest(item: WorkupItem, assessment: Assessment, frame: Frame): ServiceRequest {
  const id = frame.id(requestName(item));
  const flags =
    item.priority === 'routine' ? [] : assessment.redFlags.filter((flag) => flag.state === 'present').map(redFlagName);
  const because = `${tierTexts[item.tier]}: ${item.because}`;
  return {
    resourceType: 'ServiceRequest',
    id,
    meta: frame.meta('neuro-exam-proposed-request'),
    text: narrative(
      paragraph(`Proposal, not an order: ${item.label} (${item.priority}).`) + paragraph(because) + unreviewed(frame),
    ),
    identifier: [ownIdentifier(id)],
    status: frame.inError ? 'entered-in-error' : 'draft',
    intent: 'proposal',
    priority: item.priority,
    code: rowConcept(item, systems.investigation),
    ...frame.about,
    authoredOn: frame.examinedAt,
    requester: frame.device,
    reasonReference: [localisationName, ...flags].map(frame.ref),
    supportingInfo: [impressionName, rankedCausesName].map(frame.ref),
    note: [{ text: fhirText(because) }, { text: fhirText(`Source: ${item.source}`) }],
  };
}
