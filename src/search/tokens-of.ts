import { systems } from '../terminology/systems.ts';
import { folded } from './folded.ts';
import type { Token } from './index-entries.ts';
import { isObject, type Json, listOf, textOf } from './json.ts';
import type { Datatype } from './parameter.ts';

/** System of the token that holds a string to the letter, for `:exact`; the other one of the string is folded. */
export const exactSystem = 'exact';

/** The tokens by which a value of this datatype is found; none for a value that holds nothing to search by. */
export function tokensOf(value: unknown, datatype: Datatype): readonly Token[] {
  switch (datatype) {
    case 'CodeableConcept':
      return isObject(value) ? conceptTokens(value) : [];
    case 'Coding':
      return isObject(value) ? codingTokens(value) : [];
    case 'Identifier':
      return isObject(value) ? identifierTokens(value, 'coding') : [];
    case 'code':
      return typeof value === 'string' || typeof value === 'boolean'
        ? [{ kind: 'coding', system: '', code: String(value) }]
        : [];
    case 'string': {
      const text = textOf(value);
      if (text === undefined) return [];
      return [
        { kind: 'string', system: '', code: folded(text) },
        { kind: 'string', system: exactSystem, code: text },
      ];
    }
    default: {
      const uri = textOf(value);
      return uri === undefined ? [] : [{ kind: 'uri', system: '', code: uri }];
    }
  }
}

function conceptTokens(concept: Json): readonly Token[] {
  const codings = listOf(concept.coding).filter(isObject);
  const tokens = codings.flatMap(codingTokens);
  const text = textOf(concept.text);
  if (text === undefined || codings.some(({ display }) => display === text)) return tokens;
  return [...tokens, { kind: 'coding', system: '', code: '', text: folded(text) }];
}

/** Tags that stand for the id of a resource are found by the id. */
function codingTokens(coding: Json): readonly Token[] {
  const system = textOf(coding.system) ?? '';
  const code = textOf(coding.code) ?? '';
  const display = textOf(coding.display);
  if (system === systems.resourceTag) return [];
  if (system === '' && code === '' && display === undefined) return [];
  return [{ kind: 'coding', system, code, ...(display === undefined ? {} : { text: folded(display) }) }];
}

/** Identifiers that stand for the id of a resource are found by the id. */
export function identifierTokens(identifier: Json, kind: 'coding' | 'reference-identifier'): readonly Token[] {
  const system = textOf(identifier.system) ?? '';
  const code = textOf(identifier.value) ?? '';
  if (code === '' || (kind === 'coding' && system === systems.resourceIdentifier)) return [];
  const type = isObject(identifier.type) ? textOf(identifier.type.text) : undefined;
  return [{ kind, system, code, ...(type === undefined ? {} : { text: folded(type) }) }];
}
