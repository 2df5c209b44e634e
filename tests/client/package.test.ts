import { execFile, execFileSync } from 'node:child_process';
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { built, root } from '../support/built.ts';
import { startTestService, temporaryFolder } from '../support/service.ts';

/** A program of somebody else's, as strict as the compiler can be. */
const program = `
import { createClient, type LocalisationAnswer, NeuroexamApiError } from 'neuroexam-fhir/client';

const client = createClient({ baseUrl: process.argv[2] ?? '', token: async () => 'none', spelling: 'us' });
const answer = await client.localise({
  examinedAt: '2026-03-14T10:20:00+01:00',
  findings: { power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '2' }] },
});
const body: LocalisationAnswer = answer.body;
// @ts-expect-error there is no such movement
const refused = await client.localise({ examinedAt: '2026-03-14T10:20:00+01:00', findings: { power: [{ movement: 'ankle-up', side: 'left', grade: '2' }] } }).catch((error: unknown) => error);
console.log(JSON.stringify([body.conclusion.length > 0, refused instanceof NeuroexamApiError && refused.faults[0]?.code]));
`;

const settings = {
  target: 'es2022',
  lib: ['es2022', 'dom'],
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  skipLibCheck: false,
  types: [],
};

describe('the package', () => {
  const folder = temporaryFolder();
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(async () => {
    await service.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  it('gives the client to a program of its own, types and all', async () => {
    built('main.js');
    execFileSync('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', folder], {
      cwd: root,
      stdio: 'pipe',
    });
    execFileSync('tar', ['-xzf', join(folder, 'neuroexam-fhir-0.1.0.tgz'), '-C', folder]);
    mkdirSync(join(folder, 'node_modules'));
    renameSync(join(folder, 'package'), join(folder, 'node_modules', 'neuroexam-fhir'));
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
    writeFileSync(join(folder, 'program.ts'), program);
    writeFileSync(join(folder, 'surroundings.d.ts'), 'declare const process: { readonly argv: readonly string[] };');
    for (const [module, moduleResolution] of [
      ['es2022', 'bundler'],
      ['nodenext', 'nodenext'],
    ]) {
      const file = join(folder, 'tsconfig.json');
      writeFileSync(
        file,
        JSON.stringify({ compilerOptions: { ...settings, module, moduleResolution }, include: ['*.ts'] }),
      );
      const compile = () =>
        execFileSync(process.execPath, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '-p', file], {
          stdio: 'pipe',
          encoding: 'utf8',
        });
      expect(compile).not.toThrow();
    }
    const { stdout } = await promisify(execFile)(process.execPath, [join(folder, 'program.js'), service.url]);
    expect(JSON.parse(stdout)).toEqual([true, 'UNKNOWN_KEY']);
  });
});
