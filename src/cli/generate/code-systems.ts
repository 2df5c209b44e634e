import type { CodeSystem, CodeSystemConcept, CodeSystemProperty, ValueSet } from 'fhir/r4.js';
import { canonicalBase } from '../../terminology/systems.ts';
import { type HeaderText, header, type Release, valueSetUrl } from './header.ts';

/** A concept of a local code system before it is cast into FHIR; property order is kept. */
export interface LocalConcept {
  readonly code: string;
  readonly display: string;
  readonly definition?: string | undefined;
  readonly properties?: Readonly<Record<string, string | boolean | undefined>>;
  readonly children?: readonly LocalConcept[];
}

export interface LocalCodeSystem extends HeaderText {
  /** Id of the ValueSet that holds exactly these codes. */
  readonly allCodes: string;
  readonly properties?: Readonly<Record<string, string>>;
  readonly hierarchy?: 'grouped-by' | 'is-a' | 'part-of';
  readonly concepts: readonly LocalConcept[];
}

/** The CodeSystem and the ValueSet of all its codes. */
export function localCodeSystem(release: Release, system: LocalCodeSystem): [CodeSystem, ValueSet] {
  const url = `${canonicalBase}/CodeSystem/${system.id}`;
  const codes = allCodes(system.concepts);
  const twice = codes.find((code, index) => codes.indexOf(code) !== index);
  if (twice !== undefined) throw new Error(`CodeSystem ${system.id} has the code ${twice} twice`);
  const { copyright: _, ...withoutNotice } = system;
  return [
    {
      ...header('CodeSystem', release, system),
      caseSensitive: true,
      valueSet: valueSetUrl(system.allCodes),
      ...(system.hierarchy ? { hierarchyMeaning: system.hierarchy } : {}),
      content: 'complete',
      count: codes.length,
      ...(system.properties ? { property: propertyDefinitions(system) } : {}),
      concept: system.concepts.map(fhirConcept),
    },
    {
      ...header('ValueSet', release, {
        ...withoutNotice,
        id: system.allCodes,
        description: `All codes of the code system: ${system.title.charAt(0).toLowerCase()}${system.title.slice(1)}.`,
      }),
      immutable: false,
      compose: { include: [{ system: url }] },
    },
  ];
}

function allCodes(concepts: readonly LocalConcept[]): string[] {
  return concepts.flatMap((concept) => [concept.code, ...allCodes(concept.children ?? [])]);
}

function propertyDefinitions(system: LocalCodeSystem): CodeSystemProperty[] {
  return Object.entries(system.properties ?? {}).map(([code, description]) => ({
    code,
    description,
    type: anyBoolean(system.concepts, code) ? 'boolean' : 'string',
  }));
}

function anyBoolean(concepts: readonly LocalConcept[], code: string): boolean {
  return concepts.some(
    (concept) => typeof concept.properties?.[code] === 'boolean' || anyBoolean(concept.children ?? [], code),
  );
}

function fhirConcept(concept: LocalConcept): CodeSystemConcept {
  const property = Object.entries(concept.properties ?? {}).flatMap(([code, value]) => {
    if (value === undefined) return [];
    return [typeof value === 'boolean' ? { code, valueBoolean: value } : { code, valueString: value }];
  });
  return {
    code: concept.code,
    display: concept.display,
    ...(concept.definition ? { definition: concept.definition } : {}),
    ...(property.length > 0 ? { property } : {}),
    ...(concept.children && concept.children.length > 0 ? { concept: concept.children.map(fhirConcept) } : {}),
  };
}
