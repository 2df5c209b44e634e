import { describe, expect, it } from 'vitest';
import { searchIncludesFor, searchParamsFor, searchRevIncludesFor } from '../../src/search/capability.ts';
import { indexEntriesOf } from '../../src/search/extract.ts';
import { parametersOf, searchedTypes } from '../../src/search/parameters.ts';
import { readSearch } from '../../src/search/read-search.ts';
import { published } from '../contract/codings.ts';
import { emitted } from './emitted-resources.ts';
import { hl7Definition } from './standard-parameters.ts';

const options = { strict: true, expandValueSet: () => undefined, descendants: () => [] };

describe.each(searchedTypes)('what can be searched of %s', (type) => {
  it('has each parameter once, with a definition that HL7 or the service publishes', () => {
    const params = searchParamsFor(type);
    expect(new Set(params.map(({ name }) => name)).size).toBe(params.length);
    for (const { name, definition } of params) {
      const parameter = parametersOf(type).get(name);
      const defined = parameter && (hl7Definition(parameter) ?? published.byUrl(definition));
      expect(defined, definition).toMatchObject({ url: definition, code: name, resourceType: 'SearchParameter' });
    }
  });

  it('offers inclusions that a strict search takes', () => {
    const includes = searchIncludesFor(type).map((value) => ['_include', value] as const);
    const revIncludes = searchRevIncludesFor(type).map((value) => ['_revinclude', value] as const);
    const { query } = readSearch(type, [...includes, ...revIncludes], options);
    expect(query.includes).toHaveLength(includes.length);
    expect(query.revIncludes).toHaveLength(revIncludes.length);
  });
});

describe('inclusions', () => {
  it('are the references among the resources of an exam, as they are emitted', () => {
    const types: ReadonlySet<string> = new Set(searchedTypes);
    const used = new Set<string>();
    for (const resource of emitted) {
      const { links, tokens } = indexEntriesOf(resource);
      for (const { param, target } of links) used.add(`${resource.resourceType}:${param}:${target.split('/')[0]}`);
      for (const { param, token } of tokens) {
        if (token.kind !== 'reference' || !types.has(token.system)) continue;
        used.add(`${resource.resourceType}:${param}:${token.system}`);
      }
    }
    const offered = searchedTypes.flatMap((type) =>
      [...parametersOf(type).values()].flatMap(({ name, follows }) =>
        follows.map((target) => `${type}:${name}:${target}`),
      ),
    );
    expect([...used].sort()).toEqual(offered.sort());
  });
});
