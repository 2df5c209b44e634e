import { mediaTypes } from '../answer.ts';
import { formOfReflex } from './example-form.ts';
import { answersResource, bodyProblems } from './fhir-schemas.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { fhir, json } = mediaTypes;
const schema = { anyOf: [componentSchema('QuestionnaireResponse'), componentSchema('Parameters')] };

/** Source: HL7 Structured Data Capture, operation extract. */
export const extractOperations: readonly ApiOperation[] = [
  {
    method: 'post',
    path: '/fhir/QuestionnaireResponse/$extract',
    id: 'extractQuestionnaireResponse',
    area: 'FHIR resources',
    summary: 'The transaction Bundle of a filled-in form; nothing is kept',
    isRepeatable: true,
    parameters: ['format'],
    body: {
      description: 'A QuestionnaireResponse, or Parameters with it as `questionnaire-response`.',
      required: true,
      content: { [fhir]: schema, [json]: schema },
    },
    answers: { 200: answersResource('The Bundle.', 'Bundle') },
    problems: [...bodyProblems, 'EXAM_INVALID'],
    calls: [
      {
        name: 'reflex',
        says: 'An ankle reflex that is absent.',
        body: { type: fhir, value: formOfReflex },
        status: 200,
        answer: { type: fhir, value: { resourceType: 'Bundle', type: 'transaction' }, isExcerpt: true },
      },
    ],
  },
];
