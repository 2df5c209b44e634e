import { mediaTypes } from '../answer.ts';
import { answersResource, bodyProblems, takesResource } from './fhir-schemas.ts';
import type { ApiOperation } from './operation.ts';

const { fhir } = mediaTypes;
const body = takesResource('A Subscription with a rest-hook as its channel.', 'Subscription');
const kept = answersResource('The Subscription as it is kept.', 'Subscription', ['Location', 'ETag', 'Last-Modified']);
const outcome = { type: fhir, value: { resourceType: 'OperationOutcome' }, isExcerpt: true } as const;
const nobody = '2b7e3c1a-9d04-4f0e-8a55-6c1d2e3f4a5b';

/** Invented, and turned off, so that nothing is sent to it. */
const subscription = {
  resourceType: 'Subscription',
  status: 'off',
  reason: 'A worklist of new impressions; invented.',
  criteria: 'ClinicalImpression?status=completed',
  channel: { type: 'rest-hook', endpoint: 'https://worklist.example/hooks', payload: 'application/fhir+json' },
} as const;

export const subscriptionOperations: readonly ApiOperation[] = [
  {
    method: 'post',
    path: '/fhir/Subscription',
    id: 'createSubscription',
    area: 'FHIR subscriptions',
    summary: 'Be told of what matches a search',
    description:
      'Whoever is told of something learns of it, so this also takes reading and searching (`rs`) of the type in the criteria.',
    parameters: ['format'],
    body,
    answers: { 201: kept },
    problems: [...bodyProblems, 'SUBSCRIPTION_INVALID', 'STORE_FULL'],
    calls: [
      {
        name: 'turned-off',
        says: 'A worklist, kept but not told of anything yet.',
        body: { type: fhir, value: subscription },
        status: 201,
        answer: {
          type: fhir,
          value: { resourceType: 'Subscription', status: 'off', criteria: subscription.criteria },
          isExcerpt: true,
        },
      },
      {
        name: 'plain-http',
        says: 'An address without TLS, which the operator has not allowed.',
        body: {
          type: fhir,
          value: { ...subscription, channel: { type: 'rest-hook', endpoint: 'http://worklist.example/hooks' } },
        },
        status: 422,
        answer: outcome,
      },
    ],
  },
  {
    method: 'put',
    path: '/fhir/Subscription/{id}',
    id: 'updateSubscription',
    area: 'FHIR subscriptions',
    summary: 'Change a Subscription, with If-Match',
    parameters: ['resourceId', 'ifMatch', 'format'],
    body,
    answers: { 200: kept },
    problems: [
      ...bodyProblems,
      'NOT_FOUND',
      'SUBSCRIPTION_INVALID',
      'VERSION_MISMATCH',
      'PRECONDITION_REQUIRED',
      'STORE_FULL',
    ],
    calls: [
      {
        name: 'unknown',
        says: 'A new one is posted; an id of your own cannot be given.',
        parameters: { id: nobody, 'If-Match': 'W/"1"' },
        body: { type: fhir, value: { ...subscription, id: nobody } },
        status: 404,
        answer: outcome,
      },
    ],
  },
  {
    method: 'delete',
    path: '/fhir/Subscription/{id}',
    id: 'turnOffSubscription',
    area: 'FHIR subscriptions',
    summary: 'Turn a Subscription off; it stays readable',
    parameters: ['resourceId'],
    answers: { 204: { description: 'It is off.' } },
    problems: ['NOT_FOUND', 'STORE_FULL'],
    calls: [
      {
        name: 'unknown',
        says: 'An id that no Subscription has.',
        parameters: { id: nobody },
        status: 404,
        answer: outcome,
      },
    ],
  },
];
