import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bullets, table, wrap } from '../../src/cli/demo/layout.ts';
import { built, root } from '../support/built.ts';
import { exampleNames } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';
import { spawnService } from '../support/spawned-service.ts';

const command = built('cli/demo.js');

describe('the layout of the demonstration', () => {
  it('wraps at spaces and never inside a word', () => {
    expect(wrap('one two three four', 9)).toBe('one two\nthree\nfour');
    expect(wrap('one two three', 11, '  ')).toBe('  one two\n  three');
    expect(wrap('antidisestablishment yes', 5)).toBe('antidisestablishment\nyes');
    expect(wrap('first\n\nsecond', 20)).toBe('first\n\nsecond');
  });

  it('hangs bullets and aligns columns', () => {
    expect(bullets(['one two three'], 12)).toBe('  - one two\n    three');
    expect(
      table(
        [
          ['a', 'long', 'x'],
          ['bbb', 'c', 'yyyyyyyyyyyyyyyyyyyy'],
        ],
        22,
      ),
    ).toBe('  a    long  x\n  bbb  c     yyyyyy...');
  });
});

describe('the demonstration', () => {
  let dataDir: string;
  beforeEach(() => {
    dataDir = temporaryFolder();
  });
  afterEach(() => rmSync(dataDir, { recursive: true, force: true }));

  function run(args: readonly string[], env: Record<string, string> = {}) {
    const options = { cwd: root, env: { ...process.env, PORT: '0', DATA_DIR: dataDir, ...env }, timeout: 60_000 };
    const { status, stdout, stderr } = spawnSync(process.execPath, [...command, ...args], options);
    return { status, stdout: stdout.toString(), stderr: stderr.toString() };
  }

  it.each(exampleNames)('shows the example %s for a person and leaves its Bundle in a file', (name) => {
    const { status, stdout, stderr } = run([name, '--once']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    for (const part of [
      'invented',
      'PRESENTATION',
      'WHERE THE LESION',
      'RED FLAGS',
      'Observations',
      'TESTS',
      'CAUTION',
    ]) {
      expect(stdout).toContain(part);
    }
    expect(stdout).not.toMatch(/undefined|NaN|\[object/);
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(130);
    const bundle = JSON.parse(readFileSync(join(dataDir, `demo-${name}-bundle.json`), 'utf8')) as { type: string };
    expect(bundle.type).toBe('transaction');
  });

  it('works again over the exam of an earlier run', () => {
    expect(run(['--once']).status).toBe(0);
    const second = run(['--once']);
    expect({ status: second.status, stderr: second.stderr }).toEqual({ status: 0, stderr: '' });
  });

  it('stands beside a service that holds the port and the store', async () => {
    const service = await spawnService({ DATA_DIR: dataDir, LOG_LEVEL: 'silent' });
    const { status, stdout } = run(['--once'], { PORT: new URL(service.url).port });
    await service.end('SIGTERM');
    expect(status).toBe(0);
    expect(stdout).toMatch(/in use, so a free one is taken/);
    expect(stdout).toMatch(/keeps its exam in .*demo instead/);
  });

  it('goes on serving until it is interrupted', async () => {
    const child = spawn(process.execPath, command, {
      cwd: root,
      env: { ...process.env, PORT: '0', DATA_DIR: dataDir },
    });
    let output = '';
    child.stdout.on('data', (chunk: Buffer) => {
      output += chunk.toString();
      if (output.includes('Ctrl-C ends it')) child.kill('SIGINT');
    });
    const [code] = (await once(child, 'exit')) as [number | null];
    expect(code).toBe(0);
  });

  it.each([['none-such'], ['--help'], ['foot-drop', 'cervical-cord']])(
    'names the examples when asked for %s',
    (...asked) => {
      const { status, stderr } = run([...asked, '--once']);
      expect(status).toBe(1);
      expect(stderr).toContain(exampleNames[0]);
    },
  );
});
