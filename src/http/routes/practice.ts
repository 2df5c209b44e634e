import { randomBytes } from 'node:crypto';
import type { Router } from 'express';
import { narrowed, scopes } from '../../access/need.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { RequestError } from '../../kernel/errors.ts';
import type { PatientNames } from '../../practice/practice.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';
import { takeTurn } from '../turns.ts';

/** Objects inside one another: an item in a list in the body. */
const maxDepth = 5;
/** Bytes of chance from which a patient is drawn. */
const seedLength = 16;

/** As for a localisation: it says nothing of any person, and takes as much work. */
const computing = narrowed(scopes('localisation.c'));

/** Examining simulated, invented patients. Nothing is kept: a patient is named by what it is drawn from, sealed. */
export function practiceRoutes({ practice, sealedText, bodyLimitBytes }: AppContext): Router {
  const router = newRouter();
  const body = requestBody(bodyLimitBytes);
  const json = [mediaTypes.json];
  const names: PatientNames = {
    seal: (patient) => sealedText.seal(patient, 'practice patient'),
    open: (token) => {
      const patient = sealedText.open(token, 'practice patient');
      if (patient === undefined) {
        throw new RequestError('BAD_REQUEST', 'The patient is none that POST /practice/patients of this service gave.');
      }
      return patient;
    },
  };

  endpoint(
    router,
    '/practice/sites',
    computing,
    {
      get: [
        (req, res) => {
          readQuery(req, []);
          answerJson(res, 200, mediaTypes.json, practice.sites());
        },
      ],
    },
    json,
  );
  endpoint(
    router,
    '/practice/patients',
    computing,
    {
      post: [
        body,
        (req, res) => {
          readQuery(req, []);
          const wish = parseStrictJson(bytesOf(req), { maxDepth });
          answerJson(res, 201, mediaTypes.json, practice.admit(wish, randomBytes(seedLength).toString('hex'), names));
        },
      ],
    },
    json,
  );
  endpoint(
    router,
    '/practice/examinations',
    computing,
    {
      post: [
        body,
        (req, res) => {
          readQuery(req, []);
          answerJson(res, 200, mediaTypes.json, practice.examine(parseStrictJson(bytesOf(req), { maxDepth }), names));
        },
      ],
    },
    json,
  );
  endpoint(
    router,
    '/practice/answers',
    computing,
    {
      post: [
        body,
        async (req, res) => {
          readQuery(req, []);
          const steps = practice.answer(parseStrictJson(bytesOf(req), { maxDepth }), names);
          answerJson(res, 200, mediaTypes.json, await inTurns(steps));
        },
      ],
    },
    json,
  );
  return router;
}

/** The outcome of work in pieces; between them, whatever else waits has its turn. */
async function inTurns<T>(pieces: Generator<void, T>): Promise<T> {
  for (;;) {
    const { done, value } = pieces.next();
    if (done === true) return value;
    await new Promise<void>((resolve) => takeTurn(resolve));
  }
}
