import type { Connection } from './connection.ts';

/** More exams than this in one transaction gain nothing and delay the first of them. */
const largestGroup = 16;

interface Job {
  readonly work: () => Promise<unknown>;
  readonly resolve: (value: never) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Groups the writes of one turn of the event loop into one transaction, because the sync at commit is the dear part.
 * Each write stands behind a savepoint, so one that fails takes no other with it; a promise settles only after COMMIT.
 * The connection belongs to the queue alone: nobody else may see what is not yet committed.
 */
export class CommitQueue {
  readonly #db: Connection;
  readonly #onCommitError: (error: unknown) => void;
  readonly #jobs: Job[] = [];
  #isWorking = false;

  constructor(db: Connection, onCommitError: (error: unknown) => void) {
    this.#db = db;
    this.#onCommitError = onCommitError;
  }

  /** Runs `work` inside a transaction; resolves with its value once that is on disk. */
  run<T>(work: () => Promise<T>): Promise<T> {
    return new Promise<T>((resolve, reject) => {
      this.#jobs.push({ work, resolve, reject });
      this.#schedule();
    });
  }

  #schedule(): void {
    if (this.#isWorking) return;
    this.#isWorking = true;
    setImmediate(async () => {
      await this.#commit(this.#jobs.splice(0, largestGroup));
      this.#isWorking = false;
      if (this.#jobs.length > 0) this.#schedule();
    });
  }

  async #commit(group: readonly Job[]): Promise<void> {
    const settle: (() => void)[] = [];
    try {
      this.#db.exec('BEGIN IMMEDIATE');
      for (const job of group) settle.push(await this.#attempt(job));
      this.#db.exec('COMMIT');
    } catch (error) {
      this.#rollBack();
      this.#onCommitError(error);
      for (const job of group) job.reject(error);
      return;
    }
    for (const answer of settle) answer();
  }

  async #attempt(job: Job): Promise<() => void> {
    this.#db.exec('SAVEPOINT one');
    try {
      const value = await job.work();
      this.#db.exec('RELEASE one');
      return () => job.resolve(value as never);
    } catch (error) {
      // A full disk may have ended the whole transaction; then the group fails together.
      if (!this.#db.inTransaction) throw error;
      this.#db.exec('ROLLBACK TO one; RELEASE one');
      return () => job.reject(error);
    }
  }

  #rollBack(): void {
    try {
      if (this.#db.inTransaction) this.#db.exec('ROLLBACK');
    } catch (error) {
      this.#onCommitError(error);
    }
  }
}
