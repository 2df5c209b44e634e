/**
 * What is to be sent to other servers. A row is one version of one exam for one target, written in the transaction that
 * keeps the version. The versions of an exam reach a target in their order: each waits until those before it are
 * delivered or given up.
 */

/** Name of the one server that every exam is forwarded to; a subscription is named `Subscription/ID`. */
export const forwardTarget = 'forward';

/** In the order of the numbers under which a store knows them. */
export const deliveryStates = ['waiting', 'delivered', 'dead'] as const;
export type DeliveryState = (typeof deliveryStates)[number];

/** A version of a resource that a subscription is told of. */
export interface NotifiedResource {
  readonly type: string;
  readonly id: string;
  readonly version: number;
}

/** Something to send, held by one process until `until`. */
export interface ClaimedDelivery {
  readonly n: number;
  readonly target: string;
  readonly examId: string;
  readonly version: number;
  /** Counts this one. */
  readonly attempts: number;
  /** For a subscription: what it is told of. */
  readonly resources: readonly NotifiedResource[];
}

/** How an attempt ended. Nothing here quotes what the other side said, but the codes of its issues. */
export interface Settlement {
  readonly state: DeliveryState;
  /** ms since 1970; when to try again, where the state is still waiting. */
  readonly nextAt?: number;
  /** Status that the other side answered. */
  readonly answer?: number;
  readonly reason?: string;
  /** Codes of OperationOutcome.issue. */
  readonly issues?: readonly string[];
}

/** How it stands with a delivery, for people and programs. */
export interface DeliveryStatus {
  readonly target: string;
  readonly version: number;
  readonly state: DeliveryState;
  readonly attempts: number;
  /** ISO 8601, UTC, as all times here; only while it waits. */
  readonly nextAttemptAt?: string;
  /** When it was delivered or given up. */
  readonly settledAt?: string;
  readonly lastStatus?: number;
  readonly reason?: string;
  readonly issues?: readonly string[];
}

export interface DeliveryFigures {
  readonly target: 'forward' | 'subscription';
  readonly waiting: number;
  readonly dead: number;
  /** Age of the oldest that waits, in ms; 0 when none does. */
  readonly oldestWaitingMs: number;
}

export interface Claim {
  readonly holder: string;
  readonly now: number;
  /** ms since 1970; a holder who is silent until then is taken for dead. */
  readonly until: number;
  readonly most: number;
  /** ms since 1970; see `software` in `claim.ts`. */
  readonly provenSince: number;
}

export interface Outbox {
  /** Targets that have something to be sent now; a subscription only while it is active. @throws StoreError */
  dueTargets(now: number): Promise<readonly string[]>;
  /** Takes the right to send what is due, oldest first; nobody else gets it before it ends. @throws StoreError */
  claim(target: string, claim: Claim): Promise<readonly ClaimedDelivery[]>;
  /** Prolongs the right. @returns false when another has it meanwhile. @throws StoreError */
  keep(n: number, holder: string, until: number): Promise<boolean>;
  /** Writes down how it ended. @returns false when another has the right meanwhile. @throws StoreError */
  settle(n: number, holder: string, settlement: Settlement, now: number): Promise<boolean>;
  /** Every delivery of an exam, by target and version. @throws StoreError */
  ofExam(examId: string): Promise<readonly DeliveryStatus[]>;
  /** Deliveries that were given up, oldest first. @throws StoreError */
  dead(most: number): Promise<readonly (DeliveryStatus & { readonly examId: string })[]>;
  /**
   * Lets what was given up be tried again, of one exam or of all. Left alone is what a later version has overtaken: to
   * send the earlier one afterwards would undo the correction.
   * @returns how many will be tried again
   * @throws StoreError
   */
  retry(now: number, examId?: string): Promise<number>;
  /**
   * Puts in what was kept before there was somebody to forward to.
   * @param since ISO 8601; versions received then or later
   * @param again also those that were delivered or given up
   * @returns how many were put in
   * @throws StoreError
   */
  enqueueKept(options: { readonly since: string; readonly again: boolean; readonly now: number }): Promise<number>;
  /** @throws StoreError */
  figures(now: number): Promise<readonly DeliveryFigures[]>;
}
