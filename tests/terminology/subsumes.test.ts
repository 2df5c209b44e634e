import type { CodeSystem } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { indexCodes } from '../../src/terminology/hierarchy.ts';
import type { ConformanceResources } from '../../src/terminology/load.ts';
import { subsumption } from '../../src/terminology/subsumes.ts';

// Invented system: limb > arm, limb > leg.
const url = 'https://neuroexam-fhir.example/fhir/CodeSystem/invented';
const system: CodeSystem = {
  resourceType: 'CodeSystem',
  url,
  status: 'active',
  content: 'complete',
  hierarchyMeaning: 'is-a',
  concept: [{ code: 'limb', concept: [{ code: 'arm' }, { code: 'leg' }] }],
};
const conformance = { ofType: (type: string) => (type === 'CodeSystem' ? [system] : []), vocabularies: () => [] };
const codes = indexCodes(conformance as unknown as ConformanceResources);

describe('an is-a hierarchy', () => {
  it.each([
    ['limb', 'arm', 'subsumes'],
    ['leg', 'limb', 'subsumed-by'],
    ['arm', 'leg', 'not-subsumed'],
    ['arm', 'arm', 'equivalent'],
  ])('says of %s and %s: %s', (a, b, outcome) => {
    expect(subsumption(codes, url, a, b).parameter).toEqual([{ name: 'outcome', valueCode: outcome }]);
  });

  it('gives a code with all below it, itself first', () => {
    expect(codes.descendants(url, 'limb')).toEqual(['limb', 'arm', 'leg']);
    expect(codes.descendants(url, 'none')).toEqual([]);
  });
});
