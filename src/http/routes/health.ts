import type { Router } from 'express';
import { open } from '../../access/need.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';

/** `live`: the process answers. `ready`: it can also keep an exam, and is not on its way out. */
export function healthRoutes({ exams }: AppContext, isDraining: () => boolean): Router {
  const router = newRouter();
  endpoint(router, '/health/live', open, {
    get: [(_req, res) => answerJson(res, 200, mediaTypes.json, { status: 'live' })],
  });
  endpoint(router, '/health/ready', open, {
    get: [
      async (_req, res) => {
        if (isDraining()) return answerJson(res, 503, mediaTypes.json, { status: 'stopping' });
        await exams.check();
        answerJson(res, 200, mediaTypes.json, { status: 'ready' });
      },
    ],
  });
  return router;
}
