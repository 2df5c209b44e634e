import type { Caller } from '../access/caller.ts';
import { isAllowed } from '../access/need.ts';
import type { Permission } from '../access/scope.ts';
import { parametersOf } from '../search/parameters.ts';
import type { Filter, Include, SearchQuery } from '../search/query.ts';
import type { ResourceRepository, StoredResource } from '../store/resource-repository.ts';

/** Types that say nothing of any person: the software, and what measures ask for. */
const impersonalTypes: readonly string[] = ['Device', 'Measure'];

/** Whether a caller that is limited to one subject can be shown the resources of a type that are its own. */
export function canBeNarrowed(type: string): boolean {
  return impersonalTypes.includes(type) || parametersOf(type).has('subject');
}

/** What can be read, searched and followed back; nothing that goes through everything. */
export type VisibleResources = Pick<ResourceRepository, 'search' | 'read' | 'history'>;

/**
 * The resources as a caller may see them: what a search brings along is of the types that its scopes cover, and where it is
 * limited to one subject, whatever belongs to another answers as if it were not there. The limit is part of the query, so
 * that totals and pages know nothing of the rest.
 */
export function visibleResources(resources: ResourceRepository, caller: Caller): VisibleResources {
  if (caller.scopes === undefined) return resources;
  const { subject } = caller;
  const isVisible = (one: StoredResource) => subject === undefined || isAbout(one, subject);
  return {
    async search(query, from) {
      const found = await resources.search(narrowedQuery(query, caller), from);
      return { ...found, included: found.included.filter(isVisible) };
    },
    async read(type, id, version) {
      const found = await resources.read(type, id, version);
      return found !== undefined && isVisible(found) ? found : undefined;
    },
    async history(query) {
      return (await resources.history(query)).filter(isVisible);
    },
  };
}

function narrowedQuery(query: SearchQuery, caller: Caller): SearchQuery {
  const { subject } = caller;
  const isWhole = subject === undefined || impersonalTypes.includes(query.type);
  const limit: Filter[] = isWhole ? [] : [{ kind: 'reference', param: 'subject', anyOf: [subject] }];
  const reads = (type: string) => isAllowed(caller, readingOf(type));
  return {
    ...query,
    filters: [...query.filters, ...limit],
    includes: query.includes.flatMap((include) => coveredTargets(include, reads)),
    // What refers to the matches is of the type that is named first.
    revIncludes: query.revIncludes.filter(({ source }) => reads(source)),
  };
}

/** Types that a search would bring along and that the caller's scopes do not cover. */
export function leftOutTypes({ type, includes, revIncludes }: SearchQuery, caller: Caller): readonly string[] {
  const types = [...includes.flatMap(targetsOf), ...revIncludes.map(({ source }) => source)];
  const isHidden = (one: string) => caller.subject !== undefined && !canBeNarrowed(one);
  return [...new Set(types)].filter((one) => one !== type && (!isAllowed(caller, readingOf(one)) || isHidden(one)));
}

function coveredTargets(include: Include, reads: (type: string) => boolean): Include[] {
  // A step that starts at a hidden type would tell what lies behind it.
  if (!reads(include.source)) return [];
  const targets = targetsOf(include);
  if (targets.every(reads)) return [include];
  return targets.filter(reads).map((targetType) => ({ ...include, targetType }));
}

function targetsOf({ source, param, targetType }: Include): readonly string[] {
  return targetType === undefined ? (parametersOf(source).get(param)?.follows ?? []) : [targetType];
}

function readingOf(type: string): Permission {
  return `${type}.r`;
}

/** @param subject such as `Patient/4711` */
function isAbout({ type, json }: StoredResource, subject: string): boolean {
  if (impersonalTypes.includes(type)) return true;
  const { subject: about } = JSON.parse(json) as { subject?: { reference?: unknown } };
  return about?.reference === subject;
}
