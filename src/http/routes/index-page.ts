import type { Router } from 'express';
import { open } from '../../access/need.ts';
import { caution } from '../../summary/caution.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import { apiOperations } from '../api-description/operations.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { answerPacked, packed } from '../packed.ts';
import { pagePolicy } from './page.ts';

/** Each method and path once, those of several resource types together. */
const served = [
  ...new Map(
    apiOperations.map(({ method, path, family = path, area, summary }) => [
      `${area} ${method} ${family}`,
      [method.toUpperCase(), family, summary] as const,
    ]),
  ).values(),
];

/**
 * What stands at the root: for a person the page at the bedside, for a program a list of what is served here, which `/about`
 * shows to a person.
 */
export function indexRoutes({ software, files, page }: AppContext): Router {
  const router = newRouter();
  const index = {
    service: 'neuroexam-fhir',
    version: software.version,
    caution,
    endpoints: served.map(([method, path, about]) => ({ method, path, about })),
    files: files.paths.map((path) => `/${path}`),
  };
  const about = packed(mediaTypes.html, Buffer.from(html(software.version, index.files), 'utf8'));
  endpoint(
    router,
    '/',
    open,
    {
      get: [
        (req, res) => {
          if (req.accepts([mediaTypes.json, mediaTypes.html]) !== mediaTypes.html) {
            return answerJson(res, 200, mediaTypes.json, index);
          }
          if (page === null) return answerPacked(req, res, about);
          res.setHeader('Content-Security-Policy', pagePolicy);
          answerPacked(req, res, page.html);
        },
      ],
    },
    [mediaTypes.json, mediaTypes.html],
  );
  endpoint(router, '/about', open, { get: [(req, res) => answerPacked(req, res, about)] }, [mediaTypes.html]);
  return router;
}

/** Every part is a constant of the program or a file name of the project; nothing of a request comes in. */
function html(version: string, files: readonly string[]): string {
  const rows = served.map(([method, path, about]) => {
    const cell = path.includes('{') || method !== 'GET' ? path : `<a href="${path}">${path}</a>`;
    return `<tr><td>${method}</td><td><code>${cell}</code></td><td>${about}</td></tr>`;
  });
  const links = files.map((path) => `<li><a href="${path}">${path}</a></li>`);
  return `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><title>neuroexam-fhir</title></head>
<body><h1>neuroexam-fhir ${version}</h1>
<p>A structured neurological examination in; coded FHIR R4 and a computed localisation out.</p>
<p><strong>${caution}</strong></p>
<p><a href="/">The page for the person who examines</a>. <a href="/api">The interface explained</a>, with examples; as <a href="/openapi.json">OpenAPI 3.1</a>.</p>
<table>${rows.join('\n')}</table>
<p>The page for the person who examines holds libraries of others: <a href="/page/licences.txt">their licences</a>.</p>
<h2>Published files</h2><ul>${links.join('\n')}</ul>
</body></html>
`;
}
