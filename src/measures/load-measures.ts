import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type CompiledMeasure, compileMeasure } from './compile-measure.ts';

/**
 * The committed measures in `dir`, one in each `Measure-<id>.json`, by id.
 * @throws Error of the file system when the folder is missing, MeasureInvalidError when a file is no valid measure
 */
export function measuresFrom(dir: string): ReadonlyMap<string, CompiledMeasure> {
  const files = readdirSync(dir).filter((file) => /^Measure-.+\.json$/.test(file));
  return new Map(
    files.sort().map((file) => {
      const compiled = compileMeasure(JSON.parse(readFileSync(join(dir, file), 'utf8')));
      return [compiled.definition.id ?? '', compiled];
    }),
  );
}
