import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';
import { sendRaw, statusesIn } from './raw-socket.ts';

const post = 'POST /localisation HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n';
const get = 'GET /health/live HTTP/1.1\r\nHost: x\r\n';
/** A request that would be answered if a first one let it slip through. */
const smuggled = 'GET /smuggled HTTP/1.1\r\nHost: x\r\n\r\n';

/** Requests that two parsers may take differently. Source: RFC 9112, sections 2.2, 3, 5.1, 5.2, 6.1 and 6.3. */
const ambiguous: readonly (readonly [string, string])[] = [
  ['a length and chunks', `${post}Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n${smuggled}`],
  ['chunks and a length', `${post}Transfer-Encoding: chunked\r\nContent-Length: 5\r\n\r\n0\r\n\r\n${smuggled}`],
  ['two lengths', `${post}Content-Length: 2\r\nContent-Length: 60\r\n\r\n{}${smuggled}`],
  ['a list of lengths', `${post}Content-Length: 2, 60\r\n\r\n{}${smuggled}`],
  ['a signed length', `${post}Content-Length: +2\r\n\r\n{}${smuggled}`],
  ['a negative length', `${post}Content-Length: -2\r\n\r\n{}${smuggled}`],
  ['a length in hexadecimal', `${post}Content-Length: 0x2\r\n\r\n{}${smuggled}`],
  ['a length with a fraction', `${post}Content-Length: 2.0\r\n\r\n{}${smuggled}`],
  ['a length beyond 64 bits', `${post}Content-Length: 99999999999999999999\r\n\r\n{}${smuggled}`],
  ['chunks that are not the last coding', `${post}Transfer-Encoding: chunked, identity\r\n\r\n0\r\n\r\n${smuggled}`],
  ['an unknown coding', `${post}Transfer-Encoding: xchunked\r\n\r\n0\r\n\r\n${smuggled}`],
  ['a coding after a vertical tab', `${post}Transfer-Encoding: \x0bchunked\r\n\r\n0\r\n\r\n${smuggled}`],
  ['two codings', `${post}Transfer-Encoding: chunked\r\nTransfer-Encoding: identity\r\n\r\n0\r\n\r\n${smuggled}`],
  ['a space before the colon', `${post}Transfer-Encoding : chunked\r\n\r\n0\r\n\r\n${smuggled}`],
  ['a name with a space', `${get}X A: 1\r\n\r\n`],
  ['a name with a control character', `${get}X\x01A: 1\r\n\r\n`],
  ['a header without a name', `${get}: 1\r\n\r\n`],
  ['a header without a colon', `${get}Nothing\r\n\r\n`],
  ['a folded header', `${get}X-A: 1\r\n folded\r\n\r\n`],
  ['a folded length', `${post}Content-Length:\r\n 2\r\n\r\n{}`],
  ['a NUL in a header', `${get}X-A: a\0b\r\n\r\n`],
  ['a bare line feed', 'GET /health/live HTTP/1.1\nHost: x\n\n'],
  ['a bare carriage return', `${get}X-A: 1\rX-B: 2\r\n\r\n`],
  ['no Host', 'GET /health/live HTTP/1.1\r\n\r\n'],
  ['a chunk size that is none', `${post}Transfer-Encoding: chunked\r\n\r\nzz\r\n{}\r\n0\r\n\r\n`],
  ['a chunk size beyond 64 bits', `${post}Transfer-Encoding: chunked\r\n\r\nfffffffffffffffff\r\n{}\r\n0\r\n\r\n`],
  ['a chunk longer than it says', `${post}Transfer-Encoding: chunked\r\n\r\n1\r\n{}\r\n0\r\n\r\n`],
  ['an endless chunk extension', `${post}Transfer-Encoding: chunked\r\n\r\n2;${'a'.repeat(40_000)}\r\n{}\r\n0\r\n\r\n`],
  ['a header of 40 KB', `${get}X-A: ${'a'.repeat(40_000)}\r\n\r\n`],
  ['three thousand headers', `${get}${Array.from({ length: 3_000 }, (_, n) => `X-${n}: 1\r\n`).join('')}\r\n`],
  ['a path of 40 KB', `GET /${'a'.repeat(40_000)} HTTP/1.1\r\nHost: x\r\n\r\n`],
  ['a version that is none', 'GET /health/live HTTP/9.9\r\nHost: x\r\n\r\n'],
  ['a method that is none', 'G@T /health/live HTTP/1.1\r\nHost: x\r\n\r\n'],
  ['a path with a space', 'GET /health/live x HTTP/1.1\r\nHost: x\r\n\r\n'],
  ['another protocol', '\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03'],
  ['the start of HTTP/2', 'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n'],
  ['nothing but line ends and a word', '\r\n\r\nhello\r\n\r\n'],
];

