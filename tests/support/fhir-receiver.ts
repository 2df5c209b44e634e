import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setImmediate as turn } from 'node:timers/promises';
import type { Bundle, BundleEntry, FhirResource } from 'fhir/r4.js';

/** What the receiver makes of a request before or after it is taken. */
export type Mood =
  | 'fine'
  /** Fails before anything is taken. */
  | 'error'
  | 'busy'
  /** Asks to come again in an hour. */
  | 'later'
  | 'reset'
  /** Takes nothing and never answers. */
  | 'silent'
  /** Takes it, and the answer is lost. */
  | 'lost'
  /** Takes it, and the answer ends in its middle. */
  | 'cut'
  | 'unauthorised'
  | 'redirect'
  | 'refused'
  | 'entry-failed'
  | 'page';

export interface TakenTransaction {
  /** Values of `authorization` that came with it. */
  readonly authorization: string | undefined;
  readonly bundle: Bundle;
}

export interface FhirReceiver {
  readonly url: string;
  /** Everything that is held, by the address that the receiver gave it. */
  readonly held: ReadonlyMap<string, FhirResource>;
  /** Transactions that were taken whole, in that order; repeats too. */
  readonly taken: readonly TakenTransaction[];
  readonly requests: readonly {
    readonly method: string;
    readonly path: string;
    readonly body: string;
    readonly headers: IncomingMessage['headers'];
  }[];
  /** Most transactions that were worked on at once. */
  readonly mostAtOnce: () => number;
  stop(): Promise<void>;
}

type Held = FhirResource & { id: string };

/**
 * A small FHIR server that takes transactions as HL7 FHIR R4 describes them (http.html#transaction): conditional creates
 * and updates by identifier or tag, references from entry to entry rewritten, ids of its own. It does not lock: between
 * looking for a resource and making it, others get their turn, so two creates of one thing at once make it twice.
 */
