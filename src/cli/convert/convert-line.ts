import type { Bundle } from 'fhir/r4.js';
import { examId } from '../../exam/exam-id.ts';
import { bundleForms, bundleTypes } from '../../fhir/bundle-forms.ts';
import { servedResources } from '../../fhir/served.ts';
import type { ExamSteps } from '../../http/exam-steps.ts';
import { AppError, ExamInvalidError } from '../../kernel/errors.ts';
import { readExamLine } from './read-exam-line.ts';

export const outputTypes = [...bundleTypes, 'resources'] as const;
export type OutputType = (typeof outputTypes)[number];

/** One thing wrong with one line. Never holds content of the line beyond key-like words, as everywhere. */
export interface LineFault {
  readonly line: number;
  readonly severity: 'error' | 'warning';
  readonly code: string;
  /** JSON Pointer into what stands on the line, an exam or a QuestionnaireResponse; '' is all of it. */
  readonly pointer: string;
  readonly message: string;
  readonly suggestion?: string;
}

export interface ConvertedLine {
  /** Lines of output; empty when the exam has faults. */
  readonly output: readonly string[];
  /** The software as a resource, which is the same for all exams; of the type `resources` alone. */
  readonly device?: string;
  /** Id of the exam. */
  readonly id?: string;
  readonly faults: readonly LineFault[];
}

/** Largest line in bytes that is read; the same as the largest body that the service can be set to take. */
export const longestLineBytes = 4 * 1024 * 1024;

/** One line of a file as output or as faults; throws nothing. */
export function convertLine(
  steps: ExamSteps,
  bytes: Uint8Array,
  options: { readonly line: number; readonly type: OutputType; readonly now: Date },
): ConvertedLine {
  try {
    const exam = readExamLine(steps, bytes, { purpose: 'record', now: options.now });
    const bundle = steps.toBundle(exam, steps.assess(exam), { version: 1 });
    const { identifier } = exam;
    return {
      ...outputOf(bundle, options.type),
      ...(identifier === undefined ? {} : { id: examId(identifier) }),
      faults: [],
    };
  } catch (error) {
    return { output: [], faults: faultsOf(error, options.line) };
  }
}

function outputOf(bundle: Bundle, type: OutputType): { readonly output: readonly string[]; readonly device?: string } {
  if (type !== 'resources') return { output: [JSON.stringify(bundleForms[type](bundle))] };
  const resources = servedResources(bundle);
  const device = resources.find(({ resourceType }) => resourceType === 'Device');
  const output = resources.filter((resource) => resource !== device).map((resource) => JSON.stringify(resource));
  return { output, ...(device === undefined ? {} : { device: JSON.stringify(device) }) };
}

/** What is wrong with a line, as faults. What is not an error of ours says nothing of itself. */
export function faultsOf(error: unknown, line: number): readonly LineFault[] {
  if (error instanceof ExamInvalidError) {
    return error.faults.map(({ pointer, code, message, suggestion }) => ({
      line,
      severity: 'error',
      code,
      pointer,
      message,
      ...(suggestion === undefined ? {} : { suggestion }),
    }));
  }
  const [code, message] =
    error instanceof AppError ? [error.code, error.message] : ['UNEXPECTED', 'The exam could not be converted.'];
  return [{ line, severity: 'error', code, pointer: '', message }];
}
