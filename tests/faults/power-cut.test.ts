import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Chance } from '../../src/kernel/chance.ts';
import { temporaryFolder } from '../support/service.ts';
import { spawnService } from '../support/spawned-service.ts';
import { Witness } from './exam-load.ts';
import { seed, sizes, tell } from './sizes.ts';

/**
 * A kill leaves what was written but not synced with the system, so it cannot tell a commit that was synced from one that
 * was not. Here nothing but what had been synced is there after the cut.
 */
describe('a power cut, simulated by keeping what was synced alone', () => {
  const folder = temporaryFolder();
  const library = build(folder);
  beforeAll(() => {
    if (library === undefined) tell('SKIPPED: without Linux and a C compiler no power cut can be simulated');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** Exams that were acknowledged before the cut, and what is wrong with them after it. */
  async function cut(name: string, env: Record<string, string>): Promise<{ acknowledged: number; faults: string[] }> {
    const before = join(folder, `${name}-before`);
    const after = join(folder, `${name}-after`);
    mkdirSync(after);
    const store = (dataDir: string) => ({
      DATA_DIR: dataDir,
      DATABASE_URL: `sqlite:${join(dataDir, 'exams.sqlite')}`,
      LOG_LEVEL: 'error',
    });
    const service = await spawnService({ ...store(before), LD_PRELOAD: String(library), SYNCED_COPIES: after, ...env });
    const witness = new Witness();
    const load = witness.load(name, 4, () => service.url);
    const least = 4 + Math.floor(new Chance(`${seed} ${name}`).next() * 12);
    while (witness.acknowledged.size < least) await pause(1);
    await service.end('SIGKILL');
    await load.stop();
    const restarted = await spawnService(store(after));
    const faults = await witness.faults(restarted.url);
    await restarted.end('SIGKILL');
    for (const one of [before, after]) rmSync(one, { recursive: true, force: true });
    return { acknowledged: witness.acknowledged.size, faults };
  }

  it.skipIf(library === undefined)('takes no exam that was acknowledged', { timeout: 3_600_000 }, async () => {
    let acknowledged = 0;
    for (let n = 0; n < sizes.powerCuts; n += 1) {
      const found = await cut(`cut-${n}`, {});
      expect(found.faults).toEqual([]);
      acknowledged += found.acknowledged;
    }
    tell(`sqlite: ${sizes.powerCuts} power cuts, ${acknowledged} exams acknowledged, 0 lost`);
  });

  it.skipIf(library === undefined)(
    'would take some if the log were not synced, so that it is seen',
    { timeout: 120_000 },
    async () => {
      const { acknowledged, faults } = await cut('control', { SYNCED_COPIES_FORGET_LOG: '1' });
      tell(`control without syncs of the log: ${acknowledged} exams acknowledged, ${faults.length} lost`);
      expect(faults.length).toBeGreaterThan(0);
    },
  );
});

function build(folder: string): string | undefined {
  const library = join(folder, 'synced-copies.so');
  if (process.platform !== 'linux') return undefined;
  try {
    const source = join(import.meta.dirname, 'synced-copies.c');
    execFileSync('cc', ['-shared', '-fPIC', '-O1', '-o', library, source, '-ldl'], { stdio: 'pipe' });
  } catch {
    return undefined;
  }
  return existsSync(library) ? library : undefined;
}
