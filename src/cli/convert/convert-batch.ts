import type { ExamSteps } from '../../http/exam-steps.ts';
import { convertLine, type LineFault, longestLineBytes, type OutputType } from './convert-line.ts';
import { isBlank } from './read-lines.ts';
import { keyOf } from './seen-exams.ts';

/** Some lines that follow on each other. */
export interface BatchTask {
  readonly type: OutputType;
  /** Milliseconds of the present, against which the date of an exam is checked; the same for a whole run. */
  readonly now: number;
  readonly lines: readonly { readonly number: number; readonly bytes: Uint8Array | null }[];
}

export interface BatchAnswer {
  /** Lines of output, each with its end. */
  readonly output: Uint8Array;
  readonly device?: string;
  /** Exams that came out, by the key of `seen-exams.ts` and line. */
  readonly exams: readonly { readonly key: number; readonly line: number }[];
  readonly faults: readonly LineFault[];
}

export function convertBatch(steps: ExamSteps, { type, now, lines }: BatchTask): BatchAnswer {
  const output: string[] = [];
  const exams: { key: number; line: number }[] = [];
  const faults: LineFault[] = [];
  let device: string | undefined;
  for (const { number, bytes } of lines) {
    if (bytes === null) {
      const message = `The line is longer than ${longestLineBytes} bytes.`;
      faults.push({ line: number, severity: 'error', code: 'BODY_TOO_LARGE', pointer: '', message });
      continue;
    }
    if (isBlank(bytes)) continue;
    const converted = convertLine(steps, bytes, { line: number, type, now: new Date(now) });
    output.push(...converted.output.map((line) => `${line}\n`));
    device ??= converted.device;
    faults.push(...converted.faults);
    if (converted.id !== undefined) exams.push({ key: keyOf(converted.id), line: number });
  }
  const bytes = Buffer.from(output.join(''), 'utf8');
  return { output: bytes, ...(device === undefined ? {} : { device }), exams, faults };
}
