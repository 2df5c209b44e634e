import type { Subscription } from 'fhir/r4.js';
import { AppError, type Fault } from '../kernel/errors.ts';
import type { FaultCode } from '../kernel/fault-codes.ts';
import { isHostAllowed } from './address-rules.ts';
import { SubscriptionInvalidError } from './subscription-error.ts';

/** A Subscription as a caller sends it, found usable. */
export interface ReadSubscription {
  /** Without what is the service's own to say, and with the values of headers. */
  readonly definition: Subscription;
  readonly endpoint: URL;
  /** ms since 1970; null for no end. */
  readonly endsAt: number | null;
}

export interface SubscriptionRules {
  readonly allowedHosts: ReadonlySet<string>;
  /** @throws RequestError for criteria that cannot be searched */
  readonly checkCriteria: (criteria: string) => void;
  /** ms since 1970. */
  readonly now: number;
}

const ownProperties = ['resourceType', 'id', 'meta', 'implicitRules', 'language', 'text'];
const properties = [...ownProperties, 'status', 'contact', 'end', 'reason', 'criteria', 'error', 'channel'];
const channelProperties = ['type', 'endpoint', 'payload', 'header'];
const statuses = ['requested', 'active', 'off', 'error'];
export const payloadType = 'application/fhir+json';
const payloads = [payloadType, 'application/json'];

/** Headers that belong to the request itself; a caller who sets them could smuggle a second one in. */
const reservedHeaders =
  /^(host|content-.*|transfer-encoding|connection|upgrade|te|trailer|expect|keep-alive|proxy-.*)$/i;
