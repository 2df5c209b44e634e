import type { Request, Response } from 'express';
import { type Extent, withExtent } from '../fhir/summarised.ts';
import { RequestError } from '../kernel/errors.ts';
import type { StoredResource } from '../store/resource-repository.ts';
import { answerBytes, mediaTypes } from './answer.ts';
import { etagOf } from './etag.ts';
import { oneOf } from './query.ts';

const jsonFormats = ['json', 'application/json', 'application/fhir+json', 'text/json'];

/** XML is not offered; `_format` may only ask for what is answered anyway. @throws RequestError BAD_REQUEST */
export function checkFormat(format: string | undefined): void {
  // A plus sign that was not encoded arrives as a blank.
  const asked = format?.replaceAll(' ', '+').split(';')[0]?.trim();
  if (asked !== undefined && !jsonFormats.includes(asked)) {
    throw new RequestError('NOT_ACCEPTABLE', `_format must be one of: ${jsonFormats.join(', ')}.`);
  }
}

/** Whether `_pretty` asks for an indented answer. @throws RequestError BAD_REQUEST for anything but true or false */
export function isPretty(value: string | undefined): boolean {
  return value !== undefined && oneOf('_pretty', value, ['true', 'false']) === 'true';
}

/** Sends FHIR JSON; indented for people where `_pretty=true` asks for it. */
export function answerFhirText(res: Response, status: number, json: string, isPretty: boolean): void {
  const text = isPretty ? JSON.stringify(JSON.parse(json), null, 2) : json;
  answerBytes(res, status, mediaTypes.fhir, Buffer.from(text, 'utf8'));
}

/** One version of a resource, or 304 when the caller has it already. */
export function answerResource(
  req: Request,
  res: Response,
  resource: StoredResource,
  extent: Extent,
  isPretty: boolean,
): void {
  const etag = etagOf(resource.version);
  res.setHeader('ETag', etag);
  res.setHeader('Last-Modified', new Date(resource.updated).toUTCString());
  const known = req.headers['if-none-match'];
  if (known?.split(',').some((tag) => tag.trim() === '*' || sameTag(tag, etag))) {
    res.statusCode = 304;
    res.end();
    return;
  }
  answerFhirText(res, 200, withExtent(resource.json, extent), isPretty);
}

/** Weak comparison. Source: RFC 9110, section 8.8.3.2. */
function sameTag(one: string, other: string): boolean {
  const opaque = (tag: string) => tag.trim().replace(/^W\//, '');
  return opaque(one) === opaque(other);
}
