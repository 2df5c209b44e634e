import { mediaTypes } from '../answer.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { json, problem } = mediaTypes;
const problems = ['NOT_JSON', 'TOO_DEEP', 'BODY_TOO_LARGE', 'MEDIA_TYPE', 'PRACTICE_INVALID'] as const;

/** Not a patient of any service: those are sealed with the key of their store. */
const nobody = 'none-that-was-given';

export const practiceOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/practice/sites',
    id: 'listPracticeSites',
    area: 'Practice',
    summary: 'The sites that a learner may commit to, by part of the neuraxis',
    answers: { 200: { description: 'The sites.', content: { [json]: componentSchema('PracticeSites') } } },
    calls: [
      {
        name: 'all',
        says: 'Every part with its sites.',
        status: 200,
        answer: { type: json, value: { parts: [{ part: 'hemispheres' }] }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'post',
    path: '/practice/patients',
    id: 'admitPracticePatient',
    area: 'Practice',
    summary: 'A simulated, invented patient to examine; nothing is kept',
    description:
      'The lesion is drawn from the model of the service, evenly over the parts of the neuraxis, and may be none. It stands sealed in `patient`, which any instance on the same store can read, and no client.',
    body: {
      description: 'What is wished for; an empty object for any patient.',
      required: true,
      content: { [json]: componentSchema('PracticeWish') },
    },
    answers: { 201: { description: 'The patient.', content: { [json]: componentSchema('PracticePatient') } } },
    problems,
    calls: [
      {
        name: 'easy-nerve',
        says: 'A common lesion of a single nerve, the same each time.',
        body: { type: json, value: { difficulty: 'easy', part: 'nerves', seed: 3 } },
        status: 201,
        answer: { type: json, value: { history: { onset: {} } }, isExcerpt: true },
      },
      {
        name: 'misspelt',
        says: 'A part that is not known by this name.',
        body: { type: json, value: { part: 'nerve' } },
        status: 422,
        answer: {
          type: problem,
          value: { status: 422, code: 'PRACTICE_INVALID', errors: [{ pointer: '/part', suggestion: 'nerves' }] },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'post',
    path: '/practice/examinations',
    id: 'examinePracticePatient',
    area: 'Practice',
    summary: 'What is found on examining a practice patient',
    description:
      'The same item of the same patient always brings the same finding. Of an item from which the model draws nothing nothing can be said; it is named apart and is never taken as normal.',
    isRepeatable: true,
    body: {
      description: 'The patient and what to examine.',
      required: true,
      content: { [json]: componentSchema('PracticeExamination') },
    },
    answers: { 200: { description: 'The findings.', content: { [json]: componentSchema('PracticeFindings') } } },
    problems: [...problems, 'BAD_REQUEST'],
    calls: [
      {
        name: 'foreign-patient',
        says: 'A patient of another service.',
        body: { type: json, value: { patient: nobody, items: [{ item: 'power/ankle-dorsiflexion', side: 'both' }] } },
        status: 400,
        answer: { type: problem, value: { status: 400, code: 'BAD_REQUEST' }, isExcerpt: true },
      },
      {
        name: 'misspelt',
        says: 'An item that is not known by this name.',
        body: { type: json, value: { patient: nobody, items: [{ item: 'power/ankle-dorsiflection', side: 'both' }] } },
        status: 422,
        answer: {
          type: problem,
          value: {
            status: 422,
            code: 'PRACTICE_INVALID',
            errors: [{ pointer: '/items/0/item', code: 'UNKNOWN_KEY', suggestion: 'power/ankle-dorsiflexion' }],
          },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'post',
    path: '/practice/answers',
    id: 'answerPracticeCommitment',
    area: 'Practice',
    summary: 'The lesion, how near a commitment came, and how few items would have done',
    isRepeatable: true,
    body: {
      description: 'The patient, what was examined, and where the lesion is said to be.',
      required: true,
      content: { [json]: componentSchema('PracticeCommitment') },
    },
    answers: { 200: { description: 'The answer.', content: { [json]: componentSchema('PracticeAnswer') } } },
    problems: [...problems, 'BAD_REQUEST'],
    calls: [
      {
        name: 'without-side',
        says: 'A root without a side.',
        body: {
          type: json,
          value: { patient: nobody, examined: [], commitment: { site: 'nerve-root', level: 'L5' } },
        },
        status: 422,
        answer: {
          type: problem,
          value: {
            status: 422,
            code: 'PRACTICE_INVALID',
            errors: [{ pointer: '/commitment', code: 'REQUIRED', suggestion: 'side' }],
          },
          isExcerpt: true,
        },
      },
    ],
  },
];
