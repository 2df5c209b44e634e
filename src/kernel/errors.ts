import type { FaultCode } from './fault-codes.ts';

/**
 * The error base of the whole service. Domain code throws these; only `http/problems.ts` knows which HTTP status a code
 * becomes. `code` is stable and part of the API. Messages and details never carry a person's data.
 */
export abstract class AppError extends Error {
  abstract readonly code: string;

  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = new.target.name;
  }
}

/** One thing that is wrong with what the caller sent. */
export interface Fault {
  /** RFC 6901 JSON Pointer to the offending value in the request body; '' is the whole body. */
  readonly pointer: string;
  /** Stable kind of fault, for programs. */
  readonly code: FaultCode;
  /** What was expected, in plain words, for people. */
  readonly message: string;
  /** The nearest known key, where a key was unknown. */
  readonly suggestion?: string;
}

/** A fault in one sentence more where the message does not name the nearest key itself. */
export function withSuggestion({ message, suggestion }: Pick<Fault, 'message' | 'suggestion'>): string {
  const key = suggestion?.split('/').at(-1);
  return key === undefined || message.includes(key) ? message : `${message} Did you mean ${suggestion}?`;
}

/** The body was understood as JSON but is not a valid exam; carries every fault found. */
export class ExamInvalidError extends AppError {
  readonly code = 'EXAM_INVALID';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`The exam has ${faults.length} fault${faults.length === 1 ? '' : 's'}.`);
    this.faults = faults;
  }
}

/** The bytes could not be taken as a request at all (not JSON, too large, too deep, wrong media type). */
export class RequestError extends AppError {
  readonly code:
    | 'NOT_JSON'
    | 'BODY_TOO_LARGE'
    | 'TOO_DEEP'
    | 'MEDIA_TYPE'
    | 'NOT_ACCEPTABLE'
    | 'BAD_REQUEST'
    | 'PRECONDITION_REQUIRED';

  constructor(code: RequestError['code'], message: string) {
    super(message);
    this.code = code;
  }
}

/** A request or feedback of CDS Hooks is not as the standard asks; carries every fault found. */
export class HookInvalidError extends AppError {
  readonly code = 'HOOK_INVALID';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`The body has ${faults.length} fault${faults.length === 1 ? '' : 's'}.`);
    this.faults = faults;
  }
}

/** A body of the practice mode is not as expected; carries every fault found. */
export class PracticeInvalidError extends AppError {
  readonly code = 'PRACTICE_INVALID';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`The body has ${faults.length} fault${faults.length === 1 ? '' : 's'}.`);
    this.faults = faults;
  }
}

/** Decision support has nothing to decide on: the caller left out the prefetch, and there is no exam here. */
export class PrefetchMissingError extends AppError {
  readonly code = 'PREFETCH_MISSING';
}

export class NotFoundError extends AppError {
  readonly code = 'NOT_FOUND';
}

/** What was asked for was removed for good, by an administrator. */
export class ErasedError extends AppError {
  readonly code = 'ERASED';
}

/** The request contradicts what is stored: same identifier with other content, or a stale `If-Match`. */
export class ConflictError extends AppError {
  readonly code: 'IDENTIFIER_IN_USE' | 'VERSION_MISMATCH';

  /** Id of the exam that is in the way; undefined where it is none. */
  readonly exam: string | undefined;

  constructor(code: ConflictError['code'], message: string, exam?: string) {
    super(message);
    this.code = code;
    this.exam = exam;
  }
}

/** The service cannot take the request now, and could later. */
export class TryLaterError extends AppError {
  readonly code: 'RATE_LIMITED' | 'OVERLOADED' | 'TIMED_OUT';

  constructor(code: TryLaterError['code'], message: string) {
    super(message);
    this.code = code;
  }
}

/** The store could not keep or return something. Never carries the content. */
export class StoreError extends AppError {
  readonly code: 'STORE_UNAVAILABLE' | 'STORE_FULL' | 'STORE_CORRUPT';

  constructor(code: StoreError['code'], message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}

/** The environment asks for something impossible; lists every problem at once. */
export class ConfigError extends AppError {
  readonly code = 'CONFIG_INVALID';
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join(' '));
    this.problems = problems;
  }
}
