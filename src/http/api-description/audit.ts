import { auditSearchParams } from '../../search/audit-search.ts';
import { mediaTypes } from '../answer.ts';
import { answersResource } from './fhir-schemas.ts';
import type { ApiCall, ApiOperation, ApiParameter } from './operation.ts';

const { fhir } = mediaTypes;
const form = 'application/x-www-form-urlencoded';
const text = { type: 'string' } as const;

const searchParameters: readonly ApiParameter[] = [
  ...auditSearchParams.map(({ name, type, documentation, definition }) => ({
    name,
    in: 'query' as const,
    component: `AuditEvent.${name}`,
    description: `${documentation} A search parameter of type \`${type}\`. Definition: ${definition}`,
    schema: text,
  })),
  {
    name: '_count',
    in: 'query',
    component: 'AuditEvent._count',
    description: 'Entries on a page; 0 asks for the number alone.',
    schema: { type: 'integer', minimum: 0 },
  },
];
const parameters = [...searchParameters, 'cursor', 'format', 'pretty', 'prefer'] as const;
const searchset = answersResource('A searchset; `next` links lead to further pages.', 'Bundle');

const posted: ApiCall = {
  name: 'what-was-created',
  says: 'Who had something kept.',
  parameters: { action: 'C', _count: 1 },
  status: 200,
  answer: {
    type: fhir,
    value: {
      resourceType: 'Bundle',
      type: 'searchset',
      entry: [{ resource: { resourceType: 'AuditEvent', action: 'C' }, search: { mode: 'match' } }],
    },
    isExcerpt: true,
  },
};

/** Written by what happens and never changed, so that it can be read and searched alone. */
export const auditOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/fhir/AuditEvent',
    id: 'searchAuditEvent',
    area: 'FHIR audit',
    summary: 'Search the audit trail',
    parameters,
    answers: { 200: searchset },
    calls: [posted],
  },
  {
    method: 'get',
    path: '/fhir/AuditEvent/_search',
    id: 'searchAuditEventByPath',
    area: 'FHIR audit',
    summary: 'Search the audit trail, by another path',
    parameters,
    answers: { 200: searchset },
    calls: [posted],
  },
  {
    method: 'post',
    path: '/fhir/AuditEvent/_search',
    id: 'searchAuditEventByForm',
    area: 'FHIR audit',
    summary: 'Search the audit trail, with the parameters in the body, where no log of addresses has them',
    parameters,
    body: {
      description: 'The parameters.',
      content: {
        [form]: {
          type: 'object',
          description: 'The parameters of the search, which may also stand in the address.',
          additionalProperties: text,
        },
      },
    },
    answers: { 200: searchset },
    problems: ['BODY_TOO_LARGE', 'MEDIA_TYPE'],
    calls: [
      {
        name: 'one-patient',
        says: 'What happened to the record of one patient.',
        body: { type: form, value: { patient: 'Patient/invented-4711' } },
        status: 200,
        answer: { type: fhir, value: { resourceType: 'Bundle', type: 'searchset' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/fhir/AuditEvent/{id}',
    id: 'readAuditEvent',
    area: 'FHIR audit',
    summary: 'Read one entry of the audit trail',
    parameters: ['resourceId', 'format', 'pretty'],
    answers: { 200: answersResource('The entry.', 'Resource', ['ETag', 'Last-Modified']) },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'first',
        says: 'The first entry.',
        parameters: { id: '1' },
        status: 200,
        answer: { type: fhir, value: { resourceType: 'AuditEvent', id: '1' }, isExcerpt: true },
      },
    ],
  },
];
