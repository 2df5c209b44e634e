import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { TextFile } from './read-case-file.ts';

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
