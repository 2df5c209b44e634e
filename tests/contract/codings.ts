import { join } from 'node:path';
import type { Coding } from 'fhir/r4.js';
import { readOpenTables } from '../../src/cli/generate/open-tables.ts';
import { loadConformance } from '../../src/terminology/load.ts';
import { flat } from '../support/code-systems.ts';

const rootDir = join(import.meta.dirname, '..', '..');
export const published = loadConformance(rootDir);

/** Display of every code that is published or shipped, by `system|code`; parts of it are the project's, parts open. */
const names = new Map<string, string | undefined>();
for (const { url, concept } of published.ofType('CodeSystem')) {
  for (const { code, display } of flat(concept)) names.set(`${url}|${code}`, display);
}
for (const table of Object.values(readOpenTables(rootDir))) {
  for (const { system = table.system, code, display } of table.codes) names.set(`${system}|${code}`, display);
}

/** Codings anywhere inside that no code system or table knows, or knows under another name. Tags are UUIDs, not codes. */
export function unknownCodings(node: unknown): string[] {
  const found = new Set<string>();
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    const { system, code, display } = value as Coding & { unit?: unknown };
    if (typeof system === 'string' && typeof code === 'string' && !('unit' in value)) {
      const name = names.get(`${system}|${code}`);
      if (name === undefined || name !== display) found.add(`${system}|${code} "${display}"`);
    }
    for (const [key, child] of Object.entries(value)) if (key !== 'tag') look(child);
  };
  look(node);
  return [...found];
}

/** Whether one of the codings is in a published value set, which must be listed by system or by concept. */
export function isInValueSet(valueSet: string, codings: readonly Coding[] = []): boolean {
  const include = published.ofType('ValueSet').find(({ url }) => url === valueSet)?.compose?.include ?? [];
  return codings.some(({ system, code }) =>
    include.some(
      (part) =>
        part.system === system &&
        (part.concept ? part.concept.some((one) => one.code === code) : names.has(`${system}|${code}`)),
    ),
  );
}
