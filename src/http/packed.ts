import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Request, Response } from 'express';
import { answerBytes, type MediaType } from './answer.ts';

/** Bytes that many ask for and that never change while the service runs, compressed once, when first asked for. */
export interface Packed {
  readonly type: MediaType;
  readonly bytes: Buffer;
  readonly encoded: (encoding: 'br' | 'gzip') => Buffer;
}

export function packed(type: MediaType, bytes: Buffer): Packed {
  const made = new Map<'br' | 'gzip', Buffer>();
  return {
    type,
    bytes,
    encoded(encoding) {
      const known = made.get(encoding);
      if (known !== undefined) return known;
      const size = { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.byteLength };
      const fresh = encoding === 'br' ? brotliCompressSync(bytes, { params: size }) : gzipSync(bytes, { level: 9 });
      made.set(encoding, fresh);
      return fresh;
    },
  };
}

/** Answers in the encoding that the caller likes best. Nothing secret may stand in it: its size tells of what is in it. */
export function answerPacked(req: Request, res: Response, { type, bytes, encoded }: Packed): void {
  res.vary('Accept-Encoding');
  const encoding = req.acceptsEncodings(['br', 'gzip']);
  const isEncoded = encoding === 'br' || encoding === 'gzip';
  if (isEncoded) res.setHeader('Content-Encoding', encoding);
  answerBytes(res, 200, type, isEncoded ? encoded(encoding) : bytes);
}
