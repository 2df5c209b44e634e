import type { Request } from 'express';
import { nearestKey } from '../exam/faults/nearest-key.ts';
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
  /** JSON Pointer to the view in the body; '' when it is the body, or is not there. */
  readonly viewPointer: string;
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
/** What a table can be answered as, most preferred first. */
export const rowTypes = ['application/json', 'text/csv', 'application/x-ndjson', 'application/ndjson'];

const simpleParameters = ['_format', 'header', 'viewReference', 'patient', '_since', '_limit'] as const;
const notOffered = ['group', 'source'] as const;
export const scopeParameters = ['header', 'patient', '_since', '_limit'] as const;

/** Objects inside one another: a FHIR resource in a Parameters. */
const maxDepth = 60;

type Values = ReadonlyMap<string, string>;

/**
 * Reads a request to run a view: from the address, the query, and the body of a POST, which is Parameters or the
 * ViewDefinition itself. `_format` beats the Accept header.
 * @throws RequestError, NotFoundError for a view that is not here, ViewInvalidError for one that cannot be run
 * Source: SQL on FHIR 2.1.0-pre, operation $viewdefinition-run.
 */
export function readViewRequest(req: Request, views: ReadonlyMap<string, LoadedView>): ViewRequest {
  const query = readQuery(req, [...simpleParameters, ...notOffered]);
  const body: Body = req.method === 'POST' ? readBody(req) : { values: new Map(), resources: [] };
  for (const name of body.values.keys()) {
    if (query.has(name as (typeof simpleParameters)[number])) throw bad(`The parameter ${name} is there twice.`);
  }
  const values: Values = new Map([...query, ...body.values]);
  for (const name of notOffered) if (values.has(name)) throw bad(`The parameter ${name} is not offered here.`);
  const format = formatOf(req, values.get('_format'));
  const { header, ...scope } = readScope(values);
  const view = askedView(req.params.id, values.get('viewReference'), body.viewResource, views);
  const resources = body.resources.length === 0 ? undefined : body.resources;
  const viewPointer = body.viewResource?.pointer ?? '';
  return { view, format, header, scope: { ...scope, resources, viewPointer } };
}

function askedView(
  id: Request['params'][string] | undefined,
  reference: string | undefined,
  sent: Body['viewResource'],
  views: ReadonlyMap<string, LoadedView>,
): CompiledView {
  if (id !== undefined) {
    if (reference === undefined && sent === undefined) return viewAt(`ViewDefinition/${String(id)}`, views);
    throw bad('The view is named by the address already.');
  }
  if (reference !== undefined && sent === undefined) return viewAt(reference, views);
  if (reference === undefined && sent !== undefined) return compileView(sent.definition, sent.pointer);
  throw bad('Expected exactly one of viewReference and viewResource.');
}

/** @throws RequestError BAD_REQUEST */
export function readScope(values: Values): Omit<ViewScope, 'resources' | 'viewPointer'> & { readonly header: boolean } {
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
  const type = req.accepts([...rowTypes, 'application/fhir+json']);
  if (type === false) throw new RequestError('NOT_ACCEPTABLE', `This path answers ${rowTypes.join(' or ')}.`);
  return formatNames.get(type) ?? 'json';
}

function viewAt(reference: string, views: ReadonlyMap<string, LoadedView>): CompiledView {
  const address = reference.replace(/\|.*$/, '');
  const all = [...views.values()];
  const found = all.find(({ definition: { id, url } }) => address === `ViewDefinition/${id}` || address === url);
  if (found === undefined) {
    const near = nearestKey(
      address.replace(/^.*\//, ''),
      all.map(({ definition: { id = '' } }) => id),
    );
    const hint = near === undefined ? '' : ` Did you mean ViewDefinition/${near}?`;
    throw new NotFoundError(`There is no view at this reference; GET /views lists them.${hint}`);
  }
  return found.compiled;
}

interface Body {
  readonly values: Values;
  readonly viewResource?: { readonly definition: unknown; readonly pointer: string };
  readonly resources: readonly unknown[];
}

function readBody(req: Request): Body {
  const bytes = bytesOf(req);
  const body = parseStrictJson(bytes, { maxDepth }) as { resourceType?: unknown; parameter?: unknown } | null;
  if (body?.resourceType === 'ViewDefinition') {
    return { values: new Map(), resources: [], viewResource: { definition: body, pointer: '' } };
  }
  if (body?.resourceType !== 'Parameters' || !Array.isArray(body.parameter ?? [])) {
    throw bad('The body must be Parameters or a ViewDefinition.');
  }
  // Decimals of resources are kept as written; what says how to run is plain.
  const lossless = parseLossless(Buffer.from(bytes).toString('utf8')) as { parameter: { resource?: unknown }[] };
  const values = new Map<string, string>();
  const resources: unknown[] = [];
  const found: { viewResource?: NonNullable<Body['viewResource']> } = {};
  for (const [index, entry] of ((body.parameter ?? []) as unknown[]).entries()) {
    const { name, resource, ...rest } = (entry ?? {}) as Record<string, unknown>;
    if (name === 'resource' || name === 'viewResource') {
      if (typeof resource !== 'object' || resource === null) throw bad(`The parameter ${name} must have a resource.`);
      if (name === 'resource') resources.push(lossless.parameter[index]?.resource);
      else if ('viewResource' in found) throw bad('The parameter viewResource is there twice.');
      else found.viewResource = { definition: resource, pointer: `/parameter/${index}/resource` };
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
