import type { Router } from 'express';
import { narrowed, scopes } from '../../access/need.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import { ExamInvalidError, RequestError } from '../../kernel/errors.ts';
import { isQuestionnaireResponse } from '../../questionnaire/read-response.ts';
import { answerBytes, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { checkFormat } from '../fhir-answer.ts';
import { readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';

/** Objects inside one another: the exam as a form, inside Parameters, takes eighteen. */
const maxDepth = 24;

const parameterName = 'questionnaire-response';

/**
 * `QuestionnaireResponse/$extract` of the type: the transaction Bundle of a response to our Questionnaire; nothing is kept.
 * Source: HL7 Structured Data Capture, operation extract (http://hl7.org/fhir/uv/sdc/OperationDefinition/QuestionnaireResponse-extract)
 */
export function extractRoutes(context: AppContext): Router {
  const router = newRouter();
  endpoint(router, '/fhir/QuestionnaireResponse/$extract', narrowed(scopes('localisation.c')), {
    post: [
      requestBody(context.bodyLimitBytes),
      (req, res) => {
        checkFormat(readQuery(req, ['_format']).get('_format'));
        const { response, pointer } = responseIn(parseStrictJson(bytesOf(req), { maxDepth }));
        answerBytes(
          res,
          200,
          mediaTypes.fhir,
          led(pointer, () => context.records.extract(response)),
        );
      },
    ],
  });
  return router;
}

interface SentResponse {
  readonly response: unknown;
  /** Where in the body it stands. */
  readonly pointer: string;
}

/** The response as the body, or in the parameter of Parameters. @throws RequestError BAD_REQUEST */
function responseIn(body: unknown): SentResponse {
  if (isQuestionnaireResponse(body)) return { response: body, pointer: '' };
  const { resourceType, parameter } = (body ?? {}) as { resourceType?: unknown; parameter?: unknown };
  if (resourceType !== 'Parameters' || !Array.isArray(parameter)) {
    throw bad('The body must be a QuestionnaireResponse, or Parameters that hold one.');
  }
  const [first, ...others] = parameter.map(
    (one: { name?: unknown; resource?: unknown } | null, index): SentResponse => {
      if (one?.name !== parameterName) throw bad(`There is an unknown parameter. Known here: ${parameterName}.`);
      return { response: one.resource, pointer: `/parameter/${index}/resource` };
    },
  );
  if (first === undefined || others.length > 0 || !isQuestionnaireResponse(first.response)) {
    throw bad(`The parameter ${parameterName} must be there once, with a QuestionnaireResponse as its resource.`);
  }
  return first;
}

/** Faults lead into the body that was sent. */
function led<T>(pointer: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof ExamInvalidError) || pointer === '') throw error;
    throw new ExamInvalidError(error.faults.map((fault) => ({ ...fault, pointer: `${pointer}${fault.pointer}` })));
  }
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
