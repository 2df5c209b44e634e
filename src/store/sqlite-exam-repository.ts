import { statfs } from 'node:fs/promises';
import { dirname } from 'node:path';
import { promisify } from 'node:util';
import { deflate, inflateSync } from 'node:zlib';
import { ConflictError, StoreError } from '../kernel/errors.ts';
import { CommitQueue } from './commit-queue.ts';
import { requireCurrent } from './current-version.ts';
import type { ExamContent, ExamRepository, ExamVersion, StoredExam } from './exam-repository.ts';
import { asStoreError, isFatalToWrites, type OpenStore, openSqlite } from './sqlite-connection.ts';

/** One version as it lies in the file: its Bundle is compressed. */
type ExamRow = StoredExam;

const compress = promisify(deflate) as (bytes: Buffer, options: { level: number }) => Promise<Buffer>;

/** The higher levels take three times as long for a few percent. */
const fastest = { level: 1 };

/** Room for a few groups of exams with the log that precedes them; with less the store says that it is not ready. */
const leastFreeBytes = 4 * 1024 * 1024;

const versionColumns = `exam.id, version, received_at AS receivedAt, model_version AS modelVersion,
  content_hash AS contentHash`;

/**
 * Exams in one SQLite file. Reads run at once on the writing connection: it never holds an open transaction between
 * two turns of the event loop, so they see exactly what was acknowledged.
 * @throws StoreError when the file cannot be opened as an exam store
 */
export function openSqliteExamRepository(file: string): ExamRepository {
  return new SqliteExamRepository(openSqlite(file));
}

export class SqliteExamRepository implements ExamRepository {
  readonly #store: OpenStore;
  readonly #queue: CommitQueue;
  readonly #statements: ReturnType<typeof prepareStatements>;
  /** Writes that are under way; a close waits for them. */
  readonly #accepted = new Set<Promise<unknown>>();
  #writesStopped = false;
  #closing: Promise<void> | undefined;

  constructor(store: OpenStore) {
    this.#store = store;
    this.#statements = prepareStatements(store);
    this.#queue = new CommitQueue(store.db, (error) => {
      if (isFatalToWrites(error)) this.#writesStopped = true;
    });
  }

  async insert(id: string, content: ExamContent) {
    return this.#write(content, (bundle) => {
      const current = this.#statements.current.get({ id });
      if (current !== undefined) {
        if (current.contentHash === content.contentHash) return { created: false, exam: stored(current) };
        throw new ConflictError(
          'IDENTIFIER_IN_USE',
          `An exam with this identifier is stored as version ${current.version} with other content. To correct it, PUT the new content to /exams/{id} with If-Match.`,
        );
      }
      this.#statements.addExam.run({ id });
      return { created: true, exam: this.#addVersion(id, 1, content, bundle) };
    });
  }

  async find(id: string, version?: number): Promise<StoredExam | undefined> {
    return this.#read(() => {
      const row =
        version === undefined ? this.#statements.current.get({ id }) : this.#statements.version.get({ id, version });
      return row === undefined ? undefined : stored(row);
    });
  }

  async correct(id: string, expectedVersion: number, content: ExamContent): Promise<StoredExam> {
    return this.#write(content, (bundle) => {
      requireCurrent(this.#statements.latest.get({ id }), expectedVersion);
      return this.#addVersion(id, expectedVersion + 1, content, bundle);
    });
  }

  async history(id: string): Promise<readonly ExamVersion[]> {
    return this.#read(() => this.#statements.history.all({ id }));
  }

  async check(): Promise<void> {
    if (this.#writesStopped || this.#closing !== undefined) throw stopped();
    this.#read(() => this.#statements.probe.get({}));
    const { bavail, bsize } = await statfs(dirname(this.#store.db.name)).catch((error) => {
      throw asStoreError(error);
    });
    if (bavail * bsize < leastFreeBytes) throw new StoreError('STORE_FULL', 'There is no room left to keep exams.');
  }

  close(): Promise<void> {
    this.#closing ??= Promise.allSettled(this.#accepted).then(() => this.#store.release());
    return this.#closing;
  }

  #addVersion(id: string, version: number, content: ExamContent, bundle: Buffer): StoredExam {
    const { contentHash, modelVersion, raw } = content;
    const row = { id, version, contentHash, modelVersion, receivedAt: content.receivedAt.toISOString() };
    this.#statements.addVersion.run({ ...row, raw, bundle });
    return { ...row, raw, bundle: content.bundle };
  }

  #read<T>(work: () => T): T {
    if (!this.#store.db.open) throw stopped();
    try {
      return work();
    } catch (error) {
      throw asStoreError(error);
    }
  }

  /** Compresses the Bundle on another thread, then runs `work` with it in the next group. */
  async #write<T>(content: ExamContent, work: (bundle: Buffer) => T): Promise<T> {
    if (this.#writesStopped || this.#closing !== undefined) throw stopped();
    const written = compress(content.bundle, fastest).then((bundle) => this.#queue.run(() => work(bundle)));
    this.#accepted.add(written);
    try {
      return await written;
    } catch (error) {
      throw asStoreError(error);
    } finally {
      this.#accepted.delete(written);
    }
  }
}

function prepareStatements({ db }: OpenStore) {
  const select = (columns: string, rest: string) =>
    `SELECT ${columns} FROM exam_version JOIN exam ON exam.n = exam_version.exam WHERE exam.id = @id ${rest}`;
  const everything = `${versionColumns}, raw, bundle`;
  return {
    current: db.prepare<{ id: string }, ExamRow>(select(everything, 'ORDER BY version DESC LIMIT 1')),
    version: db.prepare<{ id: string; version: number }, ExamRow>(select(everything, 'AND version = @version')),
    latest: db.prepare<{ id: string }, { version: number }>(select('version', 'ORDER BY version DESC LIMIT 1')),
    history: db.prepare<{ id: string }, ExamVersion>(select(versionColumns, 'ORDER BY version')),
    addExam: db.prepare('INSERT INTO exam (id) VALUES (@id)'),
    addVersion: db.prepare(
      `INSERT INTO exam_version (exam, version, received_at, model_version, content_hash, raw, bundle)
       SELECT n, @version, @receivedAt, @modelVersion, @contentHash, @raw, @bundle FROM exam WHERE id = @id`,
    ),
    probe: db.prepare('SELECT 1'),
  };
}

function stored(row: ExamRow): StoredExam {
  return { ...row, bundle: inflateSync(row.bundle) };
}

function stopped(): StoreError {
  return new StoreError('STORE_UNAVAILABLE', 'The exam store is closed to writing.');
}
