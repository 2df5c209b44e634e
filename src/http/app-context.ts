import type { Logger } from 'pino';
import type { AccessControl } from '../access/access-control.ts';
import type { DeliveryWorker } from '../delivery/delivery-worker.ts';
import type { SubscriptionRules } from '../delivery/read-subscription.ts';
import type { Subscriptions } from '../delivery/subscriptions.ts';
import type { CompiledMeasure } from '../measures/compile-measure.ts';
import type { Practice } from '../practice/practice.ts';
import type { Terminology } from '../search/read-token.ts';
import type { AuditRepository } from '../store/audit/audit-store.ts';
import type { ErasureRepository } from '../store/erasure/erasure-repository.ts';
import type { ExamRepository } from '../store/exam-repository.ts';
import type { ExportRepository } from '../store/export-store.ts';
import type { ExportWorker } from '../store/export-worker.ts';
import type { Outbox } from '../store/outbox/outbox-repository.ts';
import type { ResourceRepository } from '../store/resource-repository.ts';
import type { ViewRefresher } from '../store/view-refresher.ts';
import type { Spelling } from '../summary/spelling.ts';
import type { ConformanceResources } from '../terminology/load.ts';
import type { LoadedView } from '../views/load-views.ts';
import type { ExamRecords } from './exam-records.ts';
import type { Operation } from './operation.ts';
import type { Packed } from './packed.ts';
import type { PageFiles } from './page-files.ts';
import type { PublishedFiles } from './published-files.ts';
import type { SealedText } from './sealed-text.ts';

/** Everything that the routes need, built once. */
export interface AppContext {
  /** Undefined where none is configured. */
  readonly access: AccessControl | undefined;
  readonly exams: ExamRepository;
  readonly resources: ResourceRepository;
  readonly exports: ExportRepository;
  readonly erasures: ErasureRepository;
  readonly audit: AuditRepository;
  readonly exportWorker: ExportWorker;
  readonly outbox: Outbox;
  readonly deliveryWorker: DeliveryWorker;
  readonly subscriptions: Subscriptions;
  readonly subscriptionRules: Omit<SubscriptionRules, 'now'>;
  /** The shipped views, by name. */
  readonly views: ReadonlyMap<string, LoadedView>;
  readonly viewRefresher: ViewRefresher;
  /** Address under which others reach the service, without a slash at the end; absent when none was configured. */
  readonly publicUrl: string | undefined;
  readonly now: () => Date;
  readonly records: ExamRecords;
  /** Examining simulated patients. */
  readonly practice: Practice;
  /** Works out beforehand what the first requests would otherwise wait for, a little at a time. */
  readonly prepare: () => Iterable<unknown>;
  /** The catalogue of everything that can be examined, in British or American spelling. */
  readonly catalogue: Readonly<Record<Spelling, Packed>>;
  /** Null in a run from the sources that was never built. */
  readonly page: PageFiles | null;
  /** The pictures on which findings are recorded and shown. */
  readonly picture: () => Packed;
  readonly conformance: ConformanceResources;
  /** What a search asks of the published code systems and value sets. */
  readonly terminology: Terminology;
  /** The measures that come with the service, by id; they are kept among the others. */
  readonly measures: ReadonlyMap<string, CompiledMeasure>;
  readonly files: PublishedFiles;
  readonly software: { readonly version: string; readonly releaseDate: string };
  readonly bodyLimitBytes: number;
  /** Origins whose pages may call the decision support services. */
  readonly cdsAllowedOrigins: readonly string[];
  readonly logger: Logger;
  readonly operation: Operation;
  /** For what stands in links and must come back unread and unchanged. */
  readonly sealedText: SealedText;
}
