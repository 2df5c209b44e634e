import { readFileSync } from 'node:fs';

/** An exam as a request body, open for changes by a test. */
export interface ExamBody {
  identifier?: { system: string; value: string };
  status?: string;
  person?: Record<string, unknown>;
  findings?: Record<string, Record<string, unknown>[]>;
  [property: string]: unknown;
}

export const exampleNames = ['foot-drop', 'cervical-cord', 'ascending-weakness'] as const;
export type ExampleName = (typeof exampleNames)[number];

/** A fresh copy of one of the invented example exams, with changes at its top level. */
export function exampleExam(changes: ExamBody = {}, name: ExampleName = 'foot-drop'): ExamBody {
  const file = new URL(`../examples/${name}.json`, import.meta.url);
  return { ...(JSON.parse(readFileSync(file, 'utf8')) as ExamBody), ...changes };
}

/** The example under an identifier of its own. */
export function examNumbered(value: string, changes: ExamBody = {}): ExamBody {
  return exampleExam({ identifier: { system: 'https://clinic.example/exams', value }, ...changes });
}
