import { createHmac, randomBytes } from 'node:crypto';
import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { ipKeyGenerator, rateLimit } from 'express-rate-limit';
import { anyone } from '../../access/caller.ts';
import { TryLaterError } from '../../kernel/errors.ts';
import { callerOf } from '../caller-of.ts';

const windowMs = 60_000;

/** As in the load gate: who watches the service is not kept away from it. */
const unlimited = /^\/(health\/(live|ready)|metrics)$/;

/**
 * So many requests in a minute for each client, or for each address where no client is known. Each process counts for
 * itself. Addresses are only kept as keyed hashes, and the key is gone with the process.
 * @param perMinute 0 for no limit
 * Source of the headers: draft-ietf-httpapi-ratelimit-headers-08.
 */
export function limitRate(perMinute: number, onRefused: () => void): RequestHandler {
  if (perMinute === 0) return (_req, _res, next) => next();
  const key = randomBytes(32);
  return rateLimit({
    windowMs,
    limit: perMinute,
    standardHeaders: 'draft-8',
    legacyHeaders: false,
    identifier: 'requests',
    // Its checks write to the console, where a request must leave no trace.
    validate: false,
    skip: (req: Request) => unlimited.test(req.path),
    keyGenerator: (req: Request, res: Response) => {
      const { client } = callerOf(res);
      if (client !== anyone.client) return `client ${client}`;
      return createHmac('sha256', key)
        .update(ipKeyGenerator(req.ip ?? ''))
        .digest('base64');
    },
    handler: (_req: Request, _res: Response, next: NextFunction) => {
      onRefused();
      next(new TryLaterError('RATE_LIMITED', `A client may send ${perMinute} requests in a minute.`));
    },
  });
}
