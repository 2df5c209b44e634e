import type { Router } from 'express';
import { open } from '../../access/need.ts';
import { smartConfiguration } from '../../access/smart-configuration.ts';
import { NotFoundError } from '../../kernel/errors.ts';
import { searchedTypes } from '../../search/parameters.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { readQuery } from '../query.ts';

/** Where clients learn how tokens are had: at the FHIR base, where SMART puts it, and at the root. */
export function smartConfigurationRoutes({ access }: AppContext): Router {
  const router = newRouter();
  const document = access?.tokens && smartConfiguration(access.tokens, searchedTypes);
  for (const base of ['', '/fhir']) {
    endpoint(router, `${base}/.well-known/smart-configuration`, open, {
      get: [
        (req, res) => {
          readQuery(req, []);
          if (document === undefined) throw new NotFoundError('No authorisation server is configured.');
          answerJson(res, 200, mediaTypes.json, document);
        },
      ],
    });
  }
  return router;
}
