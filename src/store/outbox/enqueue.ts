import sql from 'sql-template-tag';
import type { SearchQuery } from '../../search/query.ts';
import type { Session } from '../engine.ts';
import { storedTypes } from '../index/stored-types.ts';
import { batchOfExam } from '../index/write-batch.ts';
import type { PlanTools } from '../search/plan.ts';
import { matchesInBatch, momentsOfBatch } from './match-batch.ts';
import { forwardTarget, type NotifiedResource } from './outbox-repository.ts';

/** What the outbox has to know of the settings. */
export interface OutboxRules {
  /** Whether every exam goes to another server. */
  readonly forwards: boolean;
  /** Criteria of a subscription as a search. @throws RequestError for what cannot be searched */
  readonly readCriteria: (criteria: string) => SearchQuery;
  /** Called after the commit of something to be sent. */
  readonly onEnqueued: () => void;
}

/** A version of an exam that was just written. */
export interface KeptVersion {
  /** Number of the exam. */
  readonly n: number;
  readonly version: number;
  /** ms since 1970. */
  readonly at: number;
}

/** Puts a version of an exam into the outbox, in the transaction that keeps it. @returns whether there is anything to send */
export type Enqueue = (session: Session, kept: KeptVersion) => Promise<boolean>;

export function createEnqueue(tools: Omit<PlanTools, 'session'>, rules: OutboxRules): Enqueue {
  return async (session, kept) => {
    if (rules.forwards) {
      await insertDelivery(session, forwardTarget, kept, { software: await softwareOf(session, kept) });
    }
    const subscriptions = await session.all<{ id: string; criteria: string }>(
      sql`SELECT id, criteria FROM subscription WHERE state = 'active' AND (ends_at IS NULL OR ends_at > ${kept.at})`,
    );
    if (subscriptions.length === 0) return rules.forwards;
    const batch = (await batchOfExam(session, kept.n)) as number;
    const moments = await momentsOfBatch(session, batch);
    let isAny = rules.forwards;
    for (const { id, criteria } of subscriptions) {
      const query = understood(rules, criteria);
      if (query === undefined) continue;
      const matches = await matchesInBatch({ ...tools, session }, query, batch, moments);
      if (matches.length === 0) continue;
      const resources: readonly NotifiedResource[] = matches.map((row) => ({
        type: storedTypes[row.type] as string,
        id: row.id,
        version: row.version,
      }));
      await insertDelivery(session, `Subscription/${id}`, kept, { resources });
      isAny = true;
    }
    return isAny;
  };
}

/** Criteria that an earlier release took and this one does not understand must keep no exam from being kept. */
function understood(rules: OutboxRules, criteria: string): SearchQuery | undefined {
  try {
    return rules.readCriteria(criteria);
  } catch {
    return undefined;
  }
}

interface Content {
  readonly software?: string;
  readonly resources?: readonly NotifiedResource[];
}

async function insertDelivery(
  session: Session,
  target: string,
  { n, version, at }: KeptVersion,
  { software, resources }: Content,
): Promise<void> {
  await session.run(
    sql`INSERT INTO delivery (target, exam, version, created_at, next_at, software, resources)
        VALUES (${target}, ${n}, ${version}, ${at}, ${at}, ${software ?? null},
          ${resources === undefined ? null : JSON.stringify(resources)})`,
  );
}

/** Model versions of an exam so far: a correction may name the software of what it withdraws too. */
export async function softwareOf(
  session: Session,
  { n, version }: Pick<KeptVersion, 'n' | 'version'>,
): Promise<string> {
  const rows = await session.all<{ model: string }>(
    sql`SELECT DISTINCT model_version AS model FROM exam_version WHERE exam = ${n} AND version <= ${version}`,
  );
  return rows
    .map(({ model }) => model)
    .sort()
    .join(' ');
}
