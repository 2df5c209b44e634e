import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Path below the project's root, with forward slashes, to the whole text of the file. */
export type GeneratedFiles = ReadonlyMap<string, string>;

export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** Folders in which every file that matches is made by the generator, so that one without a maker is stale too. */
const generatedPlaces = [
  { folder: 'terminology', name: /^(CodeSystem|ValueSet|ConceptMap)-.+\.json$/ },
  { folder: 'profiles/fhir', name: /\.json$/ },
  { folder: 'src/client/generated', name: /\.ts$/ },
  { folder: 'profiles/json-schema', name: /\.schema\.json$/ },
] as const;

export interface StaleFile {
  readonly path: string;
  readonly reason: 'missing' | 'different' | 'left over';
}

/** What the disk and the generator disagree about, by path. */
export function staleFiles(rootDir: string, files: GeneratedFiles): StaleFile[] {
  const stale: StaleFile[] = [];
  for (const [path, text] of files) {
    const full = join(rootDir, path);
    if (!existsSync(full)) stale.push({ path, reason: 'missing' });
    else if (readFileSync(full, 'utf8') !== text) stale.push({ path, reason: 'different' });
  }
  for (const { folder, name } of generatedPlaces) {
    if (!existsSync(join(rootDir, folder))) continue;
    for (const file of readdirSync(join(rootDir, folder))) {
      const path = `${folder}/${file}`;
      if (name.test(file) && !files.has(path)) stale.push({ path, reason: 'left over' });
    }
  }
  return stale.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** Makes the disk agree with the generator; files that are already right are not touched. */
export function writeGenerated(rootDir: string, files: GeneratedFiles): StaleFile[] {
  const stale = staleFiles(rootDir, files);
  for (const { path, reason } of stale) {
    const full = join(rootDir, path);
    if (reason === 'left over') rmSync(full);
    else {
      mkdirSync(dirname(full), { recursive: true });
      writeFileSync(full, files.get(path) ?? '');
    }
  }
  return stale;
}
