/** Median of the numbers; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}

/**
 * Time of one call in microseconds: warmed up, then the median of five rounds. The inputs are taken in turn; a round lasts
 * a set time, so that a slow step makes no long wait.
 * @param work its result is kept in sight, so that no compiler may leave the call out
 */
export function microsecondsPerCall<T>(inputs: readonly T[], work: (input: T) => unknown): number {
  let sink: unknown;
  let next = 0;
  const round = () => {
    const started = performance.now();
    let calls = 0;
    while (performance.now() - started < roundMs || calls < leastCalls) {
      sink = work(inputs[next++ % inputs.length] as T);
      calls++;
    }
    return ((performance.now() - started) * 1000) / calls;
  };
  round();
  const times = Array.from({ length: 5 }, round);
  if (sink === Symbol.for('never')) throw new Error('unreachable');
  return median(times);
}

const roundMs = 300;
const leastCalls = 5;

export function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
