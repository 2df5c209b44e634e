import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { send, sendJson } from '../support/client.ts';
import { temporaryFolder } from '../support/service.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';
import { numberedExam, Witness } from './exam-load.ts';
import { isFullRun, tell } from './sizes.ts';

const times = isFullRun ? 10 : 1;
/** A disk in memory, of this size. */
const sizeMib = 24;

describe('a disk that is full', () => {
  const folder = temporaryFolder();
  const disk = join(folder, 'disk');
  const isMounted = mount(disk);
  let service: SpawnedService | undefined;
  beforeAll(() => {
    if (!isMounted) tell('SKIPPED: no small disk can be mounted here, so that none can be filled');
  });
  afterAll(async () => {
    await service?.end('SIGKILL');
    if (isMounted) execFileSync('umount', ['-l', disk]);
    rmSync(folder, { recursive: true, force: true });
  });

  it.skipIf(!isMounted)(
    'takes no exam by half, and serves what it has and goes on when there is room',
    { timeout: 600_000 },
    async () => {
      const env = { DATA_DIR: disk, DATABASE_URL: `sqlite:${join(disk, 'exams.sqlite')}`, LOG_LEVEL: 'error' };
      service = await spawnService(env);
      const { url } = service;
      const witness = new Witness();
      const refusals = new Set<number>();
      const ballast = join(disk, 'ballast');
      for (let time = 0; time < times; time += 1) {
        expect(await witness.post(`before-${time}`, url)).toBe(true);
        fill(ballast, disk, time);
        for (let n = 0; refusals.size === 0 || n < 12; n += 1) {
          const answer = await sendJson(`${url}/exams`, numberedExam(`full-${time}-${n}`));
          if (answer.status === 201) {
            await witness.post(`full-${time}-${n}`, url);
            continue;
          }
          refusals.add(answer.status);
          expect(answer.json()).toMatchObject({ resourceType: 'OperationOutcome' });
        }
        // No access without its record in the audit trail, so that reading waits for room too.
        const read = await send(`${url}/fhir/ClinicalImpression?_summary=count`);
        expect([200, 503, 507]).toContain(read.status);
        expect((await send(`${url}/health/ready`)).status).toBe(507);
        expect((await send(`${url}/health/live`)).status).toBe(200);
        rmSync(ballast);
        expect((await send(`${url}/health/ready`)).status).toBe(200);
        // Nothing that was refused is there in part, and everything else is served.
        expect(await witness.faults(url)).toEqual([]);
        expect(await witness.post(`after-${time}`, url)).toBe(true);
      }
      expect([...refusals].filter((status) => status !== 507 && status !== 503)).toEqual([]);
      expect(await witness.faults(url)).toEqual([]);
      expect(await service.end('SIGKILL')).toBe('SIGKILL');
      service = await spawnService(env);
      expect(await witness.faults(service.url)).toEqual([]);
      const { total } = (await send(`${service.url}/fhir/ClinicalImpression?_summary=count`)).json<{ total: number }>();
      expect(total).toBe(witness.acknowledged.size);
      tell(
        `a full disk, ${times} times: refused with ${[...refusals].join(', ')}, ${total} exams acknowledged and kept`,
      );
    },
  );
});

function mount(path: string): boolean {
  mkdirSync(path);
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${sizeMib}m`, 'tmpfs', path], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Leaves a little less room than the last time, so that another write is the one that fails. */
function fill(file: string, disk: string, time: number): void {
  const { bavail, bsize } = statfsSync(disk);
  const left = Math.max(0, 300_000 - time * 30_000);
  writeFileSync(file, Buffer.alloc(Math.max(0, bavail * bsize - left)));
}
