import { mediaTypes } from '../answer.ts';
import { type ApiOperation, componentSchema } from './operation.ts';

const { json, fhir, problem } = mediaTypes;

/** Source: SMART App Launch 2.2.0, Conformance. */
export const smartConfigurationOperations: readonly ApiOperation[] = (
  [
    ['/fhir', 'readSmartConfiguration', fhir],
    ['', 'readSmartConfigurationAtRoot', problem],
  ] as const
).map(([base, id, type]) => ({
  method: 'get',
  path: `${base}/.well-known/smart-configuration`,
  id,
  area: 'Service',
  summary: 'Where tokens are had, and which scopes there are',
  answers: {
    200: {
      description: 'What the authorisation server that is configured offers.',
      content: { [json]: componentSchema('SmartConfiguration') },
    },
  },
  problems: ['NOT_FOUND'],
  calls: [
    {
      name: 'none-configured',
      says: 'No authorisation server is configured.',
      status: 404,
      answer: {
        type,
        value: type === fhir ? { resourceType: 'OperationOutcome' } : { status: 404, code: 'NOT_FOUND' },
        isExcerpt: true,
      },
    },
  ],
}));
