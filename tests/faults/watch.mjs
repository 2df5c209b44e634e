import { writeFileSync } from 'node:fs';
import { monitorEventLoopDelay } from 'node:perf_hooks';

/** Loaded into the service before it starts: at SIGUSR2 it writes what it holds, and for how long its loop was held up. */
const loop = monitorEventLoopDelay({ resolution: 10 });
loop.enable();
process.on('SIGUSR2', () => {
  globalThis.gc?.();
  const { rss, heapUsed, external } = process.memoryUsage();
  const path = process.env.FAULTS_WATCH;
  if (path !== undefined) {
    const sockets = process.getActiveResourcesInfo().filter((kind) => kind === 'TCPSocketWrap').length;
    writeFileSync(path, JSON.stringify({ rss, heap: heapUsed + external, longestHoldMs: loop.max / 1e6, sockets }));
  }
  loop.reset();
});
