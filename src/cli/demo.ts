import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Bundle } from 'fhir/r4.js';
import { accessVariables } from '../access/access-settings.ts';
import { type Config, readConfig } from '../config.ts';
import { StoreError } from '../kernel/errors.ts';
import { type RunningService, startService, stopOnSignals } from '../service.ts';
import { wrap } from './demo/layout.ts';
import { report, type ShownAnswer } from './demo/report.ts';

/**
 * `npm run demo -- [example] [--once]`: starts the service, sends one invented exam over HTTP and prints what comes
 * back, for a person. The service stays up until Ctrl-C, unless `--once` is there.
 */

const examples = new URL('../../tests/examples/', import.meta.url);
const width = Math.min(Math.max(process.stdout.columns ?? 120, 60), 120);

interface PostedExam {
  readonly identifier: { readonly system: string; readonly value: string };
}

async function demo(args: readonly string[]): Promise<void> {
  const once = args.includes('--once');
  const [name = 'foot-drop', ...others] = args.filter((arg) => arg !== '--once');
  const known = readdirSync(examples).flatMap((file) => /^(.+)\.json$/.exec(file)?.[1] ?? []);
  if (!known.includes(name) || others.length > 0) {
    throw new Error(`Expected at most one example and --once. The examples are: ${known.join(', ')}.`);
  }
  const exam = readFileSync(new URL(`${name}.json`, examples), 'utf8');

  const { service, dataDir } = await start();
  stopOnSignals(service);
  print(`neuroexam-fhir ready at ${service.url}`);
  print(wrap(`The exam "${name}" is invented; nobody in it exists.`, width));
  print('');

  const { bundle, location } = await postExam(service.url, exam);
  const answer = (await post(`${service.url}/localisation`, exam)).body as ShownAnswer;
  print(report(answer, bundle, width));

  const file = join(dataDir, `demo-${name}-bundle.json`);
  mkdirSync(dataDir, { recursive: true, mode: 0o700 });
  writeFileSync(file, `${JSON.stringify(bundle, null, 2)}\n`, { mode: 0o600 });
  print('THE BUNDLE');
  if (!once) print(`  ${service.url}${location}/bundle`);
  print(`  ${file}`);
  print(wrap('Send it as it is to any FHIR R4 server; sending it twice makes no duplicates.', width, '  '));

  if (once) {
    await service.stop();
    return;
  }
  print(`\nThe service goes on at ${service.url}; Ctrl-C ends it.`);
}

/** Starts on the port and in the folder of the environment, and moves aside when another service holds one of them. */
async function start(): Promise<{ service: RunningService; dataDir: string }> {
  // A demonstration for whoever sits at this machine has no token to send.
  const unguarded = Object.fromEntries(accessVariables.map((name) => [name, '']));
  const env: NodeJS.ProcessEnv = { LOG_LEVEL: 'error', ...process.env, ...unguarded };
  const attempt = async (config: Config) => ({ service: await startService(config), dataDir: config.dataDir });
  const onFreePort = async (config: Config) => {
    try {
      return await attempt(config);
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EADDRINUSE')) throw error;
      print(`Port ${config.port} is in use, so a free one is taken.`);
      return attempt({ ...config, port: 0 });
    }
  };
  try {
    return await onFreePort(readConfig(env));
  } catch (error) {
    if (!(error instanceof StoreError) || error.code !== 'STORE_UNAVAILABLE' || env.DATABASE_URL) throw error;
    const dataDir = join(readConfig(env).dataDir, 'demo');
    print(`${error.message} The demonstration keeps its exam in ${dataDir} instead.`);
    return onFreePort(readConfig({ ...env, DATA_DIR: dataDir }));
  }
}

/**
 * Posts the exam. An earlier run may have left the same exam (answered with the same Bundle) or an older wording of the
 * example under its identifier; the new wording then goes under an identifier of its own.
 */
async function postExam(url: string, exam: string): Promise<{ bundle: Bundle; location: string }> {
  const first = await post(`${url}/exams`, exam, [200, 201, 409]);
  const answer = first.status === 409 ? await post(`${url}/exams`, renamed(exam), [200, 201]) : first;
  return { bundle: answer.body as Bundle, location: answer.location ?? '' };
}

function renamed(exam: string): string {
  const body = JSON.parse(exam) as PostedExam;
  const suffix = createHash('sha256').update(exam).digest('hex').slice(0, 8);
  return JSON.stringify({ ...body, identifier: { ...body.identifier, value: `${body.identifier.value}-${suffix}` } });
}

async function post(url: string, body: string, expected: readonly number[] = [200]) {
  const response = await fetch(url, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
  const text = await response.text();
  if (!expected.includes(response.status)) throw new Error(`The service answered ${response.status}: ${text}`);
  return { status: response.status, location: response.headers.get('Location'), body: JSON.parse(text) as unknown };
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}

try {
  await demo(process.argv.slice(2));
} catch (error) {
  const reason = error instanceof Error ? error.message : String(error);
  process.stderr.write(`The demonstration cannot go on: ${reason}\n`);
  process.exit(1);
}
