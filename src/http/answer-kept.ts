import type { Request, Response } from 'express';
import type { StoredResource } from '../store/resource-repository.ts';
import type { AppContext } from './app-context.ts';
import { baseUrlOf } from './base-url.ts';
import { etagOf } from './etag.ts';
import { answerFhirText } from './fhir-answer.ts';

/** Answers a resource that a caller had kept, with its version and where it is. Source: HL7 FHIR R4, RESTful API, create and update. */
export function answerKept(
  { publicUrl }: Pick<AppContext, 'publicUrl'>,
  req: Request,
  res: Response,
  status: number,
  { type, id, version, updated, json }: StoredResource,
): void {
  res.setHeader('Location', `${baseUrlOf(req, publicUrl)}/fhir/${type}/${id}/_history/${version}`);
  res.setHeader('ETag', etagOf(version));
  res.setHeader('Last-Modified', new Date(updated).toUTCString());
  answerFhirText(res, status, json, false);
}
