import { AppError } from '../kernel/errors.ts';

/** The path exists, but not for this method. */
export class MethodNotAllowedError extends AppError {
  readonly code = 'METHOD_NOT_ALLOWED';
  /** Value of the `Allow` header. */
  readonly allow: string;

  constructor(allow: string) {
    super(`This path answers ${allow}.`);
    this.allow = allow;
  }
}
