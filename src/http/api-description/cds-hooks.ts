import { type CdsService, cdsServices, responseKey } from '../../cds/services.ts';
import { mediaTypes } from '../answer.ts';
import { formOfReflex } from './example-form.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { json, problem } = mediaTypes;
const problems = ['NOT_JSON', 'TOO_DEEP', 'BODY_TOO_LARGE', 'MEDIA_TYPE', 'HOOK_INVALID'] as const;

/** An invented call; the patient is nobody. */
const callOf = ({ hook }: CdsService) => ({
  hook,
  hookInstance: 'd1577c69-dfbe-44ad-ba6d-3e05e953b2ea',
  context: {
    userId: 'Practitioner/invented-7',
    patientId: 'invented-4713',
    ...(hook === 'encounter-discharge' ? { encounterId: 'invented-1' } : {}),
  },
});

const camelCase = (id: string) => id.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());

function operationsOf(service: CdsService): readonly ApiOperation[] {
  const { id, title, description } = service;
  const call = callOf(service);
  return [
    {
      method: 'post',
      path: `/cds-services/${id}`,
      family: '/cds-services/{service}',
      id: `call${camelCase(id)}`,
      area: 'CDS Hooks',
      // The same for every service, since the index names them together.
      summary: 'Cards for a hook',
      description: `${title}. ${description}`,
      isRepeatable: true,
      body: {
        description: `A call of the hook \`${service.hook}\`.`,
        required: true,
        content: { [json]: componentSchema('HookCall') },
      },
      answers: { 200: { description: 'Cards, or none.', content: { [json]: componentSchema('Cards') } } },
      problems: [...problems, 'EXAM_INVALID', 'PREFETCH_MISSING', 'STORE_CORRUPT', 'STORE_UNAVAILABLE'],
      calls: [
        {
          name: 'form-in-prefetch',
          says: 'The exam comes with the call, as answers to its form.',
          body: { type: json, value: { ...call, prefetch: { [responseKey]: formOfReflex } } },
          status: 200,
          answer: { type: json, value: { cards: [] }, isExcerpt: true },
        },
        {
          name: 'without-context',
          says: 'A call that does not say about whom.',
          body: { type: json, value: { hook: call.hook, hookInstance: call.hookInstance } },
          status: 400,
          answer: { type: problem, value: { status: 400, code: 'HOOK_INVALID' }, isExcerpt: true },
        },
      ],
    },
    {
      method: 'post',
      path: `/cds-services/${id}/feedback`,
      family: '/cds-services/{service}/feedback',
      id: `feedback${camelCase(id)}`,
      area: 'CDS Hooks',
      summary: 'What became of the cards; it is counted and not kept',
      body: {
        description: 'Feedback on cards.',
        required: true,
        content: { [json]: componentSchema('Feedback') },
      },
      answers: {
        200: { description: 'Taken.', content: { [json]: { type: 'object', maxProperties: 0 } } },
      },
      problems,
      calls: [
        {
          name: 'overridden',
          says: 'A card that was not followed.',
          body: {
            type: json,
            value: {
              feedback: [
                {
                  card: '4e0a3a1e-3065-4156-9a3a-8ad14bdac0ee',
                  outcome: 'overridden',
                  outcomeTimestamp: '2026-03-14T10:30:00Z',
                },
              ],
            },
          },
          status: 200,
          answer: { type: json, value: {} },
        },
      ],
    },
  ];
}

/** Source: CDS Hooks 2.0, https://cds-hooks.hl7.org/2.0/ */
export const cdsHooksOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/cds-services',
    id: 'discoverCdsServices',
    area: 'CDS Hooks',
    summary: 'Which decision support services there are',
    answers: { 200: { description: 'The services.', content: { [json]: componentSchema('CdsServices') } } },
    calls: [
      {
        name: 'all',
        says: 'Every service with its hook.',
        status: 200,
        answer: {
          type: json,
          value: { services: cdsServices.map(({ id, hook, title }) => ({ id, hook, title })) },
          isExcerpt: true,
        },
      },
    ],
  },
  ...cdsServices.flatMap(operationsOf),
];
