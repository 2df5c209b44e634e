import type { JsonSchema } from '../../exam/schema/json-schema.ts';

type Schemas = Readonly<Record<string, JsonSchema>>;

/**
 * Schemas that are each complete in themselves, as components of one document: what stands in `$defs` becomes a component
 * of its own, and what several schemas define the same way stands there once.
 * @param schemas draft 2020-12, by the name of the component
 * @throws Error when two schemas define one name differently
 */
export function bundleSchemas(schemas: Schemas): Schemas {
  const components = new Map<string, JsonSchema>();
  const add = (name: string, schema: JsonSchema) => {
    const known = components.get(name);
    if (known !== undefined && JSON.stringify(known) !== JSON.stringify(schema)) {
      throw new Error(`Two schemas define ${name} differently.`);
    }
    components.set(name, schema);
  };
  for (const [name, whole] of Object.entries(schemas)) {
    const { $schema: _dialect, $id: _id, $defs = {}, ...schema } = whole;
    add(name, withoutDefinitions(schema));
    for (const [own, part] of Object.entries($defs as Schemas)) add(componentName(own), withoutDefinitions(part));
  }
  return Object.fromEntries(components);
}

function withoutDefinitions(schema: JsonSchema): JsonSchema {
  const text = JSON.stringify(schema, (key, value) =>
    key === '$ref' && typeof value === 'string' && value.startsWith('#/$defs/')
      ? `#/components/schemas/${componentName(value.slice('#/$defs/'.length))}`
      : value,
  );
  return JSON.parse(text);
}

/** `findings-power` is FindingsPower. */
function componentName(definition: string): string {
  return definition.replace(/(^|-)(\w)/g, (_match, _dash, letter: string) => letter.toUpperCase());
}
