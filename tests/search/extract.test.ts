import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexEntriesOf } from '../../src/search/extract.ts';
import type { IndexEntries, Token } from '../../src/search/index-entries.ts';
import { dateParameterOf, linkedTypes, parametersOf, searchedTypes } from '../../src/search/parameters.ts';
import { systems } from '../../src/terminology/systems.ts';
import { hl7Folder, hl7Resource } from '../terminology/hl7-package.ts';
import { emitted, type Resource } from './emitted-resources.ts';
import { expectedLines } from './expected-entries.ts';
import { mutatedResources } from './mutated-resources.ts';
import { expressionFor, hl7Definition, standardParameters } from './standard-parameters.ts';

const examples = (type: string) =>
  readdirSync(hl7Folder)
    .filter((file) => file.startsWith(`${type}-`))
    .map((file) => hl7Resource(file) as Resource)
    .filter(({ resourceType }) => resourceType === type);

const key = (token: Token) => [token.kind, token.system, token.code, token.text ?? null];
const line = (...parts: readonly unknown[]) => JSON.stringify(parts);

/** Entries in the form of `expectedLines`, each once. */
function linesOf({ tokens, pairs, ranges, links }: IndexEntries): Set<string> {
  return new Set([
    ...tokens.map(({ param, token }) => line('token', param, ...key(token))),
    ...pairs.map(({ param, first, second }) => line('pair', param, key(first), key(second))),
    ...ranges.map(({ param, low, high, unit, of }) =>
      line('range', param, low, high, unit === undefined ? null : key(unit), ...(of === undefined ? [] : [key(of)])),
    ),
    ...links.map(({ param, target }) => line('link', param, target)),
  ]);
}

/** The clinical date stands in `at`; its range is given besides unless it is the whole second or millisecond of `at`. */
function withAt(entries: IndexEntries, type: string): Set<string> {
  const lines = linesOf(entries);
  const param = dateParameterOf(type);
  if (entries.at === null || entries.ranges.some((range) => range.param === param)) return lines;
  return lines.add(line('range', param, entries.at, entries.at + (entries.at % 1000 === 0 ? 999 : 0), null));
}

describe.each(searchedTypes)('index entries of %s', (type) => {
  const standard = standardParameters(type);
  const resources = [...examples(type), ...emitted.filter(({ resourceType }) => resourceType === type)];
  const check = (resource: Resource) => {
    const expected = new Set(standard.flatMap((parameter) => expectedLines(parameter, resource)));
    expect([...withAt(indexEntriesOf(resource), type)].sort()).toEqual([...expected].sort());
  };

  it('are what the FHIRPath of the standard finds in HL7 examples and in what is emitted', () => {
    expect(resources.length).toBeGreaterThan(0);
    for (const resource of resources) check(resource);
  });

  it('are what it finds in resources put together from parts of others', () => {
    fc.assert(
      fc.property(mutatedResources(resources), (resource) => check(resource as Resource)),
      { numRuns: 150 },
    );
  });

  it('come from parameters that say what HL7 says', () => {
    for (const parameter of parametersOf(type).values()) {
      const definition = hl7Definition(parameter);
      if (definition === undefined) continue;
      expect(definition.code).toBe(parameter.name);
      expect(definition.type).toBe(parameter.type);
      expect(parameter.expression).toBe(expressionFor(type, definition));
      // A patient is a Patient, whatever else the shared definition lists; an empty list stands for any type.
      if (parameter.isPatientOnly || parameter.targets.length === 0) continue;
      expect([...parameter.targets].sort()).toEqual([...(definition.target ?? [])].sort());
    }
  });
});

describe('index entries', () => {
  it('lead by links to every resource of the exam that another one refers to', () => {
    const known = new Set(emitted.map(({ resourceType, id }) => `${resourceType}/${id}`));
    const targets = emitted.flatMap((resource) => indexEntriesOf(resource).links.map(({ target }) => target));
    expect(targets.length).toBeGreaterThan(100);
    for (const target of targets) {
      expect(known).toContain(target);
      expect(linkedTypes).toContain(target.split('/')[0]);
    }
  });

  it('stand once each, however often the resource says it', () => {
    for (const resource of emitted) {
      const { tokens, pairs, ranges, links } = indexEntriesOf(resource);
      for (const entries of [tokens, pairs, ranges, links]) {
        expect(new Set(entries.map((entry) => JSON.stringify(entry))).size).toBe(entries.length);
      }
    }
  });

  it('leave out what equals the id', () => {
    for (const resource of emitted) {
      const { tokens } = indexEntriesOf(resource);
      const own: readonly string[] = [systems.resourceIdentifier, systems.resourceTag];
      const kept = tokens.filter(({ token }) => token.kind === 'coding' && own.includes(token.system));
      expect(kept).toEqual([]);
    }
  });

  it('are none for a type that is not searched, and survive values of any other shape', () => {
    const none = { at: null, tokens: [], pairs: [], ranges: [], links: [] };
    expect(indexEntriesOf({ resourceType: 'Patient' })).toEqual(none);
    const names = fc.constantFrom(
      'code',
      'subject',
      'hasMember',
      'effectivePeriod',
      'valueQuantity',
      'component',
      'meta',
    );
    fc.assert(
      fc.property(fc.dictionary(names, fc.jsonValue()), (parts) => {
        expect(indexEntriesOf({ ...(parts as object), resourceType: 'Observation' }).tokens).toBeInstanceOf(Array);
      }),
    );
  });
});
