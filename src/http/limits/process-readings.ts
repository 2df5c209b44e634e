import { monitorEventLoopDelay } from 'node:perf_hooks';
import { getHeapStatistics } from 'node:v8';

/** How often the process is looked at. */
const intervalMs = 500;
/** Share of the heap, or of the memory of a container, above which little more should be begun. */
const shareAllowed = 0.9;
/** What a container without a limit says of its memory is a number that no machine has. */
const mostPlausibleBytes = 2 ** 45;

export interface ProcessReadings {
  /** Mean delay of the event loop in the better of the last two stretches, so that one long step alone does not count. */
  readonly delayMs: () => number;
  readonly isMemoryShort: () => boolean;
  readonly stop: () => void;
}

/** @param memoryMb resident memory that is allowed; 0 for what container and heap have */
export function readProcess(memoryMb: number): ProcessReadings {
  const delay = monitorEventLoopDelay({ resolution: 20 });
  delay.enable();
  let [last, beforeLast] = [0, 0];
  let isShort = memoryIsShort(memoryMb);
  const timer = setInterval(() => {
    beforeLast = last;
    last = Number.isNaN(delay.mean) ? 0 : delay.mean / 1e6;
    delay.reset();
    isShort = memoryIsShort(memoryMb);
  }, intervalMs).unref();
  return {
    delayMs: () => Math.min(last, beforeLast),
    isMemoryShort: () => isShort,
    stop: () => {
      clearInterval(timer);
      delay.disable();
    },
  };
}

function memoryIsShort(memoryMb: number): boolean {
  const resident = process.memoryUsage.rss();
  if (memoryMb > 0) return resident > memoryMb * 1024 * 1024;
  const { used_heap_size: used, heap_size_limit: limit } = getHeapStatistics();
  return used > limit * shareAllowed || resident > (containerBytes() ?? Number.POSITIVE_INFINITY) * shareAllowed;
}

function containerBytes(): number | undefined {
  const bytes = process.constrainedMemory();
  return bytes > 0 && bytes < mostPlausibleBytes ? bytes : undefined;
}
