import { expect, it } from 'vitest';
import { createExamRecords } from '../../src/http/exam-records.ts';
import type { ExamContent, ExamRepository, StoredExam } from '../../src/store/exam-repository.ts';
import { builtSteps } from '../support/built.ts';
import { examNumbered } from '../support/example-exam.ts';

it('makes collection and document from the stored transaction, whatever the service computes by now', async () => {
  const kept: ExamContent[] = [];
  const exams = {
    find: async () => undefined,
    insert: async (id: string, content: ExamContent) => {
      kept.push(content);
      return { created: true, exam: { ...content, id, version: 1, receivedAt: '2030-01-01T00:00:00.000Z' } };
    },
  } as unknown as ExamRepository;
  const now = () => new Date('2030-01-01T00:00:00Z');
  const steps = builtSteps();
  const bytes = Buffer.from(JSON.stringify(examNumbered('upgraded')), 'utf8');
  const stored: StoredExam = (await createExamRecords(steps, exams, now).record(bytes)).exam;

  const upgraded = () => {
    throw new Error('the raw exam was read again');
  };
  const later = createExamRecords({ ...steps, readExam: upgraded, assess: upgraded, toBundle: upgraded }, exams, now);
  expect(later.bundle(stored, 'transaction')).toBe(kept[0]?.bundle);
  for (const type of ['collection', 'document'] as const) {
    const bundle = JSON.parse(later.bundle(stored, type).toString('utf8'));
    expect(bundle.type).toBe(type);
    expect(bundle.entry.length).toBeGreaterThan(20);
  }
});
