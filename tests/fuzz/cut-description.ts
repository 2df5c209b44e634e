/**
 * Writes a part of the API description for the fuzzer: node cut-description.ts DESCRIPTION PART OUTPUT.
 * Of what is done for several resource types one is enough, and components that nothing refers to are left out, since the
 * tester reads the whole description for each operation.
 */
import { readFileSync, writeFileSync } from 'node:fs';

interface Operation {
  readonly operationId: string;
  readonly tags: readonly string[];
  readonly 'x-family'?: string;
}
interface Description {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

/** Bodies whose schema is that of an exam; it is far larger than all the rest. */
const examOperations = new Set(['localise', 'postExam', 'correctExam']);
/** A search has dozens of parameters. */
const isSearch = ({ operationId }: Operation) => /^search/.test(operationId);

const parts: Readonly<Record<string, (operation: Operation) => boolean>> = {
  exam: ({ operationId }) => examOperations.has(operationId),
  search: isSearch,
  rest: (operation) => !examOperations.has(operation.operationId) && !isSearch(operation),
};

const [from = '', part = '', to = ''] = process.argv.slice(2);
const belongs = parts[part];
if (belongs === undefined) throw new Error(`PART must be one of: ${Object.keys(parts).join(', ')}.`);
const description: Description = JSON.parse(readFileSync(from, 'utf8'));

const families = new Set<string>();
const paths: Record<string, Record<string, Operation>> = {};
for (const [path, methods] of Object.entries(description.paths)) {
  for (const [method, operation] of Object.entries(methods)) {
    const family = `${method} ${operation.tags[0]} ${operation['x-family'] ?? path}`;
    if (!belongs(operation) || families.has(family)) continue;
    families.add(family);
    paths[path] = { ...paths[path], [method]: operation };
  }
}

const wanted = new Set<string>();
const gather = (value: unknown): void => {
  for (const [, kind = '', name = ''] of JSON.stringify(value).matchAll(/"#\/components\/(\w+)\/([^"]+)"/g)) {
    if (wanted.has(`${kind}/${name}`)) continue;
    wanted.add(`${kind}/${name}`);
    gather(description.components[kind]?.[name]);
  }
};
gather(paths);
const components = Object.fromEntries(
  Object.entries(description.components).map(([kind, all]) => [
    kind,
    Object.fromEntries(
      Object.entries(all).filter(([name]) => kind === 'securitySchemes' || wanted.has(`${kind}/${name}`)),
    ),
  ]),
);
writeFileSync(to, JSON.stringify({ ...description, paths, components }));