/** Source: RFC 9110, sections 5.1 and 5.5; visible ASCII and blanks. */
const headerForm = /^(?<name>[A-Za-z0-9!#$%&'*+.^_`|~-]{1,100}): ?(?<value>[\x20-\x7e]{0,4000})$/;
const mostHeaders = 10;
const longestText = 2_000;

/**
 * Reads what a caller sent as a Subscription (HL7 FHIR R4, rest-hook).
 * @throws SubscriptionInvalidError with every fault
 */
export function readSubscription(sent: unknown, rules: SubscriptionRules): ReadSubscription {
  const faults: Fault[] = [];
  const fault = (pointer: string, code: FaultCode, message: string) => faults.push({ pointer, code, message });
  if (!isRecord(sent) || sent.resourceType !== 'Subscription') {
    throw new SubscriptionInvalidError([
      { pointer: '/resourceType', code: 'WRONG_TYPE', message: 'Expected a resource of the type Subscription.' },
    ]);
  }
  const text = (of: Record<string, unknown>, at: string, name: string, isRequired: boolean): string | undefined => {
    const value = of[name];
    if (typeof value === 'string' && value.trim() !== '' && value.length <= longestText) return value;
    if (value !== undefined) fault(`${at}/${name}`, 'WRONG_TYPE', `Expected a text of 1 to ${longestText} characters.`);
    else if (isRequired) fault(`${at}/${name}`, 'REQUIRED', 'This is needed.');
    return undefined;
  };
  const refuseOthers = (of: Record<string, unknown>, at: string, known: readonly string[]) => {
    for (const name of Object.keys(of)) {
      if (!known.includes(name)) fault(`${at}/${shown(name)}`, 'UNKNOWN_PROPERTY', `Known here: ${known.join(', ')}.`);
    }
  };

  refuseOthers(sent, '', properties);
  text(sent, '', 'reason', true);
  const status = text(sent, '', 'status', true);
  if (status !== undefined && !statuses.includes(status)) {
    fault('/status', 'UNKNOWN_KEY', `Expected one of: ${statuses.join(', ')}.`);
  }
  const criteria = text(sent, '', 'criteria', true);
  if (criteria !== undefined) {
    const problem = problemOf(() => rules.checkCriteria(criteria));
    if (problem !== undefined) fault('/criteria', 'FORMAT', problem);
  }
  const endsAt = endOf(text(sent, '', 'end', false));
  if (Number.isNaN(endsAt)) fault('/end', 'DATE', 'Expected an instant such as 2026-03-14T10:20:00Z.');
  else if (endsAt !== null && endsAt <= rules.now && status !== 'off') fault('/end', 'DATE', 'The end is over.');
  if (sent.contact !== undefined && !Array.isArray(sent.contact)) fault('/contact', 'WRONG_TYPE', 'Expected a list.');

  const channel = isRecord(sent.channel) ? sent.channel : undefined;
  if (channel === undefined)
    fault('/channel', sent.channel === undefined ? 'REQUIRED' : 'WRONG_TYPE', 'Expected a channel.');
  let endpoint: URL | undefined;
  if (channel !== undefined) {
    refuseOthers(channel, '/channel', channelProperties);
    const type = text(channel, '/channel', 'type', true);
    if (type !== undefined && type !== 'rest-hook') fault('/channel/type', 'UNKNOWN_KEY', 'Expected rest-hook.');
    const address = text(channel, '/channel', 'endpoint', true);
    if (address !== undefined) {
      endpoint = URL.canParse(address) ? new URL(address) : undefined;
      const problem = problemOfEndpoint(endpoint, rules.allowedHosts);
      if (problem !== undefined) fault('/channel/endpoint', 'FORMAT', problem);
    }
    const payload = text(channel, '/channel', 'payload', false);
    if (payload !== undefined && !payloads.includes(payload.split(';')[0]?.trim() ?? '')) {
      fault(
        '/channel/payload',
        'UNKNOWN_KEY',
        `Expected ${payloads.join(' or ')}, or none for a notice without content.`,
      );
    }
    for (const [index, problem] of problemsOfHeaders(channel.header)) {
      fault(index === null ? '/channel/header' : `/channel/header/${index}`, 'FORMAT', problem);
    }
  }
  if (faults.length > 0 || endpoint === undefined) throw new SubscriptionInvalidError(faults);
  const { error: _error, meta, ...rest } = sent as unknown as Subscription;
  const { versionId: _version, lastUpdated: _time, ...ownMeta } = meta ?? {};
  const definition = { ...rest, ...(Object.keys(ownMeta).length === 0 ? {} : { meta: ownMeta }) };
  return { definition, endpoint, endsAt };
}

/** A word of the endpoint itself is not repeated: it may carry a secret. */
export function problemOfEndpoint(url: URL | undefined, allowedHosts: ReadonlySet<string>): string | undefined {
  if (url === undefined || !/^https?:$/.test(url.protocol)) return 'Expected an https address.';
  if (url.username + url.password !== '') return 'Credentials belong in a header, not in the address.';
  if (url.hash !== '') return 'The address must have no fragment.';
  const isNamed = allowedHosts.has(url.hostname.replace(/^\[|\]$/g, ''));
  if (url.protocol === 'http:' && !isNamed) return 'Expected https; plain http is for hosts that the operator allows.';
  if (!isHostAllowed(url, allowedHosts)) {
    return 'The host must be one of the public internet, or one that the operator allows (WEBHOOK_ALLOWED_HOSTS).';
  }
  return undefined;
}

function problemsOfHeaders(header: unknown): readonly (readonly [number | null, string])[] {
  if (header === undefined) return [];
  if (!Array.isArray(header) || header.length > mostHeaders)
    return [[null, `Expected a list of at most ${mostHeaders}.`]];
  return header.flatMap((line, index): [number, string][] => {
    const name = typeof line === 'string' ? headerForm.exec(line)?.groups?.name : undefined;
    if (name === undefined) return [[index, 'Expected a header such as "Authorization: Bearer TOKEN", in ASCII.']];
    return reservedHeaders.test(name) ? [[index, "This header is the service's own to set."]] : [];
  });
}

/** Name and value of a header that was found usable. */
export function headerParts(line: string): readonly [string, string] {
  const { name = '', value = '' } = headerForm.exec(line)?.groups ?? {};
  return [name, value];
}

function endOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  return /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/.test(text) ? Date.parse(text) : Number.NaN;
}

function problemOf(check: () => void): string | undefined {
  try {
    check();
    return undefined;
  } catch (error) {
    if (error instanceof AppError) return error.message;
    throw error;
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function shown(name: string): string {
  return name.slice(0, 60).replaceAll('~', '~0').replaceAll('/', '~1');
}
