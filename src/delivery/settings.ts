import { isIP } from 'node:net';
import { leadsToLoopback } from '../access/loopback.ts';

/** How the server that exams are forwarded to is reached. */
export interface ForwardSettings {
  /** Base of a FHIR R4 server, where transactions are posted. */
  readonly url: URL;
  readonly credentials: Credentials;
  readonly timeoutMs: number;
  readonly maxAttempts: number;
}

export type Credentials =
  | { readonly kind: 'none' }
  /** A bearer token in a file, read anew for every request. */
  | { readonly kind: 'token-file'; readonly file: string }
  /** SMART Backend Services. */
  | {
      readonly kind: 'backend-services';
      readonly tokenUrl: URL;
      readonly clientId: string;
      readonly keyFile: string;
      readonly scope: string;
    };

export interface DeliverySettings {
  /** Undefined when exams are forwarded to nobody. */
  readonly forward: ForwardSettings | undefined;
  /** Hosts that subscriptions may name although they are not of the public internet, or speak plain http. */
  readonly webhookHosts: readonly string[];
  readonly webhookMaxAttempts: number;
}

const credentialNames = ['FORWARD_TOKEN_URL', 'FORWARD_CLIENT_ID', 'FORWARD_KEY_FILE'] as const;

/**
 * Reads what is to be sent where.
 * @param text    a variable, '' when it is not set
 * @param integer a variable that is a whole number
 * @param problems gets everything that is wrong; values are not repeated, since addresses and files may be telling
 */
export function readDeliverySettings(
  text: (name: string) => string,
  integer: (name: string) => number,
  problems: string[],
): DeliverySettings {
  const settings = {
    forward: readForward(text, integer, problems),
    webhookHosts: readHosts(text('WEBHOOK_ALLOWED_HOSTS'), problems),
    webhookMaxAttempts: integer('WEBHOOK_MAX_ATTEMPTS'),
  };
  return Object.freeze(settings);
}

function readForward(
  text: (name: string) => string,
  integer: (name: string) => number,
  problems: string[],
): ForwardSettings | undefined {
  const timeoutMs = integer('FORWARD_TIMEOUT_SECONDS') * 1000;
  const maxAttempts = integer('FORWARD_MAX_ATTEMPTS');
  const httpWish = text('FORWARD_ALLOW_HTTP');
  if (httpWish !== 'true' && httpWish !== 'false') problems.push('FORWARD_ALLOW_HTTP must be true or false.');
  const address = (name: string) => readAddress(name, text(name), httpWish === 'true', problems);
  const url = address('FORWARD_URL');
  const [tokenUrl, clientId, keyFile] = [
    address('FORWARD_TOKEN_URL'),
    text('FORWARD_CLIENT_ID'),
    text('FORWARD_KEY_FILE'),
  ];
  const tokenFile = text('FORWARD_TOKEN_FILE');
  const scope = text('FORWARD_SCOPE');
  const given = credentialNames.filter((name) => text(name) !== '');
  if (given.length > 0 && given.length < credentialNames.length) {
    problems.push(`${credentialNames.join(', ')} are needed together.`);
  }
  if (given.length > 0 && tokenFile !== '') {
    problems.push('FORWARD_TOKEN_FILE and FORWARD_TOKEN_URL exclude each other: a token is either given or asked for.');
  }
  if (text('FORWARD_URL') === '') {
    if (given.length > 0 || tokenFile !== '')
      problems.push('FORWARD_URL is needed where credentials for it are given.');
    return undefined;
  }
  if (url === undefined) return undefined;
  const credentials: Credentials =
    tokenUrl !== undefined
      ? { kind: 'backend-services', tokenUrl, clientId, keyFile, scope }
      : tokenFile === ''
        ? { kind: 'none' }
        : { kind: 'token-file', file: tokenFile };
  return { url, credentials, timeoutMs, maxAttempts };
}

function readAddress(name: string, value: string, isHttpAllowed: boolean, problems: string[]): URL | undefined {
  if (value === '') return undefined;
  const url = URL.canParse(value) ? new URL(value) : undefined;
  const isPlain = url !== undefined && /^https?:$/.test(url.protocol) && url.search + url.hash === '';
  if (!isPlain || url.username + url.password !== '') {
    problems.push(`${name} must be an https address without user, query and fragment.`);
    return undefined;
  }
  if (url.protocol === 'http:' && !isHttpAllowed && !leadsToLoopback(url)) {
    problems.push(
      `${name} must be https: what is sent is personal, and so is the token. FORWARD_ALLOW_HTTP=true allows http inside a network that encrypts by itself.`,
    );
  }
  url.pathname = url.pathname.replace(/\/+$/, '');
  return url;
}

function readHosts(value: string, problems: string[]): readonly string[] {
  const hosts = value
    .split(',')
    .map((host) => host.trim().toLowerCase())
    .filter((host) => host !== '');
  const isHost = (host: string) => isIP(host) !== 0 || /^[a-z0-9]([a-z0-9.-]*[a-z0-9])?$/.test(host);
  if (!hosts.every(isHost)) {
    problems.push('WEBHOOK_ALLOWED_HOSTS must be names or addresses of hosts, without port, separated by commas.');
  }
  return hosts;
}
