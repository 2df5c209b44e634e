/** An answer with its body read. */
export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  /** The body as JSON; throws when it is none. */
  json<T = Record<string, unknown>>(): T;
}

export async function send(url: string, init: RequestInit = {}): Promise<Answer> {
  const response = await fetch(url, init);
  const text = await response.text();
  return { status: response.status, headers: response.headers, text, json: <T>() => JSON.parse(text) as T };
}

/** Sends a value as JSON, or a string or bytes as they are. */
export function sendJson(
  url: string,
  body: unknown,
  { method = 'POST', headers = {} }: { method?: string; headers?: Record<string, string> } = {},
): Promise<Answer> {
  const content = typeof body === 'string' || body instanceof Uint8Array ? body : JSON.stringify(body);
  return send(url, {
    method,
    headers: { 'Content-Type': 'application/json', ...headers },
    body: content as NonNullable<RequestInit['body']>,
  });
}
