import { ConfigError } from '../kernel/errors.ts';
import { AccessError } from './access-error.ts';
import type { AccessSettings, TokenSettings } from './access-settings.ts';
import { callerWithToken } from './access-token.ts';
import { callerWithKey, readKeys } from './api-key.ts';
import type { Caller } from './caller.ts';
import { keySet } from './key-set.ts';
import { type ReloadedFile, reloadedFile } from './reloaded-file.ts';

/** Decides who a caller is. */
export interface AccessControl {
  /**
   * Who a token or a static key stands for.
   * @throws AccessError INVALID_TOKEN, ACCESS_UNAVAILABLE
   */
  identify(credential: string): Promise<Caller>;
  /** How tokens are had, for the discovery documents; undefined where only static keys are taken. */
  readonly tokens: TokenSettings | undefined;
}

/**
 * @param onFault told when a changed file of keys cannot be used, by the name of its variable
 * @throws ConfigError when a file cannot be used from the start
 */
export async function createAccessControl(
  { tokens, keysFile }: AccessSettings,
  onFault: (variable: 'AUTH_JWKS' | 'API_KEYS_FILE') => void,
  now: () => Date,
): Promise<AccessControl> {
  const clock = () => performance.now();
  const problems: string[] = [];
  const jwks =
    tokens &&
    (await keySet(tokens.keys, () => onFault('AUTH_JWKS'), clock).catch((error: unknown) => {
      const reason = codeOf(error) ?? 'expected a JSON Web Key Set with public keys alone';
      problems.push(`AUTH_JWKS names a file that cannot be used: ${reason}.`);
      return undefined;
    }));
  const apiKeys: ReloadedFile<ReturnType<typeof readKeys>> | undefined =
    keysFile === undefined
      ? undefined
      : await reloadedFile(keysFile, readKeys, () => onFault('API_KEYS_FILE'), clock).catch((error: unknown) => {
          problems.push(`API_KEYS_FILE names a file that cannot be used: ${codeOf(error) ?? messageOf(error)}.`);
          return undefined;
        });
  if (problems.length > 0) throw new ConfigError(problems);

  return {
    tokens,
    async identify(credential) {
      // Only a token has dots.
      if (jwks !== undefined && tokens !== undefined && credential.includes('.')) {
        return callerWithToken(tokens, jwks, credential, now());
      }
      const caller = apiKeys && callerWithKey(await apiKeys.current(), credential);
      if (caller === undefined) throw new AccessError('INVALID_TOKEN', { reason: 'key' });
      return caller;
    },
  };
}

function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error ? String(error.code) : undefined;
}

/** Messages of `readKeys` quote nothing. */
function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : 'unreadable';
}
