import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { ExamReader } from '../../exam/read-exam.ts';
import { type EvaluationCase, faultText } from './evaluation-case.ts';
import { readCaseFiles, type TextFile } from './read-case-file.ts';

const isCaseFile = (name: string): boolean => name.endsWith('.ndjson') || name.endsWith('.json');

/**
 * Every case file below a folder, in the order of the names, or the one file that is named.
 * @throws Error in plain words when there is none
 */
export function findCaseFiles(path: string): readonly TextFile[] {
  if (!existsSync(path)) throw new Error(`There is no folder ${path}.`);
  if (!statSync(path).isDirectory()) return [{ file: path, text: readFileSync(path, 'utf8') }];
  const names = readdirSync(path, { recursive: true, encoding: 'utf8' }).filter(isCaseFile).sort();
  if (names.length === 0) throw new Error(`There is no case file (*.ndjson, *.json) below ${path}.`);
  return names.map((name) => ({ file: join(path, name), text: readFileSync(join(path, name), 'utf8') }));
}

/**
 * Every case of those files, as of now.
 * @throws Error with a line for each fault, when there is any; and in plain words when there is no file
 */
export function casesBelow(path: string, reader: ExamReader): readonly EvaluationCase[] {
  const { cases, faults } = readCaseFiles(findCaseFiles(path), { reader, now: new Date() });
  if (faults.length > 0) throw new Error(faults.map(faultText).join('\n'));
  return cases;
}
