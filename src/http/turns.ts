/** What waits for its turn, in the order of arrival. */
const waiting: (() => void)[] = [];

/**
 * Runs the work when its turn has come: one piece in every turn of the event loop. Work on an exam takes milliseconds, and
 * the loop accepts one new connection in every turn; if all requests that are ready were worked off in one, those that
 * connect at the same time would wait for each other many times over.
 */
export function takeTurn(work: () => void): void {
  waiting.push(work);
  if (waiting.length === 1) setImmediate(workOff);
}

function workOff(): void {
  try {
    waiting[0]?.();
  } finally {
    waiting.shift();
    if (waiting.length > 0) setImmediate(workOff);
  }
}
