import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { contained, expandValueSet, isInactive } from '../../src/terminology/expand.ts';
import { indexCodes } from '../../src/terminology/hierarchy.ts';
import type { ConformanceResources } from '../../src/terminology/load.ts';

// Invented system with what none of the published ones has: designations, a code that is no longer used, a code twice below.
const system = 'https://neuroexam-fhir.example/fhir/CodeSystem/invented';
const designation = [{ language: 'de', value: 'Arm' }];
const codeSystem: CodeSystem = {
  resourceType: 'CodeSystem',
  url: system,
  status: 'active',
  content: 'complete',
  concept: [
    { code: 'limb', display: 'Limb', property: [{ code: 'notSelectable', valueBoolean: true }] },
    { code: 'left', display: 'Left half' },
    {
      code: 'arm',
      display: 'Arm',
      designation,
      property: [
        { code: 'parent', valueCode: 'limb' },
        { code: 'parent', valueCode: 'left' },
        { code: 'inactive', valueBoolean: true },
      ],
      concept: [{ code: 'hand', display: 'Hand', property: [{ code: 'parent', valueCode: 'left' }] }],
    },
  ],
};
const valueSet: ValueSet = {
  resourceType: 'ValueSet',
  status: 'active',
  compose: { include: [{ system, filter: [{ property: 'concept', op: 'is-a', value: 'left' }] }] },
};
const conformance = {
  byUrl: () => valueSet,
  ofType: (type: string) => (type === 'CodeSystem' ? [codeSystem] : []),
  vocabularies: () => [],
} as unknown as ConformanceResources;
const codes = indexCodes(conformance);

describe('a code with several parents', () => {
  it('is below each of them, and named once', () => {
    expect(codes.parents(system, 'hand')).toEqual(['arm', 'left']);
    expect(codes.descendants(system, 'limb')).toEqual(['limb', 'arm', 'hand']);
    expect(codes.descendants(system, 'left')).toEqual(['left', 'arm', 'hand']);
    expect(expandValueSet(conformance, codes, 'any')?.map(({ code }) => code)).toEqual(['left', 'arm', 'hand']);
  });
});

describe('a line of an expansion', () => {
  const line = (code: string, display: string, withDesignations = false) =>
    contained(codes, { system, code, display }, withDesignations);

  it('says whether a code is a heading or no longer used, and has designations on request', () => {
    expect(line('limb', 'Limb')).toEqual({ system, abstract: true, code: 'limb', display: 'Limb' });
    expect(line('arm', 'Arm')).toEqual({ system, inactive: true, code: 'arm', display: 'Arm' });
    expect(line('arm', 'Arm', true)).toMatchObject({ designation });
    expect(isInactive(codes, { system, code: 'hand' })).toBe(false);
  });
});
