import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Response } from 'express';
import { recordAccess } from './audit/access-note.ts';

/**
 * Sends an answer piece by piece, no faster than the caller takes it. An error in the middle breaks the connection off,
 * so that half an answer is never taken for the whole.
 */
export async function streamChunks(res: Response, chunks: AsyncIterable<string | Buffer>): Promise<void> {
  await recordAccess(res);
  try {
    await pipeline(Readable.from(chunks), res);
  } catch (error) {
    // The caller went away, or the error handler can only break off what has begun.
    if (res.destroyed && !res.writableEnded && isPrematureClose(error)) return;
    throw error;
  }
}

function isPrematureClose(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ERR_STREAM_PREMATURE_CLOSE';
}
