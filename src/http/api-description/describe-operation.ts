import type { ApiHeader } from './headers.ts';
import type { ApiAnswer, ApiCall, ApiOperation, ApiParameter, TakenFrom, WorkedOut } from './operation.ts';
import { apiParameters } from './parameters.ts';
import { problemAnswers } from './problem-answers.ts';
import { securityOf } from './scopes.ts';

type Json = Readonly<Record<string, unknown>>;

/** Parts that operations share. */
export interface SharedParts {
  readonly parameters: Record<string, unknown>;
  readonly responses: Record<string, unknown>;
}

/**
 * One operation as OpenAPI has it; what it shares with others goes into `shared`.
 * @param workOut values of the examples that the engine gives
 */
export function describeOperation(operation: ApiOperation, shared: SharedParts, workOut: WorkOut): Json {
  const { refs, components } = problemAnswers(operation);
  Object.assign(shared.responses, components);
  const calls = operation.calls ?? [];
  const { body } = operation;
  return {
    operationId: operation.id,
    tags: [operation.area],
    summary: operation.summary,
    ...(operation.description === undefined ? {} : { description: operation.description }),
    ...(operation.family === undefined ? {} : { 'x-family': operation.family }),
    ...(operation.isRepeatable ? { 'x-repeatable': true } : {}),
    security: securityOf(operation),
    parameters: parametersOf(operation).map((parameter) => parameterOf(parameter, calls, shared)),
    ...(body === undefined
      ? {}
      : {
          requestBody: {
            description: body.description,
            required: body.required === true,
            content: Object.fromEntries(
              Object.entries(body.content).map(([type, schema]) => [type, { schema, ...bodyExamples(type, calls) }]),
            ),
          },
        }),
    responses: responsesOf(operation, { refs, components }, workOut),
  };
}

export type WorkOut = (name: string) => unknown;

function parametersOf({ parameters = [] }: ApiOperation): (ApiParameter & { readonly shared?: string })[] {
  return parameters.map((parameter) =>
    typeof parameter === 'string' ? { ...apiParameters[parameter], component: parameter } : parameter,
  );
}

/** A parameter is a reference to a shared one, unless an example gives it a value. */
function parameterOf(parameter: ApiParameter, calls: readonly ApiCall[], shared: SharedParts): Json {
  const { component, required, ...rest } = parameter;
  const whole = { ...rest, required: required === true || parameter.in === 'path' };
  const examples = calls.flatMap(({ name, says, parameters = {} }) => {
    const value = parameters[parameter.name];
    if (value === undefined) return [];
    if (typeof value !== 'object') return [[name, { summary: says, value }] as const];
    const { shown, from } = value satisfies TakenFrom;
    return [[name, { summary: says, value: shown, 'x-taken-from': from }] as const];
  });
  if (examples.length > 0) return { ...whole, examples: Object.fromEntries(examples) };
  if (component === undefined) return whole;
  shared.parameters[component] = whole;
  return { $ref: `#/components/parameters/${component}` };
}

function bodyExamples(type: string, calls: readonly ApiCall[]): Json {
  const own = calls.filter(({ body }) => body?.type === type);
  if (own.length === 0) return {};
  return {
    examples: Object.fromEntries(own.map(({ name, says, body }) => [name, { summary: says, value: body?.value }])),
  };
}

/** Answers of success, then failures; a failure with an example is written out, since a reference has no room for one. */
function responsesOf(
  { answers, calls = [] }: ApiOperation,
  problems: ReturnType<typeof problemAnswers>,
  workOut: WorkOut,
): Json {
  const { refs, components } = problems;
  const statuses = [...new Set([...Object.keys(answers), ...Object.keys(refs)])].sort();
  return Object.fromEntries(
    statuses.map((status) => {
      const own = calls.filter((call) => String(call.status) === status);
      const success = answers[Number(status)];
      if (success !== undefined) return [status, responseOf(success, own, workOut)];
      const reference = refs[status] as { readonly $ref: string };
      if (own.length === 0) return [status, reference];
      const whole = components[reference.$ref.slice('#/components/responses/'.length)] as { content: Json };
      const [[type, media] = ['', {}]] = Object.entries(whole.content);
      const content = { [type]: { ...(media as Json), examples: answerExamples(own, workOut) } };
      return [status, { ...whole, content }];
    }),
  );
}

function responseOf(answer: ApiAnswer, calls: readonly ApiCall[], workOut: WorkOut): Json {
  const headers: readonly ApiHeader[] = ['X-Request-Id', ...(answer.headers ?? [])];
  const examples = (type: string) => calls.filter((call) => call.answer?.type === type);
  return {
    description: answer.description,
    headers: Object.fromEntries(headers.map((name) => [name, { $ref: `#/components/headers/${name}` }])),
    ...(answer.content === undefined
      ? {}
      : {
          content: Object.fromEntries(
            Object.entries(answer.content).map(([type, schema]) => {
              const own = examples(type);
              return [type, { schema, ...(own.length === 0 ? {} : { examples: answerExamples(own, workOut) }) }];
            }),
          ),
        }),
    ...(calls.some((call) => call.answer === undefined)
      ? {
          'x-examples': answerExamples(
            calls.filter((call) => call.answer === undefined),
            workOut,
          ),
        }
      : {}),
  };
}

/** `x-excerpt`: the real answer goes on. `x-varies`: JSON Pointers of what is different each time. */
function answerExamples(calls: readonly ApiCall[], workOut: WorkOut): Json {
  return Object.fromEntries(
    calls.map(({ name, says, answer }) => {
      if (answer === undefined) return [name, { summary: says }];
      const { value, isExcerpt, varies } = answer;
      const given = value as Partial<WorkedOut>;
      return [
        name,
        {
          summary: says,
          value: given.workedOut === undefined ? value : workOut(given.workedOut),
          ...(isExcerpt ? { 'x-excerpt': true } : {}),
          ...(varies === undefined ? {} : { 'x-varies': varies }),
        },
      ];
    }),
  );
}
