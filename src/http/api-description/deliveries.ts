import { mediaTypes } from '../answer.ts';
import { footDropId } from './example-exams.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { json } = mediaTypes;
const says = 'No receiver is configured, so nothing was to be sent.';

export const deliveryOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/exams/{id}/deliveries',
    id: 'readDeliveries',
    area: 'Exams',
    summary: 'How it stands with what is sent of an exam',
    parameters: ['examId'],
    answers: {
      200: { description: 'One entry for each receiver.', content: { [json]: componentSchema('Deliveries') } },
    },
    problems: ['NOT_FOUND', 'ERASED'],
    calls: [
      {
        name: 'none',
        says,
        parameters: { id: footDropId },
        status: 200,
        answer: { type: json, value: { deliveries: [] } },
      },
    ],
  },
  {
    method: 'post',
    path: '/exams/{id}/deliveries/retry',
    id: 'retryDeliveries',
    area: 'Exams',
    summary: 'Try again what was given up',
    parameters: ['examId'],
    isRepeatable: true,
    answers: {
      200: {
        description: 'How many are tried again, and how it stands.',
        content: { [json]: componentSchema('RetriedDeliveries') },
      },
    },
    problems: ['NOT_FOUND', 'ERASED', 'STORE_FULL'],
    calls: [
      {
        name: 'none',
        says,
        parameters: { id: footDropId },
        status: 200,
        answer: { type: json, value: { retried: 0, deliveries: [] } },
      },
    ],
  },
];
