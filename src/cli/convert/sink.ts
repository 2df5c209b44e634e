import { once } from 'node:events';
import type { FileHandle } from 'node:fs/promises';
import type { Writable } from 'node:stream';

/** Where bytes go, one write after the other. */
export interface Sink {
  write(bytes: Uint8Array): Promise<void>;
  /** Resolves when what was written outlives a power cut. */
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** @param start offset at which the file is gone on with */
export function fileSink(handle: FileHandle, start: number): Sink {
  let position = start;
  return {
    async write(bytes) {
      let done = 0;
      while (done < bytes.length) {
        const { bytesWritten } = await handle.write(bytes, done, bytes.length - done, position);
        done += bytesWritten;
        position += bytesWritten;
      }
    },
    sync: () => handle.datasync(),
    close: () => handle.close(),
  };
}

/** A stream that is not ours to close; waits while its reader is slower. */
export function streamSink(stream: Writable): Sink {
  return {
    async write(bytes) {
      if (bytes.length > 0 && !stream.write(bytes)) await once(stream, 'drain');
    },
    sync: async () => {},
    close: async () => {},
  };
}
