import type { Request } from 'express';

/** Whether the caller states a preference such as `respond-async` or `handling=strict`. Source: RFC 7240. */
export function prefers(req: Request, wish: string): boolean {
  const prefer = [req.headers.prefer ?? []].flat().join(',');
  return prefer.split(/[,;]/).some((part) => part.trim().toLowerCase().replace(/"/g, '') === wish);
}
