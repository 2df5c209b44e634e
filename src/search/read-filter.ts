import { splitEscaped, unescaped } from './escaped.ts';
import { folded } from './folded.ts';
import { malformed } from './malformed.ts';
import type { Parameter } from './parameter.ts';
import type { Filter, RangePattern } from './query.ts';
import { readDatePattern, readNumberPattern, readQuantityPattern } from './read-range.ts';
import { readReferenceFilter, readReferenceIdentifier } from './read-reference.ts';
import {
  readTokenFilter,
  readTokenPattern,
  type Terminology,
  type TokenModifier,
  tokenModifiers,
} from './read-token.ts';
import { exactSystem } from './tokens-of.ts';

export const alternativesAllowed = 500;

/** Name of a parameter as it stands in a URL: `code:in`, `subject:Patient.identifier`. */
export interface ParameterUse {
  readonly parameter: Parameter;
  readonly modifier: string | undefined;
  readonly chained: string | undefined;
}

/** Whether the parameter takes the modifier and chain at all; others are as good as unknown. */
export function isUsable({ parameter, modifier, chained }: ParameterUse): boolean {
  const { type, name, targets } = parameter;
  const isTypeName = modifier !== undefined && /^[A-Z][A-Za-z]+$/.test(modifier);
  const isTarget = isTypeName && (targets.length === 0 || targets.includes(modifier));
  if (chained !== undefined)
    return type === 'reference' && chained === 'identifier' && (modifier === undefined || isTarget);
  if (modifier === undefined) return true;
  if (name === '_id' || name === '_lastUpdated' || type === 'composite') return false;
  if (modifier === 'missing') return true;
  if (type === 'token') return tokenModifiers.some((one) => one === modifier);
  if (type === 'string') return modifier === 'exact' || modifier === 'contains';
  return type === 'reference' && (modifier === 'identifier' || isTarget);
}

/**
 * What one parameter of a URL asks for.
 * @param value still escaped, not empty
 * @throws RequestError BAD_REQUEST for a value of the wrong form
 */
export function readFilter(use: ParameterUse, value: string, terminology: Terminology): Filter {
  const { parameter, modifier, chained } = use;
  const param = parameter.name;
  if (modifier === 'missing') {
    if (value !== 'true' && value !== 'false') throw malformed(`${param}:missing`, 'true or false');
    return { kind: 'missing', param, isMissing: value === 'true' };
  }
  const alternatives = splitEscaped(value, ',');
  if (alternatives.length > alternativesAllowed) {
    throw malformed(param, `at most ${alternativesAllowed} alternatives, in larger numbers as a value set with :in`);
  }
  if (alternatives.includes('')) throw malformed(param, 'something on either side of every comma');
  if (param === '_id') return { kind: 'id', anyOf: alternatives.map(unescaped) };
  const ranges = (read: (text: string, parameter: string) => RangePattern): Filter => ({
    kind: 'range',
    param,
    anyOf: alternatives.map((text) => read(text, param)),
  });
  switch (parameter.type) {
    case 'token':
      return readTokenFilter(param, modifier as TokenModifier | undefined, alternatives, terminology);
    case 'uri':
      return { kind: 'token', param, anyOf: alternatives.map((uri) => ({ code: unescaped(uri) })), negated: false };
    case 'string':
      return readText(param, modifier, alternatives.map(unescaped));
    case 'date':
      return ranges(readDatePattern);
    case 'number':
      return ranges(readNumberPattern);
    case 'quantity':
      return ranges(readQuantityPattern);
    case 'reference':
      return modifier === 'identifier' || chained === 'identifier'
        ? readReferenceIdentifier(param, alternatives, `${param}${modifier === 'identifier' ? ':' : '.'}identifier`)
        : readReferenceFilter(parameter, modifier, alternatives);
    case 'composite':
      return readComposite(parameter, alternatives);
  }
}

function readText(param: string, modifier: string | undefined, texts: readonly string[]): Filter {
  if (modifier === 'exact') {
    return { kind: 'token', param, anyOf: texts.map((code) => ({ system: exactSystem, code })), negated: false };
  }
  return { kind: 'text', param, anyOf: texts.map(folded), match: modifier === 'contains' ? 'contain' : 'start' };
}

function readComposite({ name, parts }: Parameter, alternatives: readonly string[]): Filter {
  const halves = alternatives.map((text) => {
    const [first = '', second = '', ...more] = splitEscaped(text, '$');
    if (first === '' || second === '' || more.length > 0)
      throw malformed(name, 'two values with $ between, as code$value');
    return { first: readTokenPattern(first, name), second };
  });
  if (parts?.[1].type === 'quantity') {
    return {
      kind: 'range',
      param: name,
      anyOf: halves.map(({ first, second }) => ({ ...readQuantityPattern(second, name), of: first })),
    };
  }
  return {
    kind: 'pair',
    param: name,
    anyOf: halves.map(({ first, second }) => ({ first, second: readTokenPattern(second, name) })),
  };
}
