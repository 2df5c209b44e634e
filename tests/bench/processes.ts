import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Server {
  readonly url: string;
  /** CPU time used so far, in microseconds; NaN where the system does not tell. */
  cpuMicroseconds(): number;
  /** Resident memory now and at its highest, in bytes; NaN where the system does not tell. */
  memory(): { readonly now: number; readonly most: number };
  stop(): Promise<void>;
}

/** The service as it is shipped: compiled, at its default settings but for port, folder, log and what is told. */
export function startCandidate(dataDir: string, settings: Readonly<Record<string, string>> = {}): Promise<Server> {
  return start(['dist/main.js'], { DATA_DIR: dataDir, PORT: '0', LOG_LEVEL: 'info', ...settings });
}

/** @param answerBytes size of the answer on each path */
export function startFloor(answerBytes: Readonly<Record<string, number>>): Promise<Server> {
  return start(['tests/bench/floor-server.mjs'], { ANSWER_BYTES: JSON.stringify(answerBytes) });
}

async function start(args: readonly string[], env: Record<string, string>): Promise<Server> {
  const child = spawn(process.execPath, args, {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const url = await new Promise<string>((resolve, reject) => {
    let output = '';
    child.stdout.on('data', (chunk: Buffer) => {
      output += chunk.toString();
      const found = /ready at (http:\/\/\S+)\n/.exec(output)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once('exit', (code) => reject(new Error(`${args.join(' ')} ended with ${code}`)));
  });
  return { url, cpuMicroseconds: () => cpuOf(child), memory: () => memoryOf(child), stop: () => stop(child) };
}

async function stop(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const exited = once(child, 'exit');
  child.kill('SIGTERM');
  await exited;
}

/** User and system time from the process table of Linux, in ticks of 10 ms. */
function cpuOf(child: ChildProcess): number {
  try {
    const fields = readFileSync(`/proc/${child.pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
    return (Number(fields[11]) + Number(fields[12])) * 10_000;
  } catch {
    return Number.NaN;
  }
}

function memoryOf(child: ChildProcess): { now: number; most: number } {
  try {
    const text = readFileSync(`/proc/${child.pid}/status`, 'utf8');
    const bytes = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(text)?.[1]) * 1024;
    return { now: bytes('VmRSS'), most: bytes('VmHWM') };
  } catch {
    return { now: Number.NaN, most: Number.NaN };
  }
}
