import type { ExamRepository } from '../../store/exam-repository.ts';
import type { ExamSteps } from '../exam-steps.ts';
import type { ServiceMetrics } from './service-metrics.ts';

/** The exams with what is kept counted and timed. */
export function measuredExams(exams: ExamRepository, { exams: kept, writeSeconds }: ServiceMetrics): ExamRepository {
  async function timed<T>(write: Promise<T>): Promise<T> {
    const stop = writeSeconds.startTimer();
    try {
      const value = await write;
      stop({ outcome: 'kept' });
      return value;
    } catch (error) {
      stop({ outcome: 'failed' });
      throw error;
    }
  }
  return {
    ...exams,
    insert: async (id, content) => {
      const found = await timed(exams.insert(id, content));
      if (found.created) kept.inc({ event: 'created' });
      return found;
    },
    correct: async (id, version, content) => {
      const exam = await timed(exams.correct(id, version, content));
      kept.inc({ event: 'corrected' });
      return exam;
    },
  };
}

/** The steps with assessments counted and timed. */
export function measuredSteps(steps: ExamSteps, { assessments, assessmentSeconds }: ServiceMetrics): ExamSteps {
  return {
    ...steps,
    assess: (exam, options) => {
      const stop = assessmentSeconds.startTimer();
      const assessment = steps.assess(exam, options);
      stop();
      assessments.inc({ conclusion: assessment.conclusion });
      return assessment;
    },
  };
}
