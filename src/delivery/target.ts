import type { ClaimedDelivery } from '../store/outbox/outbox-repository.ts';
import type { BackOff } from './back-off.ts';
import type { Verdict } from './judge-answer.ts';

export interface SendOptions {
  /** Aborted when the service stops and has waited for long enough. */
  readonly signal: AbortSignal;
  /**
   * Prolongs the right to send; to be called between the requests of one delivery.
   * @returns false when another process has taken over
   */
  readonly keep: () => Promise<boolean>;
}

/** Makes one attempt. @throws SendError, StoreError */
export type SendDelivery = (delivery: ClaimedDelivery, options: SendOptions) => Promise<Verdict>;

/** How deliveries to one other side are sent. */
export interface Target {
  readonly send: SendDelivery;
  /** Deliveries under way at once, in this process. */
  readonly concurrency: number;
  readonly maxAttempts: number;
  /** Longest time that one request may take, in ms. */
  readonly timeoutMs: number;
  readonly backOff: BackOff;
  /** What follows from the end of a delivery. @throws StoreError */
  readonly onSettled?: (verdict: Verdict) => Promise<void>;
}
