import { RequestError } from '../kernel/errors.ts';

/** Weak, as FHIR writes it: the version says what is answered, however it is transferred. */
export function etagOf(version: number): string {
  return `W/"${version}"`;
}

/**
 * The version that a correction is meant for.
 * @param header value of `If-Match`, such as `W/"1"`
 * @throws RequestError PRECONDITION_REQUIRED without one, BAD_REQUEST when it names no single version
 */
export function versionOfIfMatch(header: string | undefined): number {
  if (header === undefined) {
    throw new RequestError(
      'PRECONDITION_REQUIRED',
      'A correction needs If-Match with the ETag of the version that it corrects, such as W/"1".',
    );
  }
  const version = /^(?:W\/)?"(?<version>[1-9]\d{0,8})"$/.exec(header.trim())?.groups?.version;
  if (version === undefined) {
    throw new RequestError('BAD_REQUEST', 'If-Match must name one version, such as W/"1".');
  }
  return Number(version);
}
