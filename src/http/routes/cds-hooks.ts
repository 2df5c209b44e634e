import type { Request, Router } from 'express';
import { isAllowed, narrowed, open, scopes } from '../../access/need.ts';
import type { CardFrame } from '../../cds/card.ts';
import { type HookBody, readFeedback, readHookBody } from '../../cds/hook-body.ts';
import { type CdsService, cdsServices, discovery } from '../../cds/services.ts';
import type { Exam } from '../../exam/exam.ts';
import { examId, resourceId } from '../../exam/exam-id.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { contentHash } from '../../store/content-hash.ts';
import { allowedOrigins } from '../allowed-origins.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess, patientsOf } from '../audit/access-note.ts';
import { baseUrlOf } from '../base-url.ts';
import { callerOf } from '../caller-of.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { examInContext } from '../exam-in-context.ts';
import { readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';

/** Objects inside one another: a form in a Bundle in the prefetch takes nineteen. */
const maxDepth = 32;

/** Days for which the flags of an exam interrupt. Judged: longer, and somebody has acted on them or things have changed. */
const recentDays = 30;

/** As for a localisation; what is kept of a patient is looked at only for who may also read exams. */
const computing = narrowed(scopes('localisation.c'));

/** Decision support by CDS Hooks 2.0: discovery, services, feedback. Source: https://cds-hooks.hl7.org/2.0/ */
export function cdsHooksRoutes(context: AppContext): Router {
  const router = newRouter();
  const body = requestBody(context.bodyLimitBytes);
  const json = [mediaTypes.json];
  router.use('/cds-services', allowedOrigins(context.cdsAllowedOrigins));

  endpoint(
    router,
    '/cds-services',
    open,
    {
      get: [
        (req, res) => {
          readQuery(req, []);
          answerJson(res, 200, mediaTypes.json, discovery());
        },
      ],
    },
    json,
  );

  for (const service of cdsServices) {
    endpoint(
      router,
      `/cds-services/${service.id}`,
      computing,
      {
        post: [
          body,
          async (req, res) => {
            readQuery(req, []);
            const hook = readHookBody(service, parseStrictJson(bytesOf(req), { maxDepth }));
            const caller = callerOf(res);
            const patient = `Patient/${hook.context.patientId}`;
            noteAccess(res, { patients: patientsOf({ reference: patient }) });
            const isOwn = caller.subject === undefined || caller.subject === patient;
            const mayReadStore = isOwn && isAllowed(caller, 'exam.r');
            const found = await examInContext(context, hook, mayReadStore);
            const cards =
              found === undefined ? [] : service.cards(found.assessment, frameOf(req, found.exam, hook, service));
            answerJson(res, 200, mediaTypes.json, { cards });
          },
        ],
      },
      json,
    );
    endpoint(
      router,
      `/cds-services/${service.id}/feedback`,
      computing,
      {
        post: [
          body,
          (req, res) => {
            readQuery(req, []);
            const { feedback } = readFeedback(parseStrictJson(bytesOf(req), { maxDepth }));
            const accepted = feedback.filter(({ outcome }) => outcome === 'accepted').length;
            const counts = { service: service.id, accepted, overridden: feedback.length - accepted };
            context.logger.info(counts, 'feedback on cards');
            answerJson(res, 200, mediaTypes.json, {});
          },
        ],
      },
      json,
    );
  }

  function frameOf(
    req: Request,
    exam: Exam,
    { context: { patientId, encounterId } }: HookBody,
    { id }: CdsService,
  ): CardFrame {
    // An exam without an identifier of its own is told from others by its content.
    const namespace = examId(
      exam.identifier ?? { system: 'urn:content', value: contentHash(JSON.parse(JSON.stringify(exam))) },
    );
    const ageMs = context.now().getTime() - Date.parse(exam.examinedAt);
    return {
      uuid: (name) => resourceId(namespace, `card/${id}/${name}`),
      source: { label: 'neuroexam-fhir', url: baseUrlOf(req, context.publicUrl) },
      day: exam.examinedAt.slice(0, 10),
      isRecent: ageMs < recentDays * 24 * 60 * 60 * 1000,
      patient: `Patient/${patientId}`,
      ...(encounterId === undefined ? {} : { encounter: `Encounter/${encounterId}` }),
    };
  }

  return router;
}
