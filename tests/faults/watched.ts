import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import type { SpawnedService } from '../support/spawned-service.ts';

export interface Watched {
  /** Bytes after a collection of garbage. */
  readonly rss: number;
  readonly heap: number;
  /** Longest time since the last look in which the event loop did nothing else. */
  readonly longestHoldMs: number;
  /** Open connections. */
  readonly sockets: number;
}

const watchModule = pathToFileURL(join(import.meta.dirname, 'watch.mjs')).href;

/** Environment of a service that can be looked at from outside. */
export function watchedEnvironment(dataDir: string): Record<string, string> {
  return { FAULTS_WATCH: join(dataDir, 'watch.json'), NODE_OPTIONS: `--expose-gc --import ${watchModule}` };
}

export async function lookAt(service: SpawnedService, dataDir: string): Promise<Watched> {
  const path = join(dataDir, 'watch.json');
  rmSync(path, { force: true });
  service.process.kill('SIGUSR2');
  for (;;) {
    await pause(10);
    try {
      return JSON.parse(readFileSync(path, 'utf8')) as Watched;
    } catch {
      // Not written yet, or half of it.
    }
  }
}
