import type { ViewTables } from './view-tables.ts';

/** Keeps the tables of views current in the background. */
export interface ViewRefresher {
  /** When a refresh last came to its end, ms since 1970; undefined for not yet. */
  readonly refreshedAt: number | undefined;
  /** Ends the transaction at hand and starts nothing more. */
  stop(): Promise<void>;
}

/**
 * @param pauseMs time between the end of one refresh and the start of the next; 0 for never
 * @param onError is told of a refresh that failed; the next one goes on where it stopped
 */
export function startViewRefresher(
  tables: ViewTables,
  pauseMs: number,
  onError: (error: unknown) => void,
): ViewRefresher {
  let isStopped = pauseMs === 0;
  let working: Promise<void> | undefined;
  let timer: NodeJS.Timeout | undefined;
  let refreshedAt: number | undefined;

  const work = async (): Promise<void> => {
    try {
      await tables.refresh(() => isStopped);
      refreshedAt = Date.now();
    } catch (error) {
      onError(error);
    }
    working = undefined;
    plan();
  };
  function plan(): void {
    if (isStopped) return;
    timer = setTimeout(() => {
      working = work();
    }, pauseMs).unref();
  }
  plan();
  return {
    get refreshedAt() {
      return refreshedAt;
    },
    async stop() {
      isStopped = true;
      clearTimeout(timer);
      await working;
    },
  };
}
