import type { ServiceRequest } from 'fhir/r4.js';
import { rowConcept } from '../fhir/codings.ts';
import { fhirText } from '../fhir/narrative.ts';
import { joinWords } from '../kernel/words.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment, ProposedTest } from '../workup/assessment.ts';
import type { Card, CardFrame } from './card.ts';
import { bullets, paragraphs, plain, summaryOf } from './markdown.ts';

/**
 * One card with a suggestion for each proposed investigation; each makes a draft of which a clinician decides. What the
 * examiner did not choose is told there, and never a draft; a card that only tells of it has no suggestions.
 */
export function proposalCards({ proposed, notChosen, caution }: Assessment, frame: CardFrame): readonly Card[] {
  if (proposed.length + notChosen.length === 0) return [];
  const left = joinWords(notChosen.map(({ label, priority }) => `${label} (${priority})`));
  return [
    {
      uuid: frame.uuid('proposals'),
      summary: summaryOf(summary(proposed.length, frame.day)),
      detail: paragraphs(
        bullets(
          proposed.map(({ label, priority, because, source }) =>
            plain(`${label} (${priority}): ${because}.${source === undefined ? '' : ` Source: ${source}`}`),
          ),
        ),
        left === '' ? '' : plain(`Suggested and not chosen by the examiner: ${left}.`),
        plain(caution),
      ),
      indicator: 'info',
      source: frame.source,
      ...(proposed.length === 0 ? {} : suggestionsOf(proposed, frame)),
    },
  ];
}

function summary(count: number, day: string): string {
  if (count === 0) return `No investigation is proposed after the exam of ${day}, by the choice of the examiner`;
  const said = count === 1 ? 'One investigation is' : `${count} investigations are`;
  return `${said} proposed after the exam of ${day}; each is a draft to accept or leave`;
}

function suggestionsOf(
  proposed: readonly ProposedTest[],
  frame: CardFrame,
): Pick<Card, 'suggestions' | 'selectionBehavior'> {
  return {
    suggestions: proposed.map((item) => ({
      label: item.label,
      uuid: frame.uuid(`proposal/${item.key}`),
      isRecommended: item.isChosen || item.tier === 1,
      actions: [
        {
          type: 'create' as const,
          description: `Draft a request: ${item.label} (${item.priority}). ${item.because}`,
          resource: draftRequest(item, frame),
        },
      ],
    })),
    selectionBehavior: 'any',
  };
}

/** Without an id, which the record that creates it gives, and by nobody: who accepts it requests it. */
function draftRequest(item: ProposedTest, { patient, encounter }: CardFrame): ServiceRequest {
  return {
    resourceType: 'ServiceRequest',
    status: 'draft',
    intent: 'proposal',
    priority: item.priority,
    code: rowConcept(item, systems.investigation),
    subject: { reference: patient },
    ...(encounter === undefined ? {} : { encounter: { reference: encounter } }),
    note: [item.because, ...(item.source === undefined ? [] : [`Source: ${item.source}`])].map((text) => ({
      text: fhirText(text),
    })),
  };
}
