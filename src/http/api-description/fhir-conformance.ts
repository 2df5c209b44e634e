import { type ConformanceType, conformanceTypes } from '../../terminology/load.ts';
import { mediaTypes } from '../answer.ts';
import { answersResource } from './fhir-schemas.ts';
import type { ApiCall, ApiOperation, ApiParameter } from './operation.ts';

const { fhir } = mediaTypes;

const url: ApiParameter = {
  name: 'url',
  in: 'query',
  component: 'canonicalUrl',
  description: 'Canonical address.',
  schema: { type: 'string' },
};

const searched: Partial<Record<ConformanceType, ApiCall>> = {
  CodeSystem: {
    name: 'by-address',
    says: 'The code system of what is examined.',
    parameters: { url: 'https://neuroexam-fhir.example/fhir/CodeSystem/exam-item' },
    status: 200,
    answer: {
      type: fhir,
      value: { resourceType: 'Bundle', type: 'searchset', total: 1, entry: [{ resource: { id: 'exam-item' } }] },
      isExcerpt: true,
    },
  },
};

const read: Partial<Record<ConformanceType, ApiCall>> = {
  StructureDefinition: {
    name: 'finding',
    says: 'The profile of a finding.',
    parameters: { id: 'neuro-exam-finding' },
    status: 200,
    answer: { type: fhir, value: { resourceType: 'StructureDefinition', type: 'Observation' }, isExcerpt: true },
  },
};

const withCall = (call: ApiCall | undefined): Pick<ApiOperation, 'calls'> =>
  call === undefined ? {} : { calls: [call] };

export const fhirConformanceOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/fhir/metadata',
    id: 'readCapabilities',
    area: 'FHIR conformance',
    summary: 'CapabilityStatement: exactly what works',
    parameters: ['format'],
    answers: { 200: answersResource('The CapabilityStatement.', 'CapabilityStatement') },
    calls: [
      {
        name: 'all',
        says: 'The version of FHIR.',
        status: 200,
        answer: { type: fhir, value: { resourceType: 'CapabilityStatement', fhirVersion: '4.0.1' }, isExcerpt: true },
      },
    ],
  },
  ...conformanceTypes.flatMap((type): ApiOperation[] => [
    {
      method: 'get',
      path: `/fhir/${type}`,
      family: '/fhir/{type}',
      id: `list${type}`,
      area: 'FHIR conformance',
      summary: 'List, or find by canonical address',
      parameters: ['format', url],
      answers: { 200: answersResource('A searchset.', 'Bundle') },
      ...withCall(searched[type]),
    },
    {
      method: 'get',
      path: `/fhir/${type}/{id}`,
      family: '/fhir/{type}/{id}',
      id: `read${type}`,
      area: 'FHIR conformance',
      summary: 'Read one',
      parameters: ['resourceId', 'format'],
      answers: { 200: answersResource('The resource.') },
      problems: ['NOT_FOUND'],
      ...withCall(read[type]),
    },
  ]),
];
