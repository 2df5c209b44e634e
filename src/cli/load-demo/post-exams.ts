import { setTimeout } from 'node:timers/promises';
import { tokenVariable } from '../commands/service-token.ts';
import { UsageError } from '../commands/surroundings.ts';
import type { InventedExam } from '../simulated/invented-exams.ts';

export interface Posted {
  readonly exams: number;
  readonly corrections: number;
  readonly refused: number;
}

/** Requests under way at once: enough to keep a service of a few cores busy, and not more than it queues gladly. */
const atOnce = 8;
/** How often a request is sent again that a service cannot take now, or that got no answer. */
const triesAtMost = 6;
const pauseMs = 250;

/**
 * Posts exams to a running service, each followed by its correction.
 * @param authorization header of a service that asks for a token
 */
export async function postExams(
  url: string,
  exams: Iterator<InventedExam>,
  onPosted: (count: number) => void,
  authorization: Readonly<Record<string, string>> = {},
): Promise<Posted> {
  let [posted, corrections, refused] = [0, 0, 0];
  const work = async (): Promise<void> => {
    for (let next = exams.next(); next.done !== true; next = exams.next()) {
      const { exam, correction } = next.value;
      const answer = await send(`${url}/exams`, 'POST', exam, authorization);
      if (answer.status === 401 || answer.status === 403) {
        throw new UsageError(`The service lets nobody post like this; ${tokenVariable} takes a token or key for it.`);
      }
      if (answer.ok) posted += 1;
      else refused += 1;
      // A 200 says that the exam was there before, and then so was its correction.
      if (correction !== undefined && answer.status === 201) {
        const { headers } = answer;
        const location = headers.get('location') ?? '';
        const put = await send(new URL(location, url).href, 'PUT', correction, {
          ...authorization,
          'If-Match': headers.get('etag') ?? '',
        });
        if (put.ok) corrections += 1;
        else refused += 1;
      }
      onPosted(posted + refused);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return { exams: posted, corrections, refused };
}

async function send(
  url: string,
  method: string,
  body: unknown,
  headers: Record<string, string> = {},
): Promise<Response> {
  const request = { method, headers: { 'Content-Type': 'application/json', ...headers }, body: JSON.stringify(body) };
  for (let attempt = 1; ; attempt += 1) {
    try {
      const response = await fetch(url, request);
      await response.arrayBuffer();
      // The service says by this header that a repeat makes sense.
      if (response.ok || !response.headers.has('retry-after') || attempt === triesAtMost) return response;
    } catch (error) {
      if (attempt === triesAtMost) throw error;
    }
    await setTimeout(pauseMs * 2 ** (attempt - 1));
  }
}
