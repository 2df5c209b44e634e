import type { Exam } from '../../exam/exam.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import type { ExamSteps } from '../../http/exam-steps.ts';
import { readSentExam, type SentExam } from '../../questionnaire/read-sent-exam.ts';

/** Deeper than any exam, shallow enough for every recursive walk. */
const maxDepth = 20;

/**
 * An exam from the bytes of its own JSON or of a QuestionnaireResponse, as `POST /exams` takes both.
 * @throws RequestError, ExamInvalidError with every fault, each with its place in what was sent
 */
export function readExamLine(
  steps: ExamSteps,
  bytes: Uint8Array,
  options: { readonly purpose: 'record' | 'localise'; readonly now: Date },
): Exam {
  return readSent(steps, parseStrictJson(bytes, { maxDepth }), options).exam;
}

/** The same from JSON that was parsed. @throws ExamInvalidError */
export function readSent(
  steps: ExamSteps,
  sent: unknown,
  options: { readonly purpose: 'record' | 'localise'; readonly now: Date },
): SentExam {
  return readSentExam(sent, steps.formVersion, (body) => steps.readExam(body, options));
}
