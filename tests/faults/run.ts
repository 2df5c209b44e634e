import { spawn } from 'node:child_process';
import { parseArgs } from 'node:util';

/** The full sizes of what `npm test` does in small: `npm run faults -- --kills 200 --bodies 100000 --seed 7 --only kill`. */
const fullSizes = {
  kills: 200,
  bodies: 100_000,
  outages: 20,
  'line-faults': 200,
  races: 100,
  'power-cuts': 50,
  aborts: 2_000,
} as const;

const sizeNames = Object.keys(fullSizes) as (keyof typeof fullSizes)[];
const { values } = parseArgs({
  options: {
    ...Object.fromEntries(sizeNames.map((name) => [name, { type: 'string' as const }])),
    seed: { type: 'string' },
    /** Part of the name of a file. */
    only: { type: 'string' },
  },
}) as { values: Partial<Record<string, string>> };

for (const [name, value] of Object.entries(values)) {
  if (name === 'only' || /^\d{1,9}$/.test(value ?? '')) continue;
  process.stderr.write(`--${name} must be a whole number.\n`);
  process.exit(2);
}

const seed = values.seed ?? String(Math.floor(Math.random() * 2 ** 31));
const sizes = Object.fromEntries(sizeNames.map((name) => [name, values[name] ?? String(fullSizes[name])]));
process.stdout.write(`seed ${seed}, ${sizeNames.map((name) => `${sizes[name]} ${name}`).join(', ')}\n`);

const vitest = spawn(
  'npx',
  ['vitest', 'run', `tests/faults/${values.only ?? ''}`, '--no-file-parallelism', '--testTimeout=0', '--hookTimeout=0'],
  {
    stdio: 'inherit',
    env: {
      ...process.env,
      // Lets a test look at the memory that is really in use.
      NODE_OPTIONS: `${process.env.NODE_OPTIONS ?? ''} --expose-gc`.trim(),
      FAULTS_FULL: '1',
      FAULTS_SEED: seed,
      ...Object.fromEntries(sizeNames.map((name) => [`FAULTS_${name.replace('-', '_').toUpperCase()}`, sizes[name]])),
    },
  },
);
vitest.once('exit', (code) => {
  process.exitCode = code ?? 1;
});
