import { Command, InvalidArgumentError, Option } from 'commander';
import { type StoreOptions, withStores } from './store-options.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options extends StoreOptions {
  readonly all?: boolean;
  readonly since?: Date;
  readonly again?: boolean;
}

export function forwardCommand(surroundings: Surroundings): Command {
  return new Command('forward')
    .description('Put exams that were kept before FORWARD_URL was set into the queue of what is forwarded.')
    .option('--all', 'every exam')
    .addOption(
      new Option('--since <time>', 'versions received at this time or later')
        .argParser((text) => {
          const time = new Date(text);
          if (!/^\d{4}-\d{2}-\d{2}/.test(text) || Number.isNaN(time.getTime())) {
            throw new InvalidArgumentError('Expected a date, or a time such as 2026-03-14T10:20:00Z.');
          }
          return time;
        })
        .conflicts('all'),
    )
    .option('--again', 'also what was delivered or given up, as for another server')
    .option('--data-dir <folder>', 'folder of the data (DATA_DIR)')
    .option('--database-url <url>', 'where the store is (DATABASE_URL)')
    .addHelpText(
      'after',
      `
Nothing is sent from here: the service sends what is in the queue, at its next start or within a second. With SQLite it
must be stopped meanwhile. Each version is put in once, however often this runs, unless --again is given.`,
    )
    .action(async ({ all, since, again, ...where }: Options) => {
      if (all !== true && since === undefined) throw new UsageError('Name one of --all and --since TIME.');
      process.exitCode = await withStores(surroundings, where, async ({ outbox }) => {
        const from = (since ?? new Date(0)).toISOString();
        const put = await outbox.enqueueKept({ since: from, again: again === true, now: Date.now() });
        process.stdout.write(`${put} versions put into the queue\n`);
        return exitCodes.fine;
      });
    });
}
