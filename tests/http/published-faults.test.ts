import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { AccessError } from '../../src/access/access-error.ts';
import type { SubscriptionInvalidError } from '../../src/delivery/subscription-error.ts';
import type { MethodNotAllowedError } from '../../src/http/method-not-allowed-error.ts';
import { type ProblemCode, problemKinds } from '../../src/http/problems.ts';
import type {
  ConflictError,
  ErasedError,
  ExamInvalidError,
  HookInvalidError,
  NotFoundError,
  PracticeInvalidError,
  PrefetchMissingError,
  RequestError,
  StoreError,
  TryLaterError,
} from '../../src/kernel/errors.ts';
import { type FaultCode, faultCodes } from '../../src/kernel/fault-codes.ts';
import type { MeasureFailedError, MeasureInvalidError } from '../../src/measures/measure-errors.ts';
import { loadConformance } from '../../src/terminology/load.ts';
import { systems } from '../../src/terminology/systems.ts';
import type { ViewFailedError, ViewInvalidError } from '../../src/views/view-errors.ts';

const isProblem = (code: string): code is ProblemCode => Object.hasOwn(problemKinds, code);
const root = fileURLToPath(new URL('../../', import.meta.url));

type ErrorOfARequest =
  | AccessError
  | RequestError
  | NotFoundError
  | PracticeInvalidError
  | ErasedError
  | MethodNotAllowedError
  | ConflictError
  | StoreError
  | ExamInvalidError
  | HookInvalidError
  | PrefetchMissingError
  | ViewInvalidError
  | ViewFailedError
  | MeasureInvalidError
  | MeasureFailedError
  | SubscriptionInvalidError
  | TryLaterError;

/** The compiler asks for every code that an error of a request or a fault can have; `UNEXPECTED` stands for all others. */
const emitted: Readonly<Record<ErrorOfARequest['code'] | FaultCode | 'UNEXPECTED', true>> = {
  ...(Object.fromEntries(Object.keys(faultCodes).map((code) => [code, true])) as Record<FaultCode, true>),
  NOT_JSON: true,
  BODY_TOO_LARGE: true,
  TOO_DEEP: true,
  MEDIA_TYPE: true,
  NOT_ACCEPTABLE: true,
  BAD_REQUEST: true,
  PRECONDITION_REQUIRED: true,
  UNAUTHENTICATED: true,
  INVALID_TOKEN: true,
  INSUFFICIENT_SCOPE: true,
  ACCESS_UNAVAILABLE: true,
  NOT_FOUND: true,
  ERASED: true,
  METHOD_NOT_ALLOWED: true,
  IDENTIFIER_IN_USE: true,
  VERSION_MISMATCH: true,
  STORE_UNAVAILABLE: true,
  STORE_FULL: true,
  STORE_CORRUPT: true,
  EXAM_INVALID: true,
  HOOK_INVALID: true,
  PRACTICE_INVALID: true,
  PREFETCH_MISSING: true,
  VIEW_INVALID: true,
  VIEW_FAILED: true,
  MEASURE_INVALID: true,
  MEASURE_FAILED: true,
  SUBSCRIPTION_INVALID: true,
  RATE_LIMITED: true,
  OVERLOADED: true,
  TIMED_OUT: true,
  UNEXPECTED: true,
};

describe('the published codes of errors and faults', () => {
  const published = loadConformance(root)
    .ofType('CodeSystem')
    .find(({ url }) => url === systems.fault);
  const codes = published?.concept?.map(({ code }) => code) ?? [];

  it('are those that the service can emit, no more and no fewer', () => {
    expect([...codes].sort()).toEqual(Object.keys(emitted).sort());
  });

  it('say what each means', () => {
    for (const { code, display, definition } of published?.concept ?? []) {
      if (isProblem(code)) expect(display).toBe(problemKinds[code].title);
      else expect(definition, code).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('are all in use', () => {
    const text = ['src/exam', 'src/http']
      .flatMap((folder) =>
        readdirSync(`${root}${folder}`, { recursive: true, encoding: 'utf8' }).map((file) => `${folder}/${file}`),
      )
      .filter((file) => file.endsWith('.ts'))
      .map((file) => readFileSync(`${root}${file}`, 'utf8'))
      .join('\n');
    expect(Object.keys(faultCodes).filter((code) => !text.includes(`'${code}'`))).toEqual([]);
  });
});
