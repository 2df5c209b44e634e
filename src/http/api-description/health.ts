import { mediaTypes } from '../answer.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { json } = mediaTypes;

export const healthOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/health/live',
    id: 'readLiveness',
    area: 'Service',
    summary: 'Whether the process answers',
    answers: { 200: { description: 'It does.', content: { [json]: componentSchema('Live') } } },
    calls: [{ name: 'live', says: 'It does.', status: 200, answer: { type: json, value: { status: 'live' } } }],
  },
  {
    method: 'get',
    path: '/health/ready',
    id: 'readReadiness',
    area: 'Service',
    summary: 'Whether it can keep an exam',
    answers: {
      200: { description: 'It can.', content: { [json]: componentSchema('Ready') } },
      503: {
        description: 'It is on its way out, or its store cannot be reached.',
        content: { [json]: componentSchema('Stopping') },
      },
    },
    problems: ['STORE_UNAVAILABLE'],
    calls: [{ name: 'ready', says: 'It can.', status: 200, answer: { type: json, value: { status: 'ready' } } }],
  },
];
