import { Command } from 'commander';
import type { StoreOptions } from './store-options.ts';
import { environmentOf } from './store-options.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options extends StoreOptions {
  readonly anchor?: string;
}

export function verifyAuditCommand(surroundings: Surroundings): Command {
  return new Command('verify-audit')
    .description('Walk along the audit trail and tell whether an entry was changed, moved, added or removed.')
    .option('--data-dir <folder>', 'folder of the data (DATA_DIR)')
    .option('--database-url <url>', 'where the store is (DATABASE_URL)')
    .option('--anchor <hash>', 'the anchor that an earlier run has printed; it must still be in the trail')
    .addHelpText(
      'after',
      `
It only reads, also while the service runs. It prints one JSON object: how many entries, from when to when, and the anchor,
the hash of the newest one. Note the anchor where whoever can write to the store cannot: with it, removing the newest
entries or writing the whole trail anew shows too.
Exit codes: 0 whole, 1 the trail is broken, with the first entry that is not as it was written, 2 wrong use.`,
    )
    .action(async (options: Options) => {
      process.exitCode = await verify(options, surroundings);
    });
}

async function verify({ anchor, ...where }: Options, { verifyAudit }: Surroundings): Promise<number> {
  const wanted = anchor?.trim().toLowerCase();
  if (wanted !== undefined && !/^[0-9a-f]{64}$/.test(wanted)) {
    throw new UsageError('--anchor takes 64 hexadecimal digits, as an earlier run has printed them.');
  }
  const { fault, ...found } = await verifyAudit(environmentOf(where), wanted);
  process.stdout.write(`${JSON.stringify(fault === undefined ? found : { ...found, fault })}\n`);
  if (fault === undefined) return exitCodes.fine;
  process.stderr.write(`neuroexam: the audit trail is broken at entry ${fault.n}: ${fault.text}.\n`);
  return exitCodes.faults;
}
