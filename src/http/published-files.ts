import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The generated files that the service serves as they are. */
export interface PublishedFiles {
  /** Paths from the root of the project, such as `profiles/json-schema/exam.schema.json`, sorted. */
  readonly paths: readonly string[];
  /** Bytes of one of these paths; undefined for any other. */
  read(path: string): Buffer | undefined;
}

/**
 * Lists the JSON files of the published folders once; a request is looked up in that list and never becomes a path of
 * the file system.
 * @param rootDir folder that holds `profiles` and `terminology`
 * @throws Error of the file system when a folder is missing
 */
export function publishedFiles(rootDir: string): PublishedFiles {
  const paths = ['profiles', 'terminology'].flatMap((folder) =>
    readdirSync(join(rootDir, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.json'))
      .map((name) => `${folder}/${name.replaceAll('\\', '/')}`),
  );
  const known = new Set(paths);
  const contents = new Map<string, Buffer>();
  return {
    paths: paths.sort(),
    read(path) {
      if (!known.has(path)) return undefined;
      const bytes = contents.get(path) ?? readFileSync(join(rootDir, path));
      contents.set(path, bytes);
      return bytes;
    },
  };
}
