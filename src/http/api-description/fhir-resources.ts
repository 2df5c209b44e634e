import { resourceId } from '../../exam/exam-id.ts';
import { impressionName } from '../../fhir/clinical-impression.ts';
import { searchParamsFor } from '../../search/capability.ts';
import { searchedTypes } from '../../search/parameters.ts';
import { largestCount } from '../../search/result-parameters.ts';
import { mediaTypes } from '../answer.ts';
import { footDropId } from './example-exams.ts';
import { answersResource, bodyProblems, takesResource } from './fhir-schemas.ts';
import type { ApiCall, ApiOperation, ApiParameter } from './operation.ts';

const { fhir } = mediaTypes;
const form = 'application/x-www-form-urlencoded';
const text = { type: 'string' } as const;

const shared = (name: string, description: string, schema: ApiParameter['schema']): ApiParameter => ({
  name,
  in: 'query',
  component: `search${name}`,
  description,
  schema,
});

/** How the matches are shown. Source: FHIR R4, Search, result parameters. */
const resultParameters: readonly ApiParameter[] = [
  shared('_sort', 'Parameters to sort by, with commas between; a minus in front turns the order.', text),
  shared('_count', `Matches on a page; more than ${largestCount} are ${largestCount}, 0 asks for the number alone.`, {
    type: 'integer',
    minimum: 0,
  }),
  shared('_total', 'Whether the number of matches is wanted.', { ...text, enum: ['none', 'estimate', 'accurate'] }),
  shared('_include', 'Resources that the matches refer to: `Type:parameter`.', text),
  shared('_revinclude', 'Resources that refer to the matches: `Type:parameter`.', text),
  shared('_summary', 'How much of each resource is wanted.', {
    ...text,
    enum: ['true', 'text', 'data', 'count', 'false'],
  }),
  shared('_elements', 'Names of the elements that are wanted, with commas between.', text),
];

/** What a type can be searched by, as in the CapabilityStatement. */
function searchParameters(type: string): readonly ApiParameter[] {
  return searchParamsFor(type).map(({ name, type: kind, documentation, definition }) => ({
    name,
    in: 'query',
    component: `${type}.${name}`,
    description: `${documentation} A search parameter of type \`${kind}\`; it takes the prefixes and modifiers of that type. Definition: ${definition}`,
    schema: text,
  }));
}

/** Parameters that are given once may be repeated too; each further one narrows the search. */
const formSchema = {
  type: 'object',
  description: 'The parameters of the search, which may also stand in the address.',
  additionalProperties: { type: 'string' },
};

const searchset = answersResource('A searchset; `next` links lead to further pages.', 'Bundle');
const history = answersResource('A history, newest version first.', 'Bundle');
const version = answersResource('The resource.', 'Resource', ['ETag', 'Last-Modified']);
const unchanged = { description: 'The caller has this version already.', headers: ['ETag'] } as const;
const impressionId = resourceId(footDropId, impressionName);

const examplesOf: Readonly<Record<string, Readonly<Record<string, ApiCall>>>> = {
  Observation: {
    search: {
      name: 'weak-dorsiflexion',
      says: 'Ankle dorsiflexion weaker than 4, in the year of the examples.',
      parameters: { code: 'power/ankle-dorsiflexion', ordinal: 'lt4', date: 'ge2026-01-01', _total: 'accurate' },
      status: 200,
      answer: {
        type: fhir,
        value: {
          resourceType: 'Bundle',
          type: 'searchset',
          total: 1,
          entry: [{ resource: { resourceType: 'Observation', status: 'final' }, search: { mode: 'match' } }],
        },
        isExcerpt: true,
      },
    },
    searchByForm: {
      name: 'one-patient',
      says: 'How many findings there are of one patient.',
      body: {
        type: form,
        value: { subject: 'Patient/invented-4711', code: 'power/ankle-dorsiflexion', _total: 'accurate' },
      },
      status: 200,
      answer: { type: fhir, value: { resourceType: 'Bundle', type: 'searchset', total: 1 }, isExcerpt: true },
    },
  },
  ClinicalImpression: {
    read: {
      name: 'foot-drop',
      says: 'The impression of the first example.',
      parameters: { id: impressionId },
      status: 200,
      answer: {
        type: fhir,
        value: { resourceType: 'ClinicalImpression', id: impressionId, meta: { versionId: '1' } },
        isExcerpt: true,
      },
    },
    readVersion: {
      name: 'foot-drop',
      says: 'Its first version.',
      parameters: { id: impressionId, version: '1' },
      status: 200,
      answer: {
        type: fhir,
        value: { resourceType: 'ClinicalImpression', id: impressionId, meta: { versionId: '1' } },
        isExcerpt: true,
      },
    },
    history: {
      name: 'foot-drop',
      says: 'Every version of it.',
      parameters: { id: impressionId },
      status: 200,
      answer: {
        type: fhir,
        value: { resourceType: 'Bundle', type: 'history', entry: [{ response: { status: '201', etag: 'W/"1"' } }] },
        isExcerpt: true,
      },
    },
    typeHistory: {
      name: 'newest',
      says: 'The version that was kept last.',
      parameters: { _count: 1 },
      status: 200,
      answer: { type: fhir, value: { resourceType: 'Bundle', type: 'history' }, isExcerpt: true },
    },
  },
};

