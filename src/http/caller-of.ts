import type { Response } from 'express';
import { type Caller, nobody } from '../access/caller.ts';

/** Who asks, as access control found out before the route was reached. */
export function callerOf(res: Response): Caller {
  return (res.locals.caller as Caller | undefined) ?? nobody;
}
