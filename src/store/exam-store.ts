import { promisify } from 'node:util';
import { deflate, inflate } from 'node:zlib';
import sql, { raw, type Sql } from 'sql-template-tag';
import { ConflictError, NotFoundError, StoreError } from '../kernel/errors.ts';
import { appendAudit } from './audit/append-audit.ts';
import { requireCurrent } from './current-version.ts';
import type { Engine, Session } from './engine.ts';
import type { ExamContent, ExamRepository, ExamVersion, StoredExam } from './exam-repository.ts';
import { type IndexTools, timeOfWrite, writeExamResources } from './index/write-batch.ts';
import type { Enqueue } from './outbox/enqueue.ts';

/** What a transaction brought, and what to do once it is on disk. */
interface Written<T> {
  readonly value: T;
  readonly remember: () => void;
}

const compress = promisify(deflate) as (bytes: Buffer, options: { level: number }) => Promise<Buffer>;
const expand = promisify(inflate) as (bytes: Buffer) => Promise<Buffer>;

/** The higher levels take three times as long for a few percent. */
const fastest = { level: 1 };

const versionColumns = raw(`exam.id, version, received_at AS "receivedAt", model_version AS "modelVersion",
  content_hash AS "contentHash"`);
const everything = sql`${versionColumns}, raw, bundle`;

/**
 * Exams and everything made from them, on either engine. The resources are indexed, and what is to be sent elsewhere is
 * put into the outbox, in the transaction of their exam.
 * @param onEnqueued is called after the commit of something to be sent
 */
export function createExamStore(
  engine: Engine,
  tools: IndexTools,
  enqueue: Enqueue = async () => false,
  onEnqueued: () => void = () => {},
): ExamRepository {
  /** Writes that are under way, from the moment they were asked for; a close waits for them. */
  const accepted = new Set<Promise<unknown>>();
  let closing: Promise<void> | undefined;

  /** Compresses the Bundle on another thread, then writes. */
  async function write<T>(content: ExamContent, work: (session: Session, bundle: Buffer) => Promise<Written<T>>) {
    if (closing !== undefined) throw new StoreError('STORE_UNAVAILABLE', 'The exam store is closed to writing.');
    const written = compress(content.bundle, fastest).then((bundle) =>
      engine.write((session) => work(session, bundle)),
    );
    accepted.add(written);
    try {
      const { value, remember } = await written;
      remember();
      return value;
    } finally {
      accepted.delete(written);
    }
  }

  return {
    insert: (id, content) =>
      write<{ created: boolean; exam: StoredExam }>(content, async (session, bundle) => {
        const created = await session.run(sql`INSERT INTO exam (id) VALUES (${id}) ON CONFLICT (id) DO NOTHING`);
        if (created === 0)
          return { value: { created: false, exam: await repeated(session, id, content) }, remember: () => {} };
        const n = await numberOf(session, id);
        const exam = await addVersion(session, id, n, 1, content, bundle);
        return { value: { created: true, exam }, remember: await index(session, n, 1, content) };
      }),

    async find(id, version) {
      const query =
        version === undefined ? select(everything, id, sql`ORDER BY version DESC LIMIT 1`) : ofVersion(id, version);
      const [row] = await engine.reader.all<StoredExam>(query);
      return row === undefined ? undefined : opened(row);
    },

    correct: (id, expectedVersion, content) =>
      write(content, async (session, bundle) => {
        const n = await numberOf(session, id);
        const [latest] = await session.all<{ version: number }>(
          select(sql`version`, id, sql`ORDER BY version DESC LIMIT 1`),
        );
        const version = requireCurrent(latest, expectedVersion).version + 1;
        const exam = await addVersion(session, id, n, version, content, bundle);
        return { value: exam, remember: await index(session, n, version, content) };
      }),

    history: (id) => engine.reader.all<ExamVersion>(select(versionColumns, id, sql`ORDER BY version`)),
    async check() {
      if (closing !== undefined) throw new StoreError('STORE_UNAVAILABLE', 'The exam store is closed.');
      await engine.check();
    },
    close() {
      closing ??= Promise.allSettled(accepted).then(() => engine.close());
      return closing;
    },
  };

  async function index(session: Session, n: number, version: number, content: ExamContent): Promise<() => void> {
    const { resources, audit } = content;
    const at = await timeOfWrite(session, content.receivedAt.getTime());
    const remember = await writeExamResources(session, tools, { n, version }, resources, at);
    const isEnqueued = await enqueue(session, { n, version, at });
    // Last, since whoever holds the head of the trail keeps all others waiting.
    if (audit !== undefined) await appendAudit(session, [audit]);
    if (!isEnqueued) return remember;
    return () => {
      remember();
      onEnqueued();
    };
  }
}

/** What is there under an identifier that is posted again. */
async function repeated(session: Session, id: string, { contentHash }: ExamContent): Promise<StoredExam> {
  const [row] = await session.all<StoredExam>(select(everything, id, sql`ORDER BY version DESC LIMIT 1`));
  if (row !== undefined && row.contentHash === contentHash) return opened(row);
  throw new ConflictError(
    'IDENTIFIER_IN_USE',
    `An exam with this identifier is stored as version ${row?.version} with other content. To correct it, PUT the new content to /exams/{id} with If-Match.`,
    id,
  );
}

/** Number of an exam; until the transaction ends, no other writer gets past this point for the same exam. */
async function numberOf(session: Session, id: string): Promise<number> {
  const lock = session.dialect === 'postgres' ? raw('FOR UPDATE') : raw('');
  const [row] = await session.all<{ n: number }>(sql`SELECT n FROM exam WHERE id = ${id} ${lock}`);
  if (row === undefined) throw new NotFoundError('There is no exam with this id.');
  return row.n;
}

async function addVersion(
  session: Session,
  id: string,
  n: number,
  version: number,
  content: ExamContent,
  bundle: Buffer,
): Promise<StoredExam> {
  const { contentHash, modelVersion } = content;
  const receivedAt = content.receivedAt.toISOString();
  await session.run(
    sql`INSERT INTO exam_version (exam, version, received_at, model_version, content_hash, raw, bundle)
        VALUES (${n}, ${version}, ${receivedAt}, ${modelVersion}, ${contentHash}, ${content.raw}, ${bundle})`,
  );
  return { id, version, receivedAt, contentHash, modelVersion, raw: content.raw, bundle: content.bundle };
}

function select(columns: Sql, id: string, rest: Sql): Sql {
  return sql`SELECT ${columns} FROM exam_version JOIN exam ON exam.n = exam_version.exam WHERE exam.id = ${id} ${rest}`;
}

function ofVersion(id: string, version: number): Sql {
  return select(everything, id, sql`AND version = ${version}`);
}

/** One version as it lies in the database has its Bundle compressed. */
async function opened(row: StoredExam): Promise<StoredExam> {
  const bundle = await expand(row.bundle).catch((error: unknown) => {
    throw new StoreError('STORE_CORRUPT', 'The exam store is damaged: a Bundle cannot be read.', { cause: error });
  });
  return { ...row, bundle };
}
