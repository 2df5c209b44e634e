import type { Request } from 'express';
import { parseStrictJson } from '../exam/strict-json.ts';
import { RequestError } from '../kernel/errors.ts';
import { checkFormat, isPretty } from './fhir-answer.ts';
import type { InputType, OperationInputs } from './operation-inputs.ts';
import { bytesOf } from './request-body.ts';

/** A code to work on. */
export interface AskedCoding {
  readonly system?: string;
  readonly version?: string;
  readonly code: string;
  readonly display?: string;
}

/** What an operation was asked, by the name of the parameter. */
export interface OperationInput {
  /** Values that are there once, as text. */
  readonly values: ReadonlyMap<string, string>;
  readonly lists: ReadonlyMap<string, readonly string[]>;
  readonly codings: ReadonlyMap<string, AskedCoding>;
  /** Codings of a CodeableConcept. */
  readonly concepts: ReadonlyMap<string, readonly AskedCoding[]>;
  /** Resources as they were sent; nothing is known of them but that they are objects of the type. */
  readonly resources: ReadonlyMap<string, Readonly<Record<string, unknown>>>;
  /** Whether the answer is to be indented. */
  readonly pretty: boolean;
}

/** Objects inside one another: a filter of a ValueSet in a parameter takes ten. */
const maxDepth = 24;

/** JSON types of the simple values, and what a text from a query must look like. */
const simple: Readonly<
  Partial<Record<InputType, { readonly json: string; readonly form?: RegExp; readonly says: string }>>
> = {
  boolean: { json: 'boolean', form: /^(?:true|false)$/, says: 'true or false' },
  integer: { json: 'number', form: /^\d{1,9}$/, says: 'a whole number from 0' },
  canonical: { json: 'string', says: 'a text' },
  date: { json: 'string', says: 'a text' },
  dateTime: { json: 'string', says: 'a text' },
  code: { json: 'string', says: 'a text' },
  string: { json: 'string', says: 'a text' },
  uri: { json: 'string', says: 'a text' },
};

/**
 * The input of an operation, from the query of a GET or the Parameters of a POST.
 * @throws RequestError BAD_REQUEST for a parameter that is not taken, is there too often, or has another type
 */
export function operationInput(req: Request, inputs: OperationInputs): OperationInput {
  const input = {
    values: new Map<string, string>(),
    lists: new Map<string, string[]>(),
    codings: new Map<string, AskedCoding>(),
    concepts: new Map<string, readonly AskedCoding[]>(),
    resources: new Map<string, Readonly<Record<string, unknown>>>(),
    pretty: isPretty(formOf(req, '_pretty')),
  };
  checkFormat(formOf(req, '_format'));
  const addSimple = (name: string, type: InputType, value: unknown, isText: boolean) => {
    const wanted = simple[type];
    if (wanted === undefined) throw bad(`The parameter ${name} is a ${type} and can only be sent by POST.`);
    const fits = isText ? typeof value === 'string' : typeof value === wanted.json;
    if (!fits || wanted.form?.test(String(value)) === false) throw bad(`The parameter ${name} must be ${wanted.says}.`);
    if (inputs.several?.includes(name)) input.lists.set(name, [...(input.lists.get(name) ?? []), String(value)]);
    else if (input.values.has(name)) throw bad(`The parameter ${name} is there twice.`);
    else input.values.set(name, String(value));
  };
  for (const [name, value] of Object.entries(req.query)) {
    if (name === '_format' || name === '_pretty') continue;
    const type = typeOf(inputs, name);
    for (const one of [value].flat()) addSimple(name, type, one, true);
  }
  if (req.method !== 'POST') return input;
  const body = parseStrictJson(bytesOf(req), { maxDepth }) as { resourceType?: unknown; parameter?: unknown } | null;
  if (body?.resourceType !== 'Parameters' || !Array.isArray(body.parameter ?? [])) {
    throw bad('The body must be Parameters.');
  }
  for (const entry of (body.parameter ?? []) as unknown[]) {
    const { name, ...rest } = objectOf(entry) ?? {};
    if (typeof name !== 'string') throw bad('Every parameter must have a name.');
    const type = typeOf(inputs, name);
    const [[element, value] = ['', undefined]] = Object.entries(rest).filter(([key]) =>
      /^(?:value[A-Z]|resource$)/.test(key),
    );
    if (simple[type] !== undefined) {
      addSimple(name, type, value, false);
      continue;
    }
    const known = [input.codings, input.concepts, input.resources];
    if (known.some((map) => map.has(name))) throw bad(`The parameter ${name} is there twice.`);
    const object = objectOf(value);
    const expected = type === 'ValueSet' ? 'resource' : `value${type}`;
    if (object === undefined || element !== expected) throw bad(`The parameter ${name} must have a ${expected}.`);
    if (type === 'Coding') input.codings.set(name, readCoding(object));
    else if (type === 'CodeableConcept') input.concepts.set(name, listOf(object.coding, name).map(readCoding));
    else if (object.resourceType !== type) throw bad(`The parameter ${name} must be a ${type}.`);
    else input.resources.set(name, object);
  }
  return input;
}

/** How the answer is to look, which every address takes. */
function formOf(req: Request, name: '_format' | '_pretty'): string | undefined {
  const value = req.query[name];
  if (value === undefined || typeof value === 'string') return value;
  throw bad(`The query parameter ${name} is there twice.`);
}

function typeOf({ takes, refuses }: OperationInputs, name: string): InputType {
  const type = Object.hasOwn(takes, name) ? takes[name] : undefined;
  if (type !== undefined) return type;
  if (Object.hasOwn(refuses, name)) throw bad(`The parameter ${name} is not taken here. ${refuses[name]}`);
  throw bad(`There is an unknown parameter. Known here: ${Object.keys(takes).join(', ')}.`);
}

function readCoding(value: unknown): AskedCoding {
  const { system, version, code, display } = objectOf(value) ?? {};
  if (typeof code !== 'string') throw bad('A coding must have a code.');
  return {
    code,
    ...(typeof system === 'string' && { system }),
    ...(typeof version === 'string' && { version }),
    ...(typeof display === 'string' && { display }),
  };
}

function objectOf(value: unknown): Readonly<Record<string, unknown>> | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Readonly<Record<string, unknown>>)
    : undefined;
}

function listOf(value: unknown, name: string): readonly unknown[] {
  if (!Array.isArray(value)) throw bad(`The parameter ${name} must have a list of codings.`);
  return value;
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
