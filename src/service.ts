import type { Logger } from 'pino';
import type { Config } from './config.ts';
import { closeContext, compiledFiles, createContext } from './context.ts';
import { createApp } from './http/app.ts';
import { createMetricsApp } from './http/metrics-app.ts';
import { type ListeningServer, listen } from './http/server.ts';

export interface RunningService {
  /** Base URL without a slash at the end. */
  readonly url: string;
  /** Base URL of the metrics, where they have a port of their own. */
  readonly metricsUrl: string | undefined;
  readonly logger: Logger;
  /** Lets running requests finish, keeps what was accepted, and lets go of port and files. */
  stop(): Promise<void>;
}

/**
 * Starts the whole service in this process; resolves when it answers.
 * @throws StoreError, or an Error of the operating system such as EADDRINUSE; nothing is left open then
 */
export async function startService(config: Config, compiled = compiledFiles()): Promise<RunningService> {
  const context = await createContext(config, compiled);
  const { logger, operation } = context;
  let metricsServer: ListeningServer | undefined;
  const letGo = async () => {
    await closeContext(context);
    await metricsServer?.stop();
  };
  try {
    if (config.metrics !== undefined) {
      const { registry } = operation.metrics;
      metricsServer = await listen(() => createMetricsApp(registry, logger), config.metrics);
    }
    const address = { host: config.host, port: config.port, drainMs: config.drainSeconds * 1000 };
    const server = await listen((isDraining) => createApp(context, isDraining), address);
    const stopPreparing = inTheBackground(context.prepare());
    logger.info({ version: context.software.version, store: config.store.engine }, 'started');
    const stop = async () => {
      const began = performance.now();
      logger.info('stopping');
      stopPreparing();
      await server.stop();
      await letGo();
      logger.info({ durationMs: Math.round(performance.now() - began) }, 'stopped');
    };
    return { url: server.url, metricsUrl: metricsServer?.url, logger, stop };
  } catch (error) {
    await letGo();
    throw error;
  }
}

/** Longest stretch, in ms, for which preparation keeps a request waiting. */
const sliceMs = 4;
/** Pause between stretches, in ms, so that requests come first. */
const pauseMs = 8;

/** Runs steps whenever nothing else is to be done; answers a function that stops it. */
function inTheBackground(steps: Iterable<unknown>): () => void {
  const iterator = steps[Symbol.iterator]();
  let timer: NodeJS.Timeout | undefined;
  const slice = (): void => {
    const end = performance.now() + sliceMs;
    while (performance.now() < end) if (iterator.next().done === true) return;
    timer = setTimeout(slice, pauseMs).unref();
  };
  timer = setTimeout(slice, pauseMs).unref();
  return () => clearTimeout(timer);
}

/**
 * Stops the service at the first SIGTERM or SIGINT and ends the process at once at the second.
 * An error that nobody caught is logged by its kind and place, since its message may quote a request, then the service
 * stops the same way, with exit code 1.
 */
export function stopOnSignals(service: RunningService): void {
  let stopping = false;
  const stop = (exitCode: number) => {
    if (stopping) process.exit(exitCode === 0 ? 130 : exitCode);
    stopping = true;
    service.stop().then(
      () => process.exit(exitCode),
      () => process.exit(1),
    );
  };
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, () => stop(0));
  process.on('uncaughtException', (error) => {
    const frames = error.stack?.split('\n').filter((line) => /^\s+at /.test(line)) ?? [];
    service.logger.fatal({ kind: error.name, at: frames.map((frame) => frame.trim()) }, 'crashed');
    stop(1);
  });
}
