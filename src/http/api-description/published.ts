import { mediaTypes } from '../answer.ts';
import { type ApiAnswer, type ApiOperation, type ApiParameter, componentSchema } from './operation.ts';

const { json, fhir, schema, html, script, style, svg, text } = mediaTypes;

const path: ApiParameter = {
  name: 'path',
  in: 'path',
  description: 'Path of the file below the folder; the index at `/` lists all.',
  schema: { type: 'string' },
};
const name: ApiParameter = {
  name: 'name',
  in: 'path',
  description: 'Name of the schema, with or without `.schema.json`.',
  schema: { type: 'string' },
};
const file: ApiAnswer = {
  description: 'The file as committed: FHIR resources as `application/fhir+json`, others as `application/json`.',
  content: { [fhir]: componentSchema('Resource'), [json]: componentSchema('PublishedFile') },
  headers: ['Cache-Control'],
};

export const publishedOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/catalogue',
    id: 'readCatalogue',
    area: 'Catalogue',
    summary: 'Everything that can be examined, with its keys, values and codes',
    parameters: ['spelling'],
    answers: {
      200: {
        description: 'The catalogue.',
        content: { [json]: componentSchema('Catalogue') },
        headers: ['Cache-Control'],
      },
    },
    calls: [
      {
        name: 'all',
        says: 'The regions of the body, among much else.',
        status: 200,
        answer: {
          type: json,
          value: { regions: ['head', 'neck', 'upper-limbs', 'trunk', 'lower-limbs', 'perineum'] },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'get',
    path: '/picture',
    id: 'readPicture',
    area: 'Catalogue',
    summary: 'The body as it is drawn, with every place at which sensation can be recorded',
    answers: {
      200: {
        description: 'The pictures.',
        content: { [json]: componentSchema('Picture') },
        headers: ['Cache-Control'],
      },
    },
    calls: [
      {
        name: 'all',
        says: 'Below which segment of the cord comes what, among much else.',
        status: 200,
        answer: { type: json, value: { body: { firstBelow: { T10: 'T11', S3: 'S4-5' } } }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/json-schema/{name}',
    id: 'readJsonSchema',
    area: 'Catalogue',
    summary: 'JSON Schemas of exam and answer',
    parameters: [name],
    answers: {
      200: {
        description: 'The schema, draft 2020-12.',
        content: { [schema]: componentSchema('PublishedFile') },
        headers: ['Cache-Control'],
      },
    },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'exam',
        says: 'The schema of an exam that is kept.',
        parameters: { name: 'exam.schema.json' },
        status: 200,
        answer: {
          type: schema,
          value: { $schema: 'https://json-schema.org/draft/2020-12/schema', type: 'object' },
          isExcerpt: true,
        },
      },
    ],
  },
  {
    method: 'get',
    path: '/profiles/{path}',
    id: 'readProfileFile',
    area: 'Catalogue',
    summary: 'Profiles, schemas, views and measures, as committed',
    parameters: [path],
    answers: { 200: file },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'questionnaire',
        says: 'The Questionnaire of the exam.',
        parameters: { path: 'fhir/Questionnaire-neuro-exam.json' },
        status: 200,
        answer: { type: fhir, value: { resourceType: 'Questionnaire', id: 'neuro-exam' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/terminology/{path}',
    id: 'readTerminologyFile',
    area: 'Catalogue',
    summary: 'Code systems, value sets and maps, as committed',
    parameters: [path],
    answers: { 200: file },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'items',
        says: 'The code system of what is examined.',
        parameters: { path: 'CodeSystem-exam-item.json' },
        status: 200,
        answer: { type: fhir, value: { resourceType: 'CodeSystem', id: 'exam-item' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/openapi.json',
    id: 'readApiDescription',
    area: 'Service',
    summary: 'This description, as OpenAPI 3.1',
    answers: {
      200: {
        description: 'The description.',
        content: { [json]: componentSchema('PublishedFile') },
        headers: ['Cache-Control'],
      },
    },
    calls: [
      {
        name: 'all',
        says: 'The version of OpenAPI.',
        status: 200,
        answer: { type: json, value: { openapi: '3.1.0' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/api',
    id: 'readApiPage',
    area: 'Service',
    summary: 'This description, as a page',
    answers: {
      200: {
        description: 'A page without scripts.',
        content: { [html]: { type: 'string' } },
        headers: ['Cache-Control'],
      },
    },
    calls: [{ name: 'all', says: 'The page.', status: 200 }],
  },
  {
    method: 'get',
    path: '/',
    id: 'readIndex',
    area: 'Service',
    summary: 'The page for the person who examines, or as JSON what is served here',
    answers: {
      200: {
        description: 'JSON unless `Accept` asks for HTML.',
        content: { [json]: componentSchema('Index'), [html]: { type: 'string' } },
      },
    },
    calls: [
      {
        name: 'all',
        says: 'As JSON.',
        status: 200,
        answer: { type: json, value: { service: 'neuroexam-fhir' }, isExcerpt: true },
      },
    ],
  },
  {
    method: 'get',
    path: '/about',
    id: 'readAboutPage',
    area: 'Service',
    summary: 'What is served here, as a page for a person',
    answers: { 200: { description: 'A page without scripts.', content: { [html]: { type: 'string' } } } },
    calls: [{ name: 'all', says: 'The page.', status: 200 }],
  },
  {
    method: 'get',
    path: '/page/{file}',
    id: 'readPageFile',
    area: 'Service',
    summary: 'Scripts, styles and notices of the page for the person who examines',
    parameters: [
      {
        name: 'file',
        in: 'path',
        description: 'Name of the file, as the page names it.',
        schema: { type: 'string' },
      },
    ],
    answers: {
      200: {
        description: 'The file as built.',
        content: Object.fromEntries([script, style, svg, text].map((type) => [type, { type: 'string' }])),
        headers: ['Cache-Control'],
      },
    },
    problems: ['NOT_FOUND'],
    calls: [
      {
        name: 'notices',
        says: 'The licences of the libraries that the page holds.',
        parameters: { file: 'licences.txt' },
        status: 200,
      },
    ],
  },
];
