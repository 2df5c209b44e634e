import { examSchema } from '../../exam/schema/exam-schemas.ts';
import type { JsonSchema } from '../../exam/schema/json-schema.ts';
import { caution } from '../../summary/caution.ts';
import { localisationAnswerSchema } from '../../summary/localisation-answer-schema.ts';
import { answerSchemas } from './answer-schemas.ts';
import { bundleSchemas } from './bundle-schemas.ts';
import { catalogueSchema } from './catalogue-schema.ts';
import { describeOperation, type SharedParts, type WorkOut } from './describe-operation.ts';
import { apiHeaders } from './headers.ts';
import { apiAreas } from './operation.ts';
import { apiOperations } from './operations.ts';
import { pictureSchema } from './picture-schema.ts';

/** Where the document is kept, from the root of the project. */
export const apiDocumentPath = 'profiles/openapi.json';

export type ApiDocument = { readonly [part: string]: unknown };

const description = `A structured neurological examination in; coded FHIR R4 and a computed localisation out.

**${caution}**

Errors below \`/exams\` and \`/fhir\` are a FHIR OperationOutcome, elsewhere RFC 9457 problem details. Both give every fault of a body at once, each with its JSON Pointer, what was expected, and the nearest known key.

All examples are invented, and so are the persons in them. They can be tried in order on an empty store: those about an exam expect that the first two of \`POST /exams\` were sent.`;

/**
 * The OpenAPI 3.1 document of the service. Pure: the same tables give the same document.
 * @param workOut what the engine answers to the examples
 */
export function apiDocument(version: string, workOut: WorkOut): ApiDocument {
  const shared: SharedParts = { parameters: {}, responses: {} };
  const paths: Record<string, Record<string, unknown>> = {};
  for (const operation of apiOperations) {
    const path = paths[operation.path] ?? {};
    paths[operation.path] = path;
    path[operation.method] = describeOperation(operation, shared, workOut);
  }
  return {
    openapi: '3.1.0',
    jsonSchemaDialect: 'https://json-schema.org/draft/2020-12/schema',
    info: {
      title: 'neuroexam-fhir',
      version,
      summary: 'A structured neurological examination in; coded FHIR R4 and a computed localisation out.',
      description,
      license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
    },
    servers: [{ url: '/', description: 'where this description was read' }],
    tags: Object.entries(apiAreas).map(([name, about]) => ({ name, description: about })),
    paths,
    components: {
      schemas: apiSchemas(),
      parameters: sorted(shared.parameters),
      headers: apiHeaders,
      responses: sorted(shared.responses),
      securitySchemes: {
        bearer: {
          type: 'http',
          scheme: 'bearer',
          description:
            'Asked for once access is configured: a static key, or an access token (JWT) of your own authorisation server with the SMART scopes that the operation names, or, for types of FHIR other than AuditEvent, `system/*.rs`. Where tokens are had says `/fhir/.well-known/smart-configuration`.',
        },
      },
    },
  };
}

/** Every schema of the document by the name of its component. */
export function apiSchemas(): Readonly<Record<string, JsonSchema>> {
  return {
    ...bundleSchemas({
      Exam: examSchema('record'),
      LocalisationRequest: examSchema('localise'),
      LocalisationAnswer: localisationAnswerSchema(),
      Catalogue: catalogueSchema(),
      Picture: pictureSchema(),
    }),
    ...answerSchemas,
  };
}

function sorted(parts: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(parts).sort(([one], [other]) => (one < other ? -1 : 1)));
}
