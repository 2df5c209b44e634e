import type { Request, Router } from 'express';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { readQuery } from '../query.ts';
import { requireExam } from './exams.ts';

/** How it stands with what was to be sent of an exam, and another try of what was given up. */
export function deliveryRoutes(context: AppContext): Router {
  const router = newRouter();
  const { outbox, now } = context;

  endpoint(router, '/exams/:id/deliveries', {
    get: [
      async (req, res) => {
        readQuery(req, []);
        const id = await knownExam(req);
        answerJson(res, 200, mediaTypes.json, { deliveries: await outbox.ofExam(id) });
      },
    ],
  });

  endpoint(router, '/exams/:id/deliveries/retry', {
    post: [
      async (req, res) => {
        readQuery(req, []);
        const id = await knownExam(req);
        const retried = await outbox.retry(now().getTime(), id);
        context.deliveryWorker.wake();
        answerJson(res, 200, mediaTypes.json, { retried, deliveries: await outbox.ofExam(id) });
      },
    ],
  });

  const knownExam = (req: Request) => requireExam(context, req);
  return router;
}
