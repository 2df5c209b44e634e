import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { RequestError } from '../kernel/errors.ts';
import { takeTurn } from './turns.ts';

/**
 * Reads the body of a request as bytes, after its media type was found usable, leaves it in `req.body`, and goes on when
 * the request's turn has come.
 * The JSON parser of the framework is not used, because the bytes themselves are kept and because it lets through what
 * `parseStrictJson` refuses. A compressed body is refused: an exam is small, and what is not inflated cannot explode.
 * @param limitBytes largest body in bytes; a larger one is answered at once, not after it was taken in
 */
export function requestBody(limitBytes: number): RequestHandler {
  return (req: Request, _res: Response, next: NextFunction) => {
    checkMediaType(req);
    if (Number(req.headers['content-length'] ?? 0) > limitBytes) throw tooLarge(limitBytes);
    const chunks: Buffer[] = [];
    let length = 0;
    const stopListening = () => {
      req.off('data', onData).off('end', onEnd).off('error', onBroken).off('close', onBroken);
    };
    const refuse = (error: RequestError) => {
      stopListening();
      next(error);
    };
    const onData = (chunk: Buffer) => {
      length += chunk.length;
      if (length > limitBytes) refuse(tooLarge(limitBytes));
      else chunks.push(chunk);
    };
    const onEnd = () => {
      stopListening();
      req.body = Buffer.concat(chunks, length);
      takeTurn(next);
    };
    const onBroken = () => refuse(new RequestError('BAD_REQUEST', 'The body ended before its stated length.'));
    req.on('data', onData).on('end', onEnd).on('error', onBroken).on('close', onBroken);
  };
}

/** @throws RequestError BAD_REQUEST when there is no body */
export function bytesOf(req: Request): Buffer {
  if (!Buffer.isBuffer(req.body) || req.body.length === 0) {
    throw new RequestError('BAD_REQUEST', 'The request has no body; an exam as JSON was expected.');
  }
  return req.body;
}

function checkMediaType(req: Request): void {
  const header = req.headers['content-type'];
  const hasBody = req.headers['transfer-encoding'] !== undefined || Number(req.headers['content-length'] ?? 0) > 0;
  if (header === undefined && !hasBody) return;
  const [type, ...parameters] = (header ?? '').split(';').map((part) => part.trim().toLowerCase());
  if (type !== 'application/json' && type !== 'application/fhir+json') {
    throw new RequestError('MEDIA_TYPE', 'Send the body as application/json or application/fhir+json.');
  }
  const charset = parameters.find((parameter) => parameter.startsWith('charset='))?.slice('charset='.length);
  if (charset !== undefined && charset.replaceAll('"', '') !== 'utf-8') {
    throw new RequestError('MEDIA_TYPE', 'Send the body in UTF-8.');
  }
  if ((req.headers['content-encoding'] ?? 'identity') !== 'identity') {
    throw new RequestError('MEDIA_TYPE', 'Send the body without Content-Encoding.');
  }
}

function tooLarge(limitBytes: number): RequestError {
  return new RequestError('BODY_TOO_LARGE', `The body is larger than ${limitBytes} bytes.`);
}
