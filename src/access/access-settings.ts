import { resolve } from 'node:path';
import { leadsToLoopback } from './loopback.ts';

/** Signatures that can be asked for: asymmetric ones, so that who checks a token cannot make one. */
const algorithms = [
  ...['RS256', 'RS384', 'RS512', 'PS256', 'PS384', 'PS512', 'ES256', 'ES384', 'ES512'],
  ...['EdDSA', 'Ed25519'],
];
/** What is taken where nothing else is said. */
export const defaultAlgorithms = 'RS384,ES384,RS256,ES256,PS256,PS384';

export const defaultSkewSeconds = '30';
export const mostSkewSeconds = 300;

/** How access tokens of an authorisation server are checked. */
export interface TokenSettings {
  readonly issuer: string;
  /** A token must be meant for one of these. */
  readonly audiences: readonly string[];
  /** Where the public keys are: a file, absolute, or an address. */
  readonly keys: { readonly file: string } | { readonly url: string };
  readonly algorithms: readonly string[];
  readonly clockSkewSeconds: number;
  /** Where a client gets its tokens; tokens are announced only where it is known. */
  readonly tokenUrl: string | undefined;
  readonly authorizeUrl: string | undefined;
}

export interface AccessSettings {
  readonly tokens: TokenSettings | undefined;
  /** File of the static keys, absolute. */
  readonly keysFile: string | undefined;
}

const besideIssuer = [
  'AUTH_AUDIENCE',
  'AUTH_JWKS',
  'AUTH_ALGORITHMS',
  'AUTH_CLOCK_SKEW_SECONDS',
  'AUTH_TOKEN_URL',
  'AUTH_AUTHORIZE_URL',
] as const;

/** Every variable that says who may use the service. */
export const accessVariables = ['API_KEYS_FILE', 'AUTH_ISSUER', ...besideIssuer] as const;

/**
 * Reads who may use the service from an environment; undefined when nothing is said about it.
 * @param problems takes what is wrong, in sentences that name variables and never their values
 */
export function readAccessSettings(
  env: Readonly<Record<string, string | undefined>>,
  problems: string[],
): AccessSettings | undefined {
  const text = (name: string) => env[name]?.trim() || undefined;
  const keysFile = text('API_KEYS_FILE');
  const issuer = text('AUTH_ISSUER');
  const others = besideIssuer.filter((name) => text(name) !== undefined);
  if (issuer === undefined) {
    if (others.length > 0) problems.push(`${others.join(', ')} need AUTH_ISSUER beside them.`);
    else if (keysFile === undefined) return undefined;
  }
  const tokens = issuer === undefined ? undefined : readTokenSettings(issuer, text, problems);
  return { tokens, keysFile: keysFile === undefined ? undefined : resolve(keysFile) };
}

function readTokenSettings(
  issuer: string,
  text: (name: string) => string | undefined,
  problems: string[],
): TokenSettings {
  const list = (value = '') => value.split(/[\s,]+/).filter((part) => part !== '');
  if (!URL.canParse(issuer)) problems.push('AUTH_ISSUER must be the address that stands in `iss` of the tokens.');
  const audiences = list(text('AUTH_AUDIENCE'));
  if (audiences.length === 0) {
    problems.push('AUTH_AUDIENCE must be what stands in `aud` of the tokens, such as the FHIR base of this service.');
  }
  const chosen = list(text('AUTH_ALGORITHMS') ?? defaultAlgorithms);
  if (chosen.some((one) => !algorithms.includes(one))) {
    problems.push(`AUTH_ALGORITHMS takes, with commas between: ${algorithms.join(', ')}.`);
  }
  const skew = text('AUTH_CLOCK_SKEW_SECONDS') ?? defaultSkewSeconds;
  if (!/^\d{1,3}$/.test(skew) || Number(skew) > mostSkewSeconds) {
    problems.push(`AUTH_CLOCK_SKEW_SECONDS must be a whole number from 0 to ${mostSkewSeconds}.`);
  }
  const address = (name: string) => {
    const value = text(name);
    if (value !== undefined && !isTrustedUrl(value)) problems.push(`${name} must be an https address.`);
    return value;
  };
  return {
    issuer,
    audiences,
    keys: keySource(text('AUTH_JWKS'), problems),
    algorithms: chosen,
    clockSkewSeconds: Number(skew),
    tokenUrl: address('AUTH_TOKEN_URL'),
    authorizeUrl: address('AUTH_AUTHORIZE_URL'),
  };
}

function keySource(value: string | undefined, problems: string[]): TokenSettings['keys'] {
  if (value === undefined || (/^[a-z]+:\/\//i.test(value) && !isTrustedUrl(value))) {
    problems.push('AUTH_JWKS must be a file or an https address of the public keys, a JSON Web Key Set.');
    return { file: '' };
  }
  return /^https?:/i.test(value) ? { url: value } : { file: resolve(value) };
}

/** Without TLS somebody on the way could put in keys of their own; on this machine nobody is on the way. */
function isTrustedUrl(text: string): boolean {
  if (!URL.canParse(text)) return false;
  const url = new URL(text);
  if (url.username !== '') return false;
  return url.protocol === 'https:' || (url.protocol === 'http:' && leadsToLoopback(url));
}
