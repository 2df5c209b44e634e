import type { ServiceRequest } from 'fhir/r4.js';
import { rowConcept } from '../fhir/codings.ts';
import { fhirText } from '../fhir/narrative.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment, WorkupItem } from '../workup/assessment.ts';
import type { Card, CardFrame } from './card.ts';
import { bullets, paragraphs, plain, summaryOf } from './markdown.ts';

/** One card with a suggestion for each proposed investigation; each makes a draft of which a clinician decides. */
export function proposalCards({ workup, caution }: Assessment, frame: CardFrame): readonly Card[] {
  if (workup.length === 0) return [];
  const count = workup.length === 1 ? 'One investigation is' : `${workup.length} investigations are`;
  return [
    {
      uuid: frame.uuid('proposals'),
      summary: summaryOf(`${count} proposed after the exam of ${frame.day}; each is a draft to accept or leave`),
      detail: paragraphs(
        bullets(
          workup.map(({ label, priority, because, source }) =>
            plain(`${label} (${priority}): ${because}. Source: ${source}`),
          ),
        ),
        plain(caution),
      ),
      indicator: 'info',
      source: frame.source,
      suggestions: workup.map((item) => ({
        label: item.label,
        uuid: frame.uuid(`proposal/${item.key}`),
        isRecommended: item.tier === 1,
        actions: [
          {
            type: 'create' as const,
            description: `Draft a request: ${item.label} (${item.priority}). ${item.because}`,
            resource: draftRequest(item, frame),
          },
        ],
      })),
      selectionBehavior: 'any',
    },
  ];
}

/** Without an id, which the record that creates it gives, and by nobody: who accepts it requests it. */
function draftRequest(item: WorkupItem, { patient, encounter }: CardFrame): ServiceRequest {
  return {
    resourceType: 'ServiceRequest',
    status: 'draft',
    intent: 'proposal',
    priority: item.priority,
    code: rowConcept(item, systems.investigation),
    subject: { reference: patient },
    ...(encounter === undefined ? {} : { encounter: { reference: encounter } }),
    note: [{ text: fhirText(item.because) }, { text: fhirText(`Source: ${item.source}`) }],
  };
}
