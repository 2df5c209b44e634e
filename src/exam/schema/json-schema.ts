/** A JSON Schema, draft 2020-12, or a part of one. */
export type JsonSchema = { readonly [keyword: string]: unknown };

/** An object that takes these properties and no others. */
export function closedObject(
  properties: Readonly<Record<string, JsonSchema>>,
  required: readonly string[],
  more: JsonSchema = {},
): JsonSchema {
  return {
    type: 'object',
    additionalProperties: false,
    properties,
    ...(required.length === 0 ? {} : { required: [...required] }),
    ...more,
  };
}

export function listOf(items: JsonSchema, maxItems: number, description?: string): JsonSchema {
  return { type: 'array', maxItems, items, ...(description === undefined ? {} : { description }) };
}

export function oneOfKeys(keys: readonly string[], description?: string): JsonSchema {
  return { type: 'string', enum: [...keys], ...(description === undefined ? {} : { description }) };
}

export function definition(name: string): JsonSchema {
  return { $ref: `#/$defs/${name}` };
}

export function ifThen(condition: JsonSchema, consequence: JsonSchema, otherwise?: JsonSchema): JsonSchema {
  // biome-ignore lint/suspicious/noThenProperty: `then` is a keyword of JSON Schema
  return { if: condition, then: consequence, ...(otherwise === undefined ? {} : { else: otherwise }) };
}
