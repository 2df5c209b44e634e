import type { Coding } from '../kernel/coding.ts';
import type { Codes } from './hierarchy.ts';
import type { ConformanceResources } from './load.ts';

/** All codes of a published value set, in its order and each once; undefined for an unknown address. */
export function expandValueSet(
  conformance: ConformanceResources,
  codes: Codes,
  url: string,
): readonly Coding[] | undefined {
  const valueSet = conformance.byUrl(url);
  if (valueSet?.resourceType !== 'ValueSet') return undefined;
  const found = new Map<string, Coding>();
  for (const { system, concept } of valueSet.compose?.include ?? []) {
    if (system === undefined) continue;
    for (const { code, display } of concept ?? codes.concepts(system)?.values() ?? []) {
      found.set(`${system}|${code}`, { system, code, display: display ?? code });
    }
  }
  return [...found.values()];
}

/** Those whose display has every word of the filter as part of it, in any case. */
export function matching(codings: readonly Coding[], filter: string): readonly Coding[] {
  const words = filter.toLowerCase().split(/\s+/).filter(Boolean);
  return codings.filter(({ display }) => words.every((word) => display.toLowerCase().includes(word)));
}
