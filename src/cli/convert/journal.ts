import { createHash } from 'node:crypto';
import { type FileHandle, open, readFile, rename, rm, writeFile } from 'node:fs/promises';
import type { OutputType } from './convert-line.ts';

/** What a run is of; a run is only gone on with under the same. */
export interface RunIdentity {
  readonly type: OutputType;
  readonly faultsFile: string;
  readonly inputBytes: number;
  /** SHA-256 of the first bytes of the input. */
  readonly inputHead: string;
}

/** How far a run has come; everything counted here is in the files, to the byte. */
export interface Progress {
  readonly inputOffset: number;
  readonly lines: number;
  readonly outputBytes: number;
  readonly faultsBytes: number;
  readonly exams: number;
  readonly errors: number;
  readonly warnings: number;
}

export interface Journal extends RunIdentity, Progress {
  /** The present of the run in milliseconds, so that its second half judges dates as its first did. */
  readonly now: number;
}

export const noProgress: Progress = {
  inputOffset: 0,
  lines: 0,
  outputBytes: 0,
  faultsBytes: 0,
  exams: 0,
  errors: 0,
  warnings: 0,
};

export interface RunFiles {
  readonly out: string;
  readonly faults: string;
  readonly journal: string;
  /** Exams met, for the warning about an identifier that comes twice. */
  readonly seen: string;
}

export function runFiles(out: string, faults: string | undefined): RunFiles {
  return { out, faults: faults ?? `${out}.faults.ndjson`, journal: `${out}.journal`, seen: `${out}.seen` };
}

const headBytes = 64 * 1024;

export async function identify(input: FileHandle, type: OutputType, faultsFile: string): Promise<RunIdentity> {
  const { size } = await input.stat();
  const { buffer, bytesRead } = await input.read(Buffer.alloc(headBytes), 0, headBytes, 0);
  const inputHead = createHash('sha256').update(buffer.subarray(0, bytesRead)).digest('hex');
  return { type, faultsFile, inputBytes: size, inputHead };
}

/** The journal of a run that was broken off; undefined when there is none. */
export async function readJournal(file: string): Promise<Journal | undefined> {
  try {
    return JSON.parse(await readFile(file, 'utf8')) as Journal;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

/** Whole or not at all: written beside and renamed. */
export async function writeJournal(file: string, journal: Journal): Promise<void> {
  const draft = `${file}.new`;
  await writeFile(draft, JSON.stringify(journal), { mode: 0o600 });
  await rename(draft, file);
}

export async function removeJournal({ journal, seen }: RunFiles): Promise<void> {
  await rm(journal, { force: true });
  await rm(seen, { force: true });
}

/** Opens a file to go on writing behind `bytes`; what lies behind is cut off. Null when the file is shorter than that. */
export async function openAt(file: string, bytes: number): Promise<FileHandle | null> {
  const handle = await open(file, bytes === 0 ? 'w+' : 'r+', 0o600);
  const { size } = await handle.stat();
  if (size < bytes) {
    await handle.close();
    return null;
  }
  await handle.truncate(bytes);
  return handle;
}
