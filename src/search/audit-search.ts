import { closest, distance } from 'fastest-levenshtein';
import type { Coding } from 'fhir/r4.js';
import { entryValue } from '../audit/audit-record.ts';
import { interactionNames, interactionOf } from '../audit/interactions.ts';
import { RequestError } from '../kernel/errors.ts';
import { systems } from '../terminology/systems.ts';
import type { AuditFilter, AuditQuery } from './audit-query.ts';
import type { SearchParam } from './capability.ts';
import { splitEscaped, unescaped } from './escaped.ts';
import { malformed } from './malformed.ts';
import { readDatePattern } from './read-range.ts';
import { longestValue, parametersAllowed } from './read-search.ts';
import { defaultCount, readCount, readPresentation, readTotal } from './result-parameters.ts';

/** A value of a token parameter: what it is called where, and what it stands for here. */
interface Known<Value> {
  readonly system: string;
  readonly code: string;
  readonly value: Value;
}

interface AuditParameter {
  readonly name: string;
  readonly type: SearchParam['type'];
  readonly documentation: string;
  /** Takes `:identifier` too. */
  readonly hasIdentifier?: true;
  readonly read: (alternatives: readonly string[], isIdentifier: boolean) => AuditFilter;
}

const actions = ['C', 'R', 'U', 'D', 'E'].map((code) => known('http://hl7.org/fhir/audit-event-action', code, code));
const outcomes = ['0', '4', '8'].map((code) => known('http://hl7.org/fhir/audit-event-outcome', code, code));
const types = interactionNames.map((name) => knownCoding(interactionOf(name).type, name));
const subtypes = interactionNames.map((name) => knownCoding(interactionOf(name).subtype, name));

function known<Value>(system: string, code: string, value: Value): Known<Value> {
  return { system, code, value };
}

function knownCoding<Value>({ system = '', code = '' }: Coding, value: Value) {
  return known(system, code, value);
}

const time =
  (name: string) =>
  (alternatives: readonly string[]): AuditFilter => ({
    by: 'time',
    anyOf: alternatives.map((text) => readDatePattern(text, name)),
  });

/** What the audit trail is searched by; each parameter means what R4 has under its name. */
const parameters: readonly AuditParameter[] = [
  {
    name: '_id',
    type: 'token',
    documentation: 'Number of the entry.',
    read: (alternatives) => ({ by: 'number', anyOf: alternatives.map(unescaped).filter(isNumber).map(Number) }),
  },
  { name: '_lastUpdated', type: 'date', documentation: 'When it was recorded.', read: time('_lastUpdated') },
  {
    name: 'action',
    type: 'token',
    documentation: 'C, R, U, D or E.',
    read: (alternatives) => ({ by: 'action', anyOf: meant(alternatives, actions) }),
  },
  {
    name: 'agent-name',
    type: 'string',
    documentation: 'Start of the name of the program that asked, or of the key of the user behind it.',
    read: (alternatives) => ({
      by: 'agent',
      match: 'start',
      anyOf: alternatives.map((text) => entryValue(unescaped(text).toLowerCase())),
    }),
  },
  { name: 'date', type: 'date', documentation: 'When it was recorded.', read: time('date') },
  {
    name: 'entity',
    type: 'reference',
    documentation:
      'The resource that was touched, as Type/id; with :identifier the exam, by its id in /exams/{id} with or without its system.',
    hasIdentifier: true,
    read: (alternatives, isIdentifier) =>
      isIdentifier
        ? { by: 'exam', match: 'whole', anyOf: alternatives.flatMap(examNamed) }
        : { by: 'resource', match: 'whole', anyOf: alternatives.map((text) => relative(unescaped(text))) },
  },
  {
    name: 'outcome',
    type: 'token',
    documentation: '0, 4 (refused) or 8 (failed).',
    read: (alternatives) => ({ by: 'outcome', anyOf: meant(alternatives, outcomes) }),
  },
  {
    name: 'patient',
    type: 'reference',
    documentation: 'Whose record it was, as the exam refers to it; with :identifier as system|value.',
    hasIdentifier: true,
    read: (alternatives, isIdentifier) => ({
      by: 'patient',
      match: 'whole',
      anyOf: alternatives.map((text) => entryValue(isIdentifier ? identifierNamed(text) : personNamed(text))),
    }),
  },
  {
    name: 'subtype',
    type: 'token',
    documentation: 'The interaction, such as read, search, create, update, delete or operation.',
    read: (alternatives) => ({ by: 'interaction', anyOf: meant(alternatives, subtypes) }),
  },
  {
    name: 'type',
    type: 'token',
    documentation:
      'rest for a request, 110110 for an exam that was erased by command, 110106 for the end of a bulk export.',
    read: (alternatives) => ({ by: 'interaction', anyOf: meant(alternatives, types) }),
  },
];

const resultParameters = ['_sort', '_count', '_total', '_summary', '_format', '_pretty', '_cursor'] as const;
type ResultParameter = (typeof resultParameters)[number];

/** `CapabilityStatement.rest.resource.searchParam` of AuditEvent. */
export const auditSearchParams: readonly SearchParam[] = parameters.map(({ name, type, documentation }) => ({
  name,
  type,
  documentation,
  definition: `http://hl7.org/fhir/SearchParameter/${name.startsWith('_') ? `Resource-${name.slice(1)}` : `AuditEvent-${name}`}`,
}));

