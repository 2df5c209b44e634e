import type { AuditRecord } from '../audit/audit-record.ts';
import { type ExportEndRecord, failureOf } from '../audit/export-end.ts';
import { NotFoundError } from '../kernel/errors.ts';
import { type ExportRepository, isReady } from './export-store.ts';

/** Brings exports to their end in the background, one after the other. */
export interface ExportWorker {
  /** Takes a job on, unless it is at work on it. */
  wake(id: string): void;
  /** Jobs that are waiting or at work. */
  readonly pending: number;
  /** Finishes the step at hand and takes on nothing more. */
  stop(): Promise<void>;
}

/** Where it is told that an export ended. */
export interface ExportTrail {
  readonly recordOf: ExportEndRecord;
  /** @throws StoreError */
  readonly append: (record: AuditRecord) => Promise<void>;
}

/** @param onError is told of a step that failed; the job is taken on again when somebody asks for it */
export function startExportWorker(
  exports: ExportRepository,
  { recordOf, append }: ExportTrail,
  onError: (error: unknown) => void,
): ExportWorker {
  const waiting = new Set<string>();
  let isStopped = false;
  let working: Promise<void> | undefined;

  async function work(): Promise<void> {
    for (const id of waiting) {
      try {
        while (!isStopped && !isReady(await exports.advance(id, recordOf)));
      } catch (error) {
        // Somebody removed the job, which is no failure.
        if (!(error instanceof NotFoundError)) {
          onError(error);
          // Where the store is what failed, the entry may fail too.
          await append(recordOf(id, failureOf(error))).catch(onError);
        }
      }
      waiting.delete(id);
    }
    working = undefined;
  }

  const wake = (id: string) => {
    if (isStopped) return;
    waiting.add(id);
    working ??= work();
  };
  // What an earlier process left unfinished.
  exports.unfinished().then((ids) => ids.forEach(wake), onError);
  return {
    wake,
    get pending() {
      return waiting.size;
    },
    async stop() {
      isStopped = true;
      await working;
    },
  };
}
