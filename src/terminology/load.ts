import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CodeSystem, ConceptMap, Questionnaire, SearchParameter, StructureDefinition, ValueSet } from 'fhir/r4.js';
import { canonicalBase } from './systems.ts';

/** The kinds of FHIR resource that the project publishes about itself. */
export const conformanceTypes = [
  'CodeSystem',
  'ConceptMap',
  'Questionnaire',
  'SearchParameter',
  'StructureDefinition',
  'ValueSet',
] as const;
export type ConformanceType = (typeof conformanceTypes)[number];

interface ByType {
  CodeSystem: CodeSystem;
  ConceptMap: ConceptMap;
  Questionnaire: Questionnaire;
  SearchParameter: SearchParameter;
  StructureDefinition: StructureDefinition;
  ValueSet: ValueSet;
}
export type ConformanceResource = ByType[ConformanceType];

/** A committed list of the codes of an open vocabulary that are in use here. */
export interface Vocabulary {
  readonly system: string;
  readonly name: string;
  /** To be shown wherever the content is. */
  readonly notice: string;
  /** A row may name a system of its own. */
  readonly codes: readonly { readonly system?: string; readonly code: string; readonly display: string }[];
}

/** Read-only view of the published conformance resources. A resource is read and parsed when it is first asked for, then kept. */
export interface ConformanceResources {
  get<T extends ConformanceType>(type: T, id: string): ByType[T] | undefined;
  /** By canonical address; a `|version` at the end must equal the resource's own version. */
  byUrl(url: string): ConformanceResource | undefined;
  /** All of one type, ordered by id. */
  ofType<T extends ConformanceType>(type: T): readonly ByType[T][];
  /** Type and id of everything there is, without parsing anything. */
  list(): readonly { readonly type: ConformanceType; readonly id: string; readonly url: string }[];
  /** The open codes in use, read anew at every call. */
  vocabularies(): readonly Vocabulary[];
}

/** Folders below the project's root that hold conformance resources, one in each `<Type>-<id>.json`. */
const folders = ['terminology', join('profiles', 'fhir')];

/**
 * Reads the committed conformance resources below `rootDir` (the folder of package.json).
 * File names carry type and id, and the canonical address is the base, the type and the id; a test holds both.
 * @throws Error of the file system when a folder is missing, SyntaxError on first use of a file that is not JSON.
 */
export function loadConformance(rootDir: string): ConformanceResources {
  const entries = new Map<
    string,
    { type: ConformanceType; id: string; url: string; read: () => ConformanceResource }
  >();
  const keyOfUrl = new Map<string, string>();
  for (const folder of folders) {
    for (const file of readdirSync(join(rootDir, folder)).sort()) {
      const name = /^(?<type>[A-Za-z]+)-(?<id>.+)\.json$/.exec(file)?.groups;
      const type = conformanceTypes.find((known) => known === name?.type);
      if (type === undefined || name?.id === undefined) continue;
      const read = once(() => frozen(JSON.parse(readFileSync(join(rootDir, folder, file), 'utf8'))));
      const url = `${canonicalBase}/${type}/${name.id}`;
      entries.set(`${type}/${name.id}`, { type, id: name.id, url, read });
      keyOfUrl.set(url, `${type}/${name.id}`);
    }
  }
  const get = <T extends ConformanceType>(type: T, id: string) =>
    entries.get(`${type}/${id}`)?.read() as ByType[T] | undefined;
  const listed = [...entries.values()].map(({ type, id, url }) => Object.freeze({ type, id, url }));
  return {
    get,
    byUrl(url) {
      const [address = '', version] = url.split('|');
      const resource = entries.get(keyOfUrl.get(address) ?? '')?.read();
      return version === undefined || resource?.version === version ? resource : undefined;
    },
    ofType: (type) => listed.filter((entry) => entry.type === type).flatMap((entry) => get(type, entry.id) ?? []),
    list: () => listed,
    vocabularies() {
      const folder = join(rootDir, 'terminology', 'tables');
      const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
      return files.sort().map((file): Vocabulary => JSON.parse(readFileSync(join(folder, file), 'utf8')));
    },
  };
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Shared between requests, so nobody may write into it. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const child of Object.values(value)) frozen(child);
    Object.freeze(value);
  }
  return value;
}
