import { closedObject, type JsonSchema } from '../../exam/schema/json-schema.ts';
import { errorTitles, faultCodes } from '../../kernel/fault-codes.ts';
import { deliveryAndHookSchemas } from './delivery-and-hook-schemas.ts';
import { componentSchema } from './operation.ts';
import { practiceApiSchemas } from './practice-schemas.ts';

const text = { type: 'string' } as const;
const says = (description: string): JsonSchema => ({ ...text, description });
const r4 = (page: string) => ({ description: 'FHIR R4', url: `https://hl7.org/fhir/R4/${page}.html` });
const url: JsonSchema = { ...text, format: 'uri' };

/** A resource of R4: its rules are HL7's and stand there. */
function fhirType(resourceType: string, properties: Readonly<Record<string, JsonSchema>> = {}): JsonSchema {
  return {
    type: 'object',
    description: `A ${resourceType} of FHIR R4, of which only a part is written out here.`,
    externalDocs: r4(resourceType.toLowerCase()),
    required: ['resourceType'],
    properties: { resourceType: { const: resourceType }, ...properties },
    additionalProperties: true,
  };
}

const resource: JsonSchema = {
  type: 'object',
  description: 'Any resource of FHIR R4.',
  externalDocs: r4('resourcelist'),
  required: ['resourceType'],
  properties: { resourceType: { ...text, pattern: '^[A-Z][A-Za-z]+$' }, id: text },
  additionalProperties: true,
};

const fault = closedObject(
  {
    pointer: says('JSON Pointer into the body'),
    detail: says('what was expected, in words'),
    code: { ...text, enum: Object.keys(faultCodes), description: 'kind of fault; stable' },
    suggestion: says('nearest known key'),
  },
  ['pointer', 'detail', 'code'],
);

const exportFile = closedObject({ type: text, url, count: { type: 'integer', minimum: 0 } }, ['type', 'url', 'count']);

/** What is answered apart from exams, in the form of JSON Schema. */
export const answerSchemas: Readonly<Record<string, JsonSchema>> = {
  Problem: closedObject(
    {
      type: { const: 'about:blank' },
      title: says('what went wrong, in few words'),
      status: { type: 'integer', minimum: 400, maximum: 599 },
      detail: says('what went wrong here'),
      code: { ...text, enum: Object.keys(errorTitles), description: 'kind of error; stable' },
      requestId: says('names the request in the log'),
      errors: { type: 'array', items: componentSchema('Fault'), description: 'every fault of the body' },
    },
    ['type', 'title', 'status', 'detail', 'code', 'requestId'],
    {
      description: 'Problem details. Source: RFC 9457.',
      externalDocs: { description: 'RFC 9457', url: 'https://www.rfc-editor.org/rfc/rfc9457' },
    },
  ),
  Fault: fault,
  Resource: resource,
  Unchecked: {
    type: 'object',
    description: 'What is said to be a resource. Whatever is wrong with it is the answer, and no reason to refuse it.',
    additionalProperties: true,
  },
  Bundle: fhirType('Bundle', {
    type: { ...text, enum: ['transaction', 'collection', 'document', 'searchset', 'history'] },
    total: { type: 'integer', minimum: 0 },
    link: {
      type: 'array',
      items: {
        type: 'object',
        required: ['relation', 'url'],
        properties: { relation: text, url: text },
        additionalProperties: true,
      },
    },
    entry: {
      type: 'array',
      items: {
        type: 'object',
        properties: { fullUrl: text, resource: componentSchema('Resource') },
        additionalProperties: true,
      },
    },
  }),
  OperationOutcome: fhirType('OperationOutcome', {
    issue: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        required: ['severity', 'code'],
        properties: {
          severity: { ...text, enum: ['fatal', 'error', 'warning', 'information'] },
          code: says('FHIR issue type'),
          details: {
            type: 'object',
            properties: {
              text: says('what was expected, in words'),
              coding: {
                type: 'array',
                items: {
                  type: 'object',
                  properties: { system: text, code: says('kind of error or fault; stable') },
                  additionalProperties: true,
                },
              },
            },
            additionalProperties: true,
          },
          diagnostics: says('JSON Pointer into an exam that was sent'),
          expression: { type: 'array', items: text, description: 'FHIRPath of the element' },
        },
        additionalProperties: true,
      },
    },
  }),
  Parameters: fhirType('Parameters', {
    parameter: {
      type: 'array',
      items: { type: 'object', required: ['name'], properties: { name: text }, additionalProperties: true },
    },
  }),
  CapabilityStatement: fhirType('CapabilityStatement'),
  Measure: fhirType('Measure'),
  QuestionnaireResponse: fhirType('QuestionnaireResponse', { questionnaire: text }),
  Subscription: fhirType('Subscription'),
  MeasureReport: fhirType('MeasureReport'),
  ValueSet: fhirType('ValueSet'),
  Live: closedObject({ status: { const: 'live' } }, ['status']),
  Ready: closedObject({ status: { const: 'ready' } }, ['status']),
  Stopping: closedObject({ status: { const: 'stopping' } }, ['status']),
  View: closedObject(
    {
      name: says('name of the table'),
      title: text,
      description: text,
      url,
      tables: closedObject({ csv: url, ndjson: url, json: url }, ['csv', 'ndjson', 'json']),
      canonical: { ...url, description: 'canonical address of the ViewDefinition' },
      columns: {
        type: 'array',
        items: closedObject({ name: text, type: text, description: text }, ['name']),
      },
    },
    ['name', 'url', 'tables', 'columns'],
  ),
  Rows: {
    type: 'array',
    description: 'One object for each row; its properties are the columns of the view.',
    items: { type: 'object', additionalProperties: true },
  },
  ExportManifest: closedObject(
    {
      transactionTime: { ...text, format: 'date-time' },
      request: url,
      requiresAccessToken: { type: 'boolean' },
      output: { type: 'array', items: componentSchema('ExportFile') },
      error: { type: 'array', items: componentSchema('ExportFile') },
    },
    ['transactionTime', 'request', 'requiresAccessToken', 'output', 'error'],
    { description: 'Source: HL7 Bulk Data Access 2.0.0, Export Complete Status.' },
  ),
  ExportFile: exportFile,
  Index: closedObject(
    {
      service: text,
      version: text,
      caution: text,
      endpoints: {
        type: 'array',
        items: closedObject({ method: text, path: text, about: text }, ['method', 'path', 'about']),
      },
      files: { type: 'array', items: text },
    },
    ['service', 'version', 'caution', 'endpoints', 'files'],
  ),
  ...deliveryAndHookSchemas,
  ...practiceApiSchemas,
  PublishedFile: {
    type: 'object',
    description: 'A JSON file of the project, as committed.',
    additionalProperties: true,
  },
};
