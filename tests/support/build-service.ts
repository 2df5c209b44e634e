import { execFileSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** What the build said when it failed; empty when it did not. */
    buildFault: string;
  }
}

const root = join(import.meta.dirname, '..', '..');
const inputs = ['src', 'package.json', 'package-lock.json', 'tsconfig.json', 'tsconfig.build.json'];
/** What the build writes last. */
const lastBuilt = join(root, 'dist', 'r4-definitions.json.gz');

/**
 * Builds the service once before the tests, unless it is newer than its sources: started as a process from the build it is
 * ready in a second, from the sources it works out the model anew each time.
 */
export default function buildService(project: TestProject): void {
  let fault = '';
  if (changed(lastBuilt) < Math.max(...inputs.map((input) => changed(join(root, input))))) {
    try {
      execFileSync('npm', ['run', '--silent', 'build'], { cwd: root, stdio: 'pipe', encoding: 'utf8' });
    } catch (error) {
      const { stdout = '', stderr = '' } = error as { stdout?: string; stderr?: string };
      fault = `${stdout}${stderr}` || String(error);
    }
  }
  project.provide('buildFault', fault);
}

/** When a file, or the newest one below a folder, was written; ms since 1970, 0 when it is not there. */
function changed(path: string): number {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (stats === undefined) return 0;
  if (!stats.isDirectory()) return stats.mtimeMs;
  const files = readdirSync(path, { recursive: true }) as string[];
  return Math.max(stats.mtimeMs, ...files.map((file) => statSync(join(path, file)).mtimeMs));
}
