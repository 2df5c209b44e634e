import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const sourceDir = join(import.meta.dirname, '..', '..');
const versionFile = 'localisation/model-version.ts';

/** The file that carries the model's version, from the project's root. */
export const modelVersionPath = `src/${versionFile}`;

/** Folders whose tables, weights and rules decide what an assessment says. */
const modelFolders = ['anatomy', 'exam', 'localisation', 'causes', 'differential', 'workup'] as const;

/**
 * The file that carries the model's version: the package version and a fingerprint of every source file of the model, so
 * that it changes whenever a table or a weight does.
 * @returns path from the project's root, and text
 */
export function modelVersionFile(version: string): readonly [path: string, text: string] {
  const fingerprint = createHash('sha256');
  for (const path of modelFolders.flatMap(sourcesIn).sort()) {
    fingerprint.update(`${path}\n${readFileSync(join(sourceDir, path), 'utf8').replaceAll('\r\n', '\n')}\n`);
  }
  const label = `${version}+${fingerprint.digest('hex').slice(0, 12)}`;
  const text = [
    '/** Version of the clinical model: package version and a fingerprint of every table and weight. Written by `npm run generate`. */',
    `export const modelVersion = '${label}';`,
    '',
  ].join('\n');
  return [modelVersionPath, text];
}

function sourcesIn(folder: string): string[] {
  return readdirSync(join(sourceDir, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name).slice(sourceDir.length + 1))
    .filter((path) => path !== versionFile);
}
