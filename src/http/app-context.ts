import type { Logger } from 'pino';
import type { CompiledMeasure } from '../measures/compile-measure.ts';
import type { Terminology } from '../search/read-token.ts';
import type { ErasureRepository } from '../store/erasure/erasure-repository.ts';
import type { ExamRepository } from '../store/exam-repository.ts';
import type { ExportRepository } from '../store/export-store.ts';
import type { ExportWorker } from '../store/export-worker.ts';
import type { ResourceRepository } from '../store/resource-repository.ts';
import type { ViewRefresher } from '../store/view-refresher.ts';
import type { ConformanceResources } from '../terminology/load.ts';
import type { LoadedView } from '../views/load-views.ts';
import type { ExamRecords } from './exam-records.ts';
import type { PublishedFiles } from './published-files.ts';

/** Everything that the routes need, built once. */
export interface AppContext {
  readonly exams: ExamRepository;
  readonly resources: ResourceRepository;
  readonly exports: ExportRepository;
  readonly erasures: ErasureRepository;
  readonly exportWorker: ExportWorker;
  /** The shipped views, by name. */
  readonly views: ReadonlyMap<string, LoadedView>;
  readonly viewRefresher: ViewRefresher;
  /** Address under which others reach the service, without a slash at the end; absent when none was configured. */
  readonly publicUrl: string | undefined;
  readonly now: () => Date;
  readonly records: ExamRecords;
  /** Works out beforehand what the first requests would otherwise wait for, a little at a time. */
  readonly prepare: () => Iterable<unknown>;
  /** The catalogue of everything that can be examined, as JSON bytes. */
  readonly catalogue: Buffer;
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
}
