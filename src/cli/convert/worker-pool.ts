import type { Worker } from 'node:worker_threads';
import type { BatchAnswer, BatchTask } from './convert-batch.ts';

interface Waiting {
  readonly resolve: (answer: BatchAnswer) => void;
  readonly reject: (error: Error) => void;
}

export interface WorkerPool {
  /** Converts a batch in the worker with the least to do. */
  run(task: BatchTask): Promise<BatchAnswer>;
  stop(): Promise<void>;
}

/** Workers that answer their batches in the order in which they were given. */
export function startWorkers(start: () => Worker, jobs: number): WorkerPool {
  const workers = Array.from({ length: jobs }, () => {
    const worker = start();
    const waiting: Waiting[] = [];
    worker.on('message', (answer: BatchAnswer) => waiting.shift()?.resolve(answer));
    worker.on('error', () => {
      // The message of an error may quote a line.
      for (const { reject } of waiting.splice(0)) reject(new Error('A worker ended unexpectedly.'));
    });
    return { worker, waiting };
  });
  return {
    run(task) {
      const least = workers.reduce((a, b) => (b.waiting.length < a.waiting.length ? b : a));
      return new Promise((resolve, reject) => {
        least.waiting.push({ resolve, reject });
        least.worker.postMessage(task);
      });
    },
    async stop() {
      await Promise.all(workers.map(({ worker }) => worker.terminate()));
    },
  };
}
