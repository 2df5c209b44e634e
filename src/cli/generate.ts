/**
 * Writes every generated file: JSON Schemas, profiles, the Questionnaire, code systems, value sets and maps, the
 * description of the API and the client made from it.
 * `--check` writes nothing; it lists the files that are out of date and ends with status 1 if there are any.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { codeUseProblems } from './generate/code-use.ts';
import { codesInUse } from './generate/codes-in-use.ts';
import { staleFiles, writeGenerated } from './generate/files.ts';
import { generatedFiles } from './generate/generated-files.ts';
import { modelVersionPath } from './generate/model-version.ts';
import { readOpenTables } from './generate/open-tables.ts';

const rootDir = join(import.meta.dirname, '..', '..');
const packageJson: { version: string } = JSON.parse(readFileSync(join(rootDir, 'package.json'), 'utf8'));
const tables = readOpenTables(rootDir);

const problems = codeUseProblems(codesInUse(), tables);
for (const problem of problems) console.error(problem);

const files = await generatedFiles(packageJson.version, tables);
const check = process.argv.includes('--check');
const stale = check ? staleFiles(rootDir, files) : writeGenerated(rootDir, files);
for (const { path, reason } of stale) console.log(check ? `${path}: ${reason}` : path);
console.log(`${files.size} generated files, ${stale.length} ${check ? 'out of date' : 'written or removed'}`);
if (problems.length > 0 || (check && stale.length > 0)) process.exitCode = 1;
else if (stale.some(({ path }) => path === modelVersionPath)) {
  // The worked examples carry the model's version, and this process still holds the one from before.
  const again = spawnSync(process.execPath, [...process.execArgv, ...process.argv.slice(1)], { stdio: 'inherit' });
  process.exitCode = again.status ?? 1;
}
