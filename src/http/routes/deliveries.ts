import type { Request, Response, Router } from 'express';
import { scopes } from '../../access/need.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { callerOf } from '../caller-of.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { readQuery } from '../query.ts';
import { requireExam } from './exams.ts';

/** How it stands with what was to be sent of an exam, and another try of what was given up. */
export function deliveryRoutes(context: AppContext): Router {
  const router = newRouter();
  const { outbox, now } = context;

  endpoint(router, '/exams/:id/deliveries', scopes('exam.r'), {
    get: [
      async (req, res) => {
        readQuery(req, []);
        const id = await knownExam(req, res);
        answerJson(res, 200, mediaTypes.json, { deliveries: await outbox.ofExam(id) });
      },
    ],
  });

  endpoint(router, '/exams/:id/deliveries/retry', scopes('exam.ru'), {
    post: [
      async (req, res) => {
        readQuery(req, []);
        const id = await knownExam(req, res);
        const retried = await outbox.retry(now().getTime(), id);
        context.deliveryWorker.wake();
        answerJson(res, 200, mediaTypes.json, { retried, deliveries: await outbox.ofExam(id) });
      },
    ],
  });

  const knownExam = (req: Request, res: Response) => requireExam(context, req, callerOf(res));
  return router;
}
