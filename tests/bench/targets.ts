/** Ratio to a floor of the same run that a release must reach, and the one that is close to what the design allows. */
export interface Target {
  readonly must: number;
  readonly goal: number;
  /** Whether a larger figure is better: a rate is, a time is not. */
  readonly larger: boolean;
}

export const targets = {
  // The pure steps in one go beside the sum of the steps timed alone, and the time itself in microseconds.
  pipelineRatio: { must: 2, goal: 1.2, larger: false },
  pipelineMicroseconds: { must: 1_000, goal: 400, larger: false },
  // From the start of the process to the first correct answer, beside bare Express.
  startRatio: { must: 2.5, goal: 1.6, larger: false },
  // POST /localisation beside an Express route that takes and answers the same number of bytes.
  localisationRate: { must: 0.22, goal: 0.4, larger: true },
  localisationP99: { must: 3, goal: 2, larger: false },
  // One connection alone, so that nothing waits.
  localisationAlone: { must: 4, goal: 2.2, larger: false },
  // Whole POST /exams, with a synced commit, beside the same.
  examRate: { must: 0.06, goal: 0.12, larger: true },
  examRatePostgres: { must: 0.05, goal: 0.1, larger: true },
  // Slowest of a hundred, in ms, at half of what was reached above, counted from when a request was due.
  examP99AtHalfLoad: { must: 25, goal: 10, larger: false },
  // Resident memory beside bare Express.
  memoryAtRest: { must: 1.8, goal: 1.3, larger: false },
  memoryUnderLoad: { must: 2, goal: 1.5, larger: false },
  // A page or a number by a library call beside SQL by hand over plain tables that hold the same JSON.
  searchPage: { must: 2, goal: 1.25, larger: false },
  searchCount: { must: 1.5, goal: 1.1, larger: false },
  // A page over HTTP beside a constant answer of the same size.
  searchRate: { must: 0.25, goal: 0.42, larger: true },
  // NDJSON to a client beside a bare SELECT of the same lines in one process.
  exportRate: { must: 0.15, goal: 0.5, larger: true },
  // Slowest of a hundred posts while an export is read beside without one.
  postDuringExport: { must: 4, goal: 2, larger: false },
  // Exams to Bundles by the command line, on one core, beside parsing and writing the same bytes; and two cores beside one.
  batchRate: { must: 0.15, goal: 0.4, larger: true },
  batchSecondCore: { must: 1.5, goal: 1.8, larger: true },
  // Bytes kept for an exam beside the JSON of its Bundle.
  storedBytes: { must: 1.3, goal: 0.5, larger: false },
  // Longest wait of another request while a hostile body of almost a megabyte is refused, in ms.
  hostileHold: { must: 50, goal: 20, larger: false },
  // Bytes of the first view of the page over the line, headers and all, in KB; and ms from a tap to the changed localisation.
  firstView: { must: 150, goal: 100, larger: false },
  tapMs: { must: 100, goal: 50, larger: false },
} as const satisfies Record<string, Target>;

export type Figure = keyof typeof targets;

export function verdict(value: number, { must, goal, larger }: Target): 'goal' | 'ok' | 'below' {
  const reaches = (limit: number) => (larger ? value >= limit : value <= limit);
  return reaches(goal) ? 'goal' : reaches(must) ? 'ok' : 'below';
}
