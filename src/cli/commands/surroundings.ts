import type { Worker } from 'node:worker_threads';
import type { ExamSteps } from '../../http/exam-steps.ts';
import type { AuditCheck } from '../../store/audit/verify-audit.ts';
import type { Stores } from '../../store/open-stores.ts';
import type { LoadedView } from '../../views/load-views.ts';
import type { SimulationModel } from '../simulated/simulated-patient.ts';

/** Exit codes of every command. */
export const exitCodes = { fine: 0, faults: 1, wrongUse: 2 } as const;

/** What a command needs of the floors above this one; the entry point hands it in, and loads each part when it is asked for. */
export interface Surroundings {
  /** Runs the service until it is stopped; answers an exit code only when it cannot start. */
  readonly serve: (env: NodeJS.ProcessEnv) => Promise<number | undefined>;
  /** A service on a free port of this machine. */
  readonly startService: (env: NodeJS.ProcessEnv) => Promise<{ readonly url: string; stop(): Promise<void> }>;
  /** The stores of a service that an environment describes, without the service. */
  readonly openStores: (env: NodeJS.ProcessEnv) => Promise<Stores>;
  /** Walks along the audit trail of such a store, see `verifyAudit`. */
  readonly verifyAudit: (env: NodeJS.ProcessEnv, anchor?: string) => Promise<AuditCheck>;
  /** The shipped views, by name. */
  readonly loadViews: () => Promise<ReadonlyMap<string, LoadedView>>;
  readonly loadSteps: () => Promise<ExamSteps>;
  readonly loadModel: () => Promise<SimulationModel>;
  /** A worker that answers batches of lines. */
  readonly startConvertWorker: () => Worker;
}

/** The command was used in a way that cannot be meant; the message says what was expected. */
export class UsageError extends Error {}
