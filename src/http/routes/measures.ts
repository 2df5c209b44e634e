import { randomUUID } from 'node:crypto';
import type { Request, RequestHandler, Response, Router } from 'express';
import { scopes } from '../../access/need.ts';
import { parseStrictJson } from '../../exam/strict-json.ts';
import type { Identified } from '../../fhir/entry.ts';
import { ConflictError, NotFoundError, RequestError } from '../../kernel/errors.ts';
import { type CompiledMeasure, compileMeasure } from '../../measures/compile-measure.ts';
import { evaluateMeasure } from '../../measures/evaluate-measure.ts';
import { periodOf } from '../../measures/period.ts';
import { linkedTypes } from '../../search/parameters.ts';
import { readSearch } from '../../search/read-search.ts';
import { answerKept } from '../answer-kept.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess, patientsOf } from '../audit/access-note.ts';
import { recordOf } from '../audit/record-of.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { versionOfIfMatch } from '../etag.ts';
import { answerFhirText, checkFormat } from '../fhir-answer.ts';
import { operationInputs } from '../operation-inputs.ts';
import { operationInput } from '../operation-parameters.ts';
import { oneOf, readQuery } from '../query.ts';
import { bytesOf, requestBody } from '../request-body.ts';

/** Objects inside one another; an expression of a stratifier of a group takes eight. */
const maxDepth = 20;

/** Types of report as the operation names them; `summary` is what the report itself calls a population. */
const reportTypes = {
  subject: 'individual',
  'subject-list': 'subject-list',
  population: 'summary',
  summary: 'summary',
} as const;

/** A measure of one's own may ask for anything that an exam has become. */
const evaluation = scopes('Measure.r', ...[...linkedTypes].map((type) => `${type}.rs` as const));

/** Evaluation of measures over the exams that are kept. Reports are answered and not kept. */
export function measureRoutes(context: AppContext): Router {
  const router = newRouter();
  const { resources, terminology, bodyLimitBytes } = context;

  const operation = (path: string, find: FindMeasure) => {
    const handle = async (req: Request, res: Response): Promise<void> => {
      const { values, pretty } = operationInput(req, operationInputs['Measure-evaluate-measure']);
      const asked = askedOf(values);
      noteAccess(res, { patients: patientsOf({ reference: asked.subject }) });
      const { from, until } = periodOf(asked.periodStart, asked.periodEnd);
      const measure = await find(req, values);
      const request = { ...asked, now: context.now(), id: randomUUID() };
      const report = await evaluateMeasure(measure, untilGone(res, resources.streamExams({ from, until })), request);
      answerFhirText(res, 200, JSON.stringify(report), pretty);
    };
    endpoint(router, path, evaluation, { get: [handle], post: [requestBody(bodyLimitBytes), handle] });
  };

  operation('/fhir/Measure/$evaluate-measure', (_req, values) => measureNamed(required(values, 'measure')));
  operation('/fhir/Measure/:id/$evaluate-measure', (req, values) => {
    if (values.has('measure')) throw new RequestError('BAD_REQUEST', 'The measure is named by the address already.');
    return measureWithId(String(req.params.id));
  });

  async function measureWithId(id: string): Promise<CompiledMeasure> {
    const found = await resources.read('Measure', id);
    if (found === undefined) throw new NotFoundError('There is no Measure with this id.');
    return compileMeasure(JSON.parse(found.json));
  }

  /** By canonical address, with or without a version, or as `Measure/id`; of several the one changed last. */
  async function measureNamed(name: string): Promise<CompiledMeasure> {
    const id = /^(?:Measure\/)?(?<id>[A-Za-z0-9.-]{1,64})$/.exec(name)?.groups?.id;
    if (id !== undefined) return measureWithId(id);
    const [url = '', version] = name.split('|');
    const wanted: [string, string][] = [
      ['url', url],
      ['_sort', '-_lastUpdated'],
      ['_count', '1'],
    ];
    if (version !== undefined) wanted.push(['version', version]);
    const escaped = wanted.map(([key, value]): [string, string] => [key, value.replaceAll(/[\\,|$]/g, '\\$&')]);
    const { query } = readSearch('Measure', escaped, { strict: true, ...terminology });
    const [found] = (await resources.search(query)).matches;
    if (found === undefined) throw new NotFoundError('There is no Measure with this address or version.');
    return compileMeasure(JSON.parse(found.json));
  }

  return router;
}

