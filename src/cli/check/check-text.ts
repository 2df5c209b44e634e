import type { ExamSteps } from '../../http/exam-steps.ts';
import { faultsOf, type LineFault, longestLineBytes } from '../convert/convert-line.ts';
import { readExamLine } from '../convert/read-exam-line.ts';
import { isBlank, readLines } from '../convert/read-lines.ts';
import { lineOf } from '../evaluate/json-place.ts';

export interface Checked {
  readonly exams: number;
  readonly faults: readonly LineFault[];
}

export type Purpose = 'record' | 'localise';

/** The faults of exams, one on each line. */
export async function checkLines(steps: ExamSteps, bytes: Uint8Array, purpose: Purpose, now: Date): Promise<Checked> {
  let exams = 0;
  const faults: LineFault[] = [];
  for await (const { number, bytes: line } of readLines(once(bytes), longestLineBytes)) {
    if (line !== null && isBlank(line)) continue;
    exams += 1;
    if (line !== null) faults.push(...faultsIn(steps, line, purpose, now, number));
    else {
      const message = `The line is longer than ${longestLineBytes} bytes.`;
      faults.push({ line: number, severity: 'error', code: 'BODY_TOO_LARGE', pointer: '', message });
    }
  }
  return { exams, faults };
}

/** The faults of one exam that may stand on many lines, each with the line of what is wrong. */
export function checkText(steps: ExamSteps, bytes: Uint8Array, purpose: Purpose, now: Date): Checked {
  const text = new TextDecoder().decode(bytes);
  const faults = faultsIn(steps, bytes, purpose, now, 1).map((fault) => ({ ...fault, line: placeOf(text, fault) }));
  return { exams: 1, faults };
}

function faultsIn(
  steps: ExamSteps,
  bytes: Uint8Array,
  purpose: Purpose,
  now: Date,
  line: number,
): readonly LineFault[] {
  try {
    readExamLine(steps, bytes, { purpose, now });
    return [];
  } catch (error) {
    return faultsOf(error, line);
  }
}

/** The line of a fault of content; what is not JSON says its own line in its message. */
function placeOf(text: string, { code, pointer, message }: LineFault): number {
  if (code === 'NOT_JSON' || code === 'TOO_DEEP') return Number(/\(line (\d+)/.exec(message)?.[1] ?? 1);
  const steps = pointer.split('/').slice(1);
  return lineOf(
    text,
    steps.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~')),
  );
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

/** Whether a file holds an exam on each line: by its name, else by whether its first line is JSON by itself. */
export function isByLine(name: string, bytes: Uint8Array): boolean {
  if (/\.(ndjson|jsonl)$/i.test(name)) return true;
  if (/\.json$/i.test(name)) return false;
  const [first = ''] = new TextDecoder().decode(bytes).trimStart().split('\n', 1);
  try {
    JSON.parse(first);
    return true;
  } catch {
    return false;
  }
}
