import type { Request, RequestHandler, Response, Router } from 'express';
import { type Need, narrowed, scopes } from '../../access/need.ts';
import { type OutcomeIssue, operationOutcome } from '../../fhir/operation-outcome.ts';
import { historySet, type ResultLink, searchset } from '../../fhir/result-set.ts';
import { type Extent, withExtent } from '../../fhir/summarised.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { searchedTypes } from '../../search/parameters.ts';
import { notUnderstood, readSearch, type SearchRequest } from '../../search/read-search.ts';
import type { Presentation } from '../../search/result-parameters.ts';
import type { HistoryQuery, StoredResource } from '../../store/resource-repository.ts';
import type { AppContext } from '../app-context.ts';
import { noteAccess, noteResource, patientsAskedFor } from '../audit/access-note.ts';
import { baseUrlOf } from '../base-url.ts';
import { callerOf } from '../caller-of.ts';
import { cursorOf, positionOf, versionPositionOf } from '../cursor.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { answerFhirText, answerResource, checkFormat, isPretty } from '../fhir-answer.ts';
import { formBody, parametersOf } from '../form-body.ts';
import { prefers } from '../prefer.ts';
import { positiveInteger, readQuery } from '../query.ts';
import { resourceIdOf } from '../resource-id.ts';
import { linkTo, openParameters, sealParameters } from '../search-links.ts';
import { canBeNarrowed, leftOutTypes, visibleResources } from '../visible-resources.ts';
import { measureWrites } from './measures.ts';
import { subscriptionWrites } from './subscriptions.ts';

/** Versions on a page of history unless told otherwise, and at most. */
const defaultVersions = 50;
const mostVersions = 500;

/** Read, version read, history and search of everything that is kept; create and update of what callers may send. Source: HL7 FHIR R4, RESTful API and Search. */
export function fhirResourceRoutes(context: AppContext): Router {
  const router = newRouter();
  const { terminology, sealedText } = context;
  const resourcesFor = (res: Response) => visibleResources(context.resources, callerOf(res));
  const writes: Partial<Record<string, Writes>> = {
    Measure: measureWrites(context),
    Subscription: subscriptionWrites(context),
  };

  for (const type of searchedTypes) {
    const search = async (req: Request, res: Response): Promise<void> => {
      const isStrict = prefers(req, 'handling=strict');
      const { client } = callerOf(res);
      const asked = openParameters(type, parametersOf(req), sealedText, client);
      const request = readSearch(type, asked, { strict: isStrict, ...terminology });
      const { presentation, query } = request;
      noteAccess(res, { patients: patientsAskedFor(request.applied) });
      checkFormat(presentation.format);
      // The place in one order is none in another.
      const pages = `${type} ${query.sort.by} ${client}`;
      const from = presentation.cursor === undefined ? undefined : positionOf(presentation.cursor, sealedText, pages);
      const found = await resourcesFor(res).search(query, from);
      const base = fhirBase(req);
      const extent = extentOf(presentation);
      const self = `${base}/${type}`;
      const applied = sealParameters(type, request.applied, sealedText, client);
      const links: ResultLink[] = [{ relation: 'self', url: linkTo(self, applied) }];
      if (found.next !== undefined) {
        const others = applied.filter(([name]) => name !== '_cursor');
        const cursor = cursorOf(found.next, sealedText, pages);
        links.push({ relation: 'next', url: linkTo(self, [...others, ['_cursor', cursor]]) });
      }
      const shown = (one: StoredResource) => ({ ...one, json: withExtent(one.json, extent) });
      const outcome = outcomeOf(request, leftOutTypes(query, callerOf(res)));
      const json = searchset(base, links, found.total, found.matches.map(shown), found.included.map(shown), outcome);
      answerFhirText(res, 200, json, presentation.pretty === true);
    };

    const ofSubject = canBeNarrowed(type) ? narrowed : (need: Need) => need;
    const searching = ofSubject(scopes(`${type}.s`));
    const reading = ofSubject(scopes(`${type}.r`));
    const creating = scopes(`${type}.c`);
    const { post, put, delete: remove } = writes[type] ?? {};
    endpoint(
      router,
      `/fhir/${type}`,
      { get: searching, post: creating },
      { get: [search], ...(post === undefined ? {} : { post }) },
    );
    endpoint(router, `/fhir/${type}/_search`, searching, {
      get: [search],
      post: [...formBody(context.bodyLimitBytes), search],
    });

    // A page of the changes of everybody cannot be narrowed to one subject and stay a page.
    endpoint(router, `/fhir/${type}/_history`, scopes(`${type}.s`), {
      get: [(req, res) => history(req, res, { type })],
    });
    endpoint(
      router,
      `/fhir/${type}/:id`,
      { get: reading, put: scopes(`${type}.u`), delete: scopes(`${type}.d`) },
      {
        get: [
          async (req, res) => {
            const presentation = readPresentation(req);
            const found = await resourcesFor(res).read(type, resourceIdOf(req));
            if (found === undefined) throw new NotFoundError(`There is no ${type} with this id.`);
            noteResource(res, found);
            answerResource(req, res, found, extentOf(presentation), presentation.pretty === true);
          },
        ],
        ...(put === undefined ? {} : { put }),
        ...(remove === undefined ? {} : { delete: remove }),
      },
    );
    endpoint(router, `/fhir/${type}/:id/_history`, reading, {
      get: [
        async (req, res) => {
          const id = resourceIdOf(req);
          const found = await resourcesFor(res).read(type, id);
          if (found === undefined) throw new NotFoundError(`There is no ${type} with this id.`);
          noteResource(res, found);
          await history(req, res, { type, id });
        },
      ],
    });
    endpoint(router, `/fhir/${type}/:id/_history/:version`, reading, {
      get: [
        async (req, res) => {
          const presentation = readPresentation(req);
          const version = /^[1-9]\d{0,8}$/.test(String(req.params.version)) ? Number(req.params.version) : 0;
          const found = await resourcesFor(res).read(type, resourceIdOf(req), version);
          if (found === undefined) throw new NotFoundError(`There is no ${type} with this id and version.`);
          noteResource(res, found);
          answerResource(req, res, found, extentOf(presentation), presentation.pretty === true);
        },
      ],
    });
  }

  async function history(req: Request, res: Response, about: Pick<HistoryQuery, 'type' | 'id'>): Promise<void> {
    const query = readQuery(req, ['_format', '_pretty', '_count', '_since', '_cursor']);
    checkFormat(query.get('_format'));
    const pretty = isPretty(query.get('_pretty'));
    const count = Math.min(positiveInteger('_count', query.get('_count') ?? String(defaultVersions)), mostVersions);
    const since = query.get('_since');
    const cursor = query.get('_cursor');
    const pages = `${about.type} ${about.id ?? ''} _history ${callerOf(res).client}`;
    const versions = await resourcesFor(res).history({
      ...about,
      count: count + 1,
      ...(since === undefined ? {} : { since: instantOf('_since', since) }),
      ...(cursor === undefined ? {} : { before: versionPositionOf(cursor, sealedText, pages) }),
    });
    const page = versions.slice(0, count);
    const base = fhirBase(req);
    const address = [base, about.type, ...(about.id === undefined ? [] : [about.id]), '_history'].join('/');
    const applied = [...query].filter(([name]) => name !== '_cursor');
    const links: ResultLink[] = [{ relation: 'self', url: linkTo(address, [...query]) }];
    const last = page.at(-1);
    if (versions.length > count && last !== undefined) {
      const { updated, id, version } = last;
      links.push({
        relation: 'next',
        url: linkTo(address, [...applied, ['_cursor', cursorOf({ updated, id, version }, sealedText, pages)]]),
      });
    }
    answerFhirText(res, 200, historySet(base, links, page), pretty);
  }

  function fhirBase(req: Request): string {
    return `${baseUrlOf(req, context.publicUrl)}/fhir`;
  }

  return router;
}

