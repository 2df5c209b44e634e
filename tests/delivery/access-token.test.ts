import { generateKeyPairSync } from 'node:crypto';
import { rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { jwtVerify } from 'jose';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { accessToken } from '../../src/delivery/access-token.ts';
import { ConfigError } from '../../src/kernel/errors.ts';
import { temporaryFolder } from '../support/service.ts';

let folder: string;
let server: Server;
let tokenUrl: URL;
const forms: URLSearchParams[] = [];
let answer: { status: number; body: unknown } = { status: 200, body: {} };

beforeAll(async () => {
  folder = temporaryFolder();
  server = createServer(async (req, res) => {
    let body = '';
    for await (const chunk of req) body += chunk;
    forms.push(new URLSearchParams(body));
    res.writeHead(answer.status, { 'Content-Type': 'application/json' });
    res.end(JSON.stringify(answer.body));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  tokenUrl = new URL(`http://127.0.0.1:${(server.address() as AddressInfo).port}/token`);
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

const written = (name: string, content: string) => {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
};

describe('a token from a file', () => {
  it('is read anew for every request', async () => {
    const file = written('token', 'first\n');
    const token = accessToken({ kind: 'token-file', file }, 1000, Date.now);
    expect(await token(false)).toBe('first');
    written('token', 'second');
    expect(await token(false)).toBe('second');
    written('token', 'two\r\nX-Other: words');
    await expect(token(false)).rejects.toMatchObject({ reason: 'TOKEN' });
  });

  it('must be there at the start', () => {
    for (const file of [join(folder, 'none'), written('empty', ''), written('words', 'a b')]) {
      expect(() => accessToken({ kind: 'token-file', file }, 1000, Date.now)).toThrow(ConfigError);
    }
  });
});

/** Source of the claims: HL7 SMART App Launch 2.2, client-confidential-asymmetric; of the form: RFC 7523, section 2.2. */
describe('a token of SMART Backend Services', () => {
  const pairs = {
    ES384: generateKeyPairSync('ec', { namedCurve: 'secp384r1' }),
    RS384: generateKeyPairSync('rsa', { modulusLength: 2048 }),
  };

  it.each(['ES384', 'RS384'] as const)('is asked for with an assertion signed by %s', async (alg) => {
    const { privateKey, publicKey } = pairs[alg];
    const text =
      alg === 'ES384'
        ? JSON.stringify({ ...privateKey.export({ format: 'jwk' }), kid: 'key-1' })
        : String(privateKey.export({ format: 'pem', type: 'pkcs8' }));
    let clock = Date.now();
    const keyFile = written(`${alg}.key`, text);
    const credentials = {
      kind: 'backend-services',
      tokenUrl,
      clientId: 'neuroexam',
      keyFile,
      scope: 'system/*.c',
    } as const;
    const token = accessToken(credentials, 5000, () => clock);
    forms.length = 0;
    answer = { status: 200, body: { access_token: 'abc', token_type: 'bearer', expires_in: 300 } };
    expect(await Promise.all([token(false), token(false)])).toEqual(['abc', 'abc']);
    expect(forms).toHaveLength(1);
    const [form] = forms;
    expect(form?.get('grant_type')).toBe('client_credentials');
    expect(form?.get('scope')).toBe('system/*.c');
    expect(form?.get('client_assertion_type')).toBe('urn:ietf:params:oauth:client-assertion-type:jwt-bearer');
    const { payload, protectedHeader } = await jwtVerify(String(form?.get('client_assertion')), publicKey, {
      issuer: 'neuroexam',
      subject: 'neuroexam',
      audience: tokenUrl.href,
      maxTokenAge: 300,
    });
    expect(protectedHeader).toMatchObject({ alg, typ: 'JWT', ...(alg === 'ES384' ? { kid: 'key-1' } : {}) });
    expect(payload.jti).toMatch(/^[0-9a-f-]{36}$/);
    expect(Number(payload.exp) - Number(payload.iat)).toBeLessThanOrEqual(300);

    // Kept until shortly before its end, or until it is refused.
    expect(await token(false)).toBe('abc');
    expect(forms).toHaveLength(1);
    await token(true);
    expect(forms).toHaveLength(2);
    clock += 290_000;
    await token(false);
    expect(forms).toHaveLength(3);
    expect(new Set(forms.map((one) => one.get('client_assertion'))).size).toBe(3);
    answer = { status: 400, body: { error: 'invalid_client' } };
    await expect(token(true)).rejects.toMatchObject({ reason: 'TOKEN' });
  });

  it('needs a key of a kind that it can sign with', () => {
    const other = generateKeyPairSync('ec', { namedCurve: 'prime256v1' }).privateKey;
    for (const text of ['', '{}', 'key', String(other.export({ format: 'pem', type: 'pkcs8' }))]) {
      const credentials = {
        kind: 'backend-services',
        tokenUrl,
        clientId: 'x',
        keyFile: written('bad', text),
        scope: 'x',
      } as const;
      expect(() => accessToken(credentials, 1000, Date.now)).toThrow(ConfigError);
    }
  });
});
