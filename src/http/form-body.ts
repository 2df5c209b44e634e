import type { NextFunction, Request, RequestHandler, Response } from 'express';
import express from 'express';
import { RequestError } from '../kernel/errors.ts';
import { noNul } from './endpoint.ts';

const formType = 'application/x-www-form-urlencoded';

/** Reads the body of a search by POST, as text, into `req.body`. */
export function formBody(limitBytes: number): RequestHandler[] {
  const read = express.text({ type: formType, limit: limitBytes, inflate: false });
  return [
    (req: Request, _res: Response, next: NextFunction) => {
      const hasBody = req.headers['transfer-encoding'] !== undefined || Number(req.headers['content-length'] ?? 0) > 0;
      if (hasBody && !req.is(formType)) throw new RequestError('MEDIA_TYPE', `Send the parameters as ${formType}.`);
      next();
    },
    (req, res, next) =>
      read(req, res, (error?: unknown) => {
        if (error === undefined && typeof req.body === 'string' && /%00|\0/.test(req.body)) {
          next(new RequestError('BAD_REQUEST', noNul));
        } else if (error === undefined) next();
        else if (typeof error === 'object' && error !== null && 'status' in error && error.status === 413) {
          next(new RequestError('BODY_TOO_LARGE', `The body is larger than ${limitBytes} bytes.`));
        } else next(new RequestError('BAD_REQUEST', 'The body cannot be read as form parameters in UTF-8.'));
      }),
  ];
}

/** Name and value of everything in the query string and in a form body, in order. */
export function parametersOf(req: Request): readonly (readonly [string, string])[] {
  const mark = req.originalUrl.indexOf('?');
  const query = mark < 0 ? '' : req.originalUrl.slice(mark + 1);
  const form = typeof req.body === 'string' ? req.body : '';
  return [...new URLSearchParams(query), ...new URLSearchParams(form)];
}
