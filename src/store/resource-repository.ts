import type { AuditRecord } from '../audit/audit-record.ts';
import type { Identified } from '../fhir/entry.ts';
import type { SearchQuery } from '../search/query.ts';
import type { Session } from './engine.ts';
import type { Position } from './search/find-matches.ts';

/** One version of a resource as kept. */
export interface StoredResource {
  readonly type: string;
  readonly id: string;
  readonly version: number;
  /** ms since 1970. */
  readonly updated: number;
  /** The resource as answered, with `meta.versionId` and `meta.lastUpdated`. */
  readonly json: string;
}

export interface SearchResult {
  readonly matches: readonly StoredResource[];
  readonly included: readonly StoredResource[];
  /** Absent when it was not asked for, or costs too much to be told unasked. */
  readonly total?: number;
  /** Where the next page starts; absent on the last. */
  readonly next?: Position;
}

export interface HistoryQuery {
  readonly type: string;
  readonly id?: string;
  /** ms since 1970; versions of that moment or later. */
  readonly since?: number;
  readonly count: number;
  /** Where the page before ended. */
  readonly before?: { readonly updated: number; readonly id: string; readonly version: number };
}

/** What is to be streamed. */
export interface StreamQuery {
  readonly type: string;
  /** ms since 1970; what changed later than this. */
  readonly since?: number;
  /** ms since 1970; what changed at this moment or before. */
  readonly until?: number;
}

/** Which exams are to be streamed, by the clinical date of their impressions; both ends in ms since 1970 and included. */
export interface ExamQuery {
  readonly from: number;
  readonly until: number;
}

/** The FHIR resources, as they stand and as they were. */
export interface ResourceRepository {
  /** @throws StoreError */
  search(query: SearchQuery, from?: Position): Promise<SearchResult>;
  /** The version asked for, or the current one; undefined when there is none. @throws StoreError */
  read(type: string, id: string, version?: number): Promise<StoredResource | undefined>;
  /** Versions, newest first. @throws StoreError */
  history(query: HistoryQuery): Promise<readonly StoredResource[]>;
  /**
   * Keeps a resource that belongs to no exam; the same content again changes nothing.
   * @param expectedVersion the version that it replaces; undefined for whatever is there
   * @param audit what the audit trail says of it, kept in the same transaction
   * @param alongside what else is written in the same transaction
   * @throws ConflictError VERSION_MISMATCH, StoreError
   */
  put(
    resource: Identified,
    now: Date,
    options?: {
      readonly expectedVersion?: number;
      readonly audit?: AuditRecord;
      readonly alongside?: (session: Session) => Promise<void>;
    },
  ): Promise<StoredResource>;
  /** Every current resource of a type, oldest change first, a group at a time. @throws StoreError */
  stream(query: StreamQuery): AsyncIterable<readonly StoredResource[]>;
  /**
   * The current resources of each exam, without version and time of their last change and without software, in the order
   * of the clinical date; other work gets its turn between two exams. @throws StoreError
   */
  streamExams(query: ExamQuery): AsyncIterable<readonly Identified[]>;
}
