import type { ErrorObject } from 'ajv/dist/2020.js';
import type { Fault } from '../../kernel/errors.ts';
import { joinWords } from '../../kernel/words.ts';
import { mayBeEchoed } from './echo.ts';
import { keysMeant, whichOf } from './nearest-key.ts';
import { pointerInto, pointerSteps } from './pointer.ts';

/** Fault for an error that needs no knowledge of the catalogue: its keyword and the schema beside it say everything. */
export function keywordFault(error: ErrorObject): Fault {
  const pointer = error.instancePath;
  const expected = describedBy(error);
  switch (error.keyword) {
    case 'required':
      return requiredFault(error);
    case 'enum':
      return listFault(error, (error.schema as readonly unknown[]).map(String));
    case 'const':
      return listFault(error, [String(error.schema)]);
    case 'type':
      if (Array.isArray(error.parentSchema?.enum)) return listFault(error, error.parentSchema.enum.map(String));
      if (pointer === '') return { pointer, code: 'WRONG_TYPE', message: 'The body is a JSON object.' };
      return { pointer, code: 'WRONG_TYPE', message: `Expected ${expected ?? typeWords(error.schema)}.` };
    case 'maxItems':
      return { pointer, code: 'TOO_LARGE', message: `At most ${String(error.schema)} entries are taken here.` };
    case 'maxLength':
      return { pointer, code: 'TOO_LARGE', message: `At most ${String(error.schema)} characters are taken here.` };
    case 'minimum':
    case 'maximum':
      return { pointer, code: 'OUT_OF_RANGE', message: `Expected ${rangeWords(error)}.` };
    case 'not':
      return {
        pointer: pointerInto(pointer, 'notTested'),
        code: 'VALUE_AND_NOT_TESTED',
        message: 'A value and `notTested` stand together; give the value if it was tested, or only `notTested`.',
      };
    case 'oneOf':
    case 'anyOf':
      return choiceFault(error);
    default:
      return { pointer, code: 'FORMAT', message: `Expected ${expected ?? 'another form of text'}.` };
  }
}

function requiredFault(error: ErrorObject): Fault {
  const name = String(error.params.missingProperty);
  const isValue = /\/else\/required$/.test(error.schemaPath);
  return {
    pointer: error.instancePath,
    code: isValue ? 'VALUE_MISSING' : 'REQUIRED',
    message: isValue
      ? `Neither a value nor a reason is given: add \`${name}\`, or \`notTested\` with the reason.`
      : `\`${name}\` is required here.`,
    suggestion: name,
  };
}

function listFault(error: ErrorObject, keys: readonly string[]): Fault {
  const { instancePath: pointer, data } = error;
  if (typeof data === 'number' && keys.includes(String(data))) {
    return { pointer, code: 'WRONG_TYPE', message: `This value is text: write "${data}" in quotes, not the number.` };
  }
  const list = keys.join(', ').length <= 200 ? `Expected ${joinWords(keys, 'or')}.` : undefined;
  if (typeof data !== 'string') {
    return { pointer, code: 'WRONG_TYPE', message: list ?? `Expected ${describedBy(error) ?? 'text'}.` };
  }
  const meant = keysMeant(data, keys);
  const [suggestion] = meant;
  const name = nameOf(pointer);
  const unknown = mayBeEchoed(data) ? unknownValue(name, data) : `Unknown \`${name}\`.`;
  const hint = suggestion === undefined ? (list ?? 'The catalogue lists those that there are.') : whichOf(meant);
  return {
    pointer,
    code: 'UNKNOWN_KEY',
    message: `${unknown} ${hint}`,
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}

/** What a value is called: the property that holds it, and an entry of a list that names a thing is a key. */
function nameOf(pointer: string): string {
  const name = pointerSteps(pointer).at(-1) ?? 'value';
  return /^\d+$/.test(name) ? 'key' : name;
}

/** Some properties are called as the thing that they name; others only hold one of a few values. */
function unknownValue(property: string, value: string): string {
  const isNoun = ['key', 'code', 'site', 'dermatome', 'territory', 'section', 'region'].includes(property);
  return isNoun ? `No such ${property} '${value}'.` : `\`${property}\` has no value '${value}'.`;
}

/** Choices are lists of `{ required: [...] }`: the fault names the properties of which one, or exactly one, is wanted. */
function choiceFault(error: ErrorObject): Fault {
  const names = (error.schema as readonly { readonly required?: readonly string[] }[]).flatMap(
    (branch) => branch.required ?? [],
  );
  const quoted = joinWords(
    names.map((name) => `\`${name}\``),
    'or',
  );
  const pointer = error.instancePath;
  if (error.keyword === 'anyOf') return { pointer, code: 'REQUIRED', message: `Give ${quoted}.` };
  return error.params.passingSchemas === null
    ? { pointer, code: 'REQUIRED', message: `Give one of ${quoted}.` }
    : { pointer, code: 'ONLY_ONE', message: `Give only one of ${quoted}.` };
}

function rangeWords(error: ErrorObject): string {
  const { minimum, maximum } = error.parentSchema ?? {};
  if (typeof minimum === 'number' && typeof maximum === 'number') return `a number from ${minimum} to ${maximum}`;
  return error.keyword === 'minimum'
    ? `a number of at least ${String(minimum)}`
    : `a number of at most ${String(maximum)}`;
}

function describedBy(error: ErrorObject): string | undefined {
  const description: unknown = error.parentSchema?.description;
  const type = typeWords(error.parentSchema?.type);
  return typeof description === 'string' ? `${type}: ${description}` : undefined;
}

function typeWords(type: unknown): string {
  switch (type) {
    case 'string':
      return 'text';
    case 'number':
      return 'a number';
    case 'integer':
      return 'a whole number';
    case 'boolean':
      return 'true or false';
    case 'array':
      return 'a list';
    case 'object':
      return 'an object';
    default:
      return 'another value';
  }
}
