import type { CodeSystem, CodeSystemConcept, ConceptMap, ValueSet } from 'fhir/r4.js';
import type { ConformanceResources, Vocabulary } from './load.ts';

/** One code with what is known of it. */
export interface KnownConcept extends Omit<CodeSystemConcept, 'concept'> {
  readonly system: string;
}

/** The codes of every system, whole for our own, a fragment for those of which only some codes are in use. */
export interface Codes {
  /** The published CodeSystem; undefined for a system of which only a fragment is here. */
  codeSystem(system: string): CodeSystem | undefined;
  /** What a fragment's vocabulary is called and asks to be said. */
  vocabulary(system: string): Pick<Vocabulary, 'name' | 'notice'> | undefined;
  /** Concepts by code, in the published order; undefined for a system that is not here at all. */
  concepts(system: string): ReadonlyMap<string, KnownConcept> | undefined;
  /** Codes right above this one; a code may have several. */
  parents(system: string, code: string): readonly string[];
  /** Codes right below this one. */
  children(system: string, code: string): readonly string[];
  /** The code and all below it, itself first and each once; empty for an unknown code. */
  descendants(system: string, code: string): readonly string[];
  /** Whether `code` is `ancestor` or stands below it. */
  subsumes(system: string, ancestor: string, code: string): boolean;
}

/** Everything known of one system. */
interface System {
  readonly whole?: CodeSystem;
  vocabulary?: Pick<Vocabulary, 'name' | 'notice'>;
  readonly concepts: Map<string, KnownConcept>;
  readonly parents: Map<string, string[]>;
  readonly children: Map<string, string[]>;
}

type Index = Map<string, System>;

/** Built on first use, and once for everybody who works with the same resources. */
const indexes = new WeakMap<ConformanceResources, Index>();

/** Indexes the published code systems, the tables of open codes, and what value sets and maps name besides. */
export function indexCodes(conformance: ConformanceResources): Codes {
  const of = (system: string): System | undefined => {
    let index = indexes.get(conformance);
    if (index === undefined) {
      index = build(conformance);
      indexes.set(conformance, index);
    }
    return index.get(system);
  };
  const below = (system: string, code: string): Set<string> => {
    const found = new Set<string>(of(system)?.concepts.has(code) ? [code] : []);
    // A set may grow while it is gone through, and each code is met once, so a hierarchy with a circle ends too.
    for (const one of found) for (const child of of(system)?.children.get(one) ?? []) found.add(child);
    return found;
  };
  return {
    codeSystem: (system) => of(system)?.whole,
    vocabulary: (system) => of(system)?.vocabulary,
    concepts: (system) => of(system)?.concepts,
    parents: (system, code) => of(system)?.parents.get(code) ?? [],
    children: (system, code) => of(system)?.children.get(code) ?? [],
    descendants: (system, code) => [...below(system, code)],
    subsumes: (system, ancestor, code) => below(system, ancestor).has(code),
  };
}

function build(conformance: ConformanceResources): Index {
  const index: Index = new Map();
  for (const codeSystem of conformance.ofType('CodeSystem')) addWhole(index, codeSystem);
  for (const vocabulary of conformance.vocabularies()) addVocabulary(index, vocabulary);
  for (const valueSet of conformance.ofType('ValueSet')) addFragments(index, valueSet);
  for (const map of conformance.ofType('ConceptMap')) addTargets(index, map);
  return index;
}

function addWhole(index: Index, whole: CodeSystem): void {
  const { url = '' } = whole;
  const system: System = { whole, concepts: new Map(), parents: new Map(), children: new Map() };
  const link = (parent: string, code: string) => {
    system.parents.set(code, [...(system.parents.get(code) ?? []), parent]);
    const siblings = system.children.get(parent);
    if (siblings === undefined) system.children.set(parent, [code]);
    else siblings.push(code);
  };
  const add = (concepts: readonly CodeSystemConcept[] = [], parent?: string): void => {
    for (const { concept, ...one } of concepts) {
      system.concepts.set(one.code, { ...one, system: url });
      if (parent !== undefined) link(parent, one.code);
      for (const { code, valueCode } of one.property ?? []) {
        if (code === 'parent' && valueCode !== undefined) link(valueCode, one.code);
      }
      add(concept, one.code);
    }
  };
  add(whole.concept);
  index.set(url, system);
}

function addVocabulary(index: Index, { system: usual, name, notice, codes }: Vocabulary): void {
  for (const { system = usual, code, display } of codes) {
    const here = fragment(index, system);
    if (here === undefined) continue;
    // A table of several systems has the name of none of them.
    here.vocabulary = { name: system === usual ? name : system, notice };
    here.concepts.set(code, { code, display, system });
  }
}

function addFragments(index: Index, { compose }: ValueSet): void {
  for (const { system, concept = [] } of compose?.include ?? []) {
    for (const { code, display } of concept) addCode(index, system, code, display);
  }
}

function addTargets(index: Index, { group = [] }: ConceptMap): void {
  for (const { target: system, element } of group) {
    for (const { target = [] } of element)
      for (const { code, display } of target) addCode(index, system, code, display);
  }
}

function addCode(index: Index, system?: string, code?: string, display = code): void {
  if (system === undefined || code === undefined || display === undefined) return;
  const here = fragment(index, system);
  if (here !== undefined && !here.concepts.has(code)) here.concepts.set(code, { code, display, system });
}

/** The fragment of a system, made when it is met first; undefined for a system that is here whole. */
function fragment(index: Index, system: string): System | undefined {
  const known = index.get(system);
  if (known !== undefined) return known.whole === undefined ? known : undefined;
  const made: System = { concepts: new Map(), parents: new Map(), children: new Map() };
  index.set(system, made);
  return made;
}
