import { searchRules } from '../../src/search/search-rules.ts';
import type { ExamRepository } from '../../src/store/exam-repository.ts';
import { openStores, type Stores, type StoreTarget } from '../../src/store/open-stores.ts';

/** Both stores on an engine, with the rules of the service. */
export function openTestStores(target: StoreTarget): Promise<Stores> {
  return openStores(target, searchRules);
}

/** The exams in a SQLite file. */
export async function openExams(file: string): Promise<ExamRepository> {
  return (await openTestStores({ engine: 'sqlite', file })).exams;
}