/** What may be done with a type beyond reading. */
type Writes = Partial<Record<'post' | 'put' | 'delete', readonly RequestHandler[]>>;

/** @throws RequestError BAD_REQUEST */
function readPresentation(req: Request): Presentation {
  const query = readQuery(req, ['_format', '_pretty', '_summary', '_elements']);
  checkFormat(query.get('_format'));
  const summary = query.get('_summary');
  if (summary !== undefined && !['true', 'text', 'data', 'false'].includes(summary)) {
    throw new RequestError('BAD_REQUEST', '_summary of one resource must be one of: true, text, data, false.');
  }
  const elements = query
    .get('_elements')
    ?.split(',')
    .filter((name) => name !== '');
  return {
    ...(summary === undefined ? {} : { summary: summary as 'true' }),
    ...(elements === undefined ? {} : { elements }),
    pretty: isPretty(query.get('_pretty')),
  };
}

function extentOf({ summary, elements }: Presentation): Extent {
  if (summary === 'true') return { kind: 'summary' };
  if (summary === 'text' || summary === 'data') return { kind: summary };
  return elements === undefined ? { kind: 'whole' } : { kind: 'elements', names: elements };
}

function instantOf(name: string, text: string): number {
  const time = Date.parse(text.replaceAll(' ', '+'));
  if (!/^\d{4}-\d{2}-\d{2}(T|$)/.test(text) || Number.isNaN(time)) {
    throw new RequestError('BAD_REQUEST', `${name} must be an instant such as 2026-03-14T10:20:00Z.`);
  }
  return time;
}

/** Says what did not take effect; a parameter that is quietly left out would look like a wider answer. */
function outcomeOf({ ignored, query }: SearchRequest, leftOut: readonly string[]) {
  const issues: OutcomeIssue[] = [];
  if (ignored.length > 0) {
    const text = `${notUnderstood(query.type, ignored).message} The self link has the parameters that took effect.`;
    issues.push({ severity: 'warning', type: 'not-supported', code: 'BAD_REQUEST', text });
  }
  if (leftOut.length > 0) {
    const text = `Nothing of these types is brought along, since the access token does not allow it: ${leftOut.join(', ')}.`;
    issues.push({ severity: 'warning', type: 'forbidden', code: 'INSUFFICIENT_SCOPE', text });
  }
  return issues.length === 0 ? undefined : operationOutcome(issues);
}
