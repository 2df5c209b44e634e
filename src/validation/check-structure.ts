import type { StructureDefinition } from 'fhir/r4.js';
import { echoedName } from '../exam/faults/echo.ts';
import { plainText } from '../kernel/plain-text.ts';
import { isObject, type Json, type ValidationIssue } from './issue.ts';
import type { R4Definitions } from './r4-definitions.ts';

type Validator = typeof import('@medplum/core');
type Finding = ReturnType<Validator['validateResource']>[number];

/**
 * @param wrongTarget how grave a reference to a type is that is not expected; HL7's own examples have one to a resource
 * that may not be there, so that it is an error only where the target is at hand
 */
export type CheckStructure = (
  resource: Json,
  profile: StructureDefinition | undefined,
  wrongTarget: 'error' | 'warning',
) => readonly ValidationIssue[];

/**
 * The check of structure, cardinality, patterns, slices and invariants, by the validator of @medplum/core. The package is
 * loaded here, not with the service, because few instances are ever asked to check a resource.
 */
export async function structureChecker({ structures }: R4Definitions): Promise<CheckStructure> {
  const validator = await import('@medplum/core');
  validator.indexStructureDefinitionBundle(
    structures.map(amended) as unknown as Parameters<Validator['indexStructureDefinitionBundle']>[0],
  );
  const known = new Set(structures.map(({ type }) => type));
  return (resource, profile, wrongTarget) => {
    const { checked, indexes, left } = withoutUnknown(resource, known);
    return [
      ...left,
      ...run(validator, checked, profile && amended(profile))
        .filter((finding) => !isOfUnknownTarget(finding))
        .map((finding) => issueOf(finding, checked, indexes, wrongTarget)),
    ];
  };
}

/**
 * R4 prints these invariants, of RiskAssessment and Bundle, for a probability and a `fullUrl` that are there; without one
 * they give neither true nor false, which the validator takes for a breach. HL7's own examples leave them out.
 */
const amendments: Readonly<Record<string, (printed: string) => string>> = {
  'bdl-8': (printed) => `fullUrl.empty() or (${printed})`,
  'ras-2': (printed) => `probability.empty() or (${printed})`,
};

const amendedOnes = new WeakMap<StructureDefinition, StructureDefinition>();

function amended(definition: StructureDefinition): StructureDefinition {
  const known = amendedOnes.get(definition);
  if (known !== undefined) return known;
  const element = (definition.snapshot?.element ?? []).map((one) => {
    const constraint = one.constraint?.map((rule) => {
      const amend = amendments[rule.key];
      return amend === undefined || rule.expression === undefined
        ? rule
        : { ...rule, expression: amend(rule.expression) };
    });
    return constraint === undefined ? one : { ...one, constraint };
  });
  const made = { ...definition, snapshot: { element } };
  amendedOnes.set(definition, made);
  return made;
}

function run(validator: Validator, resource: Json, profile?: StructureDefinition): readonly Finding[] {
  type Options = NonNullable<Parameters<Validator['validateResource']>[1]>;
  const options = profile === undefined ? {} : { profile: profile as NonNullable<Options['profile']> };
  try {
    return validator.validateResource(
      resource as unknown as Parameters<Validator['validateResource']>[0],
      options as Options,
    );
  } catch (error) {
    if (error instanceof validator.OperationOutcomeError) return error.outcome.issue;
    // The validator takes some shapes for granted and trips where they are not met.
    if (error instanceof Error) {
      return [{ severity: 'error', code: 'structure', details: { text: notFollowed } }];
    }
    throw error;
  }
}

const notFollowed = 'The resource is built so differently from its type that it could not be checked to the end.';

/** Contained resources of types that are not known here are taken out, and said to be. */
function withoutUnknown(
  resource: Json,
  known: ReadonlySet<string>,
): { checked: Json; indexes: readonly number[]; left: readonly ValidationIssue[] } {
  const contained = Array.isArray(resource.contained) ? (resource.contained as unknown[]) : [];
  const isKnown = (one: unknown) =>
    !isObject(one) || typeof one.resourceType !== 'string' || known.has(one.resourceType);
  const indexes = contained.flatMap((one, index) => (isKnown(one) ? [index] : []));
  if (indexes.length === contained.length) return { checked: resource, indexes, left: [] };
  const left = contained.flatMap((one, index): ValidationIssue[] => {
    if (isKnown(one)) return [];
    const expression = `${plainText(resource.resourceType)}.contained[${index}]`;
    return [
      {
        severity: 'warning',
        type: 'not-supported',
        text: 'Contained resources of this type are not checked.',
        expression,
      },
    ];
  });
  const kept = indexes.map((index) => contained[index]);
  const { contained: _, ...rest } = resource;
  return { checked: kept.length === 0 ? rest : { ...rest, contained: kept }, indexes, left };
}

const expectedTargets = /^Invalid reference: got ".*", expected (".*")$/s;

/** The validator takes whatever stands before the first slash for the type, of `urn:` and `https:` as well. */
function isOfUnknownTarget({ details }: Finding): boolean {
  const said = details?.text ?? '';
  return expectedTargets.test(said) && !/^Invalid reference: got "[A-Z][A-Za-z]*",/.test(said);
}

/** What the validator found, without the values that it repeats, and with its place as FHIRPath. */
function issueOf(
  { severity, code, details, diagnostics, expression }: Finding,
  resource: Json,
  indexes: readonly number[],
  wrongTarget: 'error' | 'warning',
): ValidationIssue {
  const root = plainText(resource.resourceType);
  const said = details?.text ?? diagnostics ?? '';
  const [place = root] = expression ?? [];
  const isWarning = severity === 'warning' || severity === 'information';
  const issue = { severity: isWarning ? severity : ('error' as const), type: code };
  const path = (text: string) =>
    (text.startsWith(root) ? text : root)
      .replaceAll('[x]', '')
      .replace(/\.contained\[(\d+)\]/, (_, index) => `.contained[${indexes[Number(index)] ?? index}]`);
  const [, extra] = /^Invalid additional property "(.*)"$/s.exec(said) ?? [];
  if (extra !== undefined) {
    const text = `There is no element of this name here: ${echoedName(extra)}.`;
    return { ...issue, text, expression: fhirPath(path(place.slice(0, -extra.length - 1)), root) };
  }
  const [, targets] = expectedTargets.exec(said) ?? [];
  const text = targets === undefined ? said : `The reference goes to another type than expected: ${targets}.`;
  const found = { ...issue, text: quoteless(text), expression: fhirPath(path(place), root) };
  return targets === undefined ? found : { ...found, severity: wrongTarget };
}

/** The validator's messages about conflicting choices repeat names, which may be anything. */
function quoteless(text: string): string {
  return text.startsWith('Conflicting choice of type properties')
    ? 'There is more than one value where only one may be chosen.'
    : text;
}

/** Element names that are words of the language of paths, where they stand between backticks. */
const words = /\.(div|mod|and|or|xor|implies|true|false)(?=[.[]|$)/g;

const pathForm = /^[A-Z][A-Za-z]*(?:\.[A-Za-z_][A-Za-z0-9_]*(?:\[\d+\])?)*$/;

/** A place below a name that is none of FHIR's cannot be written as a path; the resource as a whole is named instead. */
function fhirPath(path: string, root: string): string {
  return pathForm.test(path) ? path.replaceAll(/\._(?=[a-z])/g, '.').replaceAll(words, '.`$1`') : root;
}
