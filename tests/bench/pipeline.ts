import { parseStrictJson } from '../../src/exam/strict-json.ts';
import type { ExamSteps } from '../../src/http/exam-steps.ts';
import type { ExamBody } from '../support/example-exam.ts';
import { microsecondsPerCall } from './statistics.ts';

export interface PipelineTimes {
  /** Name and microseconds of each part, timed alone. */
  readonly parts: readonly (readonly [string, number])[];
  readonly sumOfParts: number;
  /** From the bytes of an exam to the bytes of its Bundle in one go. */
  readonly whole: number;
  /** The JSON library alone: the exam parsed, its Bundle written. */
  readonly jsonFloor: number;
  readonly examBytes: number;
  readonly bundleBytes: number;
  readonly localisationBytes: number;
}

/** The pure steps in this process, without HTTP and store, on many different exams. */
export function timePipeline(steps: ExamSteps, exams: readonly ExamBody[]): PipelineTimes {
  const limits = { maxDepth: 20 };
  const now = new Date();
  const options = { version: 1 } as const;
  const parse = (bytes: Buffer) => parseStrictJson(bytes, limits);
  const read = (body: unknown) => steps.readExam(body, { purpose: 'record', now });
  const write = (value: unknown) => Buffer.from(JSON.stringify(value), 'utf8');

  const cases = exams.map((exam) => {
    const bytes = write(exam);
    const body = parse(bytes);
    const read1 = read(body);
    const assessment = steps.assess(read1);
    const bundle = steps.toBundle(read1, assessment, options);
    const answer = write(steps.toLocalisationAnswer(assessment));
    const sizes = { exam: bytes.length, bundle: write(bundle).length, answer: answer.length };
    return { bytes, text: bytes.toString(), body, exam: read1, assessment, bundle, sizes };
  });

  const parts = [
    ['parse, strictly', microsecondsPerCall(cases, ({ bytes }) => parse(bytes))],
    ['read and validate', microsecondsPerCall(cases, ({ body }) => read(body))],
    ['assess', microsecondsPerCall(cases, ({ exam }) => steps.assess(exam))],
    [
      'build the Bundle',
      microsecondsPerCall(cases, ({ exam, assessment }) => steps.toBundle(exam, assessment, options)),
    ],
    ['write the Bundle', microsecondsPerCall(cases, ({ bundle }) => write(bundle))],
  ] as const;
  const whole = microsecondsPerCall(cases, ({ bytes }) => {
    const exam = read(parse(bytes));
    return write(steps.toBundle(exam, steps.assess(exam), options));
  });
  const jsonFloor = microsecondsPerCall(cases, ({ text, bundle }) => [JSON.parse(text), write(bundle)]);

  const mean = (values: readonly number[]) => Math.round(values.reduce((sum, value) => sum + value, 0) / values.length);
  return {
    parts,
    sumOfParts: parts.reduce((sum, [, time]) => sum + time, 0),
    whole,
    jsonFloor,
    examBytes: mean(cases.map(({ sizes }) => sizes.exam)),
    bundleBytes: mean(cases.map(({ sizes }) => sizes.bundle)),
    localisationBytes: mean(cases.map(({ sizes }) => sizes.answer)),
  };
}
