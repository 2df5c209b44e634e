import { type IncomingHttpHeaders, type OutgoingHttpHeaders, request as plainRequest } from 'node:http';
import { request as secureRequest } from 'node:https';
import type { LookupFunction } from 'node:net';
import { AddressRefusedError } from './address-rules.ts';
import { SendError } from './delivery-error.ts';

export interface OutgoingRequest {
  readonly method: 'POST' | 'PUT';
  readonly url: URL;
  readonly headers: OutgoingHttpHeaders;
  readonly body?: Buffer | string;
  /** From the start to the last byte of the answer. */
  readonly timeoutMs: number;
  /** Longest answer that is read, in bytes. */
  readonly answerLimitBytes: number;
  /** How names are resolved, where not every address will do. */
  readonly lookup?: LookupFunction;
  readonly signal?: AbortSignal;
}

export interface ReceivedAnswer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/**
 * Sends one request on a connection of its own. Redirects are not followed: the other side would choose where the content
 * and the token go.
 * @throws SendError NETWORK, TIMEOUT, ADDRESS_REFUSED, ANSWER_UNUSABLE for a longer answer
 */
export function sendRequest(options: OutgoingRequest): Promise<ReceivedAnswer> {
  const { method, url, headers, body, timeoutMs, answerLimitBytes, lookup, signal } = options;
  return new Promise((resolve, reject) => {
    const send = url.protocol === 'https:' ? secureRequest : plainRequest;
    const length = body === undefined ? 0 : Buffer.byteLength(body);
    const request = send(url, {
      method,
      headers: { ...headers, 'Content-Length': length },
      agent: false,
      ...(lookup === undefined ? {} : { lookup }),
      ...(signal === undefined ? {} : { signal }),
    });
    const fail = (error: SendError) => {
      clearTimeout(timer);
      reject(error);
      request.destroy();
    };
    const timer = setTimeout(() => fail(new SendError('TIMEOUT')), timeoutMs);
    request.on('error', (error) =>
      fail(new SendError(error instanceof AddressRefusedError ? 'ADDRESS_REFUSED' : 'NETWORK')),
    );
    request.on('response', (answer) => {
      const chunks: Buffer[] = [];
      let received = 0;
      answer.on('data', (chunk: Buffer) => {
        received += chunk.length;
        if (received > answerLimitBytes) fail(new SendError('ANSWER_UNUSABLE'));
        else chunks.push(chunk);
      });
      answer.on('error', () => fail(new SendError('NETWORK')));
      answer.on('end', () => {
        clearTimeout(timer);
        resolve({
          status: answer.statusCode ?? 0,
          headers: answer.headers,
          body: Buffer.concat(chunks, received).toString('utf8'),
        });
      });
    });
    request.end(body);
  });
}
