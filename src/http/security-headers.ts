import type { NextFunction, Request, Response } from 'express';

/** For an interface that serves data and one plain page: nothing may be guessed, framed, embedded, run or kept. */
const headers = {
  'X-Content-Type-Options': 'nosniff',
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'",
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
} as const;

export function securityHeaders(_req: Request, res: Response, next: NextFunction): void {
  for (const [name, value] of Object.entries(headers)) res.setHeader(name, value);
  next();
}
