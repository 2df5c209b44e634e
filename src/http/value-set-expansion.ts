import type { ValueSet } from 'fhir/r4.js';
import type { Coding } from '../kernel/coding.ts';
import { NotFoundError, RequestError } from '../kernel/errors.ts';
import { uuidV5 } from '../kernel/uuid.ts';
import { type Compose, codesOf } from '../terminology/compose.ts';
import { contained, expandValueSet, isAbstract, isInactive, matching } from '../terminology/expand.ts';
import type { Codes } from '../terminology/hierarchy.ts';
import type { ConformanceResources } from '../terminology/load.ts';
import type { OperationInput } from './operation-parameters.ts';

/** UUID namespace of the identifiers of expansions. */
const expansionNamespace = '5a0c1c5e-0d0b-5c55-9d5e-3f1a6b0d2c71';

interface Terminology {
  readonly conformance: ConformanceResources;
  readonly codes: Codes;
}

/** The value set that was asked for, with all its codes. */
export interface AskedSet {
  readonly valueSet: ValueSet;
  readonly codings: readonly Coding[];
}

/** @throws NotFoundError for a value set that is not published here */
export function knownValueSet({ conformance, codes }: Terminology, url: string): AskedSet {
  const valueSet = conformance.byUrl(url);
  if (valueSet?.resourceType !== 'ValueSet') throw new NotFoundError('There is no ValueSet with this address here.');
  return { valueSet, codings: expandValueSet(conformance, codes, url) ?? [] };
}

/**
 * A value set that came with the request.
 * @throws RequestError BAD_REQUEST when it has no definition that can be worked out here
 */
export function sentValueSet({ conformance, codes }: Terminology, sent: Readonly<Record<string, unknown>>): AskedSet {
  const { compose, url, version } = sent;
  if (typeof compose !== 'object' || compose === null) {
    throw new RequestError('BAD_REQUEST', 'The value set must have a compose with at least one include.');
  }
  const codings = codesOf(compose as Compose, codes, (other) => expandValueSet(conformance, codes, other));
  // Nothing else of it is answered: what was not looked at is not vouched for.
  const valueSet: ValueSet = {
    resourceType: 'ValueSet',
    ...(typeof url === 'string' && { url }),
    ...(typeof version === 'string' && { version }),
    status: 'active',
    compose: compose as NonNullable<ValueSet['compose']>,
  };
  return { valueSet, codings };
}

/**
 * Answer of `ValueSet/$expand`: the codes that were asked for, flat and in the order of the definition.
 * Source: http://hl7.org/fhir/R4/valueset-operation-expand.html
 */
export function expansion(codes: Codes, asked: AskedSet, input: OperationInput, now: Date): ValueSet {
  const { values, lists } = input;
  const isOn = (name: string) => values.get(name) === 'true';
  const withoutSystems = lists.get('exclude-system') ?? [];
  const all = matching(codes, asked.codings, values.get('filter') ?? '').filter(
    (coding) =>
      !withoutSystems.includes(coding.system) &&
      !(isOn('activeOnly') && isInactive(codes, coding)) &&
      !(isOn('excludeNotForUI') && isAbstract(codes, coding)),
  );
  const offset = Number(values.get('offset') ?? 0);
  const contains = all.slice(offset, offset + Number(values.get('count') ?? all.length));
  const { compose, text: _, ...valueSet } = asked.valueSet;
  const name = JSON.stringify([valueSet.url, valueSet.version, compose, [...values], withoutSystems]);
  return {
    ...valueSet,
    ...(isOn('includeDefinition') && compose && { compose }),
    expansion: {
      identifier: `urn:uuid:${uuidV5(name, expansionNamespace)}`,
      timestamp: now.toISOString(),
      total: all.length,
      offset,
      ...(contains.length > 0 && {
        contains: contains.map((one) => contained(codes, one, isOn('includeDesignations'))),
      }),
    },
  };
}
