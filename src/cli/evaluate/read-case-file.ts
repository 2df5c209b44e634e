import { pointerInto, pointerSteps } from '../../exam/faults/pointer.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { RequestError } from '../../kernel/errors.ts';
import type { CaseFault, EvaluationCase } from './evaluation-case.ts';
import { lineOf } from './json-place.ts';
import { type CaseReading, readCase } from './read-case.ts';

/** The cases of some files, and everything that is wrong with them. */
export interface ReadCases {
  readonly cases: readonly EvaluationCase[];
  readonly faults: readonly CaseFault[];
}

export interface TextFile {
  /** Path as it is shown. */
  readonly file: string;
  readonly text: string;
}

const deepest = 64;

/** Reads every file; a name that an earlier case of the same file has is a fault, because a name is how a miss is found again. */
export function readCaseFiles(files: readonly TextFile[], reading: CaseReading): ReadCases {
  const read = files.map((file) => {
    const own = file.file.endsWith('.json') ? readJson(file, reading) : readLines(file, reading);
    return { cases: own.cases, faults: [...own.faults, ...repeatedNames(own.cases)] };
  });
  return together(read);
}

function together(read: readonly ReadCases[]): ReadCases {
  return { cases: read.flatMap(({ cases }) => cases), faults: read.flatMap(({ faults }) => faults) };
}

/** A case a line; empty lines are passed over. */
function readLines({ file, text }: TextFile, reading: CaseReading): ReadCases {
  const lines = text.split('\n').map((line, index) => ({ line, number: index + 1 }));
  const read = lines
    .filter(({ line }) => line.trim() !== '')
    .map(({ line, number }) => {
      const parsed = parse(line);
      if ('message' in parsed)
        return { cases: [], faults: [{ file, line: number, pointer: '', message: parsed.message }] };
      return placed(file, parsed.value, reading, '', () => number);
    });
  return together(read);
}

/** One case, or a list of cases. */
function readJson({ file, text }: TextFile, reading: CaseReading): ReadCases {
  const parsed = parse(text);
  if ('message' in parsed) {
    return { cases: [], faults: [{ file, line: parsed.line, pointer: '', message: parsed.message }] };
  }
  const line = (pointer: string): number => lineOf(text, pointerSteps(pointer));
  if (!Array.isArray(parsed.value)) return placed(file, parsed.value, reading, '', line);
  const read = parsed.value.map((value, index) => placed(file, value, reading, pointerInto('', index), line));
  return together(read);
}

function placed(
  file: string,
  value: unknown,
  reading: CaseReading,
  base: string,
  line: (pointer: string) => number,
): ReadCases {
  const { draft, problems } = readCase(value, reading);
  return {
    cases: draft === null ? [] : [{ ...draft, file, line: line(base) }],
    faults: problems.map(({ pointer, message }) => {
      const whole = `${base}${pointer}`;
      return { file, line: line(whole), pointer: whole, message };
    }),
  };
}

function parse(text: string): { readonly value: unknown } | { readonly message: string; readonly line: number } {
  try {
    return { value: parseStrictJson(new TextEncoder().encode(text), { maxDepth: deepest }) };
  } catch (error) {
    if (!(error instanceof RequestError)) throw error;
    const line = Number(/\(line (\d+),/.exec(error.message)?.[1] ?? 1);
    // The place is told by the file and its line; only the column is news.
    const message = error.message.replace(/^The body/, 'The text').replace(/\(line \d+, (column \d+)\)/, '($1)');
    return { message, line };
  }
}

function repeatedNames(cases: readonly EvaluationCase[]): readonly CaseFault[] {
  const first = new Map<string, number>();
  return cases.flatMap(({ name, file, line }) => {
    const earlier = first.get(name);
    if (earlier === undefined) {
      first.set(name, line);
      return [];
    }
    return [{ file, line, pointer: '/name', message: `The case on line ${earlier} has the same name.` }];
  });
}
