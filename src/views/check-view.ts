import r4 from 'fhirpath/fhir-context/r4/index.js';
import { echoedName } from '../exam/faults/echo.ts';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import type { Fault } from '../kernel/errors.ts';
import { plainText } from '../kernel/plain-text.ts';
import type { SelectDefinition, ViewColumn } from './view-definition.ts';
import { allowedFunctions, namesInPath } from './view-path.ts';

/** Limits of a definition that a stranger sends. Judged: far above what a table for people needs. */
const most = {
  characters: 200_000,
  columns: 500,
  depth: 10,
  pathLength: 2000,
  allPaths: 20_000,
  brackets: 20,
  loops: 2,
};

const selectKeys = ['column', 'select', 'unionAll', 'forEach', 'forEachOrNull', 'repeat', 'id', 'extension'];
const columnKeys = ['name', 'path', 'type', 'collection', 'description', 'tag', 'id', 'extension'];
const viewKeys = `resourceType id meta implicitRules language text contained extension modifierExtension url identifier
  name title meta status experimental date publisher contact description useContext jurisdiction purpose copyright
  copyrightLabel version versionAlgorithmString versionAlgorithmCoding fhirVersion profile resource constant where
  select`.split(/\s+/);
const reservedVariables = ['rowIndex', 'context', 'resource', 'rootResource'];
/** Code systems that FHIR names; a view may define the same name again. */
const systemVariables = ['ucum', 'sct', 'loinc'];
const nameForm = /^[A-Za-z][A-Za-z0-9_]*$/;

