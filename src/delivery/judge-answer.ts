import { plainText } from '../kernel/plain-text.ts';
import type { DeliveryReason } from './delivery-error.ts';
import type { ReceivedAnswer } from './send-request.ts';

/** What an attempt came to. */
export type Verdict =
  | { readonly kind: 'delivered'; readonly status: number }
  | {
      /** `again` where a repeat may do better, `dead` where it would not. */
      readonly kind: 'again' | 'dead';
      readonly reason: DeliveryReason;
      readonly status?: number;
      readonly issues?: readonly string[];
      /** `Retry-After` as it came. */
      readonly retryAfter?: string;
    };

/** Statuses below 500 after which the same request may be taken. Source: RFC 9110, 15.5.9; RFC 8470; RFC 6585. */
const transient = new Set([408, 425, 429]);

/** What an answer says by its status alone. */
export function judgeStatus({ status, headers, body }: ReceivedAnswer): Verdict {
  if (status >= 200 && status < 300) return { kind: 'delivered', status };
  const issues = issueCodes(parsed(body));
  const told = { status, ...(issues.length === 0 ? {} : { issues }) };
  const retryAfter = headers['retry-after'];
  const asked = retryAfter === undefined ? {} : { retryAfter };
  if (status === 401) return { kind: 'again', reason: 'TOKEN', ...told };
  if (transient.has(status) || status === 503) return { kind: 'again', reason: 'BUSY', ...told, ...asked };
  if (status >= 500) return { kind: 'again', reason: 'SERVER_ERROR', ...told, ...asked };
  if (status >= 300 && status < 400) return { kind: 'dead', reason: 'REDIRECT', ...told };
  // An interim status or none at all is no answer to a request.
  return status < 300
    ? { kind: 'again', reason: 'ANSWER_UNUSABLE', ...told }
    : { kind: 'dead', reason: 'REFUSED', ...told };
}

/**
 * What the answer to a transaction says. A transaction is taken whole or not at all, so one entry that failed condemns
 * it; something else than a response, such as the page of a proxy, says nothing about the transaction.
 * Source: HL7 FHIR R4, http.html#transaction-response.
 * @param entries number of entries sent
 */
export function judgeTransaction(answer: ReceivedAnswer, entries: number): Verdict {
  const verdict = judgeStatus(answer);
  if (verdict.kind !== 'delivered') return verdict;
  const { status } = answer;
  const bundle = parsed(answer.body);
  if (!isRecord(bundle) || bundle.resourceType !== 'Bundle' || bundle.type !== 'transaction-response') {
    return { kind: 'again', reason: 'ANSWER_UNUSABLE', status };
  }
  const responses = Array.isArray(bundle.entry)
    ? bundle.entry.map((entry) => (isRecord(entry) ? entry.response : null))
    : [];
  if (responses.length !== entries) return { kind: 'again', reason: 'ANSWER_UNUSABLE', status };
  const failed = responses.filter((one) => !isRecord(one) || !/^2\d\d/.test(plainText(one.status)));
  if (failed.length === 0) return verdict;
  const issues = [...new Set(failed.flatMap((one) => (isRecord(one) ? issueCodes(one.outcome) : [])))].slice(
    0,
    mostIssues,
  );
  return { kind: 'dead', reason: 'ENTRY_FAILED', status, ...(issues.length === 0 ? {} : { issues }) };
}

/** Issues whose codes are kept. */
const mostIssues = 5;

/** Codes of the issues of an OperationOutcome; what is no code by its form is left out, since it might be anything. */
export function issueCodes(outcome: unknown): string[] {
  if (!isRecord(outcome) || outcome.resourceType !== 'OperationOutcome' || !Array.isArray(outcome.issue)) return [];
  const codes = outcome.issue.map((issue) => (isRecord(issue) ? issue.code : undefined));
  const ofForm = codes.filter((code): code is string => typeof code === 'string' && /^[a-z][a-z-]{1,30}$/.test(code));
  return [...new Set(ofForm)].slice(0, mostIssues);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return undefined;
  }
}
