import type { Exam } from '../../../src/exam/exam.ts';
import { createExamReader } from '../../../src/exam/read-exam.ts';
import { ExamInvalidError, type Fault } from '../../../src/kernel/errors.ts';

export const reader = createExamReader();
export const now = new Date('2026-03-20T12:00:00Z');

export function read(body: unknown, purpose: 'record' | 'localise' = 'record'): Exam {
  return reader.read(body, { purpose, now });
}

/** The faults of a body; none if it reads. Any other error is passed on. */
export function faultsOf(body: unknown, purpose: 'record' | 'localise' = 'record'): readonly Fault[] {
  try {
    read(body, purpose);
    return [];
  } catch (error) {
    if (error instanceof ExamInvalidError) return error.faults;
    throw error;
  }
}
