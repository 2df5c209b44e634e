import { mediaTypes } from '../answer.ts';
import { type ApiAnswer, type ApiBody, componentSchema } from './operation.ts';

const { fhir, json } = mediaTypes;

/** An answer that is a resource. */
export function answersResource(
  description: string,
  schema = 'Resource',
  headers: ApiAnswer['headers'] = [],
): ApiAnswer {
  return { description, content: { [fhir]: componentSchema(schema) }, headers };
}

/** A body that is a resource; every FHIR path takes both media types. */
export function takesResource(description: string, schema = 'Resource', required = true): ApiBody {
  return { description, required, content: { [fhir]: componentSchema(schema), [json]: componentSchema(schema) } };
}

/** Ways in which a body of JSON can fail. */
export const bodyProblems = ['NOT_JSON', 'TOO_DEEP', 'BODY_TOO_LARGE', 'MEDIA_TYPE'] as const;
