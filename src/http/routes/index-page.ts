import type { Router } from 'express';
import { open } from '../../access/need.ts';
import { caution } from '../../summary/caution.ts';
import { answerBytes, answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';

const served = [
  ['POST', '/exams', 'Keep an exam; answers a FHIR R4 transaction Bundle'],
  ['PUT', '/exams/{id}', 'Correct an exam, with If-Match'],
  ['GET', '/exams/{id}', 'The exam as it was sent'],
  ['GET', '/exams/{id}/bundle', 'Its Bundle: ?type=transaction, collection or document'],
  ['GET', '/exams/{id}/deliveries', 'What became of sending it to other servers; POST .../retry to try again'],
  ['POST', '/localisation', 'Where the lesion is, what it may be and what to do next; nothing is kept'],
  ['GET', '/catalogue', 'Everything that can be examined, with its keys, values and codes'],
  ['GET', '/json-schema/{name}', 'JSON Schemas of the exam'],
  ['GET', '/profiles/{file}', 'Profiles, as committed'],
  ['GET', '/terminology/{file}', 'Code systems, value sets and maps, as committed'],
  ['GET', '/fhir/metadata', 'CapabilityStatement; conformance resources below /fhir/{type}'],
  ['GET', '/views', 'Tables for analysts: the views, with their columns and addresses'],
  ['GET', '/views/{name}.csv', 'One table; also .ndjson and .json'],
  ['GET', '/metrics', 'What is counted, for Prometheus'],
  ['GET', '/health/live', 'Whether the process answers'],
  ['GET', '/health/ready', 'Whether it can keep an exam'],
] as const;

/** What is served here, as a page for a person and as JSON for a program. */
export function indexRoutes({ software, files }: AppContext): Router {
  const router = newRouter();
  const index = {
    service: 'neuroexam-fhir',
    version: software.version,
    caution,
    endpoints: served.map(([method, path, about]) => ({ method, path, about })),
    files: files.paths.map((path) => `/${path}`),
  };
  const page = Buffer.from(html(software.version, index.files), 'utf8');
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
          answerBytes(res, 200, mediaTypes.html, page);
        },
      ],
    },
    [mediaTypes.json, mediaTypes.html],
  );
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
<table>${rows.join('\n')}</table>
<h2>Published files</h2><ul>${links.join('\n')}</ul>
</body></html>
`;
}
