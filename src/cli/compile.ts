/**
 * The last step of the build: writes into the folder named, that of the compiled service, what it would otherwise work out
 * at every start: the states of all hypotheses and the code of the validators. Beside them HL7's definitions for
 * `$validate`, because the package that they come from is there for development only.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { schemaCompiler } from '../exam/schema/validator.ts';
import { packModel } from '../localisation/compiled-model.ts';
import { compileModel } from '../localisation/localise.ts';
import { definitionsFile, extractR4Definitions } from '../validation/r4-definitions.ts';

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('the folder to write into is missing');
writeFileSync(join(folder, 'compiled-model.bin'), packModel(compileModel()));
const { ajv, ids } = schemaCompiler({ allErrors: false, isForFile: true });
writeFileSync(join(folder, 'compiled-schemas.cjs'), standaloneCode.default(ajv, ids));
writeFileSync(join(folder, definitionsFile), gzipSync(JSON.stringify(extractR4Definitions()), { level: 9 }));
