import { Command } from 'commander';
import type { Surroundings } from './surroundings.ts';

export function serveCommand({ serve }: Surroundings): Command {
  return new Command('serve')
    .description('Start the service, as `npm start` does. Options override the environment.')
    .option('--host <address>', 'address to listen on (HOST)')
    .option('--port <number>', 'port; 0 picks a free one (PORT)')
    .option('--data-dir <folder>', 'folder of the data (DATA_DIR)')
    .option('--database-url <url>', 'where the store is (DATABASE_URL)')
    .action(async (options: Readonly<Record<string, string | undefined>>) => {
      const own = {
        HOST: options.host,
        PORT: options.port,
        DATA_DIR: options.dataDir,
        DATABASE_URL: options.databaseUrl,
      };
      const given = Object.entries(own).filter(([, value]) => value !== undefined);
      const exitCode = await serve({ ...process.env, ...Object.fromEntries(given) });
      if (exitCode !== undefined) process.exitCode = exitCode;
    });
}
