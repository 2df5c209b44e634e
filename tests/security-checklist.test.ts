import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '..');
const rows = readFileSync(join(import.meta.dirname, 'security-checklist.md'), 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| ') && !line.startsWith('| ---'))
  .slice(1)
  .map((line) => line.split('|').map((cell) => cell.trim()));

it.each(rows)('%s%s is held by a test of that title', (_start, _item, _what, file = '', title = '') => {
  expect(existsSync(join(root, file)), file).toBe(true);
  expect(readFileSync(join(root, file), 'utf8')).toContain(`'${title}'`);
});
