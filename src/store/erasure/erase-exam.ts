import sql, { raw } from 'sql-template-tag';
import { NotFoundError } from '../../kernel/errors.ts';
import { appendAudit } from '../audit/append-audit.ts';
import type { Engine, Session } from '../engine.ts';
import { chunksOfBatch } from '../index/layout.ts';
import { storedTypes } from '../index/stored-types.ts';
import { personalTokens } from '../index/tokens.ts';
import { entriesInBatch, firstKey, takeOut } from '../index/write-batch.ts';
import type { Erasure, ErasureRepository } from './erasure-repository.ts';
import { removeViewRows } from './view-rows.ts';

interface ErasureRow extends Omit<Erasure, 'contentHashes'> {
  readonly contentHashes: string;
}

const columns = raw(`exam_id AS "examId", erased_at AS "erasedAt", reason, erased_by AS "by", versions, resources,
  content_hashes AS "contentHashes"`);

export function createErasures(engine: Engine): ErasureRepository {
  return {
    erase: (examId, { reason, by, at }) =>
      engine.writeAlone(async (session) => {
        const [exam] = await session.all<{ n: number }>(sql`SELECT n FROM exam WHERE id = ${examId}`);
        if (exam === undefined) throw new NotFoundError('There is no exam with this id.');
        const versions = await session.all<{ hash: string }>(
          sql`SELECT content_hash AS hash FROM exam_version WHERE exam = ${exam.n} ORDER BY version`,
        );
        const batches = await session.all<{ n: number }>(sql`SELECT n FROM batch WHERE exam = ${exam.n} ORDER BY n`);
        const resources = await resourcesIn(session, batches);
        const erasure: Erasure = {
          examId,
          erasedAt: at.toISOString(),
          reason,
          by,
          versions: versions.length,
          resources: resources.length,
          contentHashes: versions.map(({ hash }) => hash),
        };
        // Opens the way for this exam; without it the database lets no version go.
        await session.run(
          sql`INSERT INTO erasure (exam_id, erased_at, reason, erased_by, versions, resources, content_hashes, open_for)
              VALUES (${examId}, ${erasure.erasedAt}, ${reason}, ${by}, ${versions.length}, ${resources.length},
                ${JSON.stringify(erasure.contentHashes)}, ${exam.n})`,
        );
        await removeResources(session, batches, resources);
        await session.run(sql`DELETE FROM delivery WHERE exam = ${exam.n}`);
        await session.run(sql`DELETE FROM exam_version WHERE exam = ${exam.n}`);
        await session.run(sql`DELETE FROM batch WHERE exam = ${exam.n}`);
        await session.run(sql`DELETE FROM export_job`);
        await session.run(sql`UPDATE erasure SET open_for = NULL WHERE open_for = ${exam.n}`);
        await session.run(sql`DELETE FROM exam WHERE n = ${exam.n}`);
        await appendAudit(session, [
          { at: erasure.erasedAt, interaction: 'erase', action: 'D', outcome: '0', client: by, exam: examId },
        ]);
        return erasure;
      }),

    purge: () => engine.purge(),

    async find(examId) {
      const [row] = await engine.reader.all<ErasureRow>(
        sql`SELECT ${columns} FROM erasure WHERE exam_id = ${examId} ORDER BY n DESC LIMIT 1`,
      );
      return row === undefined ? undefined : opened(row);
    },

    list: async () => (await engine.reader.all<ErasureRow>(sql`SELECT ${columns} FROM erasure ORDER BY n`)).map(opened),
  };
}

function opened(row: ErasureRow): Erasure {
  return { ...row, contentHashes: JSON.parse(row.contentHashes) as string[] };
}

interface Resource {
  readonly type: number;
  readonly id: string;
}

/** What an exam has ever brought: the resources that a correction withdrew stay in its newest batch. */
async function resourcesIn(session: Session, batches: readonly { readonly n: number }[]): Promise<Resource[]> {
  const found: Resource[] = [];
  for (const { n } of batches) {
    found.push(
      ...(await session.all<Resource>(
        sql`SELECT type, id FROM resource WHERE key >= ${firstKey(n)} AND key < ${firstKey(n + 1)}`,
      )),
    );
  }
  return found;
}

async function removeResources(
  session: Session,
  batches: readonly { readonly n: number }[],
  resources: readonly Resource[],
): Promise<void> {
  const entries = [];
  for (const { n } of batches) entries.push(...(await entriesInBatch(session, n)));
  const tokens = await personalTokens(session, entries);
  for (const { type, id } of resources) {
    await session.run(sql`DELETE FROM past_resource WHERE type = ${type} AND id = ${id}`);
  }
  for (const { n } of batches) {
    await takeOut(session, n);
    const first = n * chunksOfBatch;
    await session.run(sql`DELETE FROM chunk WHERE n >= ${first} AND n < ${first + chunksOfBatch}`);
  }
  for (const token of tokens) {
    await session.run(
      sql`DELETE FROM token WHERE n = ${token} AND NOT EXISTS (
            SELECT 1 FROM parameter AS p JOIN posting ON posting.param = p.n WHERE posting.token = token.n)`,
    );
  }
  await removeViewRows(
    session,
    resources.map(({ type, id }) => `${storedTypes[type]}/${id}`),
  );
}
