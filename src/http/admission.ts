import type { NextFunction, Request, RequestHandler, Response } from 'express';
import type { AccessControl } from '../access/access-control.ts';
import { AccessError } from '../access/access-error.ts';
import { anyone, type Caller, nobody } from '../access/caller.ts';
import { isAllowed, lacking, type Need } from '../access/need.ts';
import type { Permission } from '../access/scope.ts';
import { RequestError } from '../kernel/errors.ts';
import { callerOf } from './caller-of.ts';

/** Finds out who asks, when a route wants to know. */
type Identify = () => Promise<Caller>;

/**
 * Stands before all routes. A token that comes in a way in which it could leak or be mistaken is refused at once; who it
 * stands for is found out where a route needs it.
 * @param access    undefined where no access control is configured: then everybody is `anyone`
 * @param limitRate counts requests by caller; it has its turn when the caller is known, or known to be nobody
 * Source: RFC 6750, sections 2 and 3.1.
 */
export function readCredentials(access: AccessControl | undefined, limitRate: RequestHandler): RequestHandler {
  return (req: Request, res: Response, next: NextFunction) => {
    if (access === undefined) {
      res.locals.caller = anyone;
      limitRate(req, res, next);
      return;
    }
    res.locals.limitRate = limitRate;
    res.locals.caller = nobody;
    if (/[?&]access_token=/i.test(req.originalUrl)) {
      throw new RequestError('BAD_REQUEST', 'A token in the address may end up in logs; send it in Authorization.');
    }
    const given = req.headersDistinct.authorization ?? [];
    if (given.length > 1) throw new RequestError('BAD_REQUEST', 'The header Authorization is there twice.');
    const identify: Identify = async () => {
      const credential = /^Bearer +(?<credential>.*)$/i.exec(given[0] ?? '')?.groups?.credential;
      if (credential === undefined) throw new AccessError('UNAUTHENTICATED');
      return access.identify(credential.trim());
    };
    res.locals.identify = identify;
    next();
  };
}

/**
 * Lets in whom a route is for. Nothing is let in where `readCredentials` did not run.
 * @throws AccessError
 */
export function admit(needOf: (method: string) => Need): RequestHandler {
  return (req: Request, res: Response, next: NextFunction) => {
    const need = needOf(req.method);
    if (res.locals.caller === anyone) {
      next();
      return;
    }
    const limitRate = (res.locals.limitRate as RequestHandler | undefined) ?? passOn;
    if (need.kind === 'open') {
      limitRate(req, res, next);
      return;
    }
    const identify = res.locals.identify as Identify | undefined;
    if (identify === undefined) throw new AccessError('UNAUTHENTICATED');
    const settle = (caller: Caller): void => {
      const missing = lacking(need, caller);
      if (missing === 'subject') throw new AccessError('INSUFFICIENT_SCOPE', { reason: 'subject' });
      if (missing !== undefined) throw new AccessError('INSUFFICIENT_SCOPE', { scopes: missing });
    };
    const counted = () =>
      new Promise<void>((resolve, reject) => {
        limitRate(req, res, (error?: unknown) => (error === undefined ? resolve() : reject(error)));
      });
    identify()
      .then(
        async (caller) => {
          res.locals.caller = caller;
          await counted();
          settle(caller);
        },
        async (error: unknown) => {
          // Who tries tokens out is counted by address.
          await counted();
          throw error;
        },
      )
      .then(() => next(), next);
  };
}

const passOn: RequestHandler = (_req, _res, next) => next();

/** For what a route learns from the request itself. @throws AccessError INSUFFICIENT_SCOPE */
export function requireScope(res: Response, permission: Permission): void {
  if (isAllowed(callerOf(res), permission)) return;
  throw new AccessError('INSUFFICIENT_SCOPE', { scopes: [`system/${permission}`] });
}

/**
 * The challenge that goes with a refusal.
 * Source: RFC 6750, section 3: without any token no error is named, and the scope that is needed is.
 */
export function challengeOf(error: AccessError): string | undefined {
  const realm = 'Bearer realm="neuroexam-fhir"';
  switch (error.code) {
    case 'UNAUTHENTICATED':
      return realm;
    case 'INVALID_TOKEN':
      return `${realm}, error="invalid_token"`;
    case 'INSUFFICIENT_SCOPE': {
      const scope = error.scopes.length === 0 ? '' : `, scope="${error.scopes.join(' ')}"`;
      return `${realm}, error="insufficient_scope"${scope}`;
    }
    case 'ACCESS_UNAVAILABLE':
      return undefined;
  }
}
