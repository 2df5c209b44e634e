import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { compiledByBuild } from './built.ts';

/**
 * The whole service on a free port, with its store in a new folder; `stop` removes that folder.
 * @param env settings that differ from those of every test
 */
export async function startTestService(env: Readonly<Record<string, string>> = {}): Promise<RunningService> {
  const dataDir = temporaryFolder();
  const service = await startService(
    readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir, ...env }),
    compiledByBuild(),
  );
  return {
    ...service,
    async stop() {
      await service.stop();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), 'neuroexam-test-'));
}
