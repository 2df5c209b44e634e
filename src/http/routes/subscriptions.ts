import { randomUUID } from 'node:crypto';
import type { Request, RequestHandler, Response } from 'express';
import { readSubscription } from '../../delivery/read-subscription.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { requireScope } from '../admission.ts';
import { answerKept } from '../answer-kept.ts';
import type { AppContext } from '../app-context.ts';
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
    answerKept(context, req, res, 201, await subscriptions.keep(randomUUID(), read(req, res)));
  };
  const put = async (req: Request, res: Response): Promise<void> => {
    const id = await knownId(req);
    const version = versionOfIfMatch(req.headers['if-match']);
    const subscription = read(req, res);
    if (subscription.definition.id !== id) {
      throw new RequestError('BAD_REQUEST', 'The id in the body must be that of the address.');
    }
    answerKept(context, req, res, 200, await subscriptions.keep(id, subscription, version));
  };
  const turnOff = async (req: Request, res: Response): Promise<void> => {
    readQuery(req, []);
    await subscriptions.turnOff(await knownId(req));
    res.statusCode = 204;
    res.end();
  };

  async function knownId(req: Request): Promise<string> {
    const id = String(req.params.id);
    if ((await resources.read('Subscription', id)) === undefined) {
      throw new NotFoundError('There is no Subscription with this id; a new one is posted.');
    }
    return id;
  }

  return { post: [body, post], put: [body, put], delete: [turnOff] };
}
