import type { Request } from 'express';
import { parseStrictJson } from '../exam/strict-json.ts';
import { NotFoundError, RequestError } from '../kernel/errors.ts';
import { type CompiledView, compileView } from '../views/compile-view.ts';
import type { LoadedView } from '../views/load-views.ts';
import { parseLossless } from '../views/lossless-json.ts';
import { type RowFormat, rowFormats } from '../views/write-rows.ts';
import { oneOf, positiveInteger, readQuery } from './query.ts';
import { bytesOf } from './request-body.ts';

/** What a view is to be run over, and how much of it is wanted. */
export interface ViewScope {
  /** Resources that came with the request; undefined for those of the store. */
  readonly resources: readonly unknown[] | undefined;
  /** Reference to the patient whose resources are taken. */
  readonly patient: string | undefined;
  /** ms since 1970; what changed later than this. */
  readonly since: number | undefined;
  /** Most rows. */
  readonly limit: number | undefined;
}

export interface ViewRequest {
  readonly view: CompiledView;
  readonly format: RowFormat;
  readonly header: boolean;
  readonly scope: ViewScope;
}

/** Media type of each format. */
export const rowMediaTypes: Readonly<Record<RowFormat, string>> = {
  csv: 'text/csv; charset=utf-8',
  ndjson: 'application/x-ndjson',
  json: 'application/json; charset=utf-8',
};

const formatNames: ReadonlyMap<string, RowFormat> = new Map([
  ...rowFormats.map((format) => [format, format] as const),
  ['text/csv', 'csv'],
  ['application/x-ndjson', 'ndjson'],
  ['application/ndjson', 'ndjson'],
  ['application/json', 'json'],
]);
const acceptedTypes = ['application/json', 'text/csv', 'application/x-ndjson', 'application/ndjson'];

const simpleParameters = ['_format', 'header', 'viewReference', 'patient', '_since', '_limit'] as const;
const notOffered = ['group', 'source'] as const;
export const scopeParameters = ['header', 'patient', '_since', '_limit'] as const;

/** Objects inside one another: a FHIR resource in a Parameters. */
const maxDepth = 60;

type Values = ReadonlyMap<string, string>;

/**
 * Reads a request to run a view, from the query of a GET or the Parameters of a POST.
 * @param accept the Accept header; `_format` beats it
 * @throws RequestError, NotFoundError for a view that is not here, ViewInvalidError for one that cannot be run
 * Source: SQL on FHIR 2.1.0-pre, operation $viewdefinition-run.
 */
export function readViewRequest(req: Request, views: ReadonlyMap<string, LoadedView>): ViewRequest {
  const query = readQuery(req, [...simpleParameters, ...notOffered]);
  const body = req.method === 'POST' ? readParameters(req) : { values: new Map<string, string>(), resources: [] };
  for (const name of body.values.keys()) {
    if (query.has(name as (typeof simpleParameters)[number])) throw bad(`The parameter ${name} is there twice.`);
  }
  const values: Values = new Map([...query, ...body.values]);
  for (const name of notOffered) if (values.has(name)) throw bad(`The parameter ${name} is not offered here.`);
  const reference = values.get('viewReference');
  if ((reference === undefined) === (body.viewResource === undefined)) {
    throw bad('Expected exactly one of viewReference and viewResource.');
  }
  const format = formatOf(req, values.get('_format'));
  const { header, ...scope } = readScope(values);
  const view = reference === undefined ? compileView(body.viewResource) : viewAt(reference, views);
  const resources = body.resources.length === 0 ? undefined : body.resources;
  return { view, format, header, scope: { ...scope, resources } };
}

