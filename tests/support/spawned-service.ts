import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { built, root } from './built.ts';

export interface SpawnedService {
  readonly url: string;
  readonly process: ChildProcess;
  /** What it wrote to its error stream so far, which is its log. */
  readonly log: () => string;
  /** What it wrote to its standard output so far. */
  readonly output: () => string;
  /** Sends a signal and resolves with the exit code, or the signal that ended it. */
  end(signal: NodeJS.Signals): Promise<number | string | null>;
}

/** Starts the service as a process of its own, from the build; resolves when its start-up line is there. */
export async function spawnService(env: Readonly<Record<string, string>>): Promise<SpawnedService> {
  const child = spawn(process.execPath, built('main.js'), {
    cwd: root,
    env: { ...process.env, PORT: '0', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  let log = '';
  child.stderr.on('data', (chunk: Buffer) => {
    log += chunk.toString();
  });
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', (chunk: Buffer) => {
      output += chunk.toString();
      const ready = /^neuroexam-fhir ready at (http:\/\/\S+)\n/m.exec(output)?.[1];
      if (ready !== undefined) resolve(ready);
    });
    child.once('exit', (code) => reject(new Error(`the service ended with ${code} before it was ready: ${log}`)));
  });
  return {
    url,
    process: child,
    log: () => log,
    output: () => output,
    async end(signal) {
      if (child.exitCode !== null || child.signalCode !== null) return child.exitCode ?? child.signalCode;
      const exited = once(child, 'exit');
      child.kill(signal);
      const [code, endedBy] = (await exited) as [number | null, string | null];
      return code ?? endedBy;
    },
  };
}
