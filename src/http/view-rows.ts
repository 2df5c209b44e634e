import { setImmediate } from 'node:timers/promises';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import { RequestError } from '../kernel/errors.ts';
import { plainText } from '../kernel/plain-text.ts';
import { parametersOf, searchedTypes } from '../search/parameters.ts';
import { readSearch } from '../search/read-search.ts';
import type { StoredResource } from '../store/resource-repository.ts';
import type { Position } from '../store/search/find-matches.ts';
import type { CompiledView } from '../views/compile-view.ts';
import { parseLossless } from '../views/lossless-json.ts';
import type { Row } from '../views/view-definition.ts';
import { ViewInvalidError } from '../views/view-errors.ts';
import type { AppContext } from './app-context.ts';
import type { ViewScope } from './view-request.ts';

type Source = Pick<AppContext, 'resources' | 'terminology'>;

/** How long rows are made before other requests have their turn, in ms. */
const turnMs = 20;
/** Resources of one patient that are looked up at once. */
const patientPage = '200';

/**
 * Rows of a view over the store or over given resources, one after another.
 * @throws ViewInvalidError when resources of its type are not kept here, RequestError when they belong to no patient,
 *   ViewFailedError
 */
export async function* viewRows(source: Source, view: CompiledView, scope: ViewScope): AsyncGenerator<Row> {
  let left = scope.limit ?? Number.POSITIVE_INFINITY;
  let began = performance.now();
  for await (const resource of scope.resources === undefined ? kept(source, view, scope) : given(scope)) {
    if (performance.now() - began > turnMs) {
      await setImmediate();
      began = performance.now();
    }
    for (const row of view.rowsOf(resource)) {
      yield row;
      left -= 1;
      if (left === 0) return;
    }
  }
}

async function* kept(source: Source, { resource: type }: CompiledView, scope: ViewScope): AsyncGenerator<unknown> {
  if (!(searchedTypes as readonly string[]).includes(type)) {
    const suggestion = nearestKey(type, searchedTypes);
    const message = `Expected a type that is kept here: ${searchedTypes.join(', ')}.`;
    const fault = { pointer: `${scope.viewPointer}/resource`, code: 'UNKNOWN_KEY', message } as const;
    throw new ViewInvalidError([suggestion === undefined ? fault : { ...fault, suggestion }]);
  }
  const { patient, since } = scope;
  const groups =
    patient === undefined
      ? source.resources.stream({ type, ...(since === undefined ? {} : { since }) })
      : ofPatient(source, type, patient);
  for await (const group of groups) {
    for (const { json, updated } of group) if (since === undefined || updated > since) yield parseLossless(json);
  }
}

/** By search, page after page, so that nothing of another patient is even read. */
async function* ofPatient(
  { resources, terminology }: Source,
  type: string,
  patient: string,
): AsyncGenerator<readonly StoredResource[]> {
  const name = ['subject', 'patient'].find((parameter) => parametersOf(type).has(parameter));
  if (name === undefined) {
    throw new RequestError('BAD_REQUEST', `Resources of type ${type} belong to no patient.`);
  }
  const parameters = [
    [name, patient],
    ['_count', patientPage],
    ['_total', 'none'],
  ] as const;
  const { query } = readSearch(type, parameters, { strict: true, ...terminology });
  let from: Position | undefined;
  do {
    const { matches, next } = await resources.search(query, from);
    yield matches;
    from = next;
  } while (from !== undefined);
}

interface Given {
  readonly resourceType?: unknown;
  readonly id?: unknown;
  readonly meta?: { readonly lastUpdated?: unknown };
  readonly subject?: { readonly reference?: unknown };
  readonly patient?: { readonly reference?: unknown };
}

/** A given resource without a time of change has just been given, so it counts as changed. */
function* given({ resources = [], patient, since }: ViewScope): Generator<unknown> {
  for (const resource of resources as readonly Given[]) {
    const about = [resource.subject, resource.patient].map((reference) => reference?.reference);
    const isPatient = resource.resourceType === 'Patient' && patient?.endsWith(`Patient/${resource.id}`);
    if (patient !== undefined && !isPatient && !about.includes(patient)) continue;
    const updated = Date.parse(plainText(resource.meta?.lastUpdated));
    if (since !== undefined && updated <= since) continue;
    yield resource;
  }
}
