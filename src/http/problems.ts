import { echoedPointer } from '../exam/faults/echo.ts';
import { AppError, type Fault } from '../kernel/errors.ts';
import { type ErrorCode, errorTitles } from '../kernel/fault-codes.ts';

/** How one kind of error is told to a caller. */
export interface ProblemKind {
  readonly status: number;
  readonly title: string;
  /** FHIR issue type. */
  readonly issue:
    | 'structure'
    | 'invalid'
    | 'required'
    | 'too-long'
    | 'too-costly'
    | 'not-supported'
    | 'not-found'
    | 'deleted'
    | 'login'
    | 'forbidden'
    | IssueOfState;
  /** Seconds after which a repeat makes sense. */
  readonly retryAfter?: number;
}
type IssueOfState = 'duplicate' | 'conflict' | 'transient' | 'throttled' | 'timeout' | 'no-store' | 'exception';

/** The whole catalogue of errors: stable code to status and title. Nothing else in the service knows a status. */
export const problemKinds = {
  NOT_JSON: { status: 400, title: errorTitles.NOT_JSON, issue: 'structure' },
  TOO_DEEP: { status: 400, title: errorTitles.TOO_DEEP, issue: 'too-costly' },
  BAD_REQUEST: { status: 400, title: errorTitles.BAD_REQUEST, issue: 'invalid' },
  UNAUTHENTICATED: { status: 401, title: errorTitles.UNAUTHENTICATED, issue: 'login' },
  INVALID_TOKEN: { status: 401, title: errorTitles.INVALID_TOKEN, issue: 'login' },
  INSUFFICIENT_SCOPE: { status: 403, title: errorTitles.INSUFFICIENT_SCOPE, issue: 'forbidden' },
  NOT_FOUND: { status: 404, title: errorTitles.NOT_FOUND, issue: 'not-found' },
  METHOD_NOT_ALLOWED: { status: 405, title: errorTitles.METHOD_NOT_ALLOWED, issue: 'not-supported' },
  NOT_ACCEPTABLE: { status: 406, title: errorTitles.NOT_ACCEPTABLE, issue: 'not-supported' },
  ERASED: { status: 410, title: errorTitles.ERASED, issue: 'deleted' },
  IDENTIFIER_IN_USE: { status: 409, title: errorTitles.IDENTIFIER_IN_USE, issue: 'duplicate' },
  VERSION_MISMATCH: { status: 412, title: errorTitles.VERSION_MISMATCH, issue: 'conflict' },
  PREFETCH_MISSING: { status: 412, title: errorTitles.PREFETCH_MISSING, issue: 'required' },
  BODY_TOO_LARGE: { status: 413, title: errorTitles.BODY_TOO_LARGE, issue: 'too-long' },
  MEDIA_TYPE: { status: 415, title: errorTitles.MEDIA_TYPE, issue: 'not-supported' },
  EXAM_INVALID: { status: 422, title: errorTitles.EXAM_INVALID, issue: 'invalid' },
  HOOK_INVALID: { status: 400, title: errorTitles.HOOK_INVALID, issue: 'invalid' },
  PRACTICE_INVALID: { status: 422, title: errorTitles.PRACTICE_INVALID, issue: 'invalid' },
  VIEW_INVALID: { status: 422, title: errorTitles.VIEW_INVALID, issue: 'invalid' },
  VIEW_FAILED: { status: 422, title: errorTitles.VIEW_FAILED, issue: 'invalid' },
  MEASURE_INVALID: { status: 422, title: errorTitles.MEASURE_INVALID, issue: 'invalid' },
  MEASURE_FAILED: { status: 422, title: errorTitles.MEASURE_FAILED, issue: 'invalid' },
  SUBSCRIPTION_INVALID: { status: 422, title: errorTitles.SUBSCRIPTION_INVALID, issue: 'invalid' },
  PRECONDITION_REQUIRED: { status: 428, title: errorTitles.PRECONDITION_REQUIRED, issue: 'required' },
  // Its Retry-After depends on the client and is set where the limit is kept.
  RATE_LIMITED: { status: 429, title: errorTitles.RATE_LIMITED, issue: 'throttled' },
  UNEXPECTED: { status: 500, title: errorTitles.UNEXPECTED, issue: 'exception' },
  STORE_CORRUPT: { status: 500, title: errorTitles.STORE_CORRUPT, issue: 'exception' },
  STORE_UNAVAILABLE: { status: 503, title: errorTitles.STORE_UNAVAILABLE, issue: 'transient', retryAfter: 2 },
  ACCESS_UNAVAILABLE: { status: 503, title: errorTitles.ACCESS_UNAVAILABLE, issue: 'transient', retryAfter: 5 },
  OVERLOADED: { status: 503, title: errorTitles.OVERLOADED, issue: 'throttled', retryAfter: 1 },
  TIMED_OUT: { status: 503, title: errorTitles.TIMED_OUT, issue: 'timeout', retryAfter: 5 },
  STORE_FULL: { status: 507, title: errorTitles.STORE_FULL, issue: 'no-store' },
} as const satisfies Record<ErrorCode, ProblemKind>;

export type ProblemCode = keyof typeof problemKinds;

export interface Problem extends ProblemKind {
  readonly code: ProblemCode;
  readonly detail: string;
  /** What is wrong with the body, where that is the problem. */
  readonly faults: readonly Fault[];
}

/** A body with thousands of faults is not helped by hearing all of them. */
const mostFaults = 100;

const kinds = new Map<string, ProblemKind>(Object.entries(problemKinds));

/** Any thrown value as a problem. What is not an error of ours says nothing of itself to the caller. */
export function problemOf(error: unknown): Problem {
  const known = error instanceof AppError ? kinds.get(error.code) : undefined;
  if (!(error instanceof AppError) || known === undefined) {
    return {
      ...problemKinds.UNEXPECTED,
      code: 'UNEXPECTED',
      detail: 'The request could not be completed.',
      faults: [],
    };
  }
  return { ...known, code: error.code as ProblemCode, detail: error.message, faults: faultsOf(error) };
}

function faultsOf(error: AppError): readonly Fault[] {
  const faults = 'faults' in error && Array.isArray(error.faults) ? (error.faults as Fault[]) : [];
  // Some parts of the service name a place by what the caller wrote there.
  return faults.slice(0, mostFaults).map((fault) => ({ ...fault, pointer: echoedPointer(fault.pointer) }));
}
