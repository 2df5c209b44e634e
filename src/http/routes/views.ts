import type { Request, Response, Router } from 'express';
import { anyScope, known } from '../../access/need.ts';
import { nearestKey } from '../../exam/faults/nearest-key.ts';
import { NotFoundError } from '../../kernel/errors.ts';
import { searchedTypes } from '../../search/parameters.ts';
import type { LoadedView } from '../../views/load-views.ts';
import { rowFormats, writeRows } from '../../views/write-rows.ts';
import { requireScope } from '../admission.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess, patientsOf, recordAccess } from '../audit/access-note.ts';
import { baseUrlOf } from '../base-url.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { readQuery } from '../query.ts';
import { requestBody } from '../request-body.ts';
import { streamChunks } from '../stream-chunks.ts';
import {
  readScope,
  readViewRequest,
  rowMediaTypes,
  rowTypes,
  scopeParameters,
  type ViewRequest,
} from '../view-request.ts';
import { viewRows } from '../view-rows.ts';

/** R4 has no ViewDefinition, so that the first is the one to go by; servers of later versions have all three. */
const operationPaths = [
  '/fhir/$viewdefinition-run',
  '/fhir/ViewDefinition/$viewdefinition-run',
  '/fhir/ViewDefinition/:id/$viewdefinition-run',
];
/** Which type it must be is known when the view is. */
const tables = anyScope(...searchedTypes.map((type) => `${type}.rs` as const));

const fileName = /^(?<name>[A-Za-z_]+)(?:\.(?<format>csv|ndjson|json))?$/;

/**
 * Tables for analysts: any view over what is kept or over given resources, and the shipped views by name.
 * Source: SQL on FHIR 2.1.0-pre, operation $viewdefinition-run.
 */
export function viewRoutes(context: AppContext): Router {
  const router = newRouter();
  const { views, bodyLimitBytes } = context;

  const answerRows = async (req: Request, res: Response, request: ViewRequest): Promise<void> => {
    const { view, format, header, scope } = request;
    requireScope(res, `${view.resource}.rs`);
    noteAccess(res, { patients: patientsOf({ reference: scope.patient }) });
    const chunks = writeRows(viewRows(context, view, scope), view.columns, format, { header });
    // What is wrong from the start is then told as an error, not as an answer that breaks off.
    const first = await chunks.next();
    res.statusCode = 200;
    res.setHeader('Content-Type', rowMediaTypes[format]);
    if (req.method === 'HEAD') {
      await chunks.return(undefined);
      res.end();
      return;
    }
    try {
      await recordAccess(res);
    } catch (error) {
      await chunks.return(undefined);
      throw error;
    }
    await streamChunks(res, startingWith(first, chunks));
  };

  const run = (req: Request, res: Response): Promise<void> => answerRows(req, res, readViewRequest(req, views));
  for (const path of operationPaths) {
    // The format may stand in the body and beats Accept, so what is acceptable is decided later.
    endpoint(router, path, tables, { get: [run], post: [requestBody(bodyLimitBytes), run] }, 'later');
  }

  endpoint(router, '/views', known, {
    get: [
      (req, res) => {
        readQuery(req, []);
        const base = `${baseUrlOf(req, context.publicUrl)}/views`;
        answerJson(res, 200, mediaTypes.json, [...views.values()].map(described(base)));
      },
    ],
  });

  const file = async (req: Request, res: Response): Promise<void> => {
    const { name = '', format } = fileName.exec(String(req.params.file))?.groups ?? {};
    const found = views.get(name);
    if (found === undefined) {
      const near = nearestKey(name, views.keys());
      const hint = near === undefined ? '' : ` Did you mean ${near}?`;
      throw new NotFoundError(`There is no view of this name; GET /views lists them.${hint}`);
    }
    if (format === undefined) {
      readQuery(req, []);
      answerJson(res, 200, mediaTypes.json, found.definition);
      return;
    }
    const { header, ...scope } = readScope(readQuery(req, scopeParameters));
    await answerRows(req, res, {
      view: found.compiled,
      format: format as ViewRequest['format'],
      header,
      scope: { ...scope, resources: undefined, viewPointer: '' },
    });
  };
  endpoint(router, '/views/:file', tables, { get: [file] }, [...rowTypes, mediaTypes.fhir]);
  return router;
}

const described =
  (base: string) =>
  ({ definition, compiled }: LoadedView) => ({
    name: compiled.name,
    title: definition.title,
    description: definition.description,
    url: `${base}/${compiled.name}`,
    tables: Object.fromEntries(rowFormats.map((format) => [format, `${base}/${compiled.name}.${format}`])),
    canonical: definition.url,
    columns: compiled.columns.map(({ name, type, description }) => ({ name, type, description })),
  });

async function* startingWith<T>(first: IteratorResult<T>, rest: AsyncIterable<T>): AsyncGenerator<T> {
  if (first.done) return;
  yield first.value;
  yield* rest;
}
