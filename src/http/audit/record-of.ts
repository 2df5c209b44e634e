import { STATUS_CODES } from 'node:http';
import type { Request, Response } from 'express';
import type { AuditRecord } from '../../audit/audit-record.ts';
import type { AppContext } from '../app-context.ts';
import { callerOf } from '../caller-of.ts';
import { parametersOf } from '../form-body.ts';
import { requestIdOf } from '../request-log.ts';
import { accessOf } from './access-note.ts';
import type { AuditedRoute } from './audited-routes.ts';

/** The route that a request was found to take, with what stands in its path. */
export interface AuditedRequest {
  readonly route: AuditedRoute;
  readonly params: Readonly<Record<string, unknown>>;
}

/** Longest question that is kept, in characters; what follows is cut off and marked. */
const longestQuery = 16_384;
const longestOperation = 200;

/** Ids of resources, exams and exports; any other text in a path stays out. */
const idForm = /^[A-Za-z0-9.-]{1,64}$/;

/** What the trail says of a request whose answer has the status that `res` has. */
export function recordOf(
  { now, software }: Pick<AppContext, 'now' | 'software'>,
  req: Request,
  res: Response,
): AuditRecord {
  const { client, user } = callerOf(res);
  const status = res.statusCode;
  const note = accessOf(res);
  return {
    at: now().toISOString(),
    ...asked(req, res),
    ...(note.action === undefined ? {} : { action: note.action }),
    outcome: status < 400 ? '0' : status < 500 ? '4' : '8',
    ...(status < 400 ? {} : { reason: STATUS_CODES[status] ?? String(status) }),
    client,
    ...(user === undefined ? {} : { user }),
    // Behind a trusted proxy, that of whoever asked the proxy.
    ...(req.ip === undefined ? {} : { address: req.ip.replace(/^::ffff:/, '') }),
    ...(note.exam === undefined ? {} : { exam: note.exam }),
    ...(note.resource === undefined ? {} : { resource: note.resource }),
    ...(note.job === undefined ? {} : { job: note.job }),
    ...(note.patients === undefined || note.patients.length === 0 ? {} : { patients: note.patients }),
    request: requestIdOf(res),
    software: software.version,
  };
}

type Asked = Pick<AuditRecord, 'interaction' | 'action' | 'operation' | 'exam' | 'resource' | 'job' | 'query'>;

function asked(req: Request, res: Response): Asked {
  const { route, params } = (res.locals.audited as AuditedRequest | undefined) ?? {};
  if (route === undefined) {
    // A refusal at a path that is not audited otherwise.
    const operation = `${req.method} ${req.originalUrl.replace(/\?.*$/s, '')}`.slice(0, longestOperation);
    return { interaction: 'operation', action: 'E', operation };
  }
  const { interaction, action, operation, about, hasQuery } = route;
  return {
    interaction,
    action,
    ...(operation === undefined ? {} : { operation }),
    ...target(about, params?.id, params?.version),
    ...(hasQuery === true || req.originalUrl.includes('?') ? { query: queryOf(req) } : {}),
  };
}

function target(about: string | undefined, id: unknown, version: unknown): Pick<Asked, 'exam' | 'resource' | 'job'> {
  if (about === undefined || typeof id !== 'string' || !idForm.test(id)) return {};
  if (about === 'exam' || about === 'job') return { [about]: id };
  const isVersion = typeof version === 'string' && /^\d{1,9}$/.test(version);
  return { resource: `${about}/${id}${isVersion ? `/_history/${version}` : ''}` };
}

/** Path and parameters, those of a form too. */
function queryOf(req: Request): string {
  const isForm = req.method === 'POST' && typeof req.body === 'string' && req.body !== '';
  const path = req.originalUrl.replace(/\?.*$/s, '');
  const text = isForm ? `${path}?${new URLSearchParams(parametersOf(req).map(([...pair]) => pair))}` : req.originalUrl;
  const whole = `${req.method} ${text}`;
  return whole.length > longestQuery ? `${whole.slice(0, longestQuery)}...` : whole;
}
