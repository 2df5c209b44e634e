import type { FhirResource } from 'fhir/r4.js';
import { plainText } from '../kernel/plain-text.ts';
import { systems } from '../terminology/systems.ts';
import type { Pseudonyms } from './pseudonyms.ts';
import { movedTime, nameIn, pseudonymousReference } from './subject.ts';

type Fields = Readonly<Record<string, unknown>>;

/**
 * Elements that are kept, by the resource they stand in; all else is left out, so that an element that is new one day
 * cannot carry a name out. Left out on purpose: narratives, notes, summaries, rationales and every other text, business
 * identifiers, examiners, and what was said to whom.
 */
const keptElements = {
  Observation: [
    'status',
    'category',
    'code',
    'subject',
    'encounter',
    'effectiveDateTime',
    'valueCodeableConcept',
    'valueQuantity',
    'dataAbsentReason',
    'interpretation',
    'bodySite',
    'method',
    'device',
    'hasMember',
    'derivedFrom',
    'component',
  ],
  ClinicalImpression: ['status', 'subject', 'encounter', 'effectiveDateTime', 'date', 'finding', 'supportingInfo'],
  RiskAssessment: [
    'status',
    'code',
    'method',
    'subject',
    'encounter',
    'occurrenceDateTime',
    'reasonReference',
    'prediction',
  ],
  ServiceRequest: [
    'status',
    'intent',
    'priority',
    'code',
    'subject',
    'encounter',
    'authoredOn',
    'reasonReference',
    'supportingInfo',
  ],
  Device: ['version', 'deviceName'],
} as const satisfies Record<string, readonly string[]>;

/** Types that have nothing for research and are left out whole. */
export const omittedTypes: ReadonlySet<string> = new Set(['Provenance', 'Composition', 'OperationOutcome']);

/** Names below an element that are followed; what holds text in words is not among them. */
const keptInside: ReadonlySet<string> = new Set([
  'coding',
  'extension',
  'url',
  'valueDecimal',
  'system',
  'code',
  'display',
  'value',
  'unit',
  'comparator',
  'reference',
  'type',
  'name',
  'valueCodeableConcept',
  'valueQuantity',
  'dataAbsentReason',
  'interpretation',
  'itemCodeableConcept',
  'itemReference',
  'outcome',
  'qualitativeRisk',
  'probabilityDecimal',
]);

/** Source: HL7 Terminology, v3 ObservationValue: PSEUDED, pseudonymized. */
const pseudonymised = {
  system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationValue',
  code: 'PSEUDED',
  display: 'pseudonymized',
};

/** A resource of a type that is not made here, of which it is not known what could name a person. */
export class UnknownTypeError extends Error {}

/**
 * A resource without what could name a person: pseudonyms for its id, its exam, its subject and its encounter, so that
 * what belonged together still does; times moved by the same span for the same subject; codes, values and references
 * kept. It claims no profile, since these ask for what was left out.
 * @returns undefined for a type that is left out whole
 * @throws UnknownTypeError
 */
export function deidentifyResource(resource: Fields, pseudonyms: Pseudonyms): FhirResource | undefined {
  const type = plainText(resource.resourceType);
  if (omittedTypes.has(type)) return undefined;
  if (!Object.hasOwn(keptElements, type)) throw new UnknownTypeError();
  const subject = nameIn(resource.subject);
  const shift = pseudonyms.shiftMs(subject ?? '');
  const entries = keptElements[type as keyof typeof keptElements].flatMap((name): [string, unknown][] => {
    const value = keptValue(name, resource[name], pseudonyms, shift);
    return value === undefined ? [] : [[name, value]];
  });
  return {
    resourceType: type,
    id: pseudonyms.of('id', plainText(resource.id)),
    meta: { security: [pseudonymised], ...tagOf(resource, pseudonyms) },
    ...Object.fromEntries(entries),
  } as unknown as FhirResource;
}

/** The tag that gathers what was made from one exam, with the pseudonym that the exam itself would get for its id. */
function tagOf({ meta }: Fields, pseudonyms: Pseudonyms) {
  const { tag = [] } = (meta ?? {}) as { tag?: readonly { system?: string; code?: string }[] };
  const exams = tag.filter(({ system }) => system === systems.exam);
  if (exams.length === 0) return {};
  return { tag: exams.map(({ code }) => ({ system: systems.exam, code: pseudonyms.of('id', plainText(code)) })) };
}

function keptValue(name: string, value: unknown, pseudonyms: Pseudonyms, shift: number): unknown {
  if (name === 'subject' || name === 'encounter') {
    const target = nameIn(value);
    const type = name === 'subject' ? 'Patient' : 'Encounter';
    return target === undefined ? undefined : pseudonymousReference(type, target, pseudonyms);
  }
  if (/^(date|authoredOn|.*DateTime)$/.test(name)) return movedTime(plainText(value), shift);
  return inside(value, pseudonyms);
}

/** The same structure with what is followed of it; undefined for what is empty then. */
function inside(value: unknown, pseudonyms: Pseudonyms): unknown {
  if (Array.isArray(value)) {
    const kept = value.map((item) => inside(item, pseudonyms)).filter((item) => item !== undefined);
    return kept.length === 0 ? undefined : kept;
  }
  if (typeof value !== 'object' || value === null) return value ?? undefined;
  const entries = Object.entries(value).flatMap(([name, inner]): [string, unknown][] => {
    if (!keptInside.has(name)) return [];
    const kept = name === 'reference' ? mappedReference(inner, pseudonyms) : inside(inner, pseudonyms);
    return kept === undefined ? [] : [[name, kept]];
  });
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}

/** `urn:uuid:ID` and `Type/ID` with the pseudonym of the id; anything else names somebody else's resource and is left out. */
function mappedReference(reference: unknown, pseudonyms: Pseudonyms): string | undefined {
  const found = /^(?<prefix>urn:uuid:|[A-Z][A-Za-z]+\/)(?<id>[A-Za-z0-9.-]{1,64})(?:\/_history\/\w+)?$/.exec(
    plainText(reference),
  );
  const { prefix = '', id = '' } = found?.groups ?? {};
  return found === null ? undefined : `${prefix}${pseudonyms.of('id', id)}`;
}
