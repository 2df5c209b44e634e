import type {
  CodeSystem,
  CodeSystemConcept,
  CodeSystemConceptProperty,
  CodeSystemProperty,
  ValueSet,
} from 'fhir/r4.js';
import { canonicalBase } from '../../terminology/systems.ts';
import { type HeaderText, header, type Release, valueSetUrl } from './header.ts';

/** A concept of a local code system before it is cast into FHIR; property order is kept. */
export interface LocalConcept {
  readonly code: string;
  readonly display: string;
  readonly definition?: string | undefined;
  /** What clinicians also call it. */
  readonly otherNames?: readonly string[];
  readonly properties?: Readonly<Record<string, string | boolean | readonly string[] | undefined>>;
  /** Codes that it stands below, beside the one that it is nested in. */
  readonly parents?: readonly string[];
  /** A heading that is never recorded itself. */
  readonly isAbstract?: boolean;
  readonly children?: readonly LocalConcept[];
}

export interface LocalCodeSystem extends HeaderText {
  /** Id of the ValueSet that holds exactly these codes. */
  readonly allCodes: string;
  readonly properties?: Readonly<Record<string, string>>;
  readonly hierarchy?: 'grouped-by' | 'is-a' | 'part-of';
  readonly concepts: readonly LocalConcept[];
}

/** Properties that HL7 defines for all code systems. Source: http://hl7.org/fhir/R4/codesystem-concept-properties.html */
const hl7Properties = {
  parent: {
    code: 'parent',
    uri: 'http://hl7.org/fhir/concept-properties#parent',
    description: 'A code that this one stands below; there may be several.',
    type: 'code',
  },
  notSelectable: {
    code: 'notSelectable',
    uri: 'http://hl7.org/fhir/concept-properties#notSelectable',
    description: 'A heading to search by, which is never recorded itself.',
    type: 'boolean',
  },
} as const satisfies Record<string, CodeSystemProperty>;

/** What the filter on the hierarchy takes in; a value set that asks for it gets codes, whatever the hierarchy means. */
const hierarchyFilter = {
  code: 'concept',
  description: 'Codes by their place in the hierarchy; hierarchyMeaning says what that place means.',
  operator: ['is-a' as const, 'descendent-of' as const],
  value: 'A code of this code system.',
};

/**
 * The CodeSystem and the ValueSet of all its codes. A hierarchy stands in `parent` properties, because a code may have
 * several parents and because the file stays smaller than with nested concepts.
 */
export function localCodeSystem(release: Release, system: LocalCodeSystem): [CodeSystem, ValueSet] {
  const url = `${canonicalBase}/CodeSystem/${system.id}`;
  const codes = allCodes(system.concepts);
  const twice = codes.find((code, index) => codes.indexOf(code) !== index);
  if (twice !== undefined) throw new Error(`CodeSystem ${system.id} has the code ${twice} twice`);
  const unknown = all(system.concepts)
    .flatMap(({ parents = [] }) => parents)
    .find((code) => !codes.includes(code));
  if (unknown !== undefined) throw new Error(`CodeSystem ${system.id} has no code ${unknown} to be a parent`);
  const { copyright: _, ...withoutNotice } = system;
  const properties = propertyDefinitions(system);
  return [
    {
      ...header('CodeSystem', release, system),
      caseSensitive: true,
      valueSet: valueSetUrl(system.allCodes),
      ...(system.hierarchy ? { hierarchyMeaning: system.hierarchy } : {}),
      content: 'complete',
      count: codes.length,
      ...(system.hierarchy ? { filter: [hierarchyFilter] } : {}),
      ...(properties.length > 0 ? { property: properties } : {}),
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

function all(concepts: readonly LocalConcept[]): LocalConcept[] {
  return concepts.flatMap((concept) => [concept, ...all(concept.children ?? [])]);
}

function allCodes(concepts: readonly LocalConcept[]): string[] {
  return all(concepts).map(({ code }) => code);
}

function propertyDefinitions(system: LocalCodeSystem): CodeSystemProperty[] {
  const concepts = all(system.concepts);
  return [
    ...Object.entries(system.properties ?? {}).map(([code, description]) => ({
      code,
      description,
      type: concepts.some(({ properties }) => typeof properties?.[code] === 'boolean')
        ? ('boolean' as const)
        : ('string' as const),
    })),
    ...(concepts.some(({ parents }) => parents) ? [hl7Properties.parent] : []),
    ...(concepts.some(({ isAbstract }) => isAbstract) ? [hl7Properties.notSelectable] : []),
  ];
}

function fhirConcept(concept: LocalConcept): CodeSystemConcept {
  const property: CodeSystemConceptProperty[] = [
    ...Object.entries(concept.properties ?? {}).flatMap(([code, value]): CodeSystemConceptProperty[] => {
      if (value === undefined) return [];
      if (typeof value === 'boolean') return [{ code, valueBoolean: value }];
      return [value].flat().map((valueString) => ({ code, valueString }));
    }),
    ...(concept.parents ?? []).map((valueCode) => ({ code: hl7Properties.parent.code, valueCode })),
    ...(concept.isAbstract ? [{ code: hl7Properties.notSelectable.code, valueBoolean: true }] : []),
  ];
  const designation = (concept.otherNames ?? []).map((value) => ({ language: 'en', value }));
  return {
    code: concept.code,
    display: concept.display,
    ...(concept.definition ? { definition: concept.definition } : {}),
    ...(designation.length > 0 ? { designation } : {}),
    ...(property.length > 0 ? { property } : {}),
    ...(concept.children && concept.children.length > 0 ? { concept: concept.children.map(fhirConcept) } : {}),
  };
}
