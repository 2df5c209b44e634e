import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = fileURLToPath(new URL('../src', import.meta.url));

/** Folders and single files of src, lowest first; what stands on one line may import each other only where noted. */
const floors: readonly (readonly string[])[] = [
  ['client'],
  ['kernel'],
  ['anatomy', 'terminology'],
  ['exam'],
  ['causes'],
  ['localisation'],
  ['simulation'],
  ['differential'],
  ['workup'],
  ['summary'],
  ['picture'],
  ['fhir'],
  ['access', 'audit', 'questionnaire', 'views', 'validation'],
  ['cds', 'deidentify', 'practice'],
  ['measures'],
  ['search'],
  ['store'],
  ['delivery'],
  ['http'],
  // Runs in browsers; what it may import is held below.
  ['page'],
  ['cli'],
  ['config'],
  ['config.ts'],
  ['context.ts'],
  ['service.ts'],
  ['start.ts'],
  // Entry points: nothing imports them. A command of `cli` is one, its parts in the folders below are not.
  ['main.ts', 'cli/*.ts'],
];

/** Pure floors: no file system, network, process or randomness, and no framework. Hashing and loading a package are pure. */
const pureFloors = [
  'kernel',
  'anatomy',
  'exam',
  'localisation',
  'simulation',
  'causes',
  'differential',
  'workup',
  'summary',
  'picture',
  'fhir',
  'audit',
  'search',
  'questionnaire',
  'cds',
  'practice',
];
const pureModules = [
  'node:crypto',
  'node:module',
  'ajv/dist/2020.js',
  'ajv-formats',
  'fastest-levenshtein',
  '@lhncbc/ucum-lhc',
];
const fhirTypes = 'fhir/r4.js';

/** Globals that would make an answer depend on when or where it is computed. */
const impure =
  /\b(Math\.random|Date\.now|new Date\(\)|performance\.now|process\.(?:env|argv|cwd|exit|hrtime|stdout|stderr|nextTick|platform)|randomUUID|globalThis\.fetch|fetch\()/;

interface Import {
  readonly from: string;
  /** Path from src for a file of ours, the module name otherwise. */
  readonly to: string;
  readonly isOurs: boolean;
  readonly isTypeOnly: boolean;
}

const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .sort();
const textOf = (file: string) => readFileSync(join(src, file), 'utf8');

const imports: readonly Import[] = files.flatMap((file) => {
  const statement = /^(?:import|export)\s+(?<type>type\s+)?(?:[^;'"]*?\s+from\s+)?['"](?<module>[^'"]+)['"]/gm;
  return [...textOf(file).matchAll(statement)].map((match) => {
    const module = match.groups?.module ?? '';
    const isOurs = module.startsWith('.');
    const to = isOurs ? relative(src, resolve(src, dirname(file), module)) : module;
    return { from: file, to, isOurs, isTypeOnly: match.groups?.type !== undefined };
  });
});

function floorName(file: string): string {
  const [folder = '', next] = file.split('/');
  if (next === undefined) return folder;
  return folder === 'cli' && next.endsWith('.ts') ? 'cli/*.ts' : folder;
}

function floorOf(file: string): number {
  return floors.findIndex((floor) => floor.includes(floorName(file)));
}

describe('the floors of src', () => {
  it('has a floor for every file', () => {
    expect(files.filter((file) => floorOf(file) < 0)).toEqual([]);
    expect(imports.length).toBeGreaterThan(files.length);
  });

  it('imports only from the same folder or from a lower floor', () => {
    const upward = imports
      .filter(({ isOurs }) => isOurs)
      .filter(({ from, to }) => floorName(from) !== floorName(to) && floorOf(to) >= floorOf(from))
      .map(({ from, to }) => `${from} imports ${to}`);
    expect(upward).toEqual([]);
  });

  it('has no circle of imports', () => {
    const targets = new Map<string, string[]>();
    for (const { from, to, isOurs, isTypeOnly } of imports) {
      if (isOurs && !isTypeOnly) targets.set(from, [...(targets.get(from) ?? []), to]);
    }
    const done = new Set<string>();
    const circles: string[] = [];
    const visit = (file: string, path: readonly string[]) => {
      if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file].join(' -> '));
      if (done.has(file) || path.includes(file)) return;
      for (const target of targets.get(file) ?? []) visit(target, [...path, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
    expect(circles).toEqual([]);
  });

  it('keeps the clinical core pure: no framework, no outside world, and FHIR types only in fhir', () => {
    const outside = imports
      .filter(({ from, isOurs }) => !isOurs && pureFloors.includes(floorName(from)))
      .filter(
        ({ from, to }) =>
          !pureModules.includes(to) &&
          !(to === fhirTypes && ['fhir', 'audit', 'search', 'questionnaire', 'cds'].includes(floorName(from))),
      )
      .map(({ from, to }) => `${from} imports ${to}`);
    expect(outside).toEqual([]);
    const dependent = files.filter((file) => pureFloors.includes(floorName(file)) && impure.test(textOf(file)));
    expect(dependent).toEqual([]);
  });

  it('keeps the page apart: it speaks to the service over its interface alone, as any other program does', () => {
    const pageImports = imports.filter(({ from }) => floorName(from) === 'page');
    expect(pageImports.length).toBeGreaterThan(0);
    const outside = pageImports.filter(({ to, isOurs, isTypeOnly }) =>
      isOurs
        ? !isTypeOnly && !['page', 'client'].includes(floorName(to))
        : !/^(preact|@preact\/signals)(\/|$)/.test(to),
    );
    expect(outside).toEqual([]);
    expect(imports.filter(({ from, to }) => floorName(from) !== 'page' && floorName(to) === 'page')).toEqual([]);
  });

  it('imports nothing from an entry point, and names every import with its extension', () => {
    expect(imports.filter(({ to }) => to === 'main.ts' || /^cli\/[^/]+\.ts$/.test(to))).toEqual([]);
    expect(imports.filter(({ isOurs, to }) => isOurs && !/\.tsx?$/.test(to))).toEqual([]);
  });

  it('knows an HTTP status in http alone, and in delivery, which is answered by others', () => {
    const knowing = files.filter((file) => /\b(statusCode|res\.status|httpStatus)\b/.test(textOf(file)));
    expect(knowing.filter((file) => !['http', 'delivery'].includes(floorName(file)))).toEqual([]);
  });

  it('keeps logic files short enough to be read at once', () => {
    const written = files.filter((file) => !file.startsWith('client/generated/'));
    const tooLong = written.filter((file) => textOf(file).split('\n').length > 600);
    expect(tooLong).toEqual([]);
  });
});