/** Well-formed requests for something that is not done here. */
const refused: readonly (readonly [string, string, readonly number[]])[] = [
  ['TRACE', `TRACE /exams HTTP/1.1\r\nHost: x\r\nX-Secret: canary\r\nConnection: close\r\n\r\n`, [405]],
  ['CONNECT', 'CONNECT 127.0.0.1:1 HTTP/1.1\r\nHost: 127.0.0.1:1\r\n\r\n', []],
  ['a method of another protocol', 'PROPFIND /exams HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n', [405]],
  [
    'a method in a header',
    'GET /exams HTTP/1.1\r\nHost: x\r\nX-HTTP-Method-Override: POST\r\nX-HTTP-Method: POST\r\nConnection: close\r\n\r\n',
    [405],
  ],
  ['a method in the query', 'GET /exams?_method=POST HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n', [405]],
  ['an expectation', `${post}Content-Length: 2\r\nExpect: 200-maybe\r\nConnection: close\r\n\r\n`, [417]],
];

describe('heads of requests', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  it.each(ambiguous)('are refused once, and nothing slips through, with %s', async (_name, bytes) => {
    const { text, isClosed } = await sendRaw(service.url, Buffer.from(bytes, 'latin1'));
    expect(isClosed).toBe(true);
    const statuses = statusesIn(text);
    expect(statuses.length).toBeLessThanOrEqual(1);
    for (const status of statuses) expect(status).toSatisfy((found: number) => found >= 400 && found < 500);
  });

  it.each(refused)('are refused for %s', async (_name, bytes, expected) => {
    const { text, isClosed } = await sendRaw(service.url, bytes);
    expect([statusesIn(text), isClosed]).toEqual([expected, true]);
    expect(text).not.toContain('canary');
  });

  it('cannot turn the connection into one of another protocol', async () => {
    const upgrade = 'Connection: Upgrade, close\r\nUpgrade: websocket\r\nSec-WebSocket-Key: YQ==\r\n';
    const { text } = await sendRaw(service.url, `${get}${upgrade}\r\n`);
    expect(statusesIn(text)).toEqual([200]);
  });

  it('may name the whole address; only the path counts then', async () => {
    const { text } = await sendRaw(
      service.url,
      'GET http://elsewhere.example/health/live HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n',
    );
    // RFC 9112, 3.2.2: a server must accept the absolute form. What it names is not followed.
    expect(statusesIn(text)).toHaveLength(1);
    expect(statusesIn(text)[0]).toSatisfy((status: number) => status === 200 || (status >= 400 && status < 500));
  });

  it('do not decide where links lead', async () => {
    await sendJson(`${service.url}/exams`, examNumbered('links'));
    const lies = [
      'Host: evil.example',
      'X-Forwarded-Host: evil.example',
      'X-Forwarded-Proto: gopher',
      'X-Forwarded-For: evil.example',
      'X-Original-URL: /evil.example',
      'X-Rewrite-URL: /evil.example',
      'Forwarded: host=evil.example;proto=gopher',
    ].join('\r\n');
    for (const path of ['/fhir/Observation?_count=1', '/fhir/metadata', '/views', '/', '/fhir/Observation/_history']) {
      const { text } = await sendRaw(
        service.url,
        `GET ${path} HTTP/1.1\r\n${lies}\r\nConnection: close\r\n\r\n`,
        5_000,
      );
      expect(statusesIn(text)).toEqual([200]);
      expect(text).not.toMatch(/evil\.example|gopher/);
    }
  });

  it('in a row on one connection are answered in their order', async () => {
    const paths = ['/health/live', '/nothing', '/catalogue?x=1', '/health/ready', '/exams'];
    const { text } = await sendRaw(
      service.url,
      paths
        .map(
          (path, n) =>
            `GET ${path} HTTP/1.1\r\nHost: x\r\n${n === paths.length - 1 ? 'Connection: close\r\n' : ''}\r\n`,
        )
        .join(''),
      5_000,
    );
    expect(statusesIn(text)).toEqual([200, 404, 400, 200, 405]);
  });

  it('leave an honest client served', async () => {
    expect((await send(`${service.url}/health/ready`)).status).toBe(200);
    expect((await sendJson(`${service.url}/exams`, examNumbered('honest'))).status).toBe(201);
  });
});
