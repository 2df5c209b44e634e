import { mediaTypes } from '../answer.ts';
import { footDropWithoutPerson, misspelt } from './example-exams.ts';
import { formOfReflex } from './example-form.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { fhir, json, problem } = mediaTypes;

export const localisationOperations: readonly ApiOperation[] = [
  {
    method: 'post',
    path: '/localisation',
    id: 'localise',
    area: 'Localisation',
    summary: 'Where the lesion is, what it may be and what to do next; nothing is kept',
    isRepeatable: true,
    description:
      'Decision support for trained clinicians, not a diagnosis. The answer is the same to the byte for the same exam and `modelVersion`. It may be repeated at will.',
    parameters: ['spelling', 'acceptLanguage'],
    body: {
      description:
        'An exam, or a QuestionnaireResponse to the published Questionnaire; it needs neither an identifier nor a subject.',
      required: true,
      content: { [json]: componentSchema('LocalisationRequest'), [fhir]: componentSchema('QuestionnaireResponse') },
    },
    answers: {
      200: {
        description: 'What follows from the exam.',
        content: { [json]: componentSchema('LocalisationAnswer') },
        headers: ['Vary'],
      },
    },
    problems: ['NOT_JSON', 'TOO_DEEP', 'BODY_TOO_LARGE', 'MEDIA_TYPE', 'EXAM_INVALID'],
    calls: [
      {
        name: 'foot-drop',
        says: 'A foot that drops, after squatting.',
        body: { type: json, value: footDropWithoutPerson },
        status: 200,
        answer: {
          type: json,
          value: { workedOut: 'localisation' },
          isExcerpt: true,
          varies: ['/modelVersion'],
        },
      },
      {
        name: 'as-form',
        says: 'An ankle reflex that is absent, as answers to the form.',
        body: { type: fhir, value: formOfReflex },
        status: 200,
        answer: { type: json, value: {}, isExcerpt: true },
      },
      {
        name: 'misspelt',
        says: 'A movement that is not known by this name.',
        body: { type: json, value: misspelt },
        status: 422,
        answer: {
          type: problem,
          value: {
            type: 'about:blank',
            title: 'Invalid exam',
            status: 422,
            code: 'EXAM_INVALID',
            errors: [{ pointer: '/findings/power/0/movement', code: 'UNKNOWN_KEY', suggestion: 'ankle-dorsiflexion' }],
          },
          isExcerpt: true,
        },
      },
    ],
  },
];
