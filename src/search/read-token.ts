import type { Coding } from '../kernel/coding.ts';
import { systems } from '../terminology/systems.ts';
import { splitEscaped, unescaped } from './escaped.ts';
import { folded } from './folded.ts';
import { malformed } from './malformed.ts';
import type { Filter, TokenPattern } from './query.ts';
import { uuidForm } from './reference.ts';

/** What a search needs to know of terminology; both work on what is published here. */
export interface Terminology {
  /** All codes of a value set; undefined when it is not known. */
  readonly expandValueSet: (url: string) => readonly Pick<Coding, 'system' | 'code'>[] | undefined;
  /** Codes below this one, without itself. */
  readonly descendants: (system: string, code: string) => readonly string[];
}

export const tokenModifiers = ['not', 'text', 'in', 'not-in', 'below'] as const;
export type TokenModifier = (typeof tokenModifiers)[number];

const tokenForm = 'code, system|code, |code (no system) or system| (any code of it)';

/** @throws RequestError BAD_REQUEST for an empty token or one with several bars */
export function readTokenPattern(text: string, parameter: string): TokenPattern {
  const [first = '', second, ...more] = splitEscaped(text, '|').map(unescaped);
  if (more.length > 0 || (first === '' && (second ?? '') === '')) throw malformed(parameter, tokenForm);
  if (second === undefined) return { code: first };
  return { system: first, ...(second === '' ? {} : { code: second }) };
}

/** Systems whose value is the id of the resource that carries it, by parameter. */
const ownSystems: Readonly<Record<string, string>> = {
  identifier: systems.resourceIdentifier,
  _tag: systems.resourceTag,
};

/**
 * Reads a token parameter.
 * @param alternatives split at commas, still escaped
 * @throws RequestError BAD_REQUEST
 */
export function readTokenFilter(
  param: string,
  modifier: TokenModifier | undefined,
  alternatives: readonly string[],
  terminology: Terminology,
): Filter {
  const named = modifier === undefined ? param : `${param}:${modifier}`;
  if (modifier === 'text') {
    return { kind: 'text', param, anyOf: alternatives.map((text) => folded(unescaped(text))), match: 'start' };
  }
  if (modifier === 'in' || modifier === 'not-in') {
    const anyOf = alternatives.flatMap((url) => valueSetPatterns(unescaped(url), named, terminology));
    return { kind: 'token', param, anyOf, negated: modifier === 'not-in' };
  }
  const patterns = alternatives.map((text) => readTokenPattern(text, named));
  if (modifier === 'below') {
    return {
      kind: 'token',
      param,
      anyOf: patterns.flatMap((one) => withBelow(one, named, terminology)),
      negated: false,
    };
  }
  return withOwnIds(param, patterns, modifier === 'not');
}

function valueSetPatterns(url: string, named: string, { expandValueSet }: Terminology): readonly TokenPattern[] {
  const codings = expandValueSet(url);
  if (codings === undefined) throw malformed(named, 'the canonical address of a value set that is published here');
  return codings.map(({ system, code }) => ({ system, code }));
}

function withBelow(pattern: TokenPattern, named: string, { descendants }: Terminology): readonly TokenPattern[] {
  const { system, code } = pattern;
  if (system === undefined || code === undefined) throw malformed(named, 'system|code');
  return [pattern, ...descendants(system, code).map((below) => ({ system, code: below }))];
}

/**
 * Identifiers and tags that equal the id of their resource are not in the index, so a search for one asks for the id. A
 * bare UUID may be such a value or another's.
 */
function withOwnIds(param: string, patterns: readonly TokenPattern[], negated: boolean): Filter {
  const own = ownSystems[param];
  if (own === undefined) return { kind: 'token', param, anyOf: patterns, negated };
  const ids: string[] = [];
  const others: TokenPattern[] = [];
  for (const pattern of patterns) {
    const { system, code } = pattern;
    if (system === own && code === undefined) {
      throw malformed(param, 'a value after the bar: every resource has an identifier of this system');
    }
    if (code !== undefined && (system === own || (system === undefined && uuidForm.test(code)))) ids.push(code);
    if (system !== own) others.push(pattern);
  }
  if (ids.length === 0) return { kind: 'token', param, anyOf: others, negated };
  if (others.length === 0 && !negated) return { kind: 'id', anyOf: ids };
  return { kind: 'token', param, anyOf: others, negated, orIds: ids };
}
