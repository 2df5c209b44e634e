import type { Request, Response, Router } from 'express';
import { operationOutcome } from '../../fhir/operation-outcome.ts';
import { historySet, type ResultLink, searchset } from '../../fhir/result-set.ts';
import { type Extent, withExtent } from '../../fhir/summarised.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { searchedTypes } from '../../search/parameters.ts';
import { notUnderstood, readSearch, type SearchRequest } from '../../search/read-search.ts';
import type { Presentation } from '../../search/result-parameters.ts';
import type { HistoryQuery, StoredResource } from '../../store/resource-repository.ts';
import type { AppContext } from '../app-context.ts';
import { baseUrlOf } from '../base-url.ts';
import { cursorOf, positionOf, versionPositionOf } from '../cursor.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { answerFhirText, answerResource, checkFormat } from '../fhir-answer.ts';
import { formBody, parametersOf } from '../form-body.ts';
import { prefers } from '../prefer.ts';
import { positiveInteger, readQuery } from '../query.ts';
import { measureWrites } from './measures.ts';

/** Versions on a page of history unless told otherwise, and at most. */
const defaultVersions = 50;
const mostVersions = 500;

/** Ids of resources. Source: HL7 FHIR R4, datatype `id`. */
const idForm = /^[A-Za-z0-9.-]{1,64}$/;

/** Read, version read, history and search of everything that is kept; create and update of what callers may send. Source: HL7 FHIR R4, RESTful API and Search. */
export function fhirResourceRoutes(context: AppContext): Router {
  const router = newRouter();
  const { resources, terminology } = context;
  const writes: Partial<Record<string, ReturnType<typeof measureWrites>>> = { Measure: measureWrites(context) };

  for (const type of searchedTypes) {
    const search = async (req: Request, res: Response): Promise<void> => {
      const isStrict = prefers(req, 'handling=strict');
      const request = readSearch(type, parametersOf(req), { strict: isStrict, ...terminology });
      const { presentation, query } = request;
      checkFormat(presentation.format);
      const from = presentation.cursor === undefined ? undefined : positionOf(presentation.cursor, query.sort.by);
      const found = await resources.search(query, from);
      const base = fhirBase(req);
      const extent = extentOf(presentation);
      const self = `${base}/${type}`;
      const links: ResultLink[] = [{ relation: 'self', url: linkTo(self, request.applied) }];
      if (found.next !== undefined) {
        const others = request.applied.filter(([name]) => name !== '_cursor');
        links.push({ relation: 'next', url: linkTo(self, [...others, ['_cursor', cursorOf(found.next)]]) });
      }
      const shown = (one: StoredResource) => ({ ...one, json: withExtent(one.json, extent) });
      const outcome = outcomeOf(request);
      const json = searchset(base, links, found.total, found.matches.map(shown), found.included.map(shown), outcome);
      answerFhirText(res, 200, json, presentation.pretty === true);
    };

    const { post, put } = writes[type] ?? {};
    endpoint(router, `/fhir/${type}`, { get: [search], ...(post === undefined ? {} : { post }) });
    endpoint(router, `/fhir/${type}/_search`, { get: [search], post: [...formBody(context.bodyLimitBytes), search] });

    endpoint(router, `/fhir/${type}/_history`, { get: [(req, res) => history(req, res, { type })] });
    endpoint(router, `/fhir/${type}/:id`, {
      get: [
        async (req, res) => {
          const presentation = readPresentation(req);
          const found = await resources.read(type, idOf(req));
          if (found === undefined) throw new NotFoundError(`There is no ${type} with this id.`);
          answerResource(req, res, found, extentOf(presentation), presentation.pretty === true);
        },
      ],
      ...(put === undefined ? {} : { put }),
    });
    endpoint(router, `/fhir/${type}/:id/_history`, {
      get: [
        async (req, res) => {
          const id = idOf(req);
          if ((await resources.read(type, id)) === undefined) {
            throw new NotFoundError(`There is no ${type} with this id.`);
          }
          await history(req, res, { type, id });
        },
      ],
    });
    endpoint(router, `/fhir/${type}/:id/_history/:version`, {
      get: [
        async (req, res) => {
          const presentation = readPresentation(req);
          const version = /^[1-9]\d{0,8}$/.test(String(req.params.version)) ? Number(req.params.version) : 0;
          const found = await resources.read(type, idOf(req), version);
          if (found === undefined) throw new NotFoundError(`There is no ${type} with this id and version.`);
          answerResource(req, res, found, extentOf(presentation), presentation.pretty === true);
        },
      ],
    });
  }

  async function history(req: Request, res: Response, about: Pick<HistoryQuery, 'type' | 'id'>): Promise<void> {
    const query = readQuery(req, ['_format', '_pretty', '_count', '_since', '_cursor']);
    checkFormat(query.get('_format'));
    const count = Math.min(positiveInteger('_count', query.get('_count') ?? String(defaultVersions)), mostVersions);
    const since = query.get('_since');
    const cursor = query.get('_cursor');
    const versions = await resources.history({
      ...about,
      count: count + 1,
      ...(since === undefined ? {} : { since: instantOf('_since', since) }),
      ...(cursor === undefined ? {} : { before: versionPositionOf(cursor) }),
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
        url: linkTo(address, [...applied, ['_cursor', cursorOf({ updated, id, version })]]),
      });
    }
    answerFhirText(res, 200, historySet(base, links, page), query.get('_pretty') === 'true');
  }

  function fhirBase(req: Request): string {
    return `${baseUrlOf(req, context.publicUrl)}/fhir`;
  }

  return router;
}

function idOf(req: Request): string {
  const id = String(req.params.id);
  if (!idForm.test(id)) throw new NotFoundError('There is no resource with this id.');
  return id;
}

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
    pretty: query.get('_pretty') === 'true',
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

function linkTo(address: string, parameters: readonly (readonly [string, string])[]): string {
  const query = new URLSearchParams(parameters.map(([name, value]): [string, string] => [name, value]));
  return parameters.length === 0 ? address : `${address}?${query}`;
}

/** Says what did not take effect; a parameter that is quietly left out would look like a wider answer. */
function outcomeOf({ ignored, query }: SearchRequest) {
  if (ignored.length === 0) return undefined;
  const text = `${notUnderstood(query.type, ignored).message} The self link has the parameters that took effect.`;
  return operationOutcome([{ severity: 'warning', type: 'not-supported', code: 'BAD_REQUEST', text }]);
}
