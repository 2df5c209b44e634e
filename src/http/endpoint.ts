import { type NextFunction, type Request, type RequestHandler, type Response, Router } from 'express';
import { RequestError } from '../kernel/errors.ts';
import { mediaTypes } from './answer.ts';
import { MethodNotAllowedError } from './method-not-allowed-error.ts';
import { rememberRoute } from './request-log.ts';

type Method = 'get' | 'post' | 'put' | 'delete';

/** A router that takes paths to the letter. */
export function newRouter(): Router {
  return Router({ caseSensitive: true });
}

/**
 * Puts one path with its methods on a router. Around every handler stand the same rules: the answer must be acceptable
 * to the caller, HEAD follows GET, OPTIONS lists the methods, and any other method is refused with that list.
 * @param accepts media types that the path can answer with, most preferred first; `later` when the handler decides
 */
export function endpoint(
  router: Router,
  path: string,
  handlers: Partial<Record<Method, readonly RequestHandler[]>>,
  accepts: readonly string[] | 'later' = [mediaTypes.fhir, mediaTypes.json],
): void {
  const methods = Object.keys(handlers).map((method) => method.toUpperCase());
  const allow = [...methods, ...('get' in handlers ? ['HEAD'] : []), 'OPTIONS'].join(', ');
  const route = router.route(path);
  route.all((req: Request, res: Response, next: NextFunction) => {
    rememberRoute(res, path);
    if (req.method === 'OPTIONS') {
      res.statusCode = 204;
      res.setHeader('Allow', allow);
      res.end();
      return;
    }
    const known = methods.includes(req.method) || (req.method === 'HEAD' && 'get' in handlers);
    if (!known) throw new MethodNotAllowedError(allow);
    if (req.headers.accept !== undefined) req.headers.accept = withoutParameters(req.headers.accept);
    if (accepts !== 'later' && req.accepts([...accepts]) === false) {
      throw new RequestError('NOT_ACCEPTABLE', `This path answers ${accepts.join(' or ')}.`);
    }
    next();
  });
  for (const [method, chain] of Object.entries(handlers) as [Method, readonly RequestHandler[]][]) {
    route[method](...chain);
  }
}

/**
 * An Accept header without the parameters that change nothing of an answer, which the framework would compare to the
 * letter: FHIR clients add `fhirVersion=4.0` and some HTTP libraries a charset. Weights stay, and so does any other
 * version of FHIR, which is then refused.
 */
function withoutParameters(accept: string): string {
  const counts = /^\s*(q=|fhirVersion="?(?!4\.0(\.1)?"?\s*$))/i;
  return accept
    .split(',')
    .map((range) =>
      range
        .split(';')
        .filter((part, index) => index === 0 || counts.test(part))
        .join(';'),
    )
    .join(',');
}
