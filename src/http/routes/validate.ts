import type { Request, Response, Router } from 'express';
import type { OperationOutcome } from 'fhir/r4.js';
import { known, scopes } from '../../access/need.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { searchedTypes } from '../../search/parameters.ts';
import type { ValidationIssue } from '../../validation/issue.ts';
import { type CheckedType, checkedTypes } from '../../validation/r4-definitions.ts';
import { createValidator, type ValidateResource } from '../../validation/validate-resource.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { checkFormat } from '../fhir-answer.ts';
import { readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';
import { resourceIdOf } from '../resource-id.ts';

type Json = Readonly<Record<string, unknown>>;

/** Objects inside one another: a resource of R4 in a parameter stays far below. */
const maxDepth = 64;

/** Issues that are answered; a resource with more has one thing wrong many times. */
const mostIssues = 200;

/** A Bundle is many times the exam that it was made from; that of a foot drop has half a megabyte. */
const bundleLimitBytes = 2 * 1024 * 1024;

const modes = ['create', 'update', 'profile'] as const;

/**
 * `[type]/$validate` and `[type]/[id]/$validate` for the types that the service makes or serves. The answer is 200
 * whatever was found. With an id, what is kept is checked where no resource is sent.
 * Source: http://hl7.org/fhir/R4/resource-operation-validate.html
 */
export function validateRoutes({ conformance, resources, bodyLimitBytes }: AppContext): Router {
  const router = newRouter();
  let building: Promise<ValidateResource> | undefined;
  const validator = () => {
    building ??= createValidator(conformance).catch((error) => {
      building = undefined;
      throw error;
    });
    return building;
  };
  for (const type of checkedTypes) {
    const handle = async (req: Request, res: Response) => {
      const id = req.params.id === undefined ? undefined : resourceIdOf(req);
      const { resource: sent, profile } = question(req);
      const resource = sent ?? (id !== undefined ? await kept(type, id) : undefined);
      if (resource === undefined) throw bad('A resource was expected.');
      const validate = await validator();
      const found = await validate(type, resource, profile);
      const isOther = sent !== undefined && id !== undefined && sent.id !== id;
      answerJson(res, 200, mediaTypes.fhir, outcome(isOther ? [otherId(type), ...found] : found, type));
    };
    const limitBytes = type === 'Bundle' ? Math.max(bodyLimitBytes, bundleLimitBytes) : bodyLimitBytes;
    const post = [requestBody(limitBytes), handle];
    endpoint(router, `/fhir/${type}/$validate`, known, { post });
    // What is kept may be checked, and faults quote it.
    endpoint(router, `/fhir/${type}/:id/$validate`, scopes(`${type}.r`), { post });
  }
  async function kept(type: CheckedType, id: string): Promise<Json> {
    const searched = searchedTypes.find((one) => one === type);
    const found = searched && (await resources.read(searched, id));
    if (found === undefined) throw new NotFoundError(`There is no ${type} with this id.`);
    return JSON.parse(found.json);
  }

  return router;
}

function otherId(type: CheckedType): ValidationIssue {
  const text = 'The resource must have the id that the address has.';
  return { severity: 'error', type: 'invalid', text, expression: `${type}.id` };
}

/** The resource itself with the rest in the query, or Parameters. @throws RequestError BAD_REQUEST */
function question(req: Request): { readonly resource: Json | undefined; readonly profile: string | undefined } {
  const query = readQuery(req, ['mode', 'profile', '_format']);
  checkFormat(query.get('_format'));
  const asked = new Map<string, unknown>(query);
  const body = object(parseStrictJson(bytesOf(req), { maxDepth }));
  let resource: unknown = body;
  if (body.resourceType === 'Parameters') {
    resource = undefined;
    for (const entry of Array.isArray(body.parameter) ? (body.parameter as unknown[]) : []) {
      const { name, resource: sent, valueCode, valueUri } = object(entry);
      if (name !== 'resource' && name !== 'mode' && name !== 'profile') {
        throw bad('There is an unknown parameter. Known here: resource, mode, profile.');
      }
      if (name === 'resource' ? resource !== undefined : asked.has(name))
        throw bad(`The parameter ${name} is there twice.`);
      if (name === 'resource') resource = sent;
      else asked.set(name, name === 'mode' ? valueCode : valueUri);
    }
  }
  const mode = asked.get('mode');
  const profile = asked.get('profile');
  if (mode !== undefined && !modes.some((one) => one === mode)) {
    throw bad(`mode must be one of: ${modes.join(', ')}. Nothing that the service has made can be deleted.`);
  }
  if (profile !== undefined && typeof profile !== 'string') throw bad('profile must be a valueUri.');
  if (mode === 'profile' && profile === undefined) throw bad('The mode profile needs a profile.');
  return { resource: resource === undefined ? undefined : object(resource), profile };
}

function object(value: unknown): Json {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw bad('A resource was expected.');
  return value as Json;
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}

function outcome(found: readonly ValidationIssue[], type: string): OperationOutcome {
  const allOk = { severity: 'information', type: 'informational', text: 'No faults were found.' } as const;
  const more = { severity: 'information', type: 'incomplete', text: 'There are more faults than are listed.' } as const;
  const issues = [
    ...(found.some(({ severity }) => severity === 'error') ? [] : [{ ...allOk, expression: type }]),
    ...[...found].sort((a, b) => rank[a.severity] - rank[b.severity]).slice(0, mostIssues),
    ...(found.length > mostIssues ? [{ ...more, expression: type }] : []),
  ];
  return {
    resourceType: 'OperationOutcome',
    issue: issues.map(({ severity, type: code, text, expression }) => ({
      severity,
      code,
      details: { text },
      expression: [expression],
    })),
  };
}

const rank = { error: 0, warning: 1, information: 2 } as const;
