import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { defaults, readOptions } from '../../src/cli/evaluate/options.ts';
import type { Results } from '../../src/cli/evaluate/results.ts';
import { built, root } from '../support/built.ts';
import { temporaryFolder } from '../support/service.ts';

const power = (grades: Readonly<Record<string, string>>) =>
  Object.entries(grades).map(([movement, grade]) => ({ movement, side: 'left', grade }));
const exam = {
  examinedAt: '2026-03-14T10:20:00+01:00',
  findings: {
    power: power({
      'ankle-dorsiflexion': '2',
      'great-toe-extension': '1',
      'ankle-eversion': '3',
      'ankle-inversion': '5',
      'hip-abduction': '5',
    }),
    sensation: [{ modality: 'pinprick', site: 'dorsum-of-foot', side: 'left', result: 'reduced' }],
  },
};
/** A foot drop that spares inversion and hip abduction: the fibular nerve, in every textbook of focal neuropathies. */
const right = { name: 'drop foot', kind: 'textbook', expect: { sites: ['common-fibular-nerve'], side: 'left' }, exam };
const wrong = { name: 'secret name', kind: 'published', expect: { sites: ['ulnar-nerve-elbow'] }, exam };

describe('the evaluation', () => {
  let folder: string;
  beforeEach(() => {
    folder = temporaryFolder();
    mkdirSync(join(folder, 'inner'));
    writeFileSync(join(folder, 'one.ndjson'), `${JSON.stringify(right)}\n`);
    writeFileSync(join(folder, 'inner', 'two.json'), JSON.stringify([wrong], null, 2));
    writeFileSync(join(folder, 'README.md'), 'no case');
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  function run(...args: readonly string[]) {
    const command = [...built('cli/evaluate.js'), ...args];
    const { status, stdout, stderr } = spawnSync(process.execPath, command, { cwd: root, timeout: 60_000 });
    return { status, stdout: stdout.toString(), stderr: stderr.toString() };
  }
  const casesOnly = ['--simulate', '0', '--sequential', '0'];

  it('prints the figures of every file and kind, and explains the misses', () => {
    const json = join(folder, 'results.txt');
    const { status, stdout, stderr } = run(folder, ...casesOnly, '--json', json);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toContain('CASES (2)');
    expect(stdout).toMatch(/one\.ndjson +1 +1\/1 100\.0% +1\/1 100\.0% +1\/1 100\.0%/);
    expect(stdout).toMatch(/inner\/two\.json +1 +0\/1 0\.0%/);
    expect(stdout).toMatch(/textbook +1 +1\/1/);
    expect(stdout).toMatch(/published +1 +0\/1/);
    expect(stdout).toMatch(/all +2 +1\/2 50\.0%/);
    expect(stdout).toContain('Brier score');
    expect(stdout).toMatch(/MISSES \(1\)\n\n1\. secret name \(published\), .*two\.json:2/);
    for (const part of ['expected', 'answered', 'for ', 'right site', 'not among the answers'])
      expect(stdout).toContain(part);
    const results = JSON.parse(readFileSync(json, 'utf8')) as Results;
    expect(results.all.first).toEqual({ right: 1, of: 2 });
    expect(results.cases?.map(({ name, rank }) => [name, rank])).toEqual([
      ['secret name', null],
      ['drop foot', 1],
    ]);
    expect(run(folder, ...casesOnly).stdout).toBe(stdout);
  });

  it('shows nothing of the cases when only figures are wanted', () => {
    const json = join(folder, 'results.txt');
    const { status, stdout } = run(folder, ...casesOnly, '--only', 'figures', '--json', json);
    expect(status).toBe(0);
    expect(stdout).toMatch(/all +2 +1\/2 50\.0%/);
    for (const text of [stdout, readFileSync(json, 'utf8')]) {
      expect(text).not.toMatch(/secret|drop foot|ulnar|fibular/);
    }
  });

  it('measures nothing while any case is faulty, and lists every fault', () => {
    writeFileSync(join(folder, 'one.ndjson'), '{"name": "a"}\nnothing\n');
    writeFileSync(
      join(folder, 'inner', 'two.json'),
      JSON.stringify({ ...wrong, expect: { sites: ['ulnar-nerve-elbo'] } }),
    );
    const { status, stdout, stderr } = run(folder);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(/two\.json:1 \/expect\/sites\/0: .*Did you mean ulnar-nerve-elbow\?/);
    expect(stderr).toMatch(/one\.ndjson:1: `expect` is missing/);
    expect(stderr).toMatch(/one\.ndjson:2: The text is not valid JSON/);
    expect(stderr).not.toMatch(/\n +at /);
  });

  it('says so when there is no folder, and when it holds no case', () => {
    const none = run(join(folder, 'none'));
    expect(none.status).toBe(1);
    expect(none.stderr).toMatch(/^There is no folder .*none\.\n$/);
    rmSync(join(folder, 'one.ndjson'));
    rmSync(join(folder, 'inner'), { recursive: true });
    expect(run(folder).stderr).toMatch(/no case file \(\*\.ndjson, \*\.json\) below/);
  });

  it('explains itself', () => {
    const { status, stdout } = run('--help');
    expect(status).toBe(0);
    for (const option of ['FOLDER', '--misses', '--only figures', '--json', '--simulate', '--sequential', '--seed']) {
      expect(stdout).toContain(option);
    }
  });
});

describe('the options of the evaluation', () => {
  it('have defaults, and take their value after a space or an equals sign', () => {
    expect(readOptions([])).toEqual(defaults);
    expect(readOptions(['some', '--misses', '3', '--only=figures', '--seed=9', '--json', 'out.json'])).toEqual({
      ...defaults,
      folder: 'some',
      misses: 3,
      onlyFigures: true,
      seed: 9,
      json: 'out.json',
    });
  });

  it.each([
    [['--miss', '3'], 'There is no option --miss. Did you mean --misses?'],
    [['--quickly'], /^There is no option --quickly\. The options are --misses, /],
    [['--misses'], '--misses needs a number after it.'],
    [['--misses', 'many'], '--misses takes a whole number from 0 to 1000000, not many.'],
    [['--misses', '-1'], '--misses takes a whole number from 0 to 1000000, not -1.'],
    [['--only', 'names'], '--only takes the word figures, not names.'],
    [['--json', '--seed', '2'], '--json needs a file after it.'],
    [['a', 'b'], 'One folder is evaluated at a time; these are 2: a, b.'],
    [['--json', '--seed', 'x'], /^--json needs a file after it\.\n--seed takes/],
  ] as const)('%j is refused in plain words', (words, message) => {
    expect(() => readOptions(words)).toThrow(message);
  });
});
