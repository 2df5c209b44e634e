import { Presets, SingleBar } from 'cli-progress';

export interface ProgressBar {
  update(value: number): void;
  stop(): void;
}

const none: ProgressBar = { update: () => {}, stop: () => {} };

/** A bar on the error stream, when that is a terminal and it is known how much there is. */
export function progressBar(total: number | null, start: number, unit = 'bytes'): ProgressBar {
  if (total === null || process.stderr.isTTY !== true) return none;
  const format = `{bar} {percentage} %, {value} of {total} ${unit}, {eta_formatted} left`;
  const bar = new SingleBar({ stream: process.stderr, format, hideCursor: true }, Presets.shades_classic);
  bar.start(total, start);
  return { update: (value) => bar.update(value), stop: () => bar.stop() };
}
