import { AppError, StoreError } from '../../kernel/errors.ts';

/** SQLSTATE of whatever the driver threw; empty for errors of the network. Source: PostgreSQL manual, appendix A. */
function stateOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
  return /^[0-9A-Z]{5}$/.test(code) ? code : '';
}

/** Two writers met and one has to start again: serialization failure, deadlock, the same row made twice. */
export function isRetryable(error: unknown): boolean {
  return /^(40001|40P01|23505)$/.test(stateOf(error));
}

/** Whatever the driver threw as one of our own errors; an error of ours passes unchanged. */
export function asStoreError(error: unknown): AppError {
  if (error instanceof AppError) return error;
  const state = stateOf(error);
  if (state === '53100')
    return new StoreError('STORE_FULL', 'There is no room left to keep the exam.', { cause: error });
  if (state.startsWith('XX')) return new StoreError('STORE_CORRUPT', 'The exam store is damaged.', { cause: error });
  return new StoreError('STORE_UNAVAILABLE', `The exam store is not available${state === '' ? '' : ` (${state})`}.`, {
    cause: error,
  });
}
