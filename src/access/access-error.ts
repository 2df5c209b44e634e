import { AppError } from '../kernel/errors.ts';

/**
 * Why a caller is not let in. What was wrong with a token is not told to whoever sent it: `reason` is for the log. What a
 * valid one lacks is told.
 */
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
    const detail = code === 'INSUFFICIENT_SCOPE' ? sentence(reason, scopes) : messages[code];
    super(detail, cause === undefined ? {} : { cause });
    this.code = code;
    this.reason = reason;
    this.scopes = scopes;
  }
}

const messages = {
  UNAUTHENTICATED: 'Send an access token or a key in the header Authorization: Bearer.',
  INVALID_TOKEN: 'The access token or key is not valid here.',
  ACCESS_UNAVAILABLE: 'Access tokens cannot be checked at the moment.',
} as const;

function sentence(reason: string | undefined, scopes: readonly string[]): string {
  if (reason === 'subject') return 'The access token or key is limited to one subject, and this is not about it alone.';
  const needed = scopes.length === 0 ? '' : ` Scopes that do: ${scopes.join(' ')}.`;
  return `The access token or key does not allow this.${needed}`;
}
