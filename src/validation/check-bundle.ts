import { setImmediate } from 'node:timers/promises';
import { isObject, type Json, type ValidationIssue } from './issue.ts';

/** What a resource of an entry is checked by; `inBundle` has the type of each entry by its `fullUrl`. */
export type CheckEntry = (resource: Json, inBundle: ReadonlyMap<string, string>) => Promise<readonly ValidationIssue[]>;

/**
 * What the resources of the entries have wrong, each told at its place in the Bundle. Some ten milliseconds an entry, so
 * that others get their turn after each.
 */
export async function checkEntries(bundle: Json, check: CheckEntry): Promise<readonly ValidationIssue[]> {
  const entries = entriesOf(bundle);
  const inBundle = new Map<string, string>();
  for (const { fullUrl, resource } of entries) {
    if (typeof fullUrl === 'string' && isTyped(resource)) inBundle.set(fullUrl, resource.resourceType);
  }
  const issues: ValidationIssue[] = [];
  for (const [index, { resource }] of entries.entries()) {
    if (!isTyped(resource)) continue;
    const { resourceType } = resource;
    for (const issue of await check(resource, inBundle)) {
      const rest = issue.expression.startsWith(resourceType) ? issue.expression.slice(resourceType.length) : '';
      issues.push({ ...issue, expression: `Bundle.entry[${index}].resource${rest}` });
    }
    await setImmediate();
  }
  return issues;
}

/**
 * The Bundle without what is inside its resources: the rules of the Bundle read no more of them than is left.
 * @param known types that have a definition; another one is stood for by a type that no rule asks for
 */
export function bundleAlone(bundle: Json, known: ReadonlySet<string>): Json {
  if (!Array.isArray(bundle.entry)) return bundle;
  const entry = (bundle.entry as unknown[]).map((one) => {
    if (!isObject(one) || !isTyped(one.resource)) return one;
    const { resourceType, id, meta } = one.resource;
    const versionId = isObject(meta) ? meta.versionId : undefined;
    const resource = {
      resourceType: known.has(resourceType) ? resourceType : 'Device',
      ...(typeof id === 'string' && { id }),
      ...(typeof versionId === 'string' && { meta: { versionId } }),
    };
    return { ...one, resource };
  });
  return { ...bundle, entry };
}

/** Whether the place is inside the resource of an entry. */
export function isInsideEntry({ expression }: ValidationIssue): boolean {
  return /^Bundle\.entry(?:\[\d+\])?\.resource\b/.test(expression);
}

/** A copy in which references to entries name type and id, so that the type can be held against the definition. */
export function withTypedReferences<T>(value: T, inBundle: ReadonlyMap<string, string>): T {
  if (Array.isArray(value)) return value.map((one) => withTypedReferences(one, inBundle)) as T;
  if (!isObject(value)) return value;
  const copy = Object.entries(value).map(([name, child]) => {
    const type = name === 'reference' && typeof child === 'string' ? inBundle.get(child) : undefined;
    return [name, type === undefined ? withTypedReferences(child, inBundle) : `${type}/entry`];
  });
  return Object.fromEntries(copy);
}

function entriesOf({ entry }: Json): readonly Json[] {
  return (Array.isArray(entry) ? (entry as unknown[]) : []).map((one) => (isObject(one) ? one : {}));
}

function isTyped(resource: unknown): resource is Json & { readonly resourceType: string } {
  return isObject(resource) && typeof resource.resourceType === 'string';
}
