import { mediaTypes } from '../answer.ts';
import { type ProblemCode, problemKinds } from '../problems.ts';
import { type ApiOperation, componentSchema } from './operation.ts';
import { scopesOf } from './scopes.ts';

type Json = Readonly<Record<string, unknown>>;

const codes = Object.keys(problemKinds) as ProblemCode[];
const always: readonly ProblemCode[] = ['BAD_REQUEST', 'NOT_ACCEPTABLE', 'UNEXPECTED'];
const ofAccess: readonly ProblemCode[] = [
  'UNAUTHENTICATED',
  'INVALID_TOKEN',
  'INSUFFICIENT_SCOPE',
  'ACCESS_UNAVAILABLE',
];
const ofHaste: readonly ProblemCode[] = ['RATE_LIMITED', 'OVERLOADED', 'TIMED_OUT'];
/** What watches the service is never put off. */
const isWatching = (path: string) => /^\/(health\/|metrics$)/.test(path);
const ofStore: readonly ProblemCode[] = ['STORE_CORRUPT', 'STORE_UNAVAILABLE'];

/**
 * The ways in which an operation can fail, by status, as references to components; those that mean the same stand there
 * once. Which form they have goes by the path, as in `errorHandler`.
 */
export function problemAnswers(operation: ApiOperation): { readonly refs: Json; readonly components: Json } {
  const isFhir = /^\/(exams|fhir)(\/|$)/.test(operation.path);
  const own = [
    ...always,
    ...(scopesOf(operation) === 'open' ? [] : ofAccess),
    ...(isWatching(operation.path) ? [] : ofHaste),
    ...(isFhir ? ofStore : []),
    ...(operation.problems ?? []),
  ];
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of codes.filter((one) => own.includes(one))) {
    const { status } = problemKinds[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  const refs: Record<string, unknown> = {};
  const components: Record<string, unknown> = {};
  for (const [status, reasons] of byStatus) {
    const name = `${isFhir ? 'Outcome' : 'Problem'}.${reasons.join('.')}`;
    refs[status] = { $ref: `#/components/responses/${name}` };
    components[name] = answer(reasons, isFhir);
  }
  return { refs, components };
}

function answer(reasons: readonly ProblemCode[], isFhir: boolean): Json {
  const kinds = reasons.map((code) => ({ code, ...(problemKinds[code] as { title: string; retryAfter?: number }) }));
  const waits = kinds.some(({ retryAfter }) => retryAfter !== undefined);
  return {
    description: kinds.map(({ code, title }) => `${title} (\`${code}\`).`).join(' '),
    headers: {
      'X-Request-Id': { $ref: '#/components/headers/X-Request-Id' },
      ...(reasons.includes('IDENTIFIER_IN_USE') ? { Location: { $ref: '#/components/headers/Location' } } : {}),
      ...(waits ? { 'Retry-After': { $ref: '#/components/headers/Retry-After' } } : {}),
    },
    content: isFhir
      ? { [mediaTypes.fhir]: { schema: componentSchema('OperationOutcome') } }
      : { [mediaTypes.problem]: { schema: componentSchema('Problem') } },
  };
}
