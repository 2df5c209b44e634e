/** What a screen reader says when an answer takes the place of another. */
import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import { conclusionWords, namesAPlace, siteName, urgencyWords } from './answer-words.ts';

export interface Announcement {
  /** Said when the reader has finished: another leading site or conclusion. */
  readonly polite: string | null;
  /** Said at once: red flags that the earlier answer did not raise. */
  readonly assertive: string | null;
}

function leadOf(answer: LocalisationAnswer | undefined): string {
  if (answer === undefined) return '';
  const best = answer.localisations[0];
  return namesAPlace(answer) && best !== undefined ? `${answer.conclusion} ${siteName(best)}` : answer.conclusion;
}

export function announcementOf(
  before: LocalisationAnswer | undefined,
  now: LocalisationAnswer | undefined,
): Announcement {
  if (now === undefined) return { polite: null, assertive: null };
  const known = new Set(before?.redFlags.filter(({ state }) => state === 'present').map(({ key }) => key));
  const fresh = now.redFlags.filter(({ key, state }) => state === 'present' && !known.has(key));
  const words = fresh.map(
    ({ label, urgency, action }) => `Red flag, ${urgencyWords[urgency].toLowerCase()}: ${label}. ${action}`,
  );
  return {
    polite: leadOf(before) === leadOf(now) ? null : conclusionWords(now).heading,
    assertive: words.length === 0 ? null : words.join(' '),
  };
}
