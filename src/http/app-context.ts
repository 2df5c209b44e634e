import type { Logger } from 'pino';
import type { ExamRepository } from '../store/exam-repository.ts';
import type { ResourceRepository } from '../store/resource-repository.ts';
import type { ConformanceResources } from '../terminology/load.ts';
import type { ExamRecords } from './exam-records.ts';
import type { PublishedFiles } from './published-files.ts';

/** Everything that the routes need, built once. */
export interface AppContext {
  readonly exams: ExamRepository;
  readonly resources: ResourceRepository;
  readonly records: ExamRecords;
  /** Works out beforehand what the first requests would otherwise wait for, a little at a time. */
  readonly prepare: () => Iterable<unknown>;
  /** The catalogue of everything that can be examined, as JSON bytes. */
  readonly catalogue: Buffer;
  readonly conformance: ConformanceResources;
  readonly files: PublishedFiles;
  readonly software: { readonly version: string; readonly releaseDate: string };
  readonly bodyLimitBytes: number;
  readonly logger: Logger;
}
