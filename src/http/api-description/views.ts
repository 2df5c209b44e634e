import { mediaTypes } from '../answer.ts';
import { rowTypes } from '../view-request.ts';
import { type ApiAnswer, type ApiOperation, type ApiParameter, componentSchema } from './operation.ts';

const { json, fhir } = mediaTypes;

const [, csv = '', ...ndjson] = rowTypes;
const rows: ApiAnswer = {
  description: 'The rows, streamed.',
  content: {
    [json]: componentSchema('Rows'),
    [csv]: { type: 'string', description: 'RFC 4180, with the names of the columns first.' },
    ...Object.fromEntries(ndjson.map((type) => [type, { type: 'string', description: 'One JSON object a line.' }])),
  },
};
const format: ApiParameter = {
  name: '_format',
  in: 'query',
  component: 'rowFormat',
  description: 'Format of the rows; stands above `Accept`.',
  schema: {
    type: 'string',
    enum: ['csv', 'ndjson', 'json', 'text/csv', 'application/x-ndjson', 'application/ndjson', 'application/json'],
  },
};
const viewReference: ApiParameter = {
  name: 'viewReference',
  in: 'query',
  component: 'viewReference',
  description: 'A view that comes with the service: `ViewDefinition/power`, or its canonical address.',
  schema: { type: 'string' },
};
const viewId: ApiParameter = {
  name: 'id',
  in: 'path',
  component: 'viewId',
  description: 'Id of a view that comes with the service.',
  schema: { type: 'string' },
};
const file: ApiParameter = {
  name: 'file',
  in: 'path',
  description: 'Name of a view for its definition; with `.csv`, `.ndjson` or `.json` for its rows.',
  schema: { type: 'string' },
};
const scope = ['header', 'patient', 'since', 'limit'] as const;
const body = {
  description: 'A ViewDefinition, or Parameters with `viewResource`, `viewReference`, `resource` and the rest.',
  required: true,
  content: { [fhir]: componentSchema('Resource'), [json]: componentSchema('Resource') },
};
const viewProblems = ['NOT_FOUND', 'VIEW_INVALID', 'VIEW_FAILED'] as const;
const bodyProblems = ['NOT_JSON', 'TOO_DEEP', 'BODY_TOO_LARGE', 'MEDIA_TYPE'] as const;
const ownView = {
  resourceType: 'ViewDefinition',
  name: 'red_toes',
  status: 'draft',
  resource: 'Observation',
  select: [{ column: [{ name: 'code', path: 'code.coding.first().code', type: 'string' }] }],
};

function runOperations(path: string, id: string, isNamed: boolean): readonly ApiOperation[] {
  const own = isNamed ? [viewId] : [viewReference];
  const named = isNamed ? { id: 'power' } : { viewReference: 'ViewDefinition/power' };
  const csvOfPower = { ...named, _format: 'json', _limit: 1, patient: 'Patient/invented-4711' };
  const common = { path, area: 'Tables', answers: { 200: rows } } as const;
  const run: ApiOperation = {
    ...common,
    method: 'get',
    id,
    summary: isNamed ? 'Run a view that is named by the address' : 'Run a view over what is kept',
    parameters: [...own, format, ...scope],
    problems: viewProblems,
    calls: [
      {
        name: 'power',
        says: 'The first row of the table of power.',
        parameters: csvOfPower,
        status: 200,
        answer: { type: json, value: [{ side: 'left' }], isExcerpt: true },
      },
    ],
  };
  const post: ApiOperation = {
    ...common,
    method: 'post',
    id: `${id}Posted`,
    summary: isNamed
      ? 'Run the view over resources that are sent'
      : 'Run a view of your own, or over resources that are sent',
    parameters: [...own, format, ...scope],
    body,
    problems: [...viewProblems, ...bodyProblems],
    calls: [
      isNamed
        ? {
            name: 'over-nothing',
            says: 'With the number of rows in the body.',
            parameters: { id: 'power' },
            body: {
              type: fhir,
              value: { resourceType: 'Parameters', parameter: [{ name: '_limit', valueInteger: 1 }] },
            },
            status: 200,
            answer: { type: json, value: [{ side: 'left' }], isExcerpt: true },
          }
        : {
            name: 'own-view',
            says: 'A view of one column.',
            parameters: { _format: 'json', _limit: 1 },
            body: { type: fhir, value: ownView },
            status: 200,
            answer: { type: json, value: [{}], isExcerpt: true },
          },
    ],
  };
  return [run, post];
}

export const viewOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/views',
    id: 'listViews',
    area: 'Tables',
    summary: 'Tables for analysts: the views, with their columns and addresses',
    answers: {
      200: { description: 'Every view.', content: { [json]: { type: 'array', items: componentSchema('View') } } },
    },
    calls: [
      {
        name: 'all',
        says: 'The first of them.',
        status: 200,
        answer: { type: json, value: [{ name: 'causes' }], isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/views/{file}',
    id: 'readView',
    area: 'Tables',
    summary: 'One table as .csv, .ndjson or .json; or its definition',
    parameters: [file, ...scope],
    answers: { 200: rows },
    problems: ['NOT_FOUND', 'VIEW_FAILED'],
    calls: [
      {
        name: 'power',
        says: 'The first row of the table of power.',
        parameters: { file: 'power.json', _limit: 1, patient: 'Patient/invented-4711' },
        status: 200,
        answer: { type: json, value: [{ side: 'left' }], isExcerpt: true },
      },
    ],
  },
  ...runOperations('/fhir/$viewdefinition-run', 'runView', false),
  ...runOperations('/fhir/ViewDefinition/$viewdefinition-run', 'runViewOfType', false),
  ...runOperations('/fhir/ViewDefinition/{id}/$viewdefinition-run', 'runViewWithId', true),
];
