import { createHash } from 'node:crypto';
import type { Response, Router } from 'express';
import { open } from '../../access/need.ts';
import { answerBytes, type MediaType, mediaTypes } from '../answer.ts';
import { apiDocumentPath } from '../api-description/api-document.ts';
import { pageStyle } from '../api-page/page-style.ts';
import type { ReadDocument } from '../api-page/read-document.ts';
import { renderApiPage } from '../api-page/render-api-page.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { readQuery } from '../query.ts';

/** The policy of every answer, and the one style that the page has, by its digest. */
const stylePolicy = `style-src 'sha256-${createHash('sha256').update(pageStyle).digest('base64')}'`;

/** What the interface is: for programs as OpenAPI, for people as a page made of it when it is first asked for. */
export function apiDescriptionRoutes({ files, publicUrl }: AppContext): Router {
  const router = newRouter();
  const document = remembered(() => {
    const committed = JSON.parse(files.read(apiDocumentPath)?.toString('utf8') ?? '{}');
    return publicUrl === undefined ? committed : { ...committed, servers: [{ url: publicUrl }] };
  });
  const asJson = remembered(() => Buffer.from(JSON.stringify(document()), 'utf8'));
  const asPage = remembered(() => Buffer.from(renderApiPage(document() as ReadDocument), 'utf8'));
  const answer = (res: Response, type: MediaType, bytes: Buffer) => {
    // It says nothing about any person and changes only with the version of the service.
    res.setHeader('Cache-Control', 'public, max-age=300');
    answerBytes(res, 200, type, bytes);
  };

  endpoint(
    router,
    '/openapi.json',
    open,
    {
      get: [
        (req, res) => {
          readQuery(req, []);
          answer(res, mediaTypes.json, asJson());
        },
      ],
    },
    [mediaTypes.json],
  );
  endpoint(
    router,
    '/api',
    open,
    {
      get: [
        (req, res) => {
          readQuery(req, []);
          const policy = String(res.getHeader('Content-Security-Policy'));
          res.setHeader('Content-Security-Policy', `${policy}; ${stylePolicy}`);
          answer(res, mediaTypes.html, asPage());
        },
      ],
    },
    [mediaTypes.html],
  );
  return router;
}

function remembered<Value>(make: () => Value): () => Value {
  let made: Value | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
