import { AppError, type Fault } from '../kernel/errors.ts';

/** The ViewDefinition cannot be run; carries every fault found, with pointers into the ViewDefinition. */
export class ViewInvalidError extends AppError {
  readonly code = 'VIEW_INVALID';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`The view has ${faults.length} fault${faults.length === 1 ? '' : 's'}.`);
    this.faults = faults;
  }
}

/**
 * A valid view met a resource that it cannot make rows of. Names view, path and resource type, never the data; the fault
 * points at the part of the ViewDefinition that could not be followed.
 */
export class ViewFailedError extends AppError {
  readonly code = 'VIEW_FAILED';
  readonly faults: readonly Fault[];

  constructor(message: string, { pointer, code }: Pick<Fault, 'pointer' | 'code'>) {
    super(message);
    this.faults = [{ pointer, code, message }];
  }
}
