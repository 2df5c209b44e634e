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
}

/**
 * Opens the exams and the resources made from them; an index of an earlier layout is made anew first.
 * @throws StoreError
 */
export async function openStores(target: StoreTarget, rules: SearchRules): Promise<Stores> {
  const engine = target.engine === 'sqlite' ? openSqliteEngine(target.file) : await openPostgresEngine(target.url);
  try {
    const tools = { tokens: new TokenDictionary(), parameters: await openParameters(engine, rules) };
    await reindex(engine, tools, rules.fingerprint);
    return {
      engine,
      exams: createExamStore(engine, tools),
      resources: createResourceStore(engine, tools, rules.exactDateOf),
      exports: createExportStore(engine),
      erasures: createErasures(engine),
      audit: createAuditStore(engine),
    };
  } catch (error) {
    await engine.close();
    throw error;
  }
}
