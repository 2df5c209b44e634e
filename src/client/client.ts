/**
 * A client for programs that use the service, in browsers and in Node 20 or newer. It needs nothing but `fetch`.
 * @example
 * const client = createClient({ baseUrl: 'http://127.0.0.1:8080' });
 * const { body } = await client.localise({ examinedAt: '2026-03-14T10:20:00+01:00', findings: { ... } });
 */
import type { Bundle, LocalisationRequest, Resource } from './generated/api-types.ts';
import { createOperations, type Operations, type SearchParameters } from './generated/operations.ts';
import { type CallOptions, type ClientOptions, createSend, type QueryValue } from './send-request.ts';

export { type ApiFault, NeuroexamApiError } from './api-error.ts';
export type * from './generated/api-types.ts';
export type * from './generated/operations.ts';
export type { ApiAnswer, CallOptions, ClientOptions } from './send-request.ts';

export interface Client extends Operations {
  /** Every match of a search, page after page. */
  searchAll<Found extends Resource = Resource>(
    type: keyof SearchParameters,
    parameters?: Readonly<Record<string, QueryValue>>,
    options?: CallOptions,
  ): AsyncGenerator<Found, void, undefined>;
}

export function createClient(options: ClientOptions): Client {
  const operations = createOperations(createSend(options));
  const { spelling } = options;
  return {
    ...operations,
    localise: (body: LocalisationRequest, parameters = {}, call) =>
      operations.localise(body, spelling === undefined ? parameters : { spelling, ...parameters }, call),
    async *searchAll<Found extends Resource>(
      type: keyof SearchParameters,
      parameters: Readonly<Record<string, QueryValue>> = {},
      call?: CallOptions,
    ) {
      let page: Readonly<Record<string, QueryValue>> | undefined = parameters;
      while (page !== undefined) {
        const { body }: { body: Bundle } = await operations.searchResources(type, page as object, call);
        for (const { resource, search } of (body.entry ?? []) as Entry[]) {
          if (resource !== undefined && search?.mode === 'match') yield resource as Found;
        }
        page = nextPage(body);
      }
    },
  };
}

interface Entry {
  readonly resource?: Resource;
  readonly search?: { readonly mode?: string };
}

/** The parameters of the next page. Its address is not followed, so that a token goes nowhere but to `baseUrl`. */
function nextPage({ link = [] }: Bundle): Readonly<Record<string, string[]>> | undefined {
  const next = link.find(({ relation }) => relation === 'next');
  if (next === undefined) return undefined;
  const query = new URL(next.url, 'http://localhost').searchParams;
  return Object.fromEntries([...query.keys()].map((name) => [name, query.getAll(name)]));
}
