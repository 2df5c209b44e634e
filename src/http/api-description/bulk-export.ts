import { mediaTypes } from '../answer.ts';
import { ndjson } from '../export-wish.ts';
import { bodyProblems, takesResource } from './fhir-schemas.ts';
import { type ApiOperation, type ApiParameter, componentSchema, type TakenFrom } from './operation.ts';

const { json } = mediaTypes;

const query: readonly ApiParameter[] = [
  {
    name: '_outputFormat',
    in: 'query',
    component: 'outputFormat',
    description: 'NDJSON by any of its names.',
    schema: { type: 'string', enum: [ndjson, 'application/ndjson', 'ndjson'] },
  },
  {
    name: '_type',
    in: 'query',
    component: 'exportTypes',
    description: 'Types that are wanted, with commas between; all when absent.',
    schema: { type: 'string' },
  },
];
const file: ApiParameter = {
  name: 'file',
  in: 'path',
  description: 'Name of a file of the manifest, such as `Observation.ndjson`.',
  schema: { type: 'string' },
};
const accepted = { description: 'It has begun.', headers: ['Content-Location'] } as const;
const area = 'Bulk export';
const started: TakenFrom = {
  shown: '0b8f8a3e-6a44-4f0e-9a55-2d7a3b1c9e10',
  from: { operation: 'startExport', example: 'impressions', header: 'Content-Location' },
};
const toRemove: TakenFrom = { ...started, from: { ...started.from, operation: 'startExportPosted' } };

export const bulkExportOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/fhir/$export',
    id: 'startExport',
    area,
    summary: 'Begin an export of everything, or of some types',
    parameters: ['preferAsync', ...query, 'since'],
    answers: { 202: accepted },
    problems: ['STORE_FULL'],
    calls: [
      {
        name: 'impressions',
        says: 'Impressions alone.',
        parameters: { Prefer: 'respond-async', _type: 'ClinicalImpression' },
        status: 202,
      },
    ],
  },
  {
    method: 'post',
    path: '/fhir/$export',
    id: 'startExportPosted',
    area,
    summary: 'Begin an export, with Parameters in the body',
    parameters: ['preferAsync', ...query, 'since'],
    body: takesResource('Parameters of the export.', 'Parameters', false),
    answers: { 202: accepted },
    problems: [...bodyProblems, 'STORE_FULL'],
    calls: [
      {
        name: 'impressions',
        says: 'Impressions alone.',
        parameters: { Prefer: 'respond-async' },
        body: {
          type: mediaTypes.fhir,
          value: { resourceType: 'Parameters', parameter: [{ name: '_type', valueString: 'ClinicalImpression' }] },
        },
        status: 202,
      },
    ],
  },
  {
    method: 'get',
    path: '/fhir/export-status/{id}',
    id: 'readExportStatus',
    area,
    summary: 'How far an export is, then its manifest',
    parameters: ['exportId'],
    answers: {
      200: {
        description: 'It is ready; the manifest lists the files.',
        content: { [json]: componentSchema('ExportManifest') },
        headers: ['Expires'],
      },
      202: { description: 'It is not ready yet.', headers: ['X-Progress', 'Retry-After'] },
    },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'impressions',
        says: 'The manifest of the example.',
        parameters: { id: started },
        status: 200,
        answer: {
          type: json,
          value: { requiresAccessToken: false, output: [{ type: 'ClinicalImpression' }], error: [] },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'delete',
    path: '/fhir/export-status/{id}',
    id: 'removeExport',
    area,
    summary: 'Remove an export and its files',
    parameters: ['exportId'],
    answers: { 202: { description: 'It is gone.' } },
    problems: ['NOT_FOUND'],
    calls: [
      { name: 'impressions', says: 'Another export, of no use any more.', parameters: { id: toRemove }, status: 202 },
    ],
  },
  {
    method: 'get',
    path: '/fhir/export-files/{id}/{file}',
    id: 'readExportFile',
    area,
    summary: 'One file of an export',
    parameters: ['exportId', file],
    answers: {
      200: {
        description: 'One resource a line, streamed.',
        content: { [ndjson]: { type: 'string', description: 'NDJSON.' } },
      },
    },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'impressions',
        says: 'The impressions, one a line.',
        parameters: { id: started, file: 'ClinicalImpression.ndjson' },
        status: 200,
      },
    ],
  },
];
