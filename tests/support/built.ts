import { fileURLToPath } from 'node:url';
import { inject } from 'vitest';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Arguments of Node that run a file of the build, such as `main.js`. @throws Error when the build failed */
export function built(file: 'main.js' | `cli/${string}.js`): readonly string[] {
  const fault = inject('buildFault');
  if (fault !== '') throw new Error(`npm run build failed:\n${fault}`);
  return [`${root}dist/${file}`];
}
