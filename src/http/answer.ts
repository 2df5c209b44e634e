import type { Response } from 'express';

export const mediaTypes = {
  json: 'application/json',
  fhir: 'application/fhir+json',
  problem: 'application/problem+json',
  schema: 'application/schema+json',
  html: 'text/html',
  script: 'text/javascript',
  style: 'text/css',
  svg: 'image/svg+xml',
  text: 'text/plain',
} as const;

export type MediaType = (typeof mediaTypes)[keyof typeof mediaTypes];

/** Sends bytes as they are: a known length, no hashing of the body, nothing rewritten. */
export function answerBytes(res: Response, status: number, type: MediaType, bytes: Uint8Array): void {
  res.statusCode = status;
  res.setHeader('Content-Type', `${type}; charset=utf-8`);
  res.setHeader('Content-Length', bytes.byteLength);
  res.end(bytes);
}

export function answerJson(res: Response, status: number, type: MediaType, value: unknown): void {
  answerBytes(res, status, type, Buffer.from(JSON.stringify(value), 'utf8'));
}