export async function startFhirReceiver(
  moodOf: (request: {
    readonly n: number;
    readonly body: string;
    readonly headers: IncomingMessage['headers'];
  }) => Mood = () => 'fine',
  port = 0,
): Promise<FhirReceiver> {
  const held = new Map<string, Held>();
  const taken: TakenTransaction[] = [];
  const requests: { method: string; path: string; body: string; headers: IncomingMessage['headers'] }[] = [];
  let ids = 0;
  let atOnce = 0;
  let most = 0;

  function find(type: string, query: string): Held[] {
    const [name, value = ''] = decodeURIComponent(query).split(/=(.*)/s);
    const [system, code] = value.split('|');
    return [...held.values()].filter((resource) => {
      if (resource.resourceType !== type) return false;
      if (name === '_tag') return resource.meta?.tag?.some((tag) => tag.system === system && tag.code === code);
      const { identifier } = resource as { identifier?: { system?: string; value?: string }[] };
      return identifier?.some((one) => one.system === system && one.value === code);
    });
  }

  async function transact(bundle: Bundle): Promise<Bundle> {
    const entries = bundle.entry ?? [];
    const addresses = new Map<string, string>();
    const plans: { entry: BundleEntry; address: string; isNew: boolean; status: string }[] = [];
    for (const entry of entries) {
      const { method, url = '', ifNoneExist } = entry.request ?? {};
      const [type = '', query = ifNoneExist ?? ''] = url.split('?');
      const found = find(type, query);
      if (found.length > 1) throw new Error('412');
      await turn();
      const [only] = found;
      ids += 1;
      const address = only === undefined ? `${type}/r${ids}` : `${type}/${only.id}`;
      addresses.set(String(entry.fullUrl), address);
      const status = only === undefined ? '201 Created' : '200 OK';
      plans.push({ entry, address, isNew: only === undefined || method === 'PUT', status });
    }
    for (const { entry, address, isNew } of plans) {
      if (!isNew) continue;
      const text = JSON.stringify(entry.resource).replaceAll(/"urn:uuid:[0-9a-f-]{36}"/g, (url) => {
        const known = addresses.get(url.slice(1, -1));
        return known === undefined ? url : JSON.stringify(known);
      });
      held.set(address, { ...JSON.parse(text), id: address.split('/')[1] });
    }
    return {
      resourceType: 'Bundle',
      type: 'transaction-response',
      entry: plans.map(({ status, address }) => ({ response: { status, location: address } })),
    };
  }

  async function answer(req: IncomingMessage, res: ServerResponse): Promise<void> {
    const chunks: Buffer[] = [];
    for await (const chunk of req) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks).toString('utf8');
    const { method = '', url: path = '', headers } = req;
    requests.push({ method, path, body, headers });
    const mood = moodOf({ n: requests.length, body, headers });
    const outcome = (code: string) => ({
      resourceType: 'OperationOutcome',
      issue: [{ severity: 'error', code, diagnostics: 'Names somebody, perhaps.' }],
    });
    const reply = (status: number, value: unknown, more: Record<string, string> = {}) => {
      res.writeHead(status, { 'Content-Type': 'application/fhir+json', ...more });
      res.end(JSON.stringify(value));
    };
    switch (mood) {
      case 'error':
        return reply(500, outcome('exception'));
      case 'busy':
        return reply(503, outcome('transient'), { 'Retry-After': '0' });
      case 'later':
        return reply(429, outcome('throttled'), { 'Retry-After': '3600' });
      case 'reset':
        req.socket.resetAndDestroy();
        return;
      case 'silent':
        return;
      case 'unauthorised':
        return reply(401, outcome('login'));
      case 'redirect':
        return reply(307, {}, { Location: '/elsewhere' });
      case 'refused':
        return reply(422, outcome('business-rule'));
      case 'page':
        res.writeHead(200, { 'Content-Type': 'text/html' });
        res.end('<h1>Maintenance</h1>');
        return;
    }
    if (method !== 'POST' || !body.startsWith('{')) return reply(200, {});
    const bundle = JSON.parse(body) as Bundle;
    if (mood === 'entry-failed') {
      const failed = { response: { status: '422', outcome: outcome('invalid') as FhirResource } };
      return reply(200, {
        resourceType: 'Bundle',
        type: 'transaction-response',
        entry: bundle.entry?.map(() => failed),
      });
    }
    atOnce += 1;
    most = Math.max(most, atOnce);
    try {
      const response = await transact(bundle);
      taken.push({ authorization: headers.authorization, bundle });
      if (mood === 'lost') req.socket.resetAndDestroy();
      else if (mood === 'cut') {
        res.writeHead(200, { 'Content-Length': '100000' });
        res.write('{"resourceType":"Bundle"', () => req.socket.destroy());
      } else reply(200, response);
    } catch {
      reply(412, outcome('multiple-matches'));
    } finally {
      atOnce -= 1;
    }
  }

  const server = createServer((req, res) => {
    answer(req, res).catch(() => res.destroy());
  });
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    held,
    taken,
    requests,
    mostAtOnce: () => most,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

/** Identity that the service gave to a resource, under which it is found again. */
export function identityOf(resource: FhirResource): string {
  const own = (list: readonly { system?: string | undefined }[] | undefined, name: string) =>
    list?.find(({ system }) => system?.endsWith(name)) as { value?: string; code?: string } | undefined;
  const { identifier } = resource as { identifier?: { system?: string }[] };
  const found = own(resource.meta?.tag, '/resource-tag')?.code ?? own(identifier, '/resource-id')?.value;
  return `${resource.resourceType}/${found}`;
}

/** What a receiver holds, with the ids that the service gave: fails where two have the same identity. */
export function heldAsOurs({ held }: Pick<FhirReceiver, 'held'>): Map<string, unknown> {
  const ours = new Map([...held].map(([address, resource]) => [address, identityOf(resource)]));
  const found = new Map<string, unknown>();
  for (const [address, resource] of held) {
    const text = JSON.stringify(resource).replaceAll(/"reference":"([A-Za-z]+\/r\d+)"/g, (all, target) =>
      ours.has(target) ? `"reference":"${ours.get(target)}"` : all,
    );
    const identity = ours.get(address) as string;
    if (found.has(identity)) throw new Error(`held twice: ${identity}`);
    found.set(identity, { ...JSON.parse(text), id: identity.split('/')[1] });
  }
  return found;
}
