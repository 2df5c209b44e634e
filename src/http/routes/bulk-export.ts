import type { Request, Response, Router } from 'express';
import { anyone } from '../../access/caller.ts';
import { anyScope, isAllowed } from '../../access/need.ts';
import { exportEndRecord } from '../../audit/export-end.ts';
import { operationOutcome } from '../../fhir/operation-outcome.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { type ExportJob, isReady } from '../../store/export-store.ts';
import { isStoredType } from '../../store/index/stored-types.ts';
import { requireScope } from '../admission.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess, recordAccess } from '../audit/access-note.ts';
import { baseUrlOf } from '../base-url.ts';
import { callerOf } from '../caller-of.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { exportedTypes, knownQueryOf, ndjson, readExportWish } from '../export-wish.ts';
import { prefers } from '../prefer.ts';
import { readQuery } from '../query.ts';
import { requestBody } from '../request-body.ts';
import { streamChunks } from '../stream-chunks.ts';

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

/** File of what was asked for and left out. */
const noticesFile = 'OperationOutcome.ndjson';

/** Those types are exported that the caller's scopes cover; one that is asked for by name must be among them. */
const exporting = anyScope(...exportedTypes.map((type) => `${type}.rs` as const));

/** Bulk export of everything. Source: HL7 FHIR Bulk Data Access 2.0.0, sections on the export request flow. */
export function bulkExportRoutes(context: AppContext): Router {
  const router = newRouter();
  const { exports } = context;
  const recordOfEnd = exportEndRecord(context.now, context.software.version);

  /** An export belongs to the program that began it; to any other it is not there. */
  const ownJob = async (req: Request, res: Response): Promise<ExportJob> => {
    const job = await exports.find(idOf(req));
    if ((job.request.client ?? anyone.client) !== callerOf(res).client) throw noSuchExport();
    return job;
  };

  const start = async (req: Request, res: Response): Promise<void> => {
    if (!prefers(req, 'respond-async')) {
      throw new RequestError('BAD_REQUEST', 'An export needs the header Prefer: respond-async.');
    }
    const caller = callerOf(res);
    const wish = readExportWish(req);
    if (wish.isNamed) for (const type of wish.types) requireScope(res, `${type}.rs`);
    const types = wish.types.filter((type) => isAllowed(caller, `${type}.rs`));
    const now = context.now();
    const base = `${baseUrlOf(req, context.publicUrl)}/fhir`;
    await exports.removeBefore(new Date(now.getTime() - exportLifeMs), recordOfEnd);
    const url = `${base}/$export${knownQueryOf(req)}`;
    const job = await exports.start({ url, ...wish.request, types, client: caller.client }, now);
    noteAccess(res, { job: job.id });
    res.statusCode = 202;
    // Before the work begins, so that the trail does not tell of its end first.
    await recordAccess(res);
    context.exportWorker.wake(job.id);
    res.setHeader('Content-Location', `${base}/export-status/${job.id}`);
    res.end();
  };
  endpoint(router, '/fhir/$export', exporting, { get: [start], post: [requestBody(context.bodyLimitBytes), start] });

  endpoint(router, '/fhir/export-status/:id', exporting, {
    get: [
      async (req, res) => {
        readQuery(req, []);
        const job = await ownJob(req, res);
        if (isReady(job)) {
          res.setHeader('Expires', new Date(job.startedAt + exportLifeMs).toUTCString());
          answerJson(
            res,
            200,
            mediaTypes.json,
            manifest(job, `${baseUrlOf(req, context.publicUrl)}/fhir`, context.access !== undefined),
          );
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
        await exports.remove((await ownJob(req, res)).id);
        res.statusCode = 202;
        res.end();
      },
    ],
  });

  endpoint(
    router,
    '/fhir/export-files/:id/:file',
    exporting,
    {
      get: [
        async (req, res) => {
          readQuery(req, []);
          const { id, request } = await ownJob(req, res);
          if (req.params.file === noticesFile) {
            const { notices = [] } = request;
            if (notices.length === 0) throw noSuchFile();
            res.setHeader('Content-Type', ndjson);
            res.end(notices.map((text) => `${JSON.stringify(noticeOutcome(text))}\n`).join(''));
            return;
          }
          const type = /^(?<type>[A-Za-z]+)\.ndjson$/.exec(String(req.params.file))?.groups?.type ?? '';
          if (!isStoredType(type)) throw noSuchFile();
          requireScope(res, `${type}.rs`);
          const groups = await exports.stream(id, type);
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

function noticeOutcome(text: string) {
  return operationOutcome([{ severity: 'warning', type: 'not-supported', code: 'BAD_REQUEST', text }]);
}

function manifest({ id, request, startedAt, counts }: ExportJob, base: string, needsToken: boolean) {
  const { notices = [] } = request;
  const file = (type: string, name: string, count: number) => ({
    type,
    url: `${base}/export-files/${id}/${name}`,
    count,
  });
  return {
    transactionTime: new Date(startedAt - slackMs).toISOString(),
    request: request.url,
    requiresAccessToken: needsToken,
    output: request.types.flatMap((type) => {
      const count = counts[type] ?? 0;
      return count > 0 ? [file(type, `${type}.ndjson`, count)] : [];
    }),
    error: notices.length === 0 ? [] : [file('OperationOutcome', noticesFile, notices.length)],
  };
}

function idOf(req: Request): string {
  const { id } = req.params;
  if (typeof id !== 'string' || !uuid.test(id)) throw noSuchExport();
  return id;
}

function noSuchExport(): NotFoundError {
  return new NotFoundError('There is no export with this id.');
}

function noSuchFile(): NotFoundError {
  return new NotFoundError('This export has no such file.');
}
