import { AppError, type Fault } from '../kernel/errors.ts';

/** The Subscription cannot be served here; carries every fault found, with pointers into it. */
export class SubscriptionInvalidError extends AppError {
  readonly code = 'SUBSCRIPTION_INVALID';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`The subscription has ${faults.length} fault${faults.length === 1 ? '' : 's'}.`);
    this.faults = faults;
  }
}
