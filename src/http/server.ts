import { createServer, type RequestListener, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';

/** How long a client may take, in milliseconds. The interval is how exactly the two limits above it are kept. */
const timeouts = {
  headersTimeout: 10_000,
  requestTimeout: 20_000,
  connectionsCheckingInterval: 1_000,
  keepAliveTimeout: 65_000,
} as const;

/** More open sockets than this are refused at once instead of starving the ones that are served. */
const maxConnections = 2_000;

/** Log, metrics, limits and streams all wait for the end of an answer; Node takes more than ten for a leak and says so. */
const mostListeners = 40;

/** How long a stop waits for requests that are being answered. */
const drainLimitMs = 10_000;

export interface ListeningServer {
  /** Base URL without a slash at the end, with the port that is really used. */
  readonly url: string;
  /** Accepts nothing more, lets running requests finish and closes; resolves when the last socket is gone. */
  stop(): Promise<void>;
}

/**
 * Listens on an address.
 * @param makeListener is given the question whether the server is draining, for the readiness answer
 * @param address with, where wanted, how long a stop goes on accepting after it says that it drains, in ms
 * @throws Error of the operating system, such as EADDRINUSE
 */
export async function listen(
  makeListener: (isDraining: () => boolean) => RequestListener,
  address: { readonly host: string; readonly port: number; readonly drainMs?: number },
): Promise<ListeningServer> {
  let draining = false;
  const running = new Set<ServerResponse>();
  const listener = makeListener(() => draining);

  const server = createServer(timeouts, (req, res) => {
    res.setMaxListeners(mostListeners);
    running.add(res);
    res.once('close', () => running.delete(res));
    if (draining) res.setHeader('Connection', 'close');
    listener(req, res);
  });
  server.maxConnections = maxConnections;

  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(address.port, address.host, () => {
      server.off('error', reject);
      resolve();
    });
  });

  let stopped: Promise<void> | undefined;
  const stop = () => {
    stopped ??= close();
    return stopped;
  };

  async function close(): Promise<void> {
    draining = true;
    if (address.drainMs) await pause(address.drainMs);
    await new Promise<void>((resolve) => {
      // A kept-alive socket would hold the server open until its time-out; each answer says that it is the last.
      for (const res of running) if (!res.headersSent) res.setHeader('Connection', 'close');
      const limit = setTimeout(() => server.closeAllConnections(), drainLimitMs);
      server.close(() => {
        clearTimeout(limit);
        resolve();
      });
      server.closeIdleConnections();
    });
  }

  return { url: urlOf(server.address() as AddressInfo), stop };
}

function urlOf({ address, family, port }: AddressInfo): string {
  const wildcard = address === '0.0.0.0' || address === '::';
  const host = wildcard ? 'localhost' : family === 'IPv6' ? `[${address}]` : address;
  return `http://${host}:${port}`;
}
