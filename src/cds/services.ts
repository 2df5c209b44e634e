import { questionnaireUrl } from '../questionnaire/form-index.ts';
import type { Assessment } from '../workup/assessment.ts';
import type { Card, CardFrame } from './card.ts';
import { flagCards } from './flag-cards.ts';
import { localisationCards } from './localisation-card.ts';
import { proposalCards } from './proposal-cards.ts';

/** One decision support service and what its cards are. */
export interface CdsService {
  readonly id: string;
  readonly hook: 'patient-view' | 'encounter-discharge';
  readonly title: string;
  readonly description: string;
  readonly cards: (assessment: Assessment, frame: CardFrame) => readonly Card[];
}

/** Name of the prefetch that brings an exam as a filled-in form. */
export const responseKey = 'questionnaireResponse';

const prefetch = {
  [responseKey]: `QuestionnaireResponse?patient={{context.patientId}}&questionnaire=${questionnaireUrl}&_sort=-authored&_count=1`,
};

const usageRequirements =
  "The exam is the newest response to the service's own Questionnaire in the prefetch; without one, the newest exam of Patient/{patientId} that was posted to the service. The service fetches nothing from the caller's FHIR server and uses no fhirAuthorization.";

export const cdsServices: readonly CdsService[] = [
  {
    id: 'neuroexam-localisation',
    hook: 'patient-view',
    title: 'Localisation of the neurological examination',
    description:
      'Red flags, where in the nervous system the lesion lies and why, what it may be, and investigations to propose, from the newest neurological examination of the patient.',
    cards: (assessment, frame) => [
      ...flagCards(assessment, frame),
      ...localisationCards(assessment, frame),
      ...proposalCards(assessment, frame),
    ],
  },
  {
    id: 'neuroexam-before-discharge',
    hook: 'encounter-discharge',
    title: 'Neurological red flags before discharge',
    description:
      'Red flags of the newest neurological examination of the patient, those that could not be decided, and investigations that were proposed.',
    cards: (assessment, frame) => [...flagCards(assessment, frame), ...proposalCards(assessment, frame)],
  },
];

/** The answer of the discovery endpoint. */
export function discovery() {
  return {
    services: cdsServices.map(({ cards: _, ...described }) => ({ ...described, prefetch, usageRequirements })),
  };
}
