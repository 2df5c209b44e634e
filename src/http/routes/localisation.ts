import type { Router } from 'express';
import { narrowed, scopes } from '../../access/need.ts';
import { answerBytes, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { spellings } from '../exam-steps.ts';
import { oneOf, readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';

/**
 * The answer to one exam, of which nothing is kept. `?spelling=us`, or else a wish for American English in
 * `Accept-Language`, writes the words of the answer in American spelling.
 */
export function localisationRoutes(context: AppContext): Router {
  const router = newRouter();
  endpoint(router, '/localisation', narrowed(scopes('localisation.c')), {
    post: [
      requestBody(context.bodyLimitBytes),
      (req, res) => {
        res.vary('Accept-Language');
        const wish = req.acceptsLanguages('en-GB', 'en-US') === 'en-US' ? 'us' : 'uk';
        const spelling = oneOf('spelling', readQuery(req, ['spelling']).get('spelling') ?? wish, spellings);
        answerBytes(res, 200, mediaTypes.json, context.records.localise(bytesOf(req), spelling));
      },
    ],
  });
  return router;
}
