import { NeuroexamApiError, retryAfterOf } from './api-error.ts';

export interface ClientOptions {
  /** Address of the service, such as `https://neuro.clinic.example`. */
  readonly baseUrl: string;
  /** An access token or API key, or what gives one; asked before every attempt, so that it may be renewed. */
  readonly token?: string | (() => string | undefined | Promise<string | undefined>);
  /** Spelling of the prose; the service's own choice when absent. */
  readonly spelling?: 'uk' | 'us';
  /** Longest time for one attempt, in ms; 30 seconds unless told otherwise. */
  readonly timeoutMs?: number;
  /** How often a call that may be repeated is, after 429 or 503; three times unless told otherwise. */
  readonly retries?: number;
  /** Longest wait before a repeat, in ms; an answer that asks for more is not waited for. 30 seconds unless told otherwise. */
  readonly longestWaitMs?: number;
  /** Headers of every request. */
  readonly headers?: Readonly<Record<string, string>>;
  /** Another `fetch`, such as one that goes through a proxy. */
  readonly fetch?: typeof globalThis.fetch;
}

export interface CallOptions {
  readonly signal?: AbortSignal;
}

/** A whole answer. */
export interface ApiAnswer<Body> {
  readonly body: Body;
  readonly status: number;
  /** Version of what was answered; `correctExam` takes it as `If-Match`. */
  readonly etag: string | undefined;
  readonly location: string | undefined;
  readonly requestId: string | undefined;
}

export interface ApiRequest {
  readonly method: string;
  /** With names in braces, which `path` fills. */
  readonly template: string;
  readonly accept: string;
  readonly isRepeatable: boolean;
  readonly path?: Readonly<Record<string, string | undefined>>;
  readonly query?: Readonly<Record<string, QueryValue>>;
  readonly headers?: Readonly<Record<string, string | undefined>>;
  readonly body?: unknown;
  readonly bodyType?: string;
}

export type QueryValue = string | number | boolean | undefined | readonly (string | number | boolean)[];
export type Send = <Body>(request: ApiRequest, options?: CallOptions) => Promise<ApiAnswer<Body>>;

const defaultTimeoutMs = 30_000;
const defaultRetries = 3;
const defaultLongestWaitMs = 30_000;
/** First wait, in ms, where an answer does not say how long; it doubles each time. */
const firstWaitMs = 250;

/** The one place that asks the network. */
export function createSend(options: ClientOptions): Send {
  const ask = options.fetch ?? globalThis.fetch.bind(globalThis);
  const retries = options.retries ?? defaultRetries;
  return async <Body>(request: ApiRequest, { signal }: CallOptions = {}) => {
    for (let attempt = 0; ; attempt += 1) {
      const response = await attemptOnce(ask, options, request, signal);
      if (response.ok || response.status === 304) return answerOf<Body>(response);
      const mayRepeat = request.isRepeatable && attempt < retries && isPassing(response.status);
      const waitMs = mayRepeat ? waitOf(response, attempt) : Number.POSITIVE_INFINITY;
      if (waitMs > (options.longestWaitMs ?? defaultLongestWaitMs)) {
        throw new NeuroexamApiError(response, await bodyOf(response));
      }
      await response.body?.cancel();
      await pause(waitMs, signal);
    }
  };
}

/** Too many requests, or not available. */
function isPassing(status: number): boolean {
  return status === 429 || status === 503;
}

function waitOf({ headers }: Response, attempt: number): number {
  const seconds = retryAfterOf(headers, Date.now());
  return seconds === undefined ? firstWaitMs * 2 ** attempt : seconds * 1000;
}

async function attemptOnce(
  ask: typeof globalThis.fetch,
  options: ClientOptions,
  request: ApiRequest,
  signal: AbortSignal | undefined,
): Promise<Response> {
  const token = typeof options.token === 'function' ? await options.token() : options.token;
  const timeout = AbortSignal.timeout(options.timeoutMs ?? defaultTimeoutMs);
  const headers = new Headers({ ...options.headers, Accept: request.accept });
  for (const [name, value] of Object.entries(request.headers ?? {})) if (value !== undefined) headers.set(name, value);
  if (token !== undefined) headers.set('Authorization', `Bearer ${token}`);
  if (request.bodyType !== undefined) headers.set('Content-Type', request.bodyType);
  return ask(urlOf(options.baseUrl, request), {
    method: request.method,
    headers,
    signal: signal === undefined ? timeout : AbortSignal.any([signal, timeout]),
    ...(request.body === undefined ? {} : { body: JSON.stringify(request.body) }),
  });
}

function urlOf(baseUrl: string, { template, path = {}, query = {} }: ApiRequest): string {
  const address = template.replace(/\{(\w+)\}/g, (_match, name: string) => encodeURIComponent(path[name] ?? ''));
  const parameters = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) {
    if (value === undefined) continue;
    for (const one of Array.isArray(value) ? value : [value]) parameters.append(name, String(one));
  }
  const asked = parameters.toString();
  return `${baseUrl.replace(/\/+$/, '')}${address}${asked === '' ? '' : `?${asked}`}`;
}

async function answerOf<Body>(response: Response): Promise<ApiAnswer<Body>> {
  return {
    body: (await bodyOf(response)) as Body,
    status: response.status,
    etag: response.headers.get('ETag') ?? undefined,
    location: response.headers.get('Location') ?? undefined,
    requestId: response.headers.get('X-Request-Id') ?? undefined,
  };
}

/** JSON read, any other text as it is, nothing as undefined. What says that it is JSON and is none is told as text. */
async function bodyOf(response: Response): Promise<unknown> {
  const text = await response.text();
  if (text === '') return undefined;
  const type = response.headers.get('Content-Type')?.split(';')[0]?.trim() ?? '';
  if (!/^application\/([\w.-]+\+)?json$/.test(type)) return text;
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

async function pause(ms: number, signal: AbortSignal | undefined): Promise<void> {
  signal?.throwIfAborted();
  await new Promise<void>((resolve, reject) => {
    const stop = () => {
      clearTimeout(timer);
      reject(signal?.reason);
    };
    const timer = setTimeout(() => {
      signal?.removeEventListener('abort', stop);
      resolve();
    }, ms);
    signal?.addEventListener('abort', stop, { once: true });
  });
}
