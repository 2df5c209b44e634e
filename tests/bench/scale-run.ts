import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { startPostgres } from '../support/postgres.ts';
import { reportScale } from './scale.ts';

/** `npm run bench:scale -- --exams 100000 --engine sqlite|postgres --bodies`: its folder is kept, so that it can be looked at. */
const { values } = parseArgs({
  options: {
    exams: { type: 'string', default: '10000' },
    distinct: { type: 'string', default: '2000' },
    engine: { type: 'string', default: 'sqlite' },
    folder: { type: 'string', default: 'data/scale' },
    bodies: { type: 'boolean', default: false },
  },
});
const folder = resolve(values.folder);
const options = { exams: Number(values.exams), distinct: Number(values.distinct), folder, bodies: values.bodies };
mkdirSync(folder, { recursive: true });
if (values.engine === 'postgres') {
  const postgres = await startPostgres();
  try {
    await reportScale({ ...options, target: { engine: 'postgres', url: await postgres.newDatabase() } });
  } finally {
    await postgres.stop();
  }
} else {
  await reportScale({ ...options, target: { engine: 'sqlite', file: join(folder, `scale-${Date.now()}.sqlite`) } });
}