export interface AuditSearch {
  readonly query: AuditQuery;
  readonly format?: string;
  readonly isPretty: boolean;
  readonly cursor?: string;
  /** The parameters that took effect, as sent. */
  readonly applied: readonly (readonly [string, string])[];
  readonly ignored: readonly string[];
}

/**
 * Reads a search of the audit trail.
 * @param isStrict `Prefer: handling=strict`: what is not understood is refused instead of left out
 * @throws RequestError BAD_REQUEST
 */
export function readAuditSearch(sent: readonly (readonly [string, string])[], isStrict: boolean): AuditSearch {
  if (sent.length > parametersAllowed) {
    throw new RequestError('BAD_REQUEST', `A search takes at most ${parametersAllowed} parameters.`);
  }
  const filters: AuditFilter[] = [];
  const result = new Map<ResultParameter, string>();
  const applied: (readonly [string, string])[] = [];
  const ignored: string[] = [];
  for (const [name, value] of sent) {
    if (value.length > longestValue) throw malformed(shown(name), `at most ${longestValue} characters`);
    const ofResult = resultParameters.find((one) => one === name);
    const filter = ofResult === undefined && value !== '' ? filterOf(name, value) : undefined;
    if (ofResult !== undefined && value !== '' && isUnderstood(ofResult, value)) {
      if (result.has(ofResult)) throw malformed(name, 'to stand once');
      result.set(ofResult, value);
    } else if (filter === undefined) {
      ignored.push(name);
      continue;
    } else filters.push(filter);
    applied.push([name, value]);
  }
  if (isStrict && ignored.length > 0) throw notUnderstoodOfAudit(ignored);
  const count = readCount(result.get('_count') ?? String(defaultCount));
  const isCountOnly = count === 0 || result.get('_summary') === 'count';
  const format = result.get('_format');
  const cursor = result.get('_cursor');
  const isPretty = readPresentation('_pretty', result.get('_pretty') ?? 'false').pretty === true;
  return {
    query: {
      filters,
      direction: result.get('_sort')?.startsWith('-') === false ? 'ascending' : 'descending',
      count: isCountOnly ? 0 : count,
      isCounted: isCountOnly || readTotal(result.get('_total') ?? 'none') === 'accurate',
    },
    isPretty,
    applied,
    ignored,
    ...(format === undefined ? {} : { format }),
    ...(cursor === undefined ? {} : { cursor }),
  };
}

function isUnderstood(name: ResultParameter, value: string): boolean {
  if (name === '_sort') return /^-?(date|_lastUpdated)$/.test(value);
  return name !== '_summary' || value === 'count' || value === 'false';
}

function filterOf(text: string, value: string): AuditFilter | undefined {
  const [name = '', modifier, ...more] = text.split(':');
  const parameter = parameters.find((one) => one.name === name);
  if (parameter === undefined || more.length > 0) return undefined;
  if (modifier !== undefined && !(modifier === 'identifier' && parameter.hasIdentifier === true)) return undefined;
  const alternatives = splitEscaped(value, ',');
  if (alternatives.includes('')) throw malformed(name, 'something on either side of every comma');
  return parameter.read(alternatives, modifier === 'identifier');
}

/** Tells what was not understood, with the nearest name. */
export function notUnderstoodOfAudit(names: readonly string[]): RequestError {
  const all = [...parameters.map(({ name }) => name), ...resultParameters];
  const each = [...new Set(names)].map((name) => {
    const bare = name.split(/[:.]/)[0] ?? '';
    if (all.some((one) => one === bare)) {
      return `${shown(name)} (${bare} is known, but not in this use or without a value)`;
    }
    const nearest = closest(bare, all);
    return distance(bare, nearest) <= Math.max(2, bare.length / 2)
      ? `${shown(name)} (did you mean ${nearest}?)`
      : shown(name);
  });
  return new RequestError('BAD_REQUEST', `A search of AuditEvent does not understand: ${each.join('; ')}.`);
}

/** What token values stand for: `code`, `system|code`, `|code` or `system|`. */
function meant<Value>(alternatives: readonly string[], all: readonly Known<Value>[]): Value[] {
  return all
    .filter(({ system, code }) =>
      alternatives.some((text) => {
        const [first = '', second] = splitEscaped(text, '|').map(unescaped);
        if (second === undefined) return first === code;
        return first === system && (second === '' || second === code);
      }),
    )
    .map(({ value }) => value);
}

function examNamed(text: string): string[] {
  const [first = '', second] = splitEscaped(text, '|').map(unescaped);
  if (second === undefined) return [first];
  return first === systems.exam ? [second] : [];
}

function identifierNamed(text: string): string {
  const [system = '', value] = splitEscaped(text, '|').map(unescaped);
  if (value === undefined) throw malformed('patient:identifier', 'a system and a value, as system|value');
  return `${system}|${value}`;
}

function personNamed(text: string): string {
  const reference = unescaped(text);
  return reference.includes('/') ? reference : `Patient/${reference}`;
}

/** A version names the resource all the same. */
function relative(reference: string): string {
  return entryValue(reference.replace(/\/_history\/.*$/, ''));
}

function isNumber(text: string): boolean {
  return /^[1-9]\d{0,14}$/.test(text);
}

/** A name as it may stand in a message: whatever somebody put in its place by mistake is cut short. */
function shown(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}...` : name;
}
