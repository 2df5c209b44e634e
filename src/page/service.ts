/** The service as this page speaks to it: the typed client, with the key of the person who uses the page. */
import { createClient, NeuroexamApiError } from '../client/client.ts';
import { credential, needsCredential } from './settings.ts';

export { NeuroexamApiError };

export const service = createClient({
  baseUrl: location.origin,
  token: () => credential.peek() || undefined,
  // The page repeats by itself, with what has become of the draft by then.
  retries: 0,
  timeoutMs: 15_000,
});

/** Whether the service could not be reached at all, or was too busy: then the same may work later. */
export function isPassing(error: unknown): boolean {
  if (!(error instanceof NeuroexamApiError)) return true;
  return [408, 429, 502, 503, 504].includes(error.status);
}

/** Notes a refusal for want of a key; the page then asks for one. */
export function noteRefusal(error: unknown): void {
  if (error instanceof NeuroexamApiError && error.status === 401) needsCredential.value = true;
}