function operationsOf(type: string): readonly ApiOperation[] {
  const common = { area: 'FHIR resources' } as const;
  const calls = (kind: string): Pick<ApiOperation, 'calls'> => {
    const call = examplesOf[type]?.[kind];
    return call === undefined ? {} : { calls: [call] };
  };
  const search = [...searchParameters(type), ...resultParameters, 'cursor', 'format', 'pretty', 'prefer'] as const;
  const page = ['historyCount', 'since', 'cursor', 'format', 'pretty'] as const;
  const one = ['summaryOfOne', 'elements', 'format', 'pretty', 'ifNoneMatch'] as const;
  return [
    {
      ...common,
      method: 'get',
      path: `/fhir/${type}`,
      family: '/fhir/{type}',
      id: `search${type}`,
      summary: 'Search',
      description:
        'A parameter that is not understood is told in the answer and left out, or refused where `Prefer: handling=strict` asks for it.',
      parameters: search,
      answers: { 200: searchset },
      ...calls('search'),
    },
    {
      ...common,
      method: 'get',
      path: `/fhir/${type}/_search`,
      family: '/fhir/{type}/_search',
      id: `search${type}ByPath`,
      summary: 'Search, by another path',
      parameters: search,
      answers: { 200: searchset },
      ...calls('search'),
    },
    {
      ...common,
      method: 'post',
      path: `/fhir/${type}/_search`,
      family: '/fhir/{type}/_search',
      id: `search${type}ByForm`,
      summary: 'Search, with the parameters in the body, where no log of addresses has them',
      parameters: search,
      body: { description: 'The parameters.', content: { [form]: formSchema } },
      answers: { 200: searchset },
      problems: ['BODY_TOO_LARGE', 'MEDIA_TYPE'],
      ...calls('searchByForm'),
    },
    {
      ...common,
      method: 'get',
      path: `/fhir/${type}/_history`,
      family: '/fhir/{type}/_history',
      id: `history${type}`,
      summary: 'Every version of every resource of the type',
      parameters: page,
      answers: { 200: history },
      ...calls('typeHistory'),
    },
    {
      ...common,
      method: 'get',
      path: `/fhir/${type}/{id}`,
      family: '/fhir/{type}/{id}',
      id: `read${type}`,
      summary: 'Read the current version',
      parameters: ['resourceId', ...one],
      answers: { 200: version, 304: unchanged },
      problems: ['NOT_FOUND'],
      ...calls('read'),
    },
    {
      ...common,
      method: 'get',
      path: `/fhir/${type}/{id}/_history`,
      family: '/fhir/{type}/{id}/_history',
      id: `historyOf${type}`,
      summary: 'Every version of one resource',
      parameters: ['resourceId', ...page],
      answers: { 200: history },
      problems: ['NOT_FOUND'],
      ...calls('history'),
    },
    {
      ...common,
      method: 'get',
      path: `/fhir/${type}/{id}/_history/{version}`,
      family: '/fhir/{type}/{id}/_history/{version}',
      id: `read${type}Version`,
      summary: 'Read one version',
      parameters: ['resourceId', 'resourceVersion', ...one],
      answers: { 200: version, 304: unchanged },
      problems: ['NOT_FOUND'],
      ...calls('readVersion'),
    },
  ];
}

const measure = { ...takesResource('A Measure.', 'Measure') };
const keptMeasure = answersResource('The Measure as it is kept.', 'Measure', ['Location', 'ETag', 'Last-Modified']);

/** Measures are the one type that callers send. */
const measureWrites: readonly ApiOperation[] = [
  {
    method: 'post',
    path: '/fhir/Measure',
    id: 'createMeasure',
    area: 'FHIR measures',
    summary: 'Keep a Measure of your own',
    parameters: ['format'],
    body: measure,
    answers: { 201: keptMeasure },
    problems: [...bodyProblems, 'MEASURE_INVALID', 'STORE_FULL'],
    calls: [
      {
        name: 'nothing-to-count',
        says: 'A Measure that counts nothing.',
        body: { type: fhir, value: { resourceType: 'Measure', status: 'active' } },
        status: 422,
        answer: { type: fhir, value: { resourceType: 'OperationOutcome' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'put',
    path: '/fhir/Measure/{id}',
    id: 'updateMeasure',
    area: 'FHIR measures',
    summary: 'Change a Measure of your own, with If-Match',
    parameters: ['resourceId', 'ifMatch', 'format'],
    body: measure,
    answers: { 200: keptMeasure },
    problems: [
      ...bodyProblems,
      'NOT_FOUND',
      'MEASURE_INVALID',
      'IDENTIFIER_IN_USE',
      'VERSION_MISMATCH',
      'PRECONDITION_REQUIRED',
      'STORE_FULL',
    ],
    calls: [
      {
        name: 'shipped',
        says: 'One that comes with the service cannot be changed.',
        parameters: { id: 'neuropathy-signs', 'If-Match': 'W/"1"' },
        body: { type: fhir, value: { resourceType: 'Measure', id: 'neuropathy-signs', status: 'active' } },
        status: 409,
        answer: { type: fhir, value: { resourceType: 'OperationOutcome' }, isExcerpt: true },
      },
    ],
  },
];

export const fhirResourceOperations: readonly ApiOperation[] = [
  ...searchedTypes.flatMap(operationsOf),
  ...measureWrites,
];
