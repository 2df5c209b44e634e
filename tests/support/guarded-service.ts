import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exportJWK, generateKeyPair, type JWTPayload, SignJWT } from 'jose';
import { hashOf, newKey } from '../../src/access/api-key.ts';
import { readConfig } from '../../src/config.ts';
import { startService } from '../../src/service.ts';
import { compiledByBuild } from './built.ts';
import { temporaryFolder } from './service.ts';

/** An invented authorisation server; nobody asks it, since its keys lie in a file. */
export const issuer = 'https://auth.example';
export const audience = 'https://exams.example/fhir';
export const tokenUrl = `${issuer}/token`;

/** Scopes of the users whom the service is for. */
export const roles = {
  integration: 'system/exam.cru',
  analyst: 'system/*.rs system/Measure.cu',
  app: 'system/localisation.c',
  monitoring: 'system/metrics.r',
  auditor: 'system/AuditEvent.rs',
  subscriber: 'system/Subscription.cruds system/ClinicalImpression.rs',
} as const;

export type SigningKey = Awaited<ReturnType<typeof signingKey>>;

/** A key pair of an authorisation server. */
export async function signingKey(kid: string, alg = 'ES384') {
  const { privateKey, publicKey } = await generateKeyPair(alg, { extractable: true });
  return { alg, kid, privateKey, publicKey, jwk: { ...(await exportJWK(publicKey)), kid, alg, use: 'sig' } };
}

/** A token as the authorisation server would sign it; `claims` replaces what stands in it, undefined takes it out. */
export function tokenOf(
  { alg, kid, privateKey }: Pick<SigningKey, 'alg' | 'kid' | 'privateKey'>,
  claims: JWTPayload,
  header: Readonly<Record<string, unknown>> = {},
): Promise<string> {
  const now = Math.floor(Date.now() / 1000);
  const usual = { iss: issuer, aud: audience, sub: 'analysis', client_id: 'analysis', iat: now, exp: now + 300 };
  const all = Object.fromEntries(Object.entries({ ...usual, ...claims }).filter(([, value]) => value !== undefined));
  return new SignJWT(all).setProtectedHeader({ alg, kid, typ: 'at+jwt', ...header }).sign(privateKey);
}

/** The whole service with access control by tokens and static keys. */
export async function startGuardedService(env: Readonly<Record<string, string>> = {}) {
  const folder = temporaryFolder();
  const signing = await signingKey('first');
  const jwksFile = join(folder, 'jwks.json');
  const keysFile = join(folder, 'keys.ndjson');
  const writeJwks = (...keys: readonly object[]) => writeFileSync(jwksFile, JSON.stringify({ keys }));
  const writeKeys = (...keys: readonly object[]) =>
    writeFileSync(keysFile, keys.map((key) => `${JSON.stringify(key)}\n`).join(''));
  writeJwks(signing.jwk);
  const key = newKey();
  writeKeys({ name: 'ward-7', hash: hashOf(key), scopes: ['system/exam.c'] });
  const config = readConfig({
    PORT: '0',
    LOG_LEVEL: 'silent',
    DATA_DIR: folder,
    AUTH_ISSUER: issuer,
    AUTH_AUDIENCE: audience,
    AUTH_JWKS: jwksFile,
    AUTH_TOKEN_URL: tokenUrl,
    API_KEYS_FILE: keysFile,
    ...env,
  });
  const service = await startService(config, compiledByBuild());
  return {
    url: service.url,
    signing,
    key,
    writeJwks,
    writeKeys,
    /** Header with a token that has these scopes. */
    async bearer(scope: string, claims: JWTPayload = {}): Promise<{ Authorization: string }> {
      return { Authorization: `Bearer ${await tokenOf(signing, { scope, ...claims })}` };
    },
    async stop() {
      await service.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export type GuardedService = Awaited<ReturnType<typeof startGuardedService>>;