/** Ends early when the caller has gone: nobody would read the report. */
async function* untilGone<Item>(res: Response, items: AsyncIterable<Item>): AsyncIterable<Item> {
  for await (const item of items) {
    if (res.destroyed) return;
    yield item;
  }
}

type FindMeasure = (req: Request, values: ReadonlyMap<string, string>) => Promise<CompiledMeasure>;

/** Keeping measures that callers send: `post` on the type, `put` on one of them. */
export function measureWrites(context: AppContext): {
  readonly post: readonly RequestHandler[];
  readonly put: readonly RequestHandler[];
} {
  const { resources, measures, bodyLimitBytes } = context;
  const body = requestBody(bodyLimitBytes);

  const post = async (req: Request, res: Response): Promise<void> => {
    checkFormat(readQuery(req, ['_format']).get('_format'));
    const measure = measureIn(req);
    answerKept(context, req, res, 201, await keep(req, res, { ...measure, id: randomUUID() }));
  };
  const put = async (req: Request, res: Response): Promise<void> => {
    checkFormat(readQuery(req, ['_format']).get('_format'));
    const id = String(req.params.id);
    if (measures.has(id)) {
      res.setHeader('Location', `/fhir/Measure/${id}`);
      const advice = 'This Measure comes with the service; post one of your own instead.';
      throw new ConflictError('IDENTIFIER_IN_USE', advice);
    }
    if ((await resources.read('Measure', id)) === undefined) {
      throw new NotFoundError('There is no Measure with this id; a new one is posted.');
    }
    const version = versionOfIfMatch(req.headers['if-match']);
    const measure = measureIn(req);
    if (measure.id !== id) throw new RequestError('BAD_REQUEST', 'The id in the body must be that of the address.');
    answerKept(context, req, res, 200, await keep(req, res, measure, version));
  };

  /** The measure and its entry in the audit trail, together. */
  async function keep(req: Request, res: Response, measure: Identified, expectedVersion?: number) {
    noteAccess(res, { resource: `Measure/${measure.id}` });
    const audit = recordOf(context, req, res);
    const replaces = expectedVersion === undefined ? {} : { expectedVersion };
    const kept = await resources.put(measure, context.now(), { ...replaces, audit });
    noteAccess(res, { isKept: true });
    return kept;
  }

  return { post: [body, post], put: [body, put] };
}

/** @throws RequestError, MeasureInvalidError */
function measureIn(req: Request): Identified {
  const sent = parseStrictJson(bytesOf(req), { maxDepth });
  const { definition } = compileMeasure(sent);
  // Version and time of the last change are the store's to say.
  const { meta: { versionId: _version, lastUpdated: _time, ...meta } = {}, ...rest } = definition;
  return (Object.keys(meta).length === 0 ? rest : { ...rest, meta }) as Identified;
}

/** What the caller wants to know, as evaluation takes it. @throws RequestError BAD_REQUEST */
function askedOf(values: ReadonlyMap<string, string>) {
  const given = values.get('subject');
  const subject = given === undefined || given.includes('/') ? given : `Patient/${given}`;
  const named = values.get('reportType') ?? (subject === undefined ? 'population' : 'subject');
  const reportType = reportTypes[oneOf('reportType', named, Object.keys(reportTypes) as (keyof typeof reportTypes)[])];
  if (reportType === 'individual' && subject === undefined) {
    throw new RequestError('BAD_REQUEST', 'The reportType subject needs a subject.');
  }
  return {
    periodStart: required(values, 'periodStart'),
    periodEnd: required(values, 'periodEnd'),
    reportType,
    ...(subject === undefined ? {} : { subject }),
  };
}

function required(values: ReadonlyMap<string, string>, name: string): string {
  const value = values.get(name);
  if (value === undefined || value === '') throw new RequestError('BAD_REQUEST', `The parameter ${name} is needed.`);
  return value;
}
