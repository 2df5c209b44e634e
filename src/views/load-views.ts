import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type CompiledView, compileView } from './compile-view.ts';
import type { ViewDefinition } from './view-definition.ts';

export interface LoadedView {
  readonly definition: ViewDefinition;
  readonly compiled: CompiledView;
}

/**
 * The committed views in `dir`, one in each `ViewDefinition-<id>.json`, by name.
 * @throws Error of the file system when the folder is missing, ViewInvalidError when a file is no valid view
 */
export function viewsFrom(dir: string): ReadonlyMap<string, LoadedView> {
  const files = readdirSync(dir).filter((file) => /^ViewDefinition-.+\.json$/.test(file));
  return new Map(
    files.sort().map((file) => {
      const definition = JSON.parse(readFileSync(join(dir, file), 'utf8')) as ViewDefinition;
      const compiled = compileView(definition);
      return [compiled.name, { definition, compiled }];
    }),
  );
}
