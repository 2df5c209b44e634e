import { AppError } from '../kernel/errors.ts';

/** Why a caller is not let in. The messages are the same whatever was wrong with a token; `reason` is for the log. */
export class AccessError extends AppError {
  readonly code: 'UNAUTHENTICATED' | 'INVALID_TOKEN' | 'INSUFFICIENT_SCOPE' | 'ACCESS_UNAVAILABLE';
  /** Which check failed, in a word for whoever runs the service; never a part of the token. */
  readonly reason: string | undefined;
  /** Scopes that would be enough. */
  readonly scopes: readonly string[];

  constructor(
    code: AccessError['code'],
    { reason, scopes = [], cause }: { reason?: string; scopes?: readonly string[]; cause?: unknown } = {},
  ) {
    super(messages[code], cause === undefined ? {} : { cause });
    this.code = code;
    this.reason = reason;
    this.scopes = scopes;
  }
}

const messages = {
  UNAUTHENTICATED: 'Send an access token or a key in the header Authorization: Bearer.',
  INVALID_TOKEN: 'The access token or key is not valid here.',
  INSUFFICIENT_SCOPE: 'The access token or key does not allow this.',
  ACCESS_UNAVAILABLE: 'Access tokens cannot be checked at the moment.',
} as const;