type Json = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every fault of a ViewDefinition, with a JSON Pointer into it; none when it can be compiled. */
export function checkView(definition: unknown): readonly Fault[] {
  const faults: Fault[] = [];
  const add = (pointer: string, code: Fault['code'], message: string, suggestion?: string) => {
    faults.push({ pointer, code, message, ...(suggestion === undefined ? {} : { suggestion }) });
  };
  if (!isObject(definition)) return [{ pointer: '', code: 'WRONG_TYPE', message: 'A view is a JSON object.' }];
  if (JSON.stringify(definition).length > most.characters) {
    return [{ pointer: '', code: 'TOO_LARGE', message: `A view has at most ${most.characters} characters.` }];
  }
  const keys = (value: Json, known: readonly string[], pointer: string) => {
    for (const key of Object.keys(value)) {
      if (known.includes(key.replace(/^_/, ''))) continue;
      const place = `${pointer}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`;
      add(place, 'UNKNOWN_PROPERTY', 'A view has no such element here.', nearestKey(key, known));
    }
  };
  const list = (value: unknown, pointer: string, isNeeded = false): readonly (readonly [Json, string])[] => {
    if (value === undefined && !isNeeded) return [];
    if (!Array.isArray(value) || value.length === 0) {
      add(pointer, value === undefined ? 'REQUIRED' : 'WRONG_TYPE', 'Expected a list with at least one object.');
      return [];
    }
    return value.flatMap((item, index) => {
      if (isObject(item)) return [[item, `${pointer}/${index}`] as const];
      add(`${pointer}/${index}`, 'WRONG_TYPE', 'Expected an object.');
      return [];
    });
  };

  keys(definition, viewKeys, '');
  const types = [...(r4 as unknown as { availableTypes: Iterable<string> }).availableTypes];
  if (definition.resource === undefined) add('/resource', 'REQUIRED', 'Expected the type of resource to make rows of.');
  else if (typeof definition.resource !== 'string' || !types.includes(definition.resource)) {
    const near = nearestKey(plainText(definition.resource), types);
    add('/resource', 'UNKNOWN_KEY', 'Expected a resource type of FHIR R4.', near);
  }

  const variables = [...reservedVariables];
  for (const [constant, pointer] of list(definition.constant, '/constant')) {
    const { name } = constant;
    if (typeof name !== 'string' || !nameForm.test(name)) add(`${pointer}/name`, 'FORMAT', 'Expected a name.');
    else if (variables.includes(name)) add(`${pointer}/name`, 'CONTRADICTION', 'Expected a name not in use yet.');
    else variables.push(name);
    const values = Object.entries(constant).filter(([key]) => /^value[A-Z]/.test(key));
    if (values.length !== 1) add(pointer, 'REQUIRED', 'A constant has one value[x].');
    const [key = '', value] = values[0] ?? [];
    if (/^value(Date|DateTime|Instant|Time)$/.test(key)) {
      const isTime = typeof value === 'string' && /^[\dT:.Z+-]+$/.test(value);
      const literal = key === 'valueTime' ? `@T${value}` : `@${value}`;
      if (!isTime || namesInPath(literal) === undefined) add(`${pointer}/${key}`, 'DATE', 'Expected a date or time.');
    }
  }

  variables.push(...systemVariables);

  let pathCharacters = 0;
  const checkPath = (path: unknown, pointer: string) => {
    if (typeof path !== 'string') {
      add(pointer, path === undefined ? 'REQUIRED' : 'WRONG_TYPE', 'Expected a FHIRPath as text.');
      return;
    }
    pathCharacters += path.length;
    if (pathCharacters > most.allPaths) {
      // Told once: reading paths is what takes time, so that no further one is read.
      const message = `The paths of a view have at most ${most.allPaths} characters together.`;
      if (pathCharacters - path.length <= most.allPaths) add(pointer, 'TOO_LARGE', message);
      return;
    }
    const isReadable = path.length <= most.pathLength && hasFewBrackets(path);
    const names = isReadable ? namesInPath(path) : undefined;
    if (names === undefined) {
      const limits = `at most ${most.pathLength} characters and ${most.brackets} brackets inside one another`;
      add(pointer, 'FORMAT', `Expected a FHIRPath of ${limits}.`);
    }
    if ((names?.loops ?? 0) > most.loops) {
      add(pointer, 'TOO_LARGE', `Expected at most ${most.loops} criteria of where, exists or all inside one another.`);
    }
    for (const name of names?.functions ?? []) {
      if (allowedFunctions.has(name)) continue;
      const near = nearestKey(name, allowedFunctions);
      add(pointer, 'UNKNOWN_KEY', 'The path calls a function that views cannot use.', near);
    }
    for (const name of names?.variables ?? []) {
      if (variables.includes(name)) continue;
      add(
        pointer,
        'UNKNOWN_KEY',
        'The path uses a constant that the view does not define.',
        nearestKey(name, variables),
      );
    }
  };

  for (const [condition, pointer] of list(definition.where, '/where')) checkPath(condition.path, `${pointer}/path`);

  /** Names of the columns that a select gives, in order. */
  const checkSelect = (select: Json, pointer: string, depth: number): string[] => {
    if (depth > most.depth) {
      add(pointer, 'TOO_LARGE', `Selects nest at most ${most.depth} deep.`);
      return [];
    }
    keys(select, selectKeys, pointer);
    const loops = ['forEach', 'forEachOrNull', 'repeat'].filter((key) => select[key] !== undefined);
    if (loops.length > 1) add(pointer, 'ONLY_ONE', 'Expected at most one of forEach, forEachOrNull and repeat.');
    for (const loop of loops) {
      if (loop !== 'repeat') checkPath(select[loop], `${pointer}/${loop}`);
      else if (!Array.isArray(select.repeat)) add(`${pointer}/repeat`, 'WRONG_TYPE', 'Expected a list of paths.');
      else for (const [index, path] of select.repeat.entries()) checkPath(path, `${pointer}/repeat/${index}`);
    }
    const names = list(select.column, `${pointer}/column`).map(([column, place]) => {
      keys(column, columnKeys, place);
      checkPath(column.path, `${place}/path`);
      if (typeof column.name !== 'string' || !nameForm.test(column.name)) {
        add(`${place}/name`, 'FORMAT', 'Expected a letter, then letters, digits and underscores.');
      }
      return plainText(column.name);
    });
    for (const [child, place] of list(select.select, `${pointer}/select`))
      names.push(...checkSelect(child, place, depth + 1));
    const branches = list(select.unionAll, `${pointer}/unionAll`).map(([branch, place]) => ({
      place,
      names: checkSelect(branch, place, depth + 1),
    }));
    for (const branch of branches.slice(1)) {
      if (branch.names.join() === branches[0]?.names.join()) continue;
      add(branch.place, 'CONTRADICTION', 'Expected the same columns in the same order as in the first branch.');
    }
    return [...names, ...(branches[0]?.names ?? [])];
  };
  const names = list(definition.select, '/select', true).flatMap(([select, pointer]) =>
    checkSelect(select, pointer, 1),
  );
  if (names.length > most.columns) add('/select', 'TOO_LARGE', `A view has at most ${most.columns} columns.`);
  const twice = new Set(names.filter((name, index) => names.indexOf(name) !== index));
  for (const name of twice) {
    add('/select', 'CONTRADICTION', `Expected column names that differ; ${echoedName(name)} stands twice.`);
  }
  return faults;
}

/** Whether a path can be read in a moment: the parser tries many ways where brackets stay open. Texts may count too. */
function hasFewBrackets(path: string): boolean {
  let depth = 0;
  for (const sign of path) {
    if (sign === '(' || sign === '[') depth += 1;
    else if (sign === ')' || sign === ']') depth -= 1;
    if (depth > most.brackets) return false;
  }
  return true;
}

/** Columns of a checked view: its own, then those of nested selects, then those of the union. */
export function columnsOf(selects: readonly SelectDefinition[]): readonly ViewColumn[] {
  return selects.flatMap((select) => [
    ...(select.column ?? []).map(({ name, type, collection, description }) => ({
      name,
      type,
      collection: collection === true,
      ...(description === undefined ? {} : { description }),
    })),
    ...columnsOf(select.select ?? []),
    ...columnsOf(select.unionAll?.slice(0, 1) ?? []),
  ]);
}