/** @throws RequestError BAD_REQUEST */
export function readScope(values: Values): Omit<ViewScope, 'resources'> & { readonly header: boolean } {
  const header = oneOf('header', values.get('header') ?? 'true', ['true', 'false']);
  const patient = values.get('patient');
  if (patient !== undefined && !/^(\S+\/)?Patient\/[A-Za-z0-9.-]{1,64}$/.test(patient)) {
    throw bad('patient must be a reference such as Patient/4711.');
  }
  const since = values.get('_since')?.replaceAll(' ', '+');
  const isInstant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/.test(since ?? '');
  const time = since === undefined ? undefined : isInstant ? Date.parse(since) : Number.NaN;
  if (Number.isNaN(time)) throw bad('_since must be an instant such as 2026-03-14T10:20:00Z.');
  const limit = values.get('_limit');
  return {
    header: header === 'true',
    patient,
    since: time,
    limit: limit === undefined ? undefined : positiveInteger('_limit', limit),
  };
}

function formatOf(req: Request, asked: string | undefined): RowFormat {
  if (asked !== undefined) {
    const format = formatNames.get(asked.replaceAll(' ', '+').split(';')[0]?.trim() ?? '');
    if (format === undefined) throw bad(`_format must be one of: ${rowFormats.join(', ')}.`);
    return format;
  }
  // The body is data in any case, so a client of FHIR gets the JSON.
  const type = req.accepts([...acceptedTypes, 'application/fhir+json']);
  if (type === false) throw new RequestError('NOT_ACCEPTABLE', `This path answers ${acceptedTypes.join(' or ')}.`);
  return formatNames.get(type) ?? 'json';
}

function viewAt(reference: string, views: ReadonlyMap<string, LoadedView>): CompiledView {
  const address = reference.replace(/\|.*$/, '');
  const all = [...views.values()];
  const found = all.find(({ definition: { id, url } }) => address === `ViewDefinition/${id}` || address === url);
  if (found === undefined) throw new NotFoundError('There is no view at this reference; GET /views lists them.');
  return found.compiled;
}

interface Body {
  readonly values: Values;
  readonly viewResource?: unknown;
  readonly resources: readonly unknown[];
}

function readParameters(req: Request): Body {
  const bytes = bytesOf(req);
  const body = parseStrictJson(bytes, { maxDepth }) as { resourceType?: unknown; parameter?: unknown } | null;
  if (body?.resourceType !== 'Parameters' || !Array.isArray(body.parameter)) throw bad('The body must be Parameters.');
  // Decimals of resources are kept as written; what says how to run is plain.
  const lossless = parseLossless(Buffer.from(bytes).toString('utf8')) as { parameter: { resource?: unknown }[] };
  const values = new Map<string, string>();
  const resources: unknown[] = [];
  const found: { viewResource?: unknown } = {};
  for (const [index, entry] of (body.parameter as unknown[]).entries()) {
    const { name, resource, ...rest } = (entry ?? {}) as Record<string, unknown>;
    if (name === 'resource' || name === 'viewResource') {
      if (typeof resource !== 'object' || resource === null) throw bad(`The parameter ${name} must have a resource.`);
      if (name === 'resource') resources.push(lossless.parameter[index]?.resource);
      else if ('viewResource' in found) throw bad('The parameter viewResource is there twice.');
      else found.viewResource = resource;
      continue;
    }
    const known = [...simpleParameters, ...notOffered].find((candidate) => candidate === name);
    if (known === undefined) {
      throw bad(`There is an unknown parameter. Known here: ${simpleParameters.join(', ')}, viewResource, resource.`);
    }
    if (values.has(known)) throw bad(`The parameter ${known} is there twice.`);
    values.set(known, simpleValue(known, rest));
  }
  return { values, resources, ...found };
}

/** The value[x] of a parameter as text; of a Reference, what it refers to. */
function simpleValue(name: string, parts: Readonly<Record<string, unknown>>): string {
  const [value] = Object.entries(parts).flatMap(([key, part]) => (key.startsWith('value') ? [part] : []));
  const simple = typeof value === 'object' && value !== null ? (value as { reference?: unknown }).reference : value;
  if (typeof simple !== 'string' && typeof simple !== 'boolean' && typeof simple !== 'number') {
    throw bad(`The parameter ${name} must have a simple value or a reference.`);
  }
  return String(simple);
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
