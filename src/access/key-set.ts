import {
  createLocalJWKSet,
  createRemoteJWKSet,
  customFetch,
  errors,
  type JSONWebKeySet,
  type JWTVerifyGetKey,
} from 'jose';
import { AccessError } from './access-error.ts';
import type { TokenSettings } from './access-settings.ts';
import { reloadedFile } from './reloaded-file.ts';

/** Larger than the keys of any authorisation server. */
const mostBytes = 256 * 1024;
const timeoutMs = 5_000;
/** Pause after which keys that are not known are looked for again, in ms. */
const cooldownMs = 30_000;
/** How long keys are believed that were fetched, in ms: after that a key that was withdrawn is no longer taken. */
const believedMs = 10 * 60_000;

/** What a fetched set may fail by that is the token's fault; anything else is that of the authorisation server. */
const faultsOfToken = [errors.JWKSNoMatchingKey, errors.JWKSMultipleMatchingKeys, errors.JOSENotSupported];

/**
 * The public keys that tokens are checked with. They are looked up anew when they change: a file when its date or size is
 * another, an address after ten minutes or when a token names a key that is not known.
 * @param onFault told when a changed file cannot be used; the keys before stay
 * @throws Error for a file that cannot be used from the start; an address is not asked before it is needed
 */
export async function keySet(
  source: TokenSettings['keys'],
  onFault: () => void,
  clock: () => number,
): Promise<JWTVerifyGetKey> {
  if ('file' in source) {
    const file = await reloadedFile(source.file, (text) => createLocalJWKSet(publicKeysIn(text)), onFault, clock);
    return async (header, token) => (await file.current())(header, token);
  }
  const remote = createRemoteJWKSet(new URL(source.url), {
    timeoutDuration: timeoutMs,
    cooldownDuration: cooldownMs,
    cacheMaxAge: believedMs,
    [customFetch]: fetchLimited,
  });
  return async (header, token) => {
    try {
      return await remote(header, token);
    } catch (error) {
      if (faultsOfToken.some((kind) => error instanceof kind)) throw error;
      throw new AccessError('ACCESS_UNAVAILABLE', { reason: 'keys', cause: error });
    }
  };
}

/** @throws Error for what is no set of public keys */
export function publicKeysIn(text: string): JSONWebKeySet {
  const { keys } = JSON.parse(text) as { keys?: unknown };
  if (!Array.isArray(keys) || keys.length === 0) throw new Error('no keys');
  for (const key of keys as readonly Record<string, unknown>[]) {
    if (!['RSA', 'EC', 'OKP'].includes(String(key?.kty)) || 'd' in key || 'k' in key) throw new Error('not public');
  }
  return { keys } as JSONWebKeySet;
}

/** Follows no redirect, which could lead anywhere, and stops at a body that is too large. */
async function fetchLimited(url: string, init: RequestInit): Promise<Response> {
  const response = await fetch(url, { ...init, redirect: 'error' });
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of response.body ?? []) {
    length += chunk.length;
    if (length > mostBytes) throw new RangeError(`more than ${mostBytes} bytes`);
    chunks.push(chunk);
  }
  return new Response(Buffer.concat(chunks), { status: response.status });
}
