import type { Router } from 'express';
import { open } from '../../access/need.ts';
import { NotFoundError } from '../../kernel/errors.ts';
import { mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { answerPacked } from '../packed.ts';
import { readQuery } from '../query.ts';

/** Scripts and styles of the page; a name never means anything else than it did, so browsers keep them. */
export function pageRoutes({ page }: AppContext): Router {
  const router = newRouter();
  endpoint(
    router,
    '/page/:file',
    open,
    {
      get: [
        (req, res) => {
          readQuery(req, []);
          const file = page?.assets.get(String(req.params.file));
          if (file === undefined) throw new NotFoundError('There is no such file.');
          res.setHeader('Cache-Control', 'public, max-age=31536000, immutable');
          answerPacked(req, res, file);
        },
      ],
    },
    [mediaTypes.script, mediaTypes.style, mediaTypes.svg, mediaTypes.text],
  );
  return router;
}

/** The page runs its own script and style, speaks to this service and shows its own pictures: nothing else. */
export const pagePolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "connect-src 'self'",
  "img-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types 'none'",
].join('; ');
