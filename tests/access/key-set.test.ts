import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decodeProtectedHeader, type JWTVerifyGetKey, jwtVerify } from 'jose';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keySet, publicKeysIn } from '../../src/access/key-set.ts';
import { type SigningKey, signingKey, tokenOf } from '../support/guarded-service.ts';

const folder = mkdtempSync(join(tmpdir(), 'neuroexam-test-'));
let [first, second]: SigningKey[] = [];
beforeAll(async () => {
  [first, second] = await Promise.all([signingKey('first'), signingKey('second')]);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const verifies = async (keys: JWTVerifyGetKey, key: SigningKey | undefined) => {
  const token = await tokenOf(key as SigningKey, {});
  return jwtVerify(token, keys).then(
    ({ protectedHeader }) => protectedHeader.kid === decodeProtectedHeader(token).kid,
    (error: { code?: string }) => error.code,
  );
};

describe('keys in a file', () => {
  it('are taken anew when the file changes, and stay when it cannot be used', async () => {
    const file = join(folder, 'jwks.json');
    const write = (...keys: unknown[]) => writeFileSync(file, JSON.stringify({ keys }));
    let time = 0;
    let faults = 0;
    write(first?.jwk);
    const keys = await keySet(
      { file },
      () => (faults += 1),
      () => time,
    );
    expect(await verifies(keys, first)).toBe(true);
    expect(await verifies(keys, second)).toBe('ERR_JWKS_NO_MATCHING_KEY');
    write(first?.jwk, second?.jwk);
    time += 1_000;
    expect(await verifies(keys, second)).toBe(true);
    writeFileSync(file, '{"keys":[');
    time += 1_000;
    expect(await verifies(keys, second)).toBe(true);
    rmSync(file);
    time += 1_000;
    expect(await verifies(keys, second)).toBe(true);
    expect(faults).toBe(2);
    write(second?.jwk);
    time += 1_000;
    expect(await verifies(keys, first)).toBe('ERR_JWKS_NO_MATCHING_KEY');
  });

  it('must be public', async () => {
    expect(() => publicKeysIn('{"keys":[]}')).toThrow();
    expect(() => publicKeysIn('[]')).toThrow();
    expect(() => publicKeysIn(JSON.stringify({ keys: [{ kty: 'oct', k: 'AAAA' }] }))).toThrow(/not public/);
    expect(() => publicKeysIn(JSON.stringify({ keys: [{ ...first?.jwk, d: 'AAAA' }] }))).toThrow(/not public/);
    await expect(
      keySet(
        { file: join(folder, 'none') },
        () => undefined,
        () => 0,
      ),
    ).rejects.toThrow(/ENOENT/);
  });
});

describe('keys at an address', () => {
  const withServer = async (listener: RequestListener, use: (url: string) => Promise<void>) => {
    const server = createServer(listener);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    try {
      await use(`http://127.0.0.1:${(server.address() as AddressInfo).port}/jwks`);
    } finally {
      server.closeAllConnections();
      server.close();
    }
  };
  const unavailable = 'ACCESS_UNAVAILABLE';

  it('are fetched once for many tokens', async () => {
    let fetched = 0;
    const listener: RequestListener = (_req, res) => {
      fetched += 1;
      res.end(JSON.stringify({ keys: [first?.jwk] }));
    };
    await withServer(listener, async (url) => {
      const keys = await keySet(
        { url },
        () => undefined,
        () => 0,
      );
      const all = await Promise.all(Array.from({ length: 8 }, () => verifies(keys, first)));
      expect(all.every((one) => one === true)).toBe(true);
      // Keys that nobody has must not make us ask again and again.
      for (let n = 0; n < 5; n += 1) expect(await verifies(keys, second)).toBe('ERR_JWKS_NO_MATCHING_KEY');
      expect(fetched).toBe(1);
    });
  });

  it.each<readonly [string, RequestListener]>([
    ['an error', (_req, res) => res.writeHead(500).end()],
    ['no JSON', (_req, res) => res.end('<html>')],
    ['no keys', (_req, res) => res.end('{}')],
    ['a body without end', (_req, res) => res.end(`{"keys":[${' '.repeat(300_000)}]}`)],
    [
      'a redirect',
      (req, res) =>
        req.url === '/jwks'
          ? res.writeHead(302, { Location: '/elsewhere' }).end()
          : res.end(JSON.stringify({ keys: [first?.jwk] })),
    ],
    ['a broken connection', (req) => req.socket.destroy()],
  ])('are not there with %s, and that is not the fault of the token', async (_, listener) => {
    await withServer(listener, async (url) => {
      const keys = await keySet(
        { url },
        () => undefined,
        () => 0,
      );
      expect(await verifies(keys, first)).toBe(unavailable);
    });
  });
});
