/** What the reasoning can show of the record as it stands. */
import type { Assessed, Fault } from '../assessment.ts';

export type PanelState =
  | { readonly kind: 'nothing-recorded' }
  | { readonly kind: 'waiting' }
  /** No answer has come yet, and the service is away. */
  | { readonly kind: 'unreachable' }
  /** The service takes nothing of the record as it is, and has answered no earlier one. */
  | { readonly kind: 'refused' }
  /** `outOfDate` says why the answer is not of the record as it stands; null where it is, or will be at once. */
  | { readonly kind: 'answer'; readonly assessed: Assessed; readonly outOfDate: string | null };

export function panelStateOf(now: {
  readonly hasContent: boolean;
  readonly assessed: Assessed | undefined;
  readonly isReached: boolean;
  readonly isCurrent: boolean;
  readonly faults: readonly Fault[];
}): PanelState {
  const { hasContent, assessed, isReached, isCurrent, faults } = now;
  if (!hasContent) return { kind: 'nothing-recorded' };
  if (assessed === undefined) {
    if (!isReached) return { kind: 'unreachable' };
    return faults.length > 0 ? { kind: 'refused' } : { kind: 'waiting' };
  }
  return { kind: 'answer', assessed, outOfDate: isCurrent ? null : reasonOutOfDate(isReached, faults) };
}

function reasonOutOfDate(isReached: boolean, faults: readonly Fault[]): string | null {
  if (!isReached) return 'No connection to the service. This is the answer to an earlier state of the record.';
  if (faults.length > 0)
    return 'The record as it stands was not accepted. This is the answer to an earlier state of it.';
  return null;
}
