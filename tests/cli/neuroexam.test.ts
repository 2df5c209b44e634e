import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { built, root } from '../support/built.ts';
import { examNumbered, exampleExam } from '../support/example-exam.ts';
import { startTestService, temporaryFolder } from '../support/service.ts';

const command = built('cli/neuroexam.js');

describe('the command line', () => {
  let folder: string;
  beforeEach(() => {
    folder = temporaryFolder();
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  function run(args: readonly string[], input = '') {
    const options = { cwd: root, input, timeout: 120_000, maxBuffer: 2 ** 28 };
    const { status, stdout, stderr } = spawnSync(process.execPath, [...command, ...args], options);
    return { status, stdout: stdout.toString(), stderr: stderr.toString() };
  }
  const inFolder = (name: string) => join(folder, name);

  it('explains every command, and answers wrong use with 2 and nothing on standard output', () => {
    const { status, stdout } = run(['--help']);
    expect(status).toBe(0);
    for (const name of ['serve', 'convert', 'check', 'load-demo', 'view']) expect(stdout).toContain(name);
    for (const wrong of [
      ['convrt'],
      ['convert'],
      ['convert', inFolder('none')],
      ['load-demo'],
      ['check', '-f', 'xml', 'a'],
    ]) {
      const answer = run(wrong);
      expect({ wrong, status: answer.status, stdout: answer.stdout }).toEqual({ wrong, status: 2, stdout: '' });
      expect(answer.stderr).not.toMatch(/\n +at /);
    }
  });

  it('converts standard input to standard output in order, tells faults apart, and says nothing of a person', () => {
    const good = JSON.stringify(exampleExam({}, 'foot-drop'));
    const bad = JSON.stringify(
      exampleExam({
        findings: { power: [{ movement: 'ankle-dorsiflexio', side: 'left', grade: '3', note: 'Secret' }] },
      }),
    );
    const input = `${good}\r\n\n${bad}\n{"Secret\n${good}`;
    const { status, stdout, stderr } = run(['convert', '-', '--jobs', '2', '--type', 'document'], input);
    expect(status).toBe(1);
    const bundles = stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { type: string });
    expect(bundles.map(({ type }) => type)).toEqual(['document', 'document']);
    expect(bundles[0]).toEqual(bundles[1]);
    const lines = stderr.trimEnd().split('\n');
    const faults = lines.slice(0, -1).map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(faults.map(({ line, severity, code, pointer }) => [line, severity, code, pointer])).toEqual([
      [3, 'error', 'UNKNOWN_KEY', '/findings/power/0/movement'],
      [4, 'error', 'NOT_JSON', ''],
      [5, 'warning', 'IDENTIFIER_IN_USE', '/identifier'],
    ]);
    expect(faults[0]?.suggestion).toBe('ankle-dorsiflexion');
    expect(lines.at(-1)).toMatch(/^2 exams, 2 faults, 1 warnings, /);
    expect(stderr).not.toContain('Secret');
  });

  it('goes on after being killed as if nothing had been, more than once', async () => {
    const input = inFolder('exams.ndjson');
    const lines = Array.from({ length: 96 }, (_, place) => JSON.stringify(examNumbered(`EX-${place}`)));
    lines.splice(30, 0, '{"bad": true}', '', lines[3] ?? '');
    writeFileSync(input, lines.join('\n'));
    const whole = inFolder('whole');
    expect(run(['convert', input, '--out', whole, '--jobs', '1', '--type', 'resources']).status).toBe(1);

    const out = inFolder('broken');
    const args = ['convert', input, '--out', out, '--jobs', '2', '--type', 'resources', '--resume'];
    // Each start costs a model for every worker.
    const mostKills = 2;
    let kills = 0;
    let reached = 0;
    for (;;) {
      const child = spawn(process.execPath, [...command, ...args], { cwd: root, stdio: 'ignore' });
      const exited = once(child, 'exit');
      // Killed once the journal has come further than in the run before.
      while (child.exitCode === null && child.signalCode === null) {
        await setTimeout(5);
        const offset = offsetIn(`${out}.journal`);
        if (kills < mostKills && offset > reached) {
          reached = offset;
          child.kill('SIGKILL');
          kills += 1;
          break;
        }
      }
      const [code] = (await exited) as [number | null];
      if (code !== null) {
        expect(code).toBe(1);
        break;
      }
      expect(statSync(out).size).toBeLessThan(statSync(whole).size);
    }
    expect(kills).toBe(mostKills);
    expect(readFileSync(out).equals(readFileSync(whole))).toBe(true);
    expect(readFileSync(`${out}.faults.ndjson`, 'utf8')).toBe(readFileSync(`${whole}.faults.ndjson`, 'utf8'));
    expect([existsSync(`${out}.journal`), existsSync(`${out}.seen`)]).toEqual([false, false]);
  }, 240_000);

  it('checks files for a person and for a program', () => {
    const file = inFolder('exam.json');
    writeFileSync(file, JSON.stringify(exampleExam({ status: 'finl' }), null, 2));
    const text = run(['check', file]);
    expect(text.status).toBe(1);
    expect(text.stdout).toMatch(/exam\.json:\d+ \/status: .*final/);
    expect(text.stderr).toMatch(/^1 exams in 1 files, 1 faults on 1 lines\n$/);
    const line =
      readFileSync(file, 'utf8')
        .split('\n')
        .findIndex((one) => one.includes('finl')) + 1;
    const faults = JSON.parse(run(['check', '--format', 'json', file]).stdout) as { line: number; pointer: string }[];
    expect(faults.map((fault) => [fault.line, fault.pointer])).toEqual([[line, '/status']]);
    const fine = run(['check', '-'], JSON.stringify(exampleExam({})));
    expect({ status: fine.status, stdout: fine.stdout }).toEqual({ status: 0, stdout: '' });
  });

  it('checks answers to the form of the exam, with the line of what is wrong in them', () => {
    const file = inFolder('response.json');
    const response = {
      resourceType: 'QuestionnaireResponse',
      identifier: { system: 'https://clinic.example/exams', value: 'EX-FORM' },
      questionnaire: 'https://neuroexam-fhir.example/fhir/Questionnaire/neuro-exam',
      status: 'completed',
      subject: { reference: 'Patient/invented-1' },
      authored: '2026-03-14T10:20:00+01:00',
      item: [{ linkId: 'powr', item: [] }],
    };
    writeFileSync(file, JSON.stringify(response, null, 2));
    const { status, stdout } = run(['check', file]);
    const place = readFileSync(file, 'utf8')
      .split('\n')
      .findIndex((line) => line.includes('powr'));
    expect(status).toBe(1);
    expect(stdout).toContain(`response.json:${place + 1} /item/0/linkId: No such linkId 'powr'. Did you mean 'power'?`);
    expect(run(['check', '-'], JSON.stringify({ ...response, item: [] })).status).toBe(0);
  });

  it('posts invented exams and their corrections to a running service', async () => {
    const [seed, corrected] = seedWithCorrection();
    const service = await startTestService();
    try {
      const load = async () => {
        const args = [...command, 'load-demo', '--count', '40', '--seed', `${seed}`, '--to', service.url];
        const child = spawn(process.execPath, args, { cwd: root });
        let told = '';
        child.stderr.on('data', (chunk: Buffer) => {
          told += chunk.toString();
        });
        const [code] = (await once(child, 'exit')) as [number | null];
        return { code, told };
      };
      const first = await load();
      expect(first.told).toMatch(new RegExp(`^40 invented exams kept, ${corrected} of them corrected, 0 refused`));
      expect(first.code).toBe(0);
    } finally {
      await service.stop();
    }
  }, 90_000);
});

/** The first seed whose 40 exams hold a correction, and how many they hold: which exams a seed draws follows the odds of sites. */
function seedWithCorrection(): readonly [seed: number, corrected: number] {
  const model = simulationModel(createExamReader());
  const until = new Date('2026-01-01T00:00:00Z');
  for (let seed = 1; ; seed += 1) {
    const exams = [...inventExams(model, { count: 40, seed, until })];
    const corrected = exams.filter(({ correction }) => correction !== undefined).length;
    if (corrected > 0) return [seed, corrected];
  }
}

function offsetIn(journal: string): number {
  try {
    return (JSON.parse(readFileSync(journal, 'utf8')) as { inputOffset: number }).inputOffset;
  } catch {
    return 0;
  }
}
