import { Command } from 'commander';
import { type StoreOptions, withStores } from './store-options.ts';
import { exitCodes, type Surroundings } from './surroundings.ts';

interface Options extends StoreOptions {
  readonly retry?: boolean;
}

/** Lines that are printed; what to do about them is seen from fewer. */
const mostListed = 10_000;

export function deliveriesCommand(surroundings: Surroundings): Command {
  return new Command('deliveries')
    .description('List the deliveries to other servers that were given up, oldest first, one JSON object a line.')
    .option('--retry', 'let them be tried again, but for what a later version has overtaken')
    .option('--data-dir <folder>', 'folder of the data (DATA_DIR)')
    .option('--database-url <url>', 'where the store is (DATABASE_URL)')
    .addHelpText(
      'after',
      `
On the error stream stands how many wait and how many were given up. With SQLite the service must be stopped.`,
    )
    .action(async ({ retry, ...where }: Options) => {
      process.exitCode = await withStores(surroundings, where, async ({ outbox }) => {
        for (const one of await outbox.dead(mostListed)) process.stdout.write(`${JSON.stringify(one)}\n`);
        if (retry === true) process.stderr.write(`${await outbox.retry(Date.now())} will be tried again\n`);
        for (const { target, waiting, dead } of await outbox.figures(Date.now())) {
          process.stderr.write(`${target}: ${waiting} waiting, ${dead} given up\n`);
        }
        return exitCodes.fine;
      });
    });
}
