import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { staleFiles } from '../../src/cli/generate/files.ts';
import { generatedFiles } from '../../src/cli/generate/generated-files.ts';
import { readOpenTables } from '../../src/cli/generate/open-tables.ts';

const rootDir = join(import.meta.dirname, '..', '..');
const { version }: { version: string } = JSON.parse(readFileSync(join(rootDir, 'package.json'), 'utf8'));

describe('generated files', () => {
  it('on disk are what the generator makes', async () => {
    expect(staleFiles(rootDir, await generatedFiles(version, readOpenTables(rootDir)))).toEqual([]);
  });

  it('come out the same every time', async () => {
    const tables = readOpenTables(rootDir);
    expect([...(await generatedFiles(version, tables))]).toEqual([...(await generatedFiles(version, tables))]);
  });
});
