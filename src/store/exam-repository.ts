import type { AuditRecord } from '../audit/audit-record.ts';
import type { Identified } from '../fhir/entry.ts';

/**
 * What the service keeps, in words that hold for any engine. An exam is a row of versions that are only ever added:
 * version 1 is the first post, each later one a correction. A returned promise means that the content is on disk.
 */

/** One version about to be kept. */
export interface ExamContent {
  /** The request body, byte for byte. */
  readonly raw: Buffer;
  /** SHA-256 of the meaning of `raw`, see `content-hash.ts`; 64 hexadecimal digits. */
  readonly contentHash: string;
  /** The answered transaction Bundle as UTF-8 JSON. */
  readonly bundle: Buffer;
  /** The resources of the Bundle as they are to be read and searched, see `fhir/served.ts`. */
  readonly resources: readonly Identified[];
  readonly modelVersion: string;
  readonly receivedAt: Date;
  /** What the audit trail says of it, kept in the same transaction; not kept for a repeat, which writes nothing. */
  readonly audit?: AuditRecord;
}

/** One version as kept. */
export interface StoredExam {
  readonly id: string;
  readonly version: number;
  readonly raw: Buffer;
  readonly contentHash: string;
  readonly bundle: Buffer;
  readonly modelVersion: string;
  /** ISO 8601, UTC. */
  readonly receivedAt: string;
}

/** A version without its content. */
export type ExamVersion = Omit<StoredExam, 'raw' | 'bundle'>;

export interface ExamRepository {
  /**
   * Keeps version 1 of an exam. A repeat of the current content keeps nothing and returns what is there.
   * @throws ConflictError IDENTIFIER_IN_USE when the current version has other content
   * @throws StoreError
   */
  insert(id: string, content: ExamContent): Promise<{ readonly created: boolean; readonly exam: StoredExam }>;

  /** One version, the current one unless told; undefined when there is none. @throws StoreError */
  find(id: string, version?: number): Promise<StoredExam | undefined>;

  /**
   * Adds a version behind `expectedVersion`, which must be the current one.
   * @throws NotFoundError for an unknown exam
   * @throws ConflictError VERSION_MISMATCH when another version is current
   * @throws StoreError
   */
  correct(id: string, expectedVersion: number, content: ExamContent): Promise<StoredExam>;

  /** Every version, oldest first; empty for an unknown exam. @throws StoreError */
  history(id: string): Promise<readonly ExamVersion[]>;

  /** Resolves when the store can read, still accepts writes and has room for some. @throws StoreError */
  check(): Promise<void>;

  /** Finishes what was accepted, then lets go of the files. Safe to call twice. */
  close(): Promise<void>;
}
