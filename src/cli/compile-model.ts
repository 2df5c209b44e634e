/** Writes what can be worked out about the hypotheses beforehand to the file named, so that the service need not when it starts. */
import { writeFileSync } from 'node:fs';
import { packModel } from '../localisation/compiled-model.ts';
import { compileModel } from '../localisation/localise.ts';

const [file] = process.argv.slice(2);
if (file === undefined) throw new Error('the file to write is missing');
writeFileSync(file, packModel(compileModel()));
