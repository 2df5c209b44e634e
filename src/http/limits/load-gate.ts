import type { NextFunction, Request, Response } from 'express';
import { TryLaterError } from '../../kernel/errors.ts';

/** What the service takes on at once. */
export interface LoadLimits {
  readonly requests: number;
  /** Of all bodies together. */
  readonly bodyBytes: number;
  readonly pendingWrites: number;
  /** Of the event loop; 0 for any. */
  readonly delayMs: number;
  /** Resident; 0 for what the surroundings allow. */
  readonly memoryMb: number;
}

/** How much there is to do, as far as it is not seen from the requests. */
export interface LoadReadings {
  readonly pendingWrites: () => number;
  readonly delayMs: () => number;
  readonly isMemoryShort: () => boolean;
}

export const refusalReasons = ['requests', 'body-bytes', 'pending-writes', 'delay', 'memory'] as const;
export type RefusalReason = (typeof refusalReasons)[number];

export interface LoadGate {
  handle(req: Request, res: Response, next: NextFunction): void;
  /** Under way. */
  readonly requests: number;
  readonly bodyBytes: number;
}

/** Who watches the service must reach it when nobody else does. */
const alwaysTaken = /^\/(health\/(live|ready)|metrics)$/;

/**
 * Refuses what would be too much, before any of its body is read, so that memory does not grow with what is asked. What is
 * under way is finished, and those who are refused hear when to come again.
 * @param bodyLimitBytes counted for a body whose length is not told beforehand
 */
export function createLoadGate(
  limits: LoadLimits,
  bodyLimitBytes: number,
  readings: LoadReadings,
  onRefused: (reason: RefusalReason) => void,
): LoadGate {
  let requests = 0;
  let bodyBytes = 0;

  function reasonAgainst(expected: number): RefusalReason | undefined {
    if (requests >= limits.requests) return 'requests';
    if (expected > 0 && bodyBytes + expected > limits.bodyBytes) return 'body-bytes';
    if (expected > 0 && readings.pendingWrites() >= limits.pendingWrites) return 'pending-writes';
    if (limits.delayMs > 0 && readings.delayMs() > limits.delayMs) return 'delay';
    return readings.isMemoryShort() ? 'memory' : undefined;
  }

  return {
    handle(req, res, next) {
      if (alwaysTaken.test(req.path)) return next();
      const expected = expectedBytes(req, bodyLimitBytes);
      const reason = reasonAgainst(expected);
      if (reason !== undefined) {
        onRefused(reason);
        throw new TryLaterError('OVERLOADED', 'The service has too much to do; send the request again a little later.');
      }
      requests += 1;
      bodyBytes += expected;
      res.once('close', () => {
        requests -= 1;
        bodyBytes -= expected;
      });
      next();
    },
    get requests() {
      return requests;
    },
    get bodyBytes() {
      return bodyBytes;
    },
  };
}

/** What a body may take up; one that says to be larger than is taken will be refused and not be read. */
function expectedBytes(req: Request, bodyLimitBytes: number): number {
  if (req.headers['transfer-encoding'] !== undefined) return bodyLimitBytes;
  const length = Number(req.headers['content-length'] ?? 0);
  return length > bodyLimitBytes ? 0 : length;
}
