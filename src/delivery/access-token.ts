import { createPrivateKey, type KeyObject, randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { SignJWT } from 'jose';
import { ConfigError } from '../kernel/errors.ts';
import { SendError } from './delivery-error.ts';
import { sendRequest } from './send-request.ts';
import type { Credentials } from './settings.ts';

/**
 * The access token for a request; undefined where none is sent.
 * @param isAfresh the last one was not accepted
 * @throws SendError
 */
export type AccessToken = (isAfresh: boolean) => Promise<string | undefined>;

/** Form of a bearer token. Source: RFC 6750, section 2.1. */
const tokenForm = /^[A-Za-z0-9._~+/-]+=*$/;

/** Life of an assertion, in s: at most five minutes by SMART App Launch 2.2, client-confidential-asymmetric. */
const assertionSeconds = 240;
/** A token is asked for anew this long before its end, in ms. */
const spareMs = 30_000;
const answerLimitBytes = 64 * 1024;

/**
 * Where tokens come from, by the settings.
 * @throws ConfigError when a file of them cannot be used; the file is named by its setting
 */
export function accessToken(credentials: Credentials, timeoutMs: number, now: () => number): AccessToken {
  switch (credentials.kind) {
    case 'none':
      return async () => undefined;
    case 'token-file':
      return tokenInFile(credentials.file);
    case 'backend-services':
      return askedToken(credentials, timeoutMs, now);
  }
}

function tokenInFile(file: string): AccessToken {
  if (!tokenForm.test(contentOf(file, 'FORWARD_TOKEN_FILE'))) {
    throw new ConfigError(['FORWARD_TOKEN_FILE must hold a bearer token and nothing else.']);
  }
  return async () => {
    const token = (await readFile(file, 'utf8').catch(() => '')).trim();
    if (!tokenForm.test(token)) throw new SendError('TOKEN');
    return token;
  };
}

/** A token of SMART Backend Services: asked for with a signed assertion and used until it ends. */
function askedToken(
  { tokenUrl, clientId, keyFile, scope }: Extract<Credentials, { kind: 'backend-services' }>,
  timeoutMs: number,
  now: () => number,
): AccessToken {
  const { key, alg, kid } = privateKey(contentOf(keyFile, 'FORWARD_KEY_FILE'));
  let known: { readonly token: string; readonly until: number } | undefined;
  let asking: Promise<string> | undefined;

  async function ask(): Promise<string> {
    const seconds = Math.floor(now() / 1000);
    const assertion = await new SignJWT({})
      .setProtectedHeader({ alg, typ: 'JWT', ...(kid === undefined ? {} : { kid }) })
      .setIssuer(clientId)
      .setSubject(clientId)
      .setAudience(tokenUrl.href)
      .setJti(randomUUID())
      .setIssuedAt(seconds)
      .setExpirationTime(seconds + assertionSeconds)
      .sign(key);
    const form = new URLSearchParams({
      grant_type: 'client_credentials',
      scope,
      client_assertion_type: 'urn:ietf:params:oauth:client-assertion-type:jwt-bearer',
      client_assertion: assertion,
    });
    const headers = { 'Content-Type': 'application/x-www-form-urlencoded', Accept: 'application/json' };
    const answer = await sendRequest({
      method: 'POST',
      url: tokenUrl,
      headers,
      body: form.toString(),
      timeoutMs,
      answerLimitBytes,
    });
    const { access_token: token, expires_in: lifeSeconds } = answer.status === 200 ? jsonOf(answer.body) : {};
    if (typeof token !== 'string' || !tokenForm.test(token)) throw new SendError('TOKEN');
    known = { token, until: now() + (typeof lifeSeconds === 'number' ? lifeSeconds * 1000 : 0) - spareMs };
    return token;
  }

  return async (isAfresh) => {
    if (known !== undefined && !isAfresh && now() < known.until) return known.token;
    asking ??= ask().finally(() => {
      asking = undefined;
    });
    return asking;
  };
}

interface SigningKey {
  readonly key: KeyObject;
  readonly alg: string;
  readonly kid?: string;
}

/** @throws ConfigError */
function privateKey(text: string): SigningKey {
  try {
    const jwk = text.startsWith('{') ? (JSON.parse(text) as { kid?: string }) : undefined;
    const key = createPrivateKey(jwk === undefined ? text : { key: jwk as never, format: 'jwk' });
    const isCurve = key.asymmetricKeyDetails?.namedCurve === 'secp384r1';
    if (!isCurve && key.asymmetricKeyType !== 'rsa') throw new RangeError('another kind of key');
    return { key, alg: isCurve ? 'ES384' : 'RS384', ...(jwk?.kid === undefined ? {} : { kid: jwk.kid }) };
  } catch {
    throw new ConfigError([
      'FORWARD_KEY_FILE must hold a private key, P-384 (for ES384) or RSA (for RS384), as JWK or PEM.',
    ]);
  }
}

function contentOf(file: string, setting: string): string {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch {
    throw new ConfigError([`${setting} must be a file that can be read.`]);
  }
}

function jsonOf(body: string): Record<string, unknown> {
  try {
    return Object(JSON.parse(body)) as Record<string, unknown>;
  } catch {
    return {};
  }
}
