import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { loadDataType, parseStructureDefinition, validateResource } from '@medplum/core';
import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ConformanceResource } from '../../src/terminology/load.ts';
import { canonicalBase } from '../../src/terminology/systems.ts';
import { flat } from '../support/code-systems.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';
import { hl7Resource } from '../terminology/hl7-package.ts';
import { published } from './codings.ts';
import { brokenInvariants } from './r4-invariants.ts';

const rootDir = join(import.meta.dirname, '..', '..');
const resources = published.list().flatMap(({ type, id }) => published.get(type, id) ?? []);
const named = resources.map((resource): [string, ConformanceResource] => [
  `${resource.resourceType}/${resource.id}`,
  resource,
]);

beforeAll(() => {
  indexR4Definitions();
});

describe.each(named)('%s', (_, resource) => {
  it('is a valid R4 resource by an independent validator', () => {
    expect(validateResource(resource as Parameters<typeof validateResource>[0])).toEqual([]);
  });

  it('keeps the invariants of its R4 type', () => {
    expect(brokenInvariants(resource)).toEqual([]);
  });

  it('has the address that its file name stands for, a version, and a notice where it needs one', () => {
    expect(resource.url).toBe(`${canonicalBase}/${resource.resourceType}/${resource.id}`);
    expect(published.byUrl(`${resource.url}|${resource.version}`)).toBe(resource);
    expect(published.byUrl(`${resource.url}|0.0.0`)).toBeUndefined();
    const text = JSON.stringify(resource);
    const copyright = 'copyright' in resource ? resource.copyright : undefined;
    if (/"(?:code|valueString)":"HP:\d/.test(text)) expect(copyright).toContain('Human Phenotype Ontology');
    if (/"(?:code|valueString)":"UBERON:\d/.test(text)) expect(copyright).toContain('CC BY 3.0');
    if (/"(?:code|valueString)":"MONDO:\d/.test(text)) expect(copyright).toContain('CC BY 4.0');
  });

  it('names no address of ours that is not published', () => {
    const addresses = JSON.stringify(resource).matchAll(
      new RegExp(`"(${canonicalBase}/(?:CodeSystem|ValueSet|StructureDefinition|Questionnaire)/[^"|]+)`, 'g'),
    );
    for (const [, address = ''] of addresses) expect(published.byUrl(address), address).toBeDefined();
  });
});

describe('the loader', () => {
  it('finds every file of the two folders', () => {
    const files = ['terminology', join('profiles', 'fhir')].flatMap((folder) =>
      readdirSync(join(rootDir, folder)).filter((file) => file.endsWith('.json')),
    );
    expect(files.length).toBe(resources.length);
  });

  it('gives resources that nobody can change', () => {
    const [first] = resources;
    expect(first).toBeDefined();
    expect(() => Object.assign(first ?? {}, { id: 'other' })).toThrow(TypeError);
  });

  it('does not take names of object members for ids', () => {
    expect(published.get('CodeSystem', '__proto__')).toBeUndefined();
    expect(published.byUrl('constructor')).toBeUndefined();
  });
});

describe('codes', () => {
  const codeSystems = published.ofType('CodeSystem');

  it('count as many as the code system says, each one once', () => {
    for (const system of codeSystems.filter(({ content }) => content === 'complete')) {
      const codes = flat(system.concept).map(({ code }) => code);
      expect(codes.length, system.id).toBe(system.count);
      expect(new Set(codes).size, system.id).toBe(codes.length);
    }
  });

  it('that a value set picks from a code system of ours are in it under the same name', () => {
    for (const { id, compose } of published.ofType('ValueSet')) {
      for (const include of compose?.include ?? []) expectKnown(codeSystems, include, String(id));
    }
  });

  it('that a map starts from are in the code system of its group', () => {
    for (const { id, group = [] } of published.ofType('ConceptMap')) {
      for (const { source, element } of group) {
        const concept = element.map(({ code = '', display = '' }) => ({ code, display }));
        expectKnown(codeSystems, { system: source ?? '', concept }, String(id));
      }
    }
  });
});

type Include = NonNullable<ValueSet['compose']>['include'][number];

function expectKnown(systems: readonly CodeSystem[], include: Include, where: string): void {
  const system = systems.find(({ url }) => url === include.system);
  if (!system) return;
  const names = new Map(flat(system.concept).map(({ code, display }) => [code, display]));
  for (const { code, display } of include.concept ?? []) expect(names.get(code), `${where}: ${code}`).toBe(display);
}

describe('profiles', () => {
  const profiles = published.ofType('StructureDefinition');

  it.each(profiles.map((profile) => [profile.id, profile]))(
    '%s has a snapshot that a validator can load',
    (_, profile) => {
      const definition = profile as Parameters<typeof parseStructureDefinition>[0];
      expect(() => loadDataType(definition)).not.toThrow();
      expect(parseStructureDefinition(definition).name).toBe(profile.name);
    },
  );

  it.each(profiles.map((profile) => [profile.id, profile]))(
    '%s only narrows the cardinality of its R4 type',
    (_, profile) => {
      const base = hl7Resource(`StructureDefinition-${profile.type}.json`) as typeof profile;
      const wide = new Map(base.snapshot?.element.map((element) => [element.id, element]));
      for (const { id = '', min = 0, max = '*' } of profile.snapshot?.element ?? []) {
        const before = wide.get(id);
        if (!before) continue;
        expect(min, id).toBeGreaterThanOrEqual(before.min ?? 0);
        if (before.max !== '*') expect(Number(max), id).toBeLessThanOrEqual(Number(before.max));
      }
    },
  );
});
