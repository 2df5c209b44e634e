import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Folder of HL7's own R4 definitions and examples. */
export const hl7Folder = dirname(createRequire(import.meta.url).resolve('hl7.fhir.r4.examples/package.json'));

export function hl7Resource(file: string): unknown {
  return JSON.parse(readFileSync(join(hl7Folder, file), 'utf8'));
}

/** Every display that HL7's package prints beside a LOINC code, by code. */
export function loincNamesInHl7Package(): ReadonlyMap<string, ReadonlySet<string>> {
  const names = new Map<string, Set<string>>();
  for (const file of readdirSync(hl7Folder)) {
    if (!file.endsWith('.json')) continue;
    const text = readFileSync(join(hl7Folder, file), 'utf8');
    if (text.includes('http://loinc.org')) collect(JSON.parse(text), undefined, names);
  }
  return names;
}

/** Codings carry their system; concepts of a value set stand below the system of their include. */
function collect(node: unknown, inherited: string | undefined, names: Map<string, Set<string>>): void {
  if (Array.isArray(node)) {
    for (const child of node) collect(child, inherited, names);
    return;
  }
  if (typeof node !== 'object' || node === null) return;
  const { system, code, display } = node as { system?: unknown; code?: unknown; display?: unknown };
  const here = typeof system === 'string' ? system : inherited;
  if (here === 'http://loinc.org' && typeof code === 'string' && typeof display === 'string') {
    names.set(code, (names.get(code) ?? new Set()).add(display));
  }
  for (const [key, child] of Object.entries(node)) {
    collect(child, key === 'concept' || key === 'contains' ? here : undefined, names);
  }
}
