import { Command } from 'commander';
import { type StoreOptions, withStores } from './store-options.ts';
import { exitCodes, type Surroundings } from './surroundings.ts';

interface Options extends StoreOptions {
  readonly purge?: boolean;
}

export function erasuresCommand(surroundings: Surroundings): Command {
  return new Command('erasures')
    .description('List the exams that were erased, oldest first, one JSON object a line.')
    .option('--data-dir <folder>', 'folder of the data (DATA_DIR)')
    .option('--database-url <url>', 'where the store is (DATABASE_URL)')
    .option('--purge', 'first take what was erased out of the files again, as after an erase that was broken off')
    .action(async ({ purge, ...where }: Options) => {
      process.exitCode = await withStores(surroundings, where, async ({ erasures }) => {
        if (purge === true) await erasures.purge();
        for (const erasure of await erasures.list()) process.stdout.write(`${JSON.stringify(erasure)}\n`);
        return exitCodes.fine;
      });
    });
}
