import type { Fault } from '../../kernel/errors.ts';
import { mayBeEchoed } from './echo.ts';
import { pointerInto } from './pointer.ts';

/** A fault for each entry of a list of texts that is there before. Other entries are faults of their own. */
export function repeatedEntries(list: readonly unknown[], pointer: string): readonly Fault[] {
  const first = new Map<string, number>();
  const faults: Fault[] = [];
  for (const [index, entry] of list.entries()) {
    if (typeof entry !== 'string') continue;
    const before = first.get(entry);
    if (before === undefined) {
      first.set(entry, index);
      continue;
    }
    const what = mayBeEchoed(entry) ? `'${entry}'` : 'This';
    const message = `${what} is there before, at ${pointerInto(pointer, before)}: give each once.`;
    faults.push({ pointer: pointerInto(pointer, index), code: 'REPEATED', message });
  }
  return faults;
}
