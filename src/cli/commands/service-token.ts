import { leadsToLoopback } from '../../access/loopback.ts';
import { UsageError } from './surroundings.ts';

/** Variable that holds the access token or key for a service that asks for one; an argument would be seen by everybody. */
export const tokenVariable = 'NEUROEXAM_TOKEN';

/**
 * The header that a request to a service carries; none where no token is set.
 * @throws UsageError where the token would travel in the clear
 */
export function authorizationFor(url: string, env: NodeJS.ProcessEnv = process.env): Readonly<Record<string, string>> {
  const token = env[tokenVariable]?.trim() ?? '';
  if (token === '') return {};
  const address = new URL(url);
  if (address.protocol !== 'https:' && !leadsToLoopback(address)) {
    throw new UsageError(`${tokenVariable} is only sent by https, or to this machine.`);
  }
  return { Authorization: `Bearer ${token}` };
}
