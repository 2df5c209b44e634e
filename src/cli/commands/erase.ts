import { userInfo } from 'node:os';
import { createInterface } from 'node:readline/promises';
import { Command } from 'commander';
import { type StoreOptions, withStores } from './store-options.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options extends StoreOptions {
  readonly exam: string;
  readonly reason: string;
  readonly yes?: boolean;
}

/** Longest reason that is kept, in characters; it names a ground, not a case. */
const longestReason = 500;

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

export function eraseCommand(surroundings: Surroundings): Command {
  return new Command('erase')
    .description('Remove an exam for good: every version, everything made from it, its history and its index.')
    .requiredOption('--exam <id>', 'the id in its address, /exams/ID')
    .requiredOption('--reason <text>', 'why; kept with the record of the removal, so name no person in it')
    .option('--data-dir <folder>', 'folder of the data (DATA_DIR)')
    .option('--database-url <url>', 'where the store is (DATABASE_URL)')
    .option('-y, --yes', 'do not ask')
    .addHelpText(
      'after',
      `
It cannot be undone. What stays is a record: id, time, reason, who, and the hashes of the content; \`erasures\` lists them.
Exports that were begun before are removed too. With SQLite the service must be stopped, and the file is written anew, so
that nothing of the exam is left in it; backups, and with PostgreSQL the log and freed blocks, are yours to look after.
Exit codes: 0 erased, 1 there is no such exam, 2 wrong use.`,
    )
    .action(async (options: Options) => {
      process.exitCode = await erase(options, surroundings);
    });
}

async function erase({ exam, reason, yes, ...where }: Options, surroundings: Surroundings): Promise<number> {
  if (!uuid.test(exam)) throw new UsageError('--exam takes the id of an exam, a UUID in lower case.');
  const why = reason.trim();
  if (why === '' || why.length > longestReason) {
    throw new UsageError(`--reason takes a text of 1 to ${longestReason} characters.`);
  }
  return withStores(surroundings, where, async ({ exams, erasures }) => {
    if ((await exams.find(exam)) === undefined) {
      process.stderr.write('neuroexam: there is no exam with this id.\n');
      return exitCodes.faults;
    }
    if (yes !== true) await confirm(exam);
    const erasure = await erasures.erase(exam, { reason: why, by: userName(), at: new Date() });
    process.stdout.write(`${JSON.stringify(erasure)}\n`);
    await erasures.purge();
    return exitCodes.fine;
  });
}

/** @throws UsageError unless somebody types the id once more */
async function confirm(exam: string): Promise<void> {
  if (process.stdin.isTTY !== true) throw new UsageError('Nobody can be asked here; say --yes.');
  const dialogue = createInterface({ input: process.stdin, output: process.stderr });
  const answer = await dialogue.question('This cannot be undone. Type the id of the exam to go on: ');
  dialogue.close();
  if (answer.trim() !== exam) throw new UsageError('That is another id; nothing was removed.');
}

/** A container may run under a number without a name. */
function userName(): string {
  try {
    return userInfo().username;
  } catch {
    return `user ${process.getuid?.() ?? 'unknown'}`;
  }
}
