import type { LookupFunction } from 'node:net';
import type { NotifiedResource } from '../store/outbox/outbox-repository.ts';
import type { SubscriptionChannel } from '../store/outbox/subscription-channels.ts';
import type { ResourceRepository } from '../store/resource-repository.ts';
import { SendError } from './delivery-error.ts';
import { judgeStatus, type Verdict } from './judge-answer.ts';
import { headerParts, payloadType, problemOfEndpoint } from './read-subscription.ts';
import { sendRequest } from './send-request.ts';
import type { SendDelivery } from './target.ts';

/** What a receiver answers is of no interest beyond its status and the codes of an OperationOutcome. */
const answerLimitBytes = 256 * 1024;

export interface NotifierOptions {
  readonly resources: ResourceRepository;
  readonly channel: SubscriptionChannel;
  readonly allowedHosts: ReadonlySet<string>;
  /** Resolves the names of hosts that the operator has not named. */
  readonly lookup: LookupFunction;
  readonly timeoutMs: number;
}

/**
 * Tells a subscriber of new versions of resources: an empty POST to its endpoint, or, where it asked for a payload, a PUT
 * of each resource to `endpoint/Type/id`, which a repeat does not double. Source: HL7 FHIR R4, Subscription, rest-hook.
 */
export function createNotifier(options: NotifierOptions): SendDelivery {
  const { resources, channel, allowedHosts, lookup, timeoutMs } = options;
  const endpoint = new URL(channel.endpoint);
  const headers = Object.fromEntries(channel.headers.map(headerParts));

  async function send(
    method: 'POST' | 'PUT',
    url: URL,
    body: string | undefined,
    signal: AbortSignal,
  ): Promise<Verdict> {
    // The operator may have named fewer hosts since.
    if (problemOfEndpoint(url, allowedHosts) !== undefined) throw new SendError('ADDRESS_REFUSED');
    const type = body === undefined ? {} : { 'Content-Type': `${payloadType}; charset=utf-8` };
    return judgeStatus(
      await sendRequest({
        method,
        url,
        headers: { ...headers, ...type },
        ...(body === undefined ? {} : { body }),
        timeoutMs,
        answerLimitBytes,
        signal,
        ...(allowedHosts.has(url.hostname.replace(/^\[|\]$/g, '')) ? {} : { lookup }),
      }),
    );
  }

  return async (delivery, { signal, keep }) => {
    if (channel.payload === null) return send('POST', endpoint, undefined, signal);
    let verdict: Verdict = { kind: 'dead', reason: 'CONTENT_MISSING' };
    for (const [index, resource] of delivery.resources.entries()) {
      if (index > 0 && !(await keep())) throw new SendError('TIMEOUT');
      const kept = await resources.read(resource.type, resource.id, resource.version);
      if (kept === undefined) return { kind: 'dead', reason: 'CONTENT_MISSING' };
      verdict = await send('PUT', addressBelow(endpoint, resource), kept.json, signal);
      if (verdict.kind !== 'delivered') return verdict;
    }
    return verdict;
  };
}

function addressBelow(endpoint: URL, { type, id }: NotifiedResource): URL {
  const url = new URL(endpoint);
  url.pathname = `${url.pathname.replace(/\/+$/, '')}/${type}/${id}`;
  return url;
}
