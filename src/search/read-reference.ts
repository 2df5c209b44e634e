import { unescaped } from './escaped.ts';
import { malformed } from './malformed.ts';
import type { Parameter } from './parameter.ts';
import { linkedTypes } from './parameters.ts';
import type { Filter } from './query.ts';
import { readTokenPattern } from './read-token.ts';
import { referenceTarget, typeInReference, uuidForm } from './reference.ts';

/** The resources that a reference may name, one for each alternative. @throws RequestError BAD_REQUEST */
export function readReferenceFilter(
  parameter: Parameter,
  type: string | undefined,
  alternatives: readonly string[],
): Filter {
  const param = parameter.name;
  const targets = alternatives.map((text) => readTarget(unescaped(text), parameter, type));
  const linked = targets.filter((target) => isLinked(target, parameter));
  if (linked.length === 0) return { kind: 'reference', param, anyOf: targets };
  if (linked.length === targets.length) return { kind: 'link', param, anyOf: targets };
  // Links and other references are kept apart, and one filter looks in one place.
  throw malformed(param, 'either resources of an examination or others in one value, not both');
}

/** Logical references: the identifier that they carry. @throws RequestError BAD_REQUEST */
export function readReferenceIdentifier(param: string, alternatives: readonly string[], named: string): Filter {
  return {
    kind: 'reference',
    param,
    anyOf: [],
    byIdentifier: alternatives.map((text) => readTokenPattern(text, named)),
  };
}

function readTarget(text: string, { name, targets }: Parameter, type: string | undefined): string {
  const expected = `an id, ${type ?? targets[0] ?? 'Type'}/id or an absolute address`;
  if (/^[A-Za-z0-9.-]{1,64}$/.test(text)) {
    const only = type ?? (targets.length === 1 ? targets[0] : undefined);
    return only === undefined ? text : `${only}/${text}`;
  }
  const target = referenceTarget(text);
  if (target.kind === 'absolute') {
    if (!/^[A-Za-z][A-Za-z0-9+.-]*:\S+$/.test(text)) throw malformed(name, expected);
    const told = typeInReference(text);
    if (type !== undefined && told !== undefined && told !== type) throw malformed(name, expected);
    return text;
  }
  const isPossible =
    (type === undefined || target.type === type) && (targets.length === 0 || targets.includes(target.type));
  if (!isPossible) throw malformed(name, `${expected}; it names ${targets.length === 0 ? type : targets.join(', ')}`);
  return `${target.type}/${target.id}`;
}

function isLinked(target: string, { isLink, targets }: Parameter): boolean {
  if (!isLink) return false;
  const [type = '', id] = target.split('/');
  if (id === undefined)
    return uuidForm.test(type) && (targets.length === 0 || targets.some((one) => linkedTypes.has(one)));
  return linkedTypes.has(type) && uuidForm.test(id);
}
