import type { ServiceRequest } from 'fhir/r4.js';
import { capitalised } from '../kernel/words.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment, ProposedTest } from '../workup/assessment.ts';
import { impressionName } from './clinical-impression.ts';
import { rowConcept } from './codings.ts';
import { localisationName, redFlagName, unreviewed } from './derived-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { fhirText, narrative, paragraph } from './narrative.ts';
import { examinationName } from './panel-observation.ts';
import { rankedCausesName } from './risk-assessment.ts';

export function requestName(item: Pick<ProposedTest, 'key'>): string {
  return `request/${item.key}`;
}

/** Order of investigations in words: first those that nearly everybody needs. */
const tierTexts = { 1: 'First line', 2: 'Second line', 3: 'Targeted' } as const;

const chosen = 'The examiner chose it among what was suggested.';

/**
 * One investigation that was suggested or asked for, as a proposal in draft: nothing is ordered until a clinician does
 * so. R4 allows neither ClinicalImpression nor RiskAssessment as reason, so those stand in `supportingInfo`.
 */
export function proposedRequest(item: ProposedTest, assessment: Assessment, frame: Frame): ServiceRequest {
  const id = frame.id(requestName(item));
  const flags =
    item.priority === 'routine' ? [] : assessment.redFlags.filter((flag) => flag.state === 'present').map(redFlagName);
  const isSuggested = item.tier !== undefined;
  const because = item.tier === undefined ? capitalised(item.because) : `${tierTexts[item.tier]}: ${item.because}`;
  // What only the examiner asks for rests on the examination, and on nothing that was computed from it.
  const reasons = isSuggested ? [localisationName, ...flags] : [examinationName];
  const notes = [
    because,
    ...(isSuggested && item.isChosen ? [chosen] : []),
    ...(item.source === undefined ? [] : [`Source: ${item.source}`]),
  ];
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
    reasonReference: reasons.map(frame.ref),
    supportingInfo: [impressionName, rankedCausesName].map(frame.ref),
    note: notes.map((text) => ({ text: fhirText(text) })),
  };
}
