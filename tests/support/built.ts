import { fileURLToPath, pathToFileURL } from 'node:url';
import { inject } from 'vitest';
import { compiledFiles, createExamSteps } from '../../src/context.ts';
import type { ExamSteps } from '../../src/http/exam-steps.ts';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Arguments of Node that run a file of the build, such as `main.js`. @throws Error when the build failed */
export function built(file: 'main.js' | `cli/${string}.js`): readonly string[] {
  const fault = inject('buildFault');
  if (fault !== '') throw new Error(`npm run build failed:\n${fault}`);
  return [`${root}dist/${file}`];
}

/** What the build has worked out of the sources; null when it failed, so that it is worked out anew. */
export function compiledByBuild(): ReturnType<typeof compiledFiles> {
  return inject('buildFault') === '' ? compiledFiles(pathToFileURL(`${root}dist/`)) : null;
}

/** The steps of the service, of its sources, with what the build has worked out. */
export function builtSteps(): ExamSteps {
  return createExamSteps(compiledByBuild());
}
