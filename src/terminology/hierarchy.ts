import type { CodeSystem, CodeSystemConcept, ValueSet } from 'fhir/r4.js';
import type { ConformanceResources } from './load.ts';

/** One code with what is known of it. */
export interface KnownConcept extends CodeSystemConcept {
  readonly system: string;
}

/** The codes of every system, whole for our own, a fragment for those that only value sets name. */
export interface Codes {
  /** The published CodeSystem; undefined for a system of which only a fragment is here. */
  codeSystem(system: string): CodeSystem | undefined;
  /** Notice of the vocabulary of a fragment, where its value sets carry one. */
  notice(system: string): string | undefined;
  /** Concepts by code, in the published order; undefined for a system that is not here at all. */
  concepts(system: string): ReadonlyMap<string, KnownConcept> | undefined;
  /** The code and all below it, itself first; empty for an unknown code. */
  descendants(system: string, code: string): readonly string[];
  /** Whether `code` is `ancestor` or stands below it. */
  subsumes(system: string, ancestor: string, code: string): boolean;
}

/** Indexes the published code systems and the concept lists of the value sets; read on first use. */
export function indexCodes(conformance: ConformanceResources): Codes {
  let built: Index | undefined;
  const index = () => {
    built ??= build(conformance);
    return built;
  };
  const descendants = (system: string, code: string): readonly string[] => {
    const found = index().systems.get(system)?.get(code);
    return found === undefined ? [] : [code, ...codesBelow(found)];
  };
  return {
    codeSystem: (system) => index().whole.get(system),
    notice: (system) => index().notices.get(system),
    concepts: (system) => index().systems.get(system),
    descendants,
    subsumes: (system, ancestor, code) => descendants(system, ancestor).includes(code),
  };
}

interface Index {
  readonly whole: Map<string, CodeSystem>;
  readonly systems: Map<string, Map<string, KnownConcept>>;
  readonly notices: Map<string, string>;
}

function build(conformance: ConformanceResources): Index {
  const index: Index = { whole: new Map(), systems: new Map(), notices: new Map() };
  for (const codeSystem of conformance.ofType('CodeSystem')) {
    const known = new Map<string, KnownConcept>();
    for (const concept of flatten(codeSystem.concept))
      known.set(concept.code, { ...concept, system: codeSystem.url ?? '' });
    index.whole.set(codeSystem.url ?? '', codeSystem);
    index.systems.set(codeSystem.url ?? '', known);
  }
  for (const valueSet of conformance.ofType('ValueSet')) addFragments(index, valueSet);
  return index;
}

function addFragments({ whole, systems, notices }: Index, { compose, copyright }: ValueSet): void {
  for (const { system, concept = [] } of compose?.include ?? []) {
    if (system === undefined || whole.has(system)) continue;
    const known = systems.get(system) ?? new Map<string, KnownConcept>();
    for (const one of concept) known.set(one.code, { ...one, display: one.display ?? one.code, system });
    systems.set(system, known);
    if (copyright !== undefined && !notices.has(system)) notices.set(system, copyright);
  }
}

function flatten(concepts: readonly CodeSystemConcept[] = []): CodeSystemConcept[] {
  return concepts.flatMap((concept) => [concept, ...flatten(concept.concept)]);
}

function codesBelow({ concept }: CodeSystemConcept): string[] {
  return flatten(concept).map(({ code }) => code);
}
