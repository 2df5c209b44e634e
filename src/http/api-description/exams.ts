import { mediaTypes } from '../answer.ts';
import { correction, footDrop, footDropId, toBeCorrected, toBeCorrectedId } from './example-exams.ts';
import { formOfReflex } from './example-form.ts';
import { type ApiAnswer, type ApiOperation, componentSchema } from './operation.ts';

const { json, fhir } = mediaTypes;
const bundle = { [fhir]: componentSchema('Bundle') };
const kept = (description: string): ApiAnswer => ({ description, content: bundle, headers: ['Location', 'ETag'] });
const body = {
  description:
    'An exam, as JSON, or a QuestionnaireResponse to the published Questionnaire. What is sent is told by `resourceType`; either may have either media type.',
  required: true,
  content: { [json]: componentSchema('Exam'), [fhir]: componentSchema('QuestionnaireResponse') },
};
const bodyProblems = ['NOT_JSON', 'TOO_DEEP', 'BODY_TOO_LARGE', 'MEDIA_TYPE', 'EXAM_INVALID', 'STORE_FULL'] as const;
const noSuchExam = '6f1c2c56-0f3a-4c39-9d0e-1f7f5d3b8a10';

export const examOperations: readonly ApiOperation[] = [
  {
    method: 'post',
    path: '/exams',
    id: 'postExam',
    area: 'Exams',
    summary: 'Keep an exam; answers a FHIR R4 transaction Bundle',
    isRepeatable: true,
    description:
      "The sender's own `identifier` makes it safe to send twice: the same exam is answered again and not kept again. The same identifier with another content is refused; a correction is sent with PUT.",
    body,
    answers: {
      201: kept('Kept. The Bundle can be sent as it is to any FHIR R4 server.'),
      200: kept('The same exam was kept before; this is its Bundle.'),
    },
    problems: [...bodyProblems, 'IDENTIFIER_IN_USE', 'VERSION_MISMATCH'],
    calls: [
      {
        name: 'foot-drop',
        says: 'A foot that drops, after squatting.',
        body: { type: json, value: footDrop },
        status: 201,
        answer: {
          type: fhir,
          value: { workedOut: 'bundle' },
          isExcerpt: true,
        },
      },
      {
        name: 'to-be-corrected',
        says: 'An ankle reflex noted on the wrong side.',
        body: { type: json, value: toBeCorrected },
        status: 201,
        answer: { type: fhir, value: { resourceType: 'Bundle', type: 'transaction' }, isExcerpt: true },
      },
      {
        name: 'as-form',
        says: 'Another exam, as answers to its form.',
        body: { type: fhir, value: formOfReflex },
        status: 201,
        answer: { type: fhir, value: { resourceType: 'Bundle', type: 'transaction' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/exams/{id}',
    id: 'readExam',
    area: 'Exams',
    summary: 'The exam as it was sent',
    parameters: ['examId', 'version'],
    answers: {
      200: {
        description: 'The bytes that were sent.',
        content: { [json]: componentSchema('Exam') },
        headers: ['ETag'],
      },
    },
    problems: ['NOT_FOUND', 'ERASED'],
    calls: [
      {
        name: 'foot-drop',
        says: 'The exam of the first example.',
        parameters: { id: footDropId },
        status: 200,
        answer: { type: json, value: footDrop },
      },
      {
        name: 'unknown',
        says: 'An id that no exam has.',
        parameters: { id: noSuchExam },
        status: 404,
        answer: {
          type: fhir,
          value: { resourceType: 'OperationOutcome', issue: [{ severity: 'error', code: 'not-found' }] },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'put',
    path: '/exams/{id}',
    id: 'correctExam',
    area: 'Exams',
    summary: 'Correct an exam, with If-Match',
    description:
      'The whole exam as it should have been, with its identifier and the status `amended` or `entered-in-error`. The Bundle updates what it contains and withdraws what only earlier versions had.',
    parameters: ['examId', 'ifMatch'],
    body,
    answers: { 200: kept('Kept as a new version.') },
    problems: [...bodyProblems, 'NOT_FOUND', 'ERASED', 'VERSION_MISMATCH', 'PRECONDITION_REQUIRED'],
    calls: [
      {
        name: 'corrected',
        says: 'The reflex is moved to the other side.',
        parameters: { id: toBeCorrectedId, 'If-Match': 'W/"1"' },
        body: { type: json, value: correction },
        status: 200,
        answer: { type: fhir, value: { resourceType: 'Bundle', type: 'transaction' }, isExcerpt: true },
      },
      {
        name: 'without-if-match',
        says: 'A correction that does not say of which version.',
        parameters: { id: footDropId },
        body: { type: json, value: { ...footDrop, status: 'amended' } },
        status: 428,
        answer: {
          type: fhir,
          value: { resourceType: 'OperationOutcome', issue: [{ severity: 'error', code: 'required' }] },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'get',
    path: '/exams/{id}/bundle',
    id: 'readExamBundle',
    area: 'Exams',
    summary: 'Its Bundle: ?type=transaction, collection or document',
    parameters: ['examId', 'bundleType', 'version'],
    answers: { 200: kept('The Bundle of this version.') },
    problems: ['NOT_FOUND', 'ERASED'],
    calls: [
      {
        name: 'as-document',
        says: 'The first example as a report.',
        parameters: { id: footDropId, type: 'document' },
        status: 200,
        answer: {
          type: fhir,
          value: { resourceType: 'Bundle', type: 'document', entry: [{ resource: { resourceType: 'Composition' } }] },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'get',
    path: '/exams/{id}/questionnaire-response',
    id: 'readExamForm',
    area: 'Exams',
    summary: 'The exam as answers to its form',
    parameters: ['examId', 'version'],
    answers: {
      200: {
        description: 'A QuestionnaireResponse; posted again it means the same exam.',
        content: { [fhir]: componentSchema('QuestionnaireResponse') },
        headers: ['Location', 'ETag'],
      },
    },
    problems: ['NOT_FOUND', 'ERASED'],
    calls: [
      {
        name: 'foot-drop',
        says: 'The first example as a form.',
        parameters: { id: footDropId },
        status: 200,
        answer: {
          type: fhir,
          value: { resourceType: 'QuestionnaireResponse', subject: { reference: 'Patient/invented-4711' } },
          isExcerpt: true,
        },
      },
    ],
  },
];
