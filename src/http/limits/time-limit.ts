import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { TryLaterError } from '../../kernel/errors.ts';

/**
 * Answers for a handler that has not begun to after a while, such as one whose database does not answer. What it does
 * goes on; a caller who sends an exam again hears whether it was kept. A long answer that has begun is not cut.
 */
export function timeLimit(seconds: number): RequestHandler {
  return (req: Request, res: Response, next: NextFunction) => {
    // The metrics have a limit of their own for what they ask, and tell that it did not answer.
    if (req.path === '/metrics') return next();
    const timer = setTimeout(() => {
      if (res.headersSent || res.writableEnded) return;
      next(
        new TryLaterError(
          'TIMED_OUT',
          `No answer came within ${seconds} s. What was sent may have been kept; the same request again tells.`,
        ),
      );
    }, seconds * 1000).unref();
    res.once('close', () => clearTimeout(timer));
    next();
  };
}
