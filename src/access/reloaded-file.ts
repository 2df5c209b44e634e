import { readFile, stat } from 'node:fs/promises';

/** How long what was read is believed before the file is looked at again, in ms. */
const lookAgainMs = 1_000;

/** Larger than any list of keys, small enough to be read at once. */
const mostBytes = 1024 * 1024;

/** What stands in a file that may change while the service runs. */
export interface ReloadedFile<Content> {
  current(): Promise<Content>;
}

/**
 * Reads a file, and again after it changed. A change that cannot be read or understood keeps what was there before.
 * @param parse throws when the text is not what it should be
 * @param onFault told once for each change that was not taken
 * @throws what `parse` or the file system throws, for the first reading
 */
export async function reloadedFile<Content>(
  path: string,
  parse: (text: string) => Content,
  onFault: () => void,
  clock: () => number,
): Promise<ReloadedFile<Content>> {
  // Taken before the content: what is written in between then counts as a change.
  let seen = await stampOf(path);
  let content = parse(await textOf(path));
  let lookedAt = clock();
  let looking: Promise<void> | undefined;

  const look = async (): Promise<void> => {
    const stamp = await stampOf(path).catch(() => 'none');
    lookedAt = clock();
    if (stamp === seen) return;
    seen = stamp;
    try {
      content = parse(await textOf(path));
    } catch {
      onFault();
    }
  };

  return {
    async current() {
      if (clock() - lookedAt >= lookAgainMs) {
        looking ??= look().finally(() => {
          looking = undefined;
        });
        await looking;
      }
      return content;
    },
  };
}

async function stampOf(path: string): Promise<string> {
  const { mtimeMs, size, ino } = await stat(path);
  return `${mtimeMs} ${size} ${ino}`;
}

async function textOf(path: string): Promise<string> {
  if ((await stat(path)).size > mostBytes) throw new RangeError(`more than ${mostBytes} bytes`);
  return readFile(path, 'utf8');
}
