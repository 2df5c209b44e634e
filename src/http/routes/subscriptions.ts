import { randomUUID } from 'node:crypto';
import type { Request, RequestHandler, Response } from 'express';
import { type ReadSubscription, readSubscription } from '../../delivery/read-subscription.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { requireScope } from '../admission.ts';
import { answerKept } from '../answer-kept.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess } from '../audit/access-note.ts';
import { recordOf } from '../audit/record-of.ts';
import { versionOfIfMatch } from '../etag.ts';
import { checkFormat } from '../fhir-answer.ts';
import { readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';

const maxDepth = 20;

/** Keeping subscriptions: `post` on the type, `put` on one of them; `delete` turns one off, which stays readable. */
export function subscriptionWrites(context: AppContext): {
  readonly post: readonly RequestHandler[];
  readonly put: readonly RequestHandler[];
  readonly delete: readonly RequestHandler[];
} {
  const { resources, subscriptions, subscriptionRules, bodyLimitBytes } = context;
  const body = requestBody(bodyLimitBytes);
  const read = (req: Request, res: Response) => {
    checkFormat(readQuery(req, ['_format']).get('_format'));
    const sent = parseStrictJson(bytesOf(req), { maxDepth });
    const subscription = readSubscription(sent, { ...subscriptionRules, now: context.now().getTime() });
    // Who is told of something learns of it, so it takes what a search for it would take.
    const [type = ''] = subscription.definition.criteria.split('?');
    requireScope(res, `${type}.rs`);
    return subscription;
  };

  const post = async (req: Request, res: Response): Promise<void> => {
    answerKept(context, req, res, 201, await keep(req, res, randomUUID(), read(req, res)));
  };
  const put = async (req: Request, res: Response): Promise<void> => {
    const id = await knownId(req);
    const version = versionOfIfMatch(req.headers['if-match']);
    const subscription = read(req, res);
    if (subscription.definition.id !== id) {
      throw new RequestError('BAD_REQUEST', 'The id in the body must be that of the address.');
    }
    answerKept(context, req, res, 200, await keep(req, res, id, subscription, version));
  };
  const turnOff = async (req: Request, res: Response): Promise<void> => {
    readQuery(req, []);
    const isKept = await subscriptions.turnOff(await knownId(req), recordOf(context, req, res));
    noteAccess(res, { isKept });
    res.statusCode = 204;
    res.end();
  };

  /** The subscription and its entry in the audit trail, together. */
  async function keep(req: Request, res: Response, id: string, read: ReadSubscription, expectedVersion?: number) {
    noteAccess(res, { resource: `Subscription/${id}` });
    const audit = recordOf(context, req, res);
    const kept = await subscriptions.keep(id, read, {
      ...(expectedVersion === undefined ? {} : { expectedVersion }),
      audit,
    });
    noteAccess(res, { isKept: true });
    return kept;
  }

  async function knownId(req: Request): Promise<string> {
    const id = String(req.params.id);
    if ((await resources.read('Subscription', id)) === undefined) {
      throw new NotFoundError('There is no Subscription with this id; a new one is posted.');
    }
    return id;
  }

  return { post: [body, post], put: [body, put], delete: [turnOff] };
}
