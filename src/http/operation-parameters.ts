import type { Request } from 'express';
import { parseStrictJson } from '../exam/strict-json.ts';
import { RequestError } from '../kernel/errors.ts';
import { readQuery } from './query.ts';
import { bytesOf } from './request-body.ts';

/** What an operation was asked, each value as text and each coding by its parts. */
export interface OperationInput {
  readonly values: ReadonlyMap<string, string>;
  readonly codings: readonly { readonly system?: string; readonly code: string; readonly display?: string }[];
}

/** Objects inside one another: a CodeableConcept in a parameter takes six. */
const maxDepth = 12;

/**
 * The input of an operation, from the query of a GET or the Parameters of a POST.
 * @param known names of the simple parameters that the operation takes; any other is refused
 * @throws RequestError BAD_REQUEST
 */
export function operationInput(req: Request, known: readonly string[]): OperationInput {
  const values = new Map<string, string>(readQuery(req, [...known, '_format']));
  if (req.method !== 'POST') return { values, codings: [] };
  const body = parseStrictJson(bytesOf(req), { maxDepth }) as { resourceType?: unknown; parameter?: unknown } | null;
  if (body?.resourceType !== 'Parameters' || !Array.isArray(body.parameter)) throw bad('The body must be Parameters.');
  const codings: unknown[] = [];
  for (const entry of body.parameter as ({ name?: unknown } | null)[]) {
    const { name, ...rest } = entry ?? {};
    const [value] = Object.values(rest);
    if (name === 'coding') codings.push(value);
    else if (name === 'codeableConcept') codings.push(...list((value as { coding?: unknown } | null)?.coding));
    else if (typeof name !== 'string' || !known.includes(name)) {
      throw bad(`There is an unknown parameter. Known here: ${known.join(', ')}, coding, codeableConcept.`);
    } else if (values.has(name)) throw bad(`The parameter ${name} is there twice.`);
    else if (['string', 'boolean', 'number'].includes(typeof value)) values.set(name, String(value));
    else throw bad(`The parameter ${name} must have a simple value.`);
  }
  return { values, codings: codings.map(readCoding) };
}

function readCoding(value: unknown): OperationInput['codings'][number] {
  const { system, code, display } = (value ?? {}) as Record<string, unknown>;
  if (typeof code !== 'string') throw bad('A coding must have a code.');
  return { code, ...(typeof system === 'string' && { system }), ...(typeof display === 'string' && { display }) };
}

function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
