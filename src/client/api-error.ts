import type { OperationOutcome, Problem } from './generated/api-types.ts';

/** One thing that is wrong with what was sent. */
export interface ApiFault {
  /** Stable code, such as UNKNOWN_KEY. */
  readonly code: string;
  readonly message: string;
  /** JSON Pointer into the body that was sent. */
  readonly pointer: string | undefined;
  /** Nearest known key. */
  readonly suggestion: string | undefined;
}

/** An answer of the service that says that something went wrong; a failure of the network stays the error of `fetch`. */
export class NeuroexamApiError extends Error {
  override readonly name = 'NeuroexamApiError';
  readonly status: number;
  /** Stable code, such as EXAM_INVALID; empty when the answer came from something in between. */
  readonly code: string;
  readonly faults: readonly ApiFault[];
  /** RFC 9457 problem details, from every path but those of exams and FHIR. */
  readonly problem: Problem | undefined;
  readonly outcome: OperationOutcome | undefined;
  readonly requestId: string | undefined;
  /** Seconds after which a repeat makes sense. */
  readonly retryAfterSeconds: number | undefined;
  /** Of what stands in the way, where the service names it. */
  readonly location: string | undefined;

  constructor(response: Response, body: unknown) {
    const problem = isProblem(body) ? body : undefined;
    const outcome = isOutcome(body) ? body : undefined;
    const faults = outcome === undefined ? faultsOfProblem(problem) : faultsOfOutcome(outcome);
    const code = problem?.code ?? faults[0]?.code ?? '';
    super(problem?.detail ?? faults[0]?.message ?? `The service answered ${response.status}.`);
    this.status = response.status;
    this.code = code;
    this.faults = faults;
    this.problem = problem;
    this.outcome = outcome;
    this.requestId = response.headers.get('X-Request-Id') ?? undefined;
    this.retryAfterSeconds = retryAfterOf(response.headers, Date.now());
    this.location = response.headers.get('Location') ?? undefined;
  }
}

/** Source: RFC 9110, section 10.2.3: seconds, or a date. */
export function retryAfterOf(headers: Headers, nowMs: number): number | undefined {
  const value = headers.get('Retry-After');
  if (value === null) return undefined;
  if (/^\d+$/.test(value)) return Number(value);
  const time = Date.parse(value);
  return Number.isNaN(time) ? undefined : Math.max(0, Math.ceil((time - nowMs) / 1000));
}

function isProblem(body: unknown): body is Problem {
  return typeof body === 'object' && body !== null && 'code' in body && 'detail' in body;
}

function isOutcome(body: unknown): body is OperationOutcome {
  return typeof body === 'object' && body !== null && 'issue' in body && Array.isArray(body.issue);
}

function faultsOfProblem(problem: Problem | undefined): readonly ApiFault[] {
  return (problem?.errors ?? []).map(({ code, detail, pointer, suggestion }) => ({
    code,
    message: detail,
    pointer,
    suggestion,
  }));
}

function faultsOfOutcome({ issue }: OperationOutcome): readonly ApiFault[] {
  return (issue ?? []).map(({ code, details, diagnostics }) => {
    const message = details?.text ?? code;
    return {
      code: details?.coding?.[0]?.code ?? code,
      message,
      pointer: diagnostics,
      suggestion: /[Dd]id you mean '?(?<key>[^?']+)'?\?/.exec(message)?.groups?.key,
    };
  });
}
