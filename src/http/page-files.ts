import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { type MediaType, mediaTypes } from './answer.ts';
import { type Packed, packed } from './packed.ts';

/** The page at the bedside as the build has bundled it. */
export interface PageFiles {
  readonly html: Packed;
  /** Scripts and styles by file name; each name holds a hash of what is in it. */
  readonly assets: ReadonlyMap<string, Packed>;
}

const types: Readonly<Record<string, MediaType>> = {
  '.html': mediaTypes.html,
  '.js': mediaTypes.script,
  '.css': mediaTypes.style,
  '.svg': mediaTypes.svg,
  '.txt': mediaTypes.text,
};

/** @returns null where the folder is missing: a run from the sources before any build */
export function readPageFiles(folder: string): PageFiles | null {
  if (!existsSync(join(folder, 'index.html'))) return null;
  const files = readdirSync(folder).flatMap((name) => {
    const type = types[extname(name)];
    return type === undefined ? [] : [[name, packed(type, readFileSync(join(folder, name)))] as const];
  });
  const assets = new Map(files);
  const html = assets.get('index.html');
  if (html === undefined) return null;
  assets.delete('index.html');
  return { html, assets };
}
