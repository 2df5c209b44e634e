import { useEffect, useRef, useState } from 'preact/hooks';
import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import { type Announcement, announcementOf } from './announcement.ts';

/** Says to a screen reader what is new: another leading site when it has time, a new red flag at once. */
export function Announcer({ answer }: { readonly answer: LocalisationAnswer | undefined }) {
  const before = useRef<LocalisationAnswer | undefined>(undefined);
  const [said, setSaid] = useState<Announcement>({ polite: null, assertive: null });
  useEffect(() => {
    const { polite, assertive } = announcementOf(before.current, answer);
    before.current = answer;
    if (polite !== null || assertive !== null)
      setSaid((last) => ({ polite: polite ?? last.polite, assertive: assertive ?? last.assertive }));
  }, [answer]);
  return (
    <>
      <p class="unseen" aria-live="polite">
        {said.polite}
      </p>
      <p class="unseen" role="alert">
        {said.assertive}
      </p>
    </>
  );
}
