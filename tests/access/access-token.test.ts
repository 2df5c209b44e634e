import { createHmac, createSign } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CompactEncrypt, exportSPKI, type JWTPayload } from 'jose';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AccessControl, createAccessControl } from '../../src/access/access-control.ts';
import type { AccessError } from '../../src/access/access-error.ts';
import { longestToken } from '../../src/access/access-token.ts';
import { hashOf, newKey } from '../../src/access/api-key.ts';
import { audience, issuer, type SigningKey, signingKey, tokenOf } from '../support/guarded-service.ts';

// What must be refused: RFC 7519 (claims), RFC 8725 (attacks and their cures), RFC 9068 (access tokens).

const folder = mkdtempSync(join(tmpdir(), 'neuroexam-test-'));
let access: AccessControl;
let key: SigningKey;
let rsa: SigningKey;
let stranger: SigningKey;
beforeAll(async () => {
  [key, rsa, stranger] = await Promise.all([signingKey('first'), signingKey('second', 'RS256'), signingKey('first')]);
  const file = join(folder, 'jwks.json');
  writeFileSync(file, JSON.stringify({ keys: [key.jwk, { ...rsa.jwk, alg: undefined }] }));
  const settings = {
    issuer,
    audiences: [audience, 'https://other.example/fhir'],
    keys: { file },
    algorithms: ['ES384', 'RS256'],
    clockSkewSeconds: 30,
    tokenUrl: undefined,
    authorizeUrl: undefined,
  };
  const keysFile = join(folder, 'keys.ndjson');
  writeFileSync(keysFile, JSON.stringify({ name: 'ward-7', hash: hashOf(newKey()), scopes: [] }));
  access = await createAccessControl(
    { tokens: settings, keysFile },
    () => undefined,
    () => new Date(),
  );
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const seconds = () => Math.floor(Date.now() / 1000);
const encoded = (value: unknown) => Buffer.from(JSON.stringify(value)).toString('base64url');
const claimsNow = () => ({ iss: issuer, aud: audience, sub: 'x', client_id: 'x', exp: seconds() + 300 });
/** A token made by hand, for what a library would refuse to make. */
const byHand = (header: object, claims: unknown, sign: (input: string) => string) => {
  const input = `${encoded(header)}.${encoded(claims)}`;
  return `${input}.${sign(input)}`;
};
const hmac = (secret: string) => (input: string) => createHmac('sha256', secret).update(input).digest('base64url');
const rs256 = (input: string) =>
  createSign('RSA-SHA256')
    .update(input)
    .sign(rsa.privateKey as never, 'base64url');
const withClaims = (claims: JWTPayload) => () => tokenOf(key, claims);
const withHeader = (header: Readonly<Record<string, unknown>>) => () => tokenOf(key, {}, header);

/** Source beside the ones that are quoted from a standard. */
const refused: readonly (readonly [string, () => string | Promise<string>])[] = [
  ['nothing', () => ''],
  ['a word', () => 'token'],
  ['dots alone', () => '..'],
  ['two parts', async () => (await tokenOf(key, {})).split('.').slice(0, 2).join('.')],
  ['four parts', async () => `${await tokenOf(key, {})}.AAAA`],
  ['no base64url', async () => (await tokenOf(key, {})).replace('.', '.$')],
  ['padding', async () => `${await tokenOf(key, {})}=`],
  ['a cut signature', async () => (await tokenOf(key, {})).slice(0, -4)],
  ['no signature', async () => (await tokenOf(key, {})).replace(/[^.]+$/, '')],
  ['the signature of another token', async () => swapped(await tokenOf(key, {}), await tokenOf(key, { jti: '2' }))],
  ['a changed scope', async () => changed(await tokenOf(key, { scope: 'system/exam.c' }), { scope: 'system/*.rs' })],
  ['the key of somebody else under our key id', () => tokenOf(stranger, {})],
  ['a key id that is not known', () => tokenOf({ ...key, kid: 'third' }, {})],
  ['the key id of another key', () => tokenOf({ ...key, kid: 'second' }, {})],
  ['a public key of its own', async () => tokenOf(stranger, {}, { jwk: stranger.jwk })],
  [
    'the address of its own keys',
    () => tokenOf({ ...stranger, kid: 'third' }, {}, { jku: 'https://evil.example/jwks' }),
  ],
  // RFC 7519, section 6.1, to the letter.
  [
    'the unsecured example of the standard',
    () =>
      'eyJhbGciOiJub25lIn0.eyJpc3MiOiJqb2UiLA0KICJleHAiOjEzMDA4MTkzODAsDQogImh0dHA6Ly9leGFtcGxlLmNvbS9pc19yb290Ijp0cnVlfQ.',
  ],
  ['the algorithm none', () => byHand({ alg: 'none', kid: 'first' }, claimsNow(), () => '')],
  ['the algorithm none with a signature', () => byHand({ alg: 'none', kid: 'first' }, claimsNow(), () => 'AAAA')],
  ['the algorithm None', () => byHand({ alg: 'None', kid: 'first' }, claimsNow(), () => 'AAAA')],
  // RFC 8725, section 2.1: the public key taken as the secret of an HMAC.
  [
    'the public key as a secret',
    async () => byHand({ alg: 'HS256', kid: 'second' }, claimsNow(), hmac(await exportSPKI(rsa.publicKey as never))),
  ],
  ['an empty secret', () => byHand({ alg: 'HS256', kid: 'second' }, claimsNow(), hmac('neuroexam'))],
  ['an algorithm that is not pinned', () => tokenOf({ ...rsa, alg: 'PS256' }, {}).catch(() => psByHand())],
  ['no algorithm', () => byHand({ kid: 'second' }, claimsNow(), rs256)],
  [
    'a critical header that is not known',
    () => byHand({ alg: 'RS256', kid: 'second', crit: ['x'], x: 1 }, claimsNow(), rs256),
  ],
  [
    'an unencoded payload',
    () => byHand({ alg: 'RS256', kid: 'second', crit: ['b64'], b64: false }, claimsNow(), rs256),
  ],
  ['a header that is no object', () => `${encoded('x')}.${encoded(claimsNow())}.AAAA`],
  ['claims that are a list', () => byHand({ alg: 'RS256', kid: 'second' }, [claimsNow()], rs256)],
  ['claims that are no JSON', () => notJson()],
  ['an encrypted token', () => encrypted()],
  ['a token that has expired', withClaims({ exp: Math.floor(Date.now() / 1000) - 31 })],
  ['no expiry', withClaims({ exp: undefined as never })],
  ['an expiry in words', withClaims({ exp: 'tomorrow' as never })],
  ['a token that is not valid yet', withClaims({ nbf: Math.floor(Date.now() / 1000) + 300 })],
  ['another issuer', withClaims({ iss: 'https://auth.example.evil' })],
  ['the issuer with a slash', withClaims({ iss: `${issuer}/` })],
  ['no issuer', withClaims({ iss: undefined as never })],
  ['another audience', withClaims({ aud: 'https://exams.example' })],
  ['no audience', withClaims({ aud: undefined as never })],
  ['an audience among none of ours', withClaims({ aud: ['a', 'b'] })],
  ['a token for a log-out', withHeader({ typ: 'logout+jwt' })],
  ['a proof of possession', withHeader({ typ: 'dpop+jwt' })],
  ['a token that is bound to a key', withClaims({ cnf: { jkt: 'x' } })],
  ['no name at all', withClaims({ client_id: undefined, sub: undefined as never })],
  ['the name of a static key', withClaims({ client_id: 'key:ward-7' })],
  ['the name of nobody', withClaims({ client_id: 'anonymous' })],
  ['a patient that is no id', withClaims({ patient: 'a b' })],
  ['a patient that is a list', withClaims({ patient: ['4711'] })],
  ['a patient that is null', withClaims({ patient: null })],
  ['too long a token', () => tokenOf(key, { x: 'x'.repeat(longestToken) })],
  ['a key that is not there', () => newKey()],
  ['the hash of a key', () => hashOf(newKey())],
];

function swapped(one: string, other: string): string {
  return `${one.split('.').slice(0, 2).join('.')}.${other.split('.')[2]}`;
}
function changed(token: string, claims: object): string {
  const [header, payload = '', signature] = token.split('.');
  const before = JSON.parse(Buffer.from(payload, 'base64url').toString()) as object;
  return `${header}.${encoded({ ...before, ...claims })}.${signature}`;
}
function psByHand(): string {
  return byHand({ alg: 'PS256', kid: 'second' }, claimsNow(), rs256);
}
function notJson(): string {
  const input = `${encoded({ alg: 'RS256', kid: 'second' })}.${Buffer.from('{').toString('base64url')}`;
  return `${input}.${rs256(input)}`;
}
function encrypted(): Promise<string> {
  return new CompactEncrypt(Buffer.from(JSON.stringify(claimsNow())))
    .setProtectedHeader({ alg: 'dir', enc: 'A256GCM' })
    .encrypt(Buffer.alloc(32));
}

describe('an access token', () => {
  it('is taken when everything is right, whichever key and audience it is of', async () => {
    const token = await tokenOf(key, { scope: 'system/Observation.rs openid system/*.rs?x=y', sub: 'user-1' });
    expect(await access.identify(token)).toEqual({
      client: 'analysis',
      user: 'user-1',
      scopes: ['system/Observation.rs'],
    });
    const others = [
      await tokenOf(rsa, { aud: ['x', 'https://other.example/fhir'], client_id: undefined, azp: 'analysis' }),
      await tokenOf(key, {}, { typ: 'JWT' }),
      await tokenOf(key, {}, { typ: undefined }),
      // Within the skew of the clocks.
      await tokenOf(key, { exp: seconds() - 20, nbf: seconds() + 20 }),
    ];
    for (const one of others) expect((await access.identify(one)).client).toBe('analysis');
  });

  it('may name its scopes in the ways that servers do', async () => {
    for (const claims of [{ scp: ['system/exam.c'] }, { scp: 'system/exam.c' }, { scope: ['system/exam.c'] }]) {
      expect((await access.identify(await tokenOf(key, claims))).scopes).toEqual(['system/exam.c']);
    }
    expect((await access.identify(await tokenOf(key, {}))).scopes).toEqual([]);
  });

  it('limits to the patient that it names', async () => {
    for (const patient of ['4711', 'Patient/4711']) {
      expect((await access.identify(await tokenOf(key, { patient }))).subject).toBe('Patient/4711');
    }
  });

  it.each(refused)('is refused with %s, and nothing says why', async (_, make) => {
    const token = await make();
    const error = await access.identify(token).then(
      () => undefined,
      (reason: AccessError) => reason,
    );
    expect(error).toMatchObject({
      code: 'INVALID_TOKEN',
      message: 'The access token or key is not valid here.',
      reason: expect.stringMatching(/^[A-Za-z_ ]+$/),
    });
  });
});
