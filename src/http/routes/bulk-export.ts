import type { Request, Response, Router } from 'express';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { type ExportJob, isReady } from '../../store/export-store.ts';
import { isStoredType, type StoredType } from '../../store/index/stored-types.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { baseUrlOf } from '../base-url.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { prefers } from '../prefer.ts';
import { readQuery } from '../query.ts';
import { streamChunks } from '../stream-chunks.ts';

/** What is exported; the software is part of it, since the exams refer to it. */
const exportedTypes: readonly StoredType[] = [
  'Observation',
  'ClinicalImpression',
  'RiskAssessment',
  'ServiceRequest',
  'Provenance',
  'Device',
];

const ndjson = 'application/fhir+ndjson';
const outputFormats = [ndjson, 'application/ndjson', 'ndjson'];

/** How long the files of an export can be fetched. */
export const exportLifeMs = 24 * 60 * 60 * 1000;
/** After what time a caller should ask again. */
const retryAfterSeconds = 1;
/**
 * What was posted shortly before an export began may have reached the store after it. The time that the manifest gives
 * lies so far back that a later export since then has all of that; it repeats a little rather than lose anything.
 */
const slackMs = 30_000;

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** Bulk export of everything. Source: HL7 FHIR Bulk Data Access 2.0.0, sections on the export request flow. */
export function bulkExportRoutes(context: AppContext): Router {
  const router = newRouter();
  const { exports } = context;

  const start = async (req: Request, res: Response): Promise<void> => {
    if (!prefers(req, 'respond-async')) {
      throw new RequestError('BAD_REQUEST', 'An export needs the header Prefer: respond-async.');
    }
    const { types, since } = readWish(req);
    const now = context.now();
    const base = `${baseUrlOf(req, context.publicUrl)}/fhir`;
    await exports.removeBefore(new Date(now.getTime() - exportLifeMs));
    const url = `${base}${req.originalUrl.replace(/^\/fhir/, '')}`;
    const job = await exports.start({ url, types, ...(since === undefined ? {} : { since }) }, now);
    context.exportWorker.wake(job.id);
    res.statusCode = 202;
    res.setHeader('Content-Location', `${base}/export-status/${job.id}`);
    res.end();
  };
  endpoint(router, '/fhir/$export', { get: [start], post: [start] });

  endpoint(router, '/fhir/export-status/:id', {
    get: [
      async (req, res) => {
        readQuery(req, []);
        const job = await exports.find(idOf(req));
        if (isReady(job)) {
          res.setHeader('Expires', new Date(job.startedAt + exportLifeMs).toUTCString());
          answerJson(res, 200, mediaTypes.json, manifest(job, `${baseUrlOf(req, context.publicUrl)}/fhir`));
          return;
        }
        // Another process may have begun it and be gone.
        context.exportWorker.wake(job.id);
        res.statusCode = 202;
        res.setHeader('X-Progress', `${Object.keys(job.counts).length} of ${job.request.types.length} types`);
        res.setHeader('Retry-After', retryAfterSeconds);
        res.end();
      },
    ],
    delete: [
      async (req, res) => {
        await exports.remove(idOf(req));
        res.statusCode = 202;
        res.end();
      },
    ],
  });

  endpoint(
    router,
    '/fhir/export-files/:id/:file',
    {
      get: [
        async (req, res) => {
          readQuery(req, []);
          const type = /^(?<type>[A-Za-z]+)\.ndjson$/.exec(String(req.params.file))?.groups?.type ?? '';
          if (!isStoredType(type)) throw new NotFoundError('This export has no such file.');
          const groups = await exports.stream(idOf(req), type);
          res.setHeader('Content-Type', ndjson);
          await streamChunks(res, linesOf(groups));
        },
      ],
    },
    [ndjson, 'application/ndjson', mediaTypes.fhir, mediaTypes.json],
  );
  return router;
}

async function* linesOf(groups: AsyncIterable<readonly { readonly json: string }[]>): AsyncGenerator<string> {
  for await (const group of groups) yield group.map(({ json }) => `${json}\n`).join('');
}

/** @throws RequestError BAD_REQUEST */
function readWish(req: Request): { types: readonly StoredType[]; since?: number } {
  const isStrict = prefers(req, 'handling=strict');
  const known = ['_outputFormat', '_since', '_type'];
  const query = Object.entries(req.query);
  const unknown = query.filter(([name]) => !known.includes(name));
  if (isStrict && unknown.length > 0) {
    throw new RequestError('BAD_REQUEST', `An export takes these parameters: ${known.join(', ')}.`);
  }
  const value = (name: string) => {
    const [first, ...others] = [req.query[name] ?? []].flat().map(String);
    if (others.length > 0 && name !== '_type') throw new RequestError('BAD_REQUEST', `${name} is there twice.`);
    return others.length > 0 ? [first, ...others].join(',') : first;
  };
  const format = value('_outputFormat')?.replaceAll(' ', '+');
  if (format !== undefined && !outputFormats.includes(format)) {
    throw new RequestError('BAD_REQUEST', `_outputFormat must be one of: ${outputFormats.join(', ')}.`);
  }
  const asked = value('_type')?.split(',') ?? exportedTypes;
  const types = exportedTypes.filter((type) => asked.includes(type));
  if (types.length < new Set(asked).size) {
    throw new RequestError('BAD_REQUEST', `_type takes: ${exportedTypes.join(', ')}.`);
  }
  const since = value('_since')?.replaceAll(' ', '+');
  if (since === undefined) return { types };
  const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;
  const time = instant.test(since) ? Date.parse(since) : Number.NaN;
  if (Number.isNaN(time))
    throw new RequestError('BAD_REQUEST', '_since must be an instant such as 2026-03-14T10:20:00Z.');
  return { types, since: time };
}

function manifest({ id, request, startedAt, counts }: ExportJob, base: string) {
  return {
    transactionTime: new Date(startedAt - slackMs).toISOString(),
    request: request.url,
    requiresAccessToken: false,
    output: request.types
      .filter((type) => (counts[type] ?? 0) > 0)
      .map((type) => ({ type, url: `${base}/export-files/${id}/${type}.ndjson`, count: counts[type] })),
    error: [],
  };
}

function idOf(req: Request): string {
  const { id } = req.params;
  if (typeof id !== 'string' || !uuid.test(id)) throw new NotFoundError('There is no export with this id.');
  return id;
}
