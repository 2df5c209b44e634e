import type { SearchRules } from '../search/search-rules.ts';
import { type AuditRepository, createAuditStore } from './audit/audit-store.ts';
import type { Engine } from './engine.ts';
import { createErasures } from './erasure/erase-exam.ts';
import type { ErasureRepository } from './erasure/erasure-repository.ts';
import type { ExamRepository } from './exam-repository.ts';
import { createExamStore } from './exam-store.ts';
import { createExportStore, type ExportRepository } from './export-store.ts';
import { openParameters } from './index/parameters.ts';
import { reindex } from './index/reindex.ts';
import { TokenDictionary } from './index/tokens.ts';
import { createEnqueue, type OutboxRules } from './outbox/enqueue.ts';
import { createOutbox, releaseAll } from './outbox/outbox.ts';
import type { Outbox } from './outbox/outbox-repository.ts';
import { createSubscriptionChannels, type SubscriptionChannels } from './outbox/subscription-channels.ts';
import { openPostgresEngine } from './postgres/engine.ts';
import type { ResourceRepository } from './resource-repository.ts';
import { createResourceStore } from './resource-store.ts';
import { openSqliteEngine } from './sqlite/engine.ts';

export type StoreTarget =
  | { readonly engine: 'sqlite' /** Absolute path. */; readonly file: string }
  | { readonly engine: 'postgres'; readonly url: string };

export interface Stores {
  readonly engine: Engine;
  readonly exams: ExamRepository;
  readonly resources: ResourceRepository;
  readonly exports: ExportRepository;
  readonly erasures: ErasureRepository;
  readonly audit: AuditRepository;
  readonly outbox: Outbox;
  readonly channels: SubscriptionChannels;
}

/** For commands that keep no exam. */
const sendsNothing: OutboxRules = {
  forwards: false,
  readCriteria: () => {
    throw new RangeError('Nothing is sent from here.');
  },
  onEnqueued: () => {},
};

/**
 * Opens the exams and the resources made from them; an index of an earlier layout is made anew first.
 * @param sending what is put into the outbox beside each exam
 * @throws StoreError
 */
export async function openStores(
  target: StoreTarget,
  rules: SearchRules,
  sending: OutboxRules = sendsNothing,
): Promise<Stores> {
  const engine = target.engine === 'sqlite' ? openSqliteEngine(target.file) : await openPostgresEngine(target.url);
  try {
    const tools = { tokens: new TokenDictionary(), parameters: await openParameters(engine, rules) };
    await reindex(engine, tools, rules.fingerprint);
    await releaseAll(engine);
    const { parameters } = tools;
    const enqueue = createEnqueue({ parameters, exactDateOf: rules.exactDateOf }, sending);
    return {
      engine,
      exams: createExamStore(engine, tools, enqueue, sending.onEnqueued),
      resources: createResourceStore(engine, tools, rules.exactDateOf),
      exports: createExportStore(engine),
      erasures: createErasures(engine),
      audit: createAuditStore(engine),
      outbox: createOutbox(engine),
      channels: createSubscriptionChannels(engine),
    };
  } catch (error) {
    await engine.close();
    throw error;
  }
}
