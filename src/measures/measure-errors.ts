import { AppError, type Fault } from '../kernel/errors.ts';

/** The Measure cannot be evaluated here; carries every fault found, with pointers into the Measure. */
export class MeasureInvalidError extends AppError {
  readonly code = 'MEASURE_INVALID';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`The measure has ${faults.length} fault${faults.length === 1 ? '' : 's'}.`);
    this.faults = faults;
  }
}

/** A valid measure met exams for which it gives no answer. Names measure and expression, never the data. */
export class MeasureFailedError extends AppError {
  readonly code = 'MEASURE_FAILED';
}
