/** What a scope allows to be done, as letters of SMART: create, read, update, delete, search. */
const letters = 'cruds';

/** What is not a FHIR resource and has a scope of its own: lower-case, so that it can be no type of FHIR. */
export const ownResources = ['exam', 'localisation', 'metrics'] as const;

/** One scope, taken apart. */
export interface Scope {
  readonly context: 'system' | 'user' | 'patient';
  /** A type of FHIR, one of `ownResources`, or `*` for every type of FHIR. */
  readonly resource: string;
  /** Some of `cruds`, in that order. */
  readonly actions: string;
}

/** Letters of the forms that the first version of SMART had. */
const earlierActions: Readonly<Record<string, string>> = { read: 'rs', write: 'cud', '*': letters };

const form =
  /^(?<context>system|user|patient)\/(?<resource>\*|[A-Z][A-Za-z]{1,63}|[a-z][a-z-]{1,63})\.(?<actions>c?r?u?d?s?|read|write|\*)$/;

/**
 * Takes a scope apart. The letters must stand in their order, as SMART asks.
 * @returns undefined for any other scope, also for one that is narrowed by a query (`system/Observation.rs?category=exam`):
 *   the narrowing is not supported, and without it the scope would allow more than was granted
 * Source: SMART App Launch 2.2.0, Scopes for requesting FHIR Resources.
 */
export function readScope(text: string): Scope | undefined {
  const { context, resource, actions } = form.exec(text)?.groups ?? {};
  if (resource === undefined || actions === undefined || actions === '') return undefined;
  if (/^[a-z]/.test(resource) && !ownResources.some((own) => own === resource)) return undefined;
  return { context: context as Scope['context'], resource, actions: earlierActions[actions] ?? actions };
}

/** Types that no `*` covers: who may read everything else need not be told who read it. */
const namedOnly: readonly string[] = ['AuditEvent'];

/** Something that is to be done with one kind of resource: `Observation.rs`, a scope without its context. */
export type Permission = `${string}.${string}`;

/**
 * Whether scopes cover a permission; each of its letters may be covered by another scope.
 * `patient/` counts only beside the one subject that it speaks of. `user/` counts only for localisation, which shows
 * nothing that is kept: what a user may see is not known here. `*` stands for types of FHIR alone, and not for those that must be named.
 * @param hasSubject whether what is seen is limited to one subject
 */
export function covers(scopes: readonly string[], permission: Permission, hasSubject: boolean): boolean {
  const [resource = '', wanted = ''] = permission.split('.');
  const isApart = /^[a-z]/.test(resource) || namedOnly.includes(resource);
  const counting = scopes.flatMap((text) => {
    const scope = readScope(text);
    if (scope === undefined || (scope.resource === '*' ? isApart : scope.resource !== resource)) return [];
    if (resource === 'localisation' || scope.context === 'system') return [scope];
    return scope.context === 'patient' && hasSubject ? [scope] : [];
  });
  return [...wanted].every((letter) => counting.some(({ actions }) => actions.includes(letter)));
}
