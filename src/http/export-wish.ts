import type { Request } from 'express';
import { mayBeEchoed } from '../exam/faults/echo.ts';
import { parseStrictJson } from '../exam/strict-json.ts';
import { RequestError } from '../kernel/errors.ts';
import type { ExportRequest } from '../store/export-store.ts';
import type { StoredType } from '../store/index/stored-types.ts';
import { parametersOf } from './form-body.ts';
import { prefers } from './prefer.ts';

/** What is exported; the software is part of it, since the exams refer to it. */
export const exportedTypes: readonly StoredType[] = [
  'Observation',
  'ClinicalImpression',
  'RiskAssessment',
  'ServiceRequest',
  'Provenance',
  'Device',
];

export const ndjson = 'application/fhir+ndjson';
const outputFormats = [ndjson, 'application/ndjson', 'ndjson'];
const known = ['_outputFormat', '_since', '_type'] as const;

/** Objects inside one another in Parameters with simple values. */
const maxDepth = 8;

const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;

export interface ExportWish {
  readonly types: readonly StoredType[];
  /** Whether the types were asked for by name. */
  readonly isNamed: boolean;
  readonly request: Pick<ExportRequest, 'since' | 'notices'>;
}

/**
 * What a kick-off asks for, in its query and, by POST, in Parameters. What is not supported is an error, unless the
 * caller prefers lenient handling; then it is left out and said in the manifest.
 * @throws RequestError BAD_REQUEST, NOT_JSON
 * Source: HL7 FHIR Bulk Data Access 2.0.0, Bulk Data Kick-off Request, Query Parameters.
 */
export function readExportWish(req: Request): ExportWish {
  const isLenient = prefers(req, 'handling=lenient');
  const given = [...parametersOf(req), ...bodyParameters(req)];
  const notices: string[] = [];
  const refuse = (text: string) => {
    if (!isLenient) throw bad(text);
    notices.push(`${text} It was left out.`);
  };
  for (const [name] of given) {
    if ((known as readonly string[]).includes(name)) continue;
    const named = mayBeEchoed(name.replace(/^_/, '')) ? `The parameter ${name}` : 'A parameter';
    refuse(`${named} is not supported; an export takes: ${known.join(', ')}.`);
  }
  const format = single(given, '_outputFormat')?.replaceAll(' ', '+');
  if (format !== undefined && !outputFormats.includes(format)) {
    throw bad(`_outputFormat must be one of: ${outputFormats.join(', ')}.`);
  }
  const asked = given.filter(([name]) => name === '_type').flatMap(([, value]) => value.split(','));
  const types = exportedTypes.filter((type) => asked.length === 0 || asked.includes(type));
  if (new Set(asked).size > types.length && asked.length > 0) refuse(`_type takes: ${exportedTypes.join(', ')}.`);
  const since = single(given, '_since')?.replaceAll(' ', '+');
  const time = since === undefined ? undefined : instant.test(since) ? Date.parse(since) : Number.NaN;
  if (Number.isNaN(time)) throw bad('_since must be an instant such as 2026-03-14T10:20:00Z.');
  return {
    types,
    isNamed: asked.length > 0,
    request: {
      ...(time === undefined ? {} : { since: time }),
      ...(notices.length === 0 ? {} : { notices: [...new Set(notices)].slice(0, mostNotices) }),
    },
  };
}

const mostNotices = 20;

/** The query of a kick-off for the manifest, without parameters that were left out: they might name somebody. */
export function knownQueryOf(req: Request): string {
  const [, query = ''] = /\?(.*)$/.exec(req.originalUrl) ?? [];
  const kept = query.split('&').filter((part) => (known as readonly string[]).includes(part.split('=')[0] ?? ''));
  return kept.length === 0 ? '' : `?${kept.join('&')}`;
}

function single(given: readonly (readonly [string, string])[], name: string): string | undefined {
  const values = given.filter(([one]) => one === name);
  if (values.length > 1) throw bad(`${name} is there twice.`);
  return values[0]?.[1];
}

/** Name and value of the Parameters in a body; none where there is no body. */
function bodyParameters(req: Request): (readonly [string, string])[] {
  if (!Buffer.isBuffer(req.body) || req.body.length === 0) return [];
  const body = parseStrictJson(req.body, { maxDepth }) as { resourceType?: unknown; parameter?: unknown } | null;
  const list = body?.parameter ?? [];
  if (body?.resourceType !== 'Parameters' || !Array.isArray(list)) throw bad('The body must be Parameters.');
  return (list as ({ name?: unknown } | null)[]).map((entry) => {
    const { name, ...values } = entry ?? {};
    const [value, ...others] = Object.values(values);
    if (typeof name !== 'string') throw bad('Each parameter must have a name.');
    // A parameter that is not supported may have parts; only its name is looked at.
    if (!(known as readonly string[]).includes(name)) return [name, ''] as const;
    if (typeof value !== 'string' || others.length > 0) throw bad(`${name} must have one text as its value.`);
    return [name, value] as const;
  });
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
