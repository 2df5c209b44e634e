import { type NextFunction, type Request, type RequestHandler, type Response, Router } from 'express';
import type { Need } from '../access/need.ts';
import { RequestError } from '../kernel/errors.ts';
import { admit } from './admission.ts';
import { mediaTypes } from './answer.ts';
import { MethodNotAllowedError } from './method-not-allowed-error.ts';
import { rememberRoute } from './request-log.ts';

/** No text of FHIR has it, and PostgreSQL keeps none. Source: HL7 FHIR R4, datatype string. */
export const noNul = 'The character NUL has no place in a request.';

type Method = 'get' | 'post' | 'put' | 'delete';
type Handlers = Partial<Record<Method, readonly RequestHandler[]>>;

/** A path as it was declared. */
export interface DeclaredRoute {
  readonly path: string;
  /** By method in capitals, without HEAD and OPTIONS. */
  readonly needs: ReadonlyMap<string, Need>;
}

const declared = new WeakMap<object, DeclaredRoute[]>();

/** Every path of a router with what its methods need. */
export function declaredRoutes(router: object): readonly DeclaredRoute[] {
  return declared.get(router) ?? [];
}

/** A router that takes paths to the letter. */
export function newRouter(): Router {
  return Router({ caseSensitive: true });
}

/**
 * Puts one path with its methods on a router. Around every handler stand the same rules: the caller must have what the
 * method needs, the answer must be acceptable to it, HEAD follows GET, OPTIONS lists the methods, and any other method is
 * refused with that list.
 * @param needs   what a caller needs, for all methods or for each
 * @param accepts media types that the path can answer with, most preferred first; `later` when the handler decides
 */
export function endpoint<Given extends Handlers>(
  router: Router,
  path: string,
  needs: Need | { readonly [M in keyof Given]: Need },
  handlers: Given,
  accepts: readonly string[] | 'later' = [mediaTypes.fhir, mediaTypes.json],
): void {
  const methods = Object.keys(handlers).map((method) => method.toUpperCase());
  const allow = [...methods, ...('get' in handlers ? ['HEAD'] : []), 'OPTIONS'].join(', ');
  const needOf = (method: string): Need => {
    const need =
      'kind' in needs ? (needs as Need) : needs[(method === 'HEAD' ? 'get' : method.toLowerCase()) as keyof Given];
    if (need === undefined) throw new Error(`${method} ${path} does not say what it needs.`);
    return need;
  };
  const routes = declared.get(router) ?? [];
  declared.set(router, [...routes, { path, needs: new Map(methods.map((method) => [method, needOf(method)])) }]);
  const route = router.route(path);
  route.all((req: Request, res: Response, next: NextFunction) => {
    rememberRoute(res, path);
    if (req.originalUrl.includes('%00')) throw new RequestError('BAD_REQUEST', noNul);
    if (req.method === 'OPTIONS') {
      res.statusCode = 204;
      res.setHeader('Allow', allow);
      res.end();
      return;
    }
    const known = methods.includes(req.method) || (req.method === 'HEAD' && 'get' in handlers);
    if (!known) throw new MethodNotAllowedError(allow);
    next();
  });
  route.all(admit(needOf));
  route.all((req: Request, _res: Response, next: NextFunction) => {
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
