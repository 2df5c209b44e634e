import { mayBeEchoed } from '../exam/faults/echo.ts';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import { pointerInto } from '../exam/faults/pointer.ts';
import type { Fault } from '../kernel/errors.ts';
import { joinWords } from '../kernel/words.ts';
import type { AnswerType, FormItem, Option } from './form-item.ts';
import { isObject, type Json, unknownElements } from './json-object.ts';

/** The element of R4 that holds an answer of each type, and what its JSON is. */
const elements = {
  choice: { name: 'valueCoding', says: 'a Coding' },
  boolean: { name: 'valueBoolean', says: 'true or false' },
  integer: { name: 'valueInteger', says: 'a whole number' },
  decimal: { name: 'valueDecimal', says: 'a number' },
  text: { name: 'valueString', says: 'a text' },
  quantity: { name: 'valueQuantity', says: 'a Quantity' },
  reference: { name: 'valueReference', says: 'a Reference' },
} as const satisfies Record<AnswerType, { name: string; says: string }>;

/** The name of the element that answers of this type stand in. */
export function answerElement(type: AnswerType): string {
  return elements[type].name;
}

export interface AnswerRead {
  readonly value?: unknown;
  /** The option that was chosen, for a choice. */
  readonly option?: Option;
  /** Pointer to the value. */
  readonly pointer: string;
  readonly faults: readonly Fault[];
}

/** The value of one answer of a question, of the type that the form asks for. Quantities and references go through as sent. */
export function readAnswer(item: FormItem, answer: unknown, pointer: string): AnswerRead {
  if (item.type === 'group') throw new Error('a group has no answer');
  if (!isObject(answer)) return { pointer, faults: [{ pointer, code: 'WRONG_TYPE', message: 'Expected an object.' }] };
  const { name, says } = elements[item.type];
  const at = pointerInto(pointer, name);
  const others = Object.keys(answer).filter((key) => key.startsWith('value') && key !== name);
  const wrong = others.map((other): Fault => {
    const message = `'${item.linkId}' is answered by \`${name}\`, ${says}.`;
    return { pointer: pointerInto(pointer, other), code: 'WRONG_VALUE_PROPERTY', message, suggestion: name };
  });
  const faults = [...wrong, ...unknownElements(answer, ['id', 'extension', 'item', name, ...others], pointer)];
  const value = answer[name];
  if (value === undefined) {
    const missing: Fault = {
      pointer,
      code: 'VALUE_MISSING',
      message: `An answer has \`${name}\`, ${says}.`,
      suggestion: name,
    };
    return { pointer: at, faults: wrong.length > 0 ? faults : [...faults, missing] };
  }
  if (!hasType(item.type, value)) {
    return { pointer: at, faults: [...faults, { pointer: at, code: 'WRONG_TYPE', message: `Expected ${says}.` }] };
  }
  if (item.options === undefined) return { value, pointer: at, faults };
  const chosen = chosenOption(item, value as Json, at);
  return 'fault' in chosen ? { pointer: at, faults: [...faults, chosen.fault] } : { ...chosen, pointer: at, faults };
}

function hasType(type: AnswerType, value: unknown): boolean {
  switch (type) {
    case 'boolean':
      return typeof value === 'boolean';
    case 'integer':
      return Number.isInteger(value);
    case 'decimal':
      return typeof value === 'number';
    case 'text':
      return typeof value === 'string';
    default:
      return isObject(value);
  }
}

function chosenOption({ linkId, options }: FormItem, { system, code }: Json, pointer: string) {
  const offered = options?.options ?? [];
  if (typeof code !== 'string' || typeof system !== 'string') {
    const missing = typeof system === 'string' ? 'code' : 'system';
    const message = `A Coding has \`system\` and \`code\`, each a text; here ${missing} is missing or is none.`;
    return { fault: { pointer: pointerInto(pointer, missing), code: 'REQUIRED', message } as const };
  }
  const option = offered.find((one) => one.code === code && one.system === system);
  if (option !== undefined) return { option };
  const sameCode = offered.find((one) => one.code === code);
  if (sameCode !== undefined) {
    const message = `The code is known, but in another system: ${sameCode.system}.`;
    return { fault: { pointer: pointerInto(pointer, 'system'), code: 'UNKNOWN_KEY', message } as const };
  }
  const codes = offered.map((one) => one.code);
  const suggestion = nearestKey(code, codes);
  const hint =
    suggestion !== undefined
      ? `Did you mean '${suggestion}'?`
      : codes.length <= 16
        ? `Expected ${joinWords(codes, 'or')}.`
        : `The Questionnaire lists those that there are.`;
  const what = mayBeEchoed(code) ? `'${linkId}' has no answer '${code}'.` : `'${linkId}' has no such answer.`;
  return {
    fault: {
      pointer: pointerInto(pointer, 'code'),
      code: 'UNKNOWN_KEY',
      message: `${what} ${hint}`,
      ...(suggestion === undefined ? {} : { suggestion }),
    } as const,
  };
}
