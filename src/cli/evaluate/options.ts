import { nearestKey } from '../../exam/faults/nearest-key.ts';

/** What the command was asked to do. */
export interface Options {
  readonly folder: string;
  /** Misses that are shown. */
  readonly misses: number;
  /** Whether nothing of what the cases contain may be shown. */
  readonly onlyFigures: boolean;
  /** File that the results are written to as JSON. */
  readonly json?: string;
  /** Simulated examinations, and simulated patients who are examined step by step; 0 for none. */
  readonly simulate: number;
  readonly sequential: number;
  readonly seed: number;
  readonly help: boolean;
}

export const defaults: Options = {
  folder: 'tests/evaluation',
  misses: 5,
  onlyFigures: false,
  simulate: 200,
  sequential: 20,
  seed: 1,
  help: false,
};

export const help = `npm run evaluate -- [FOLDER] [options]

Puts every case below FOLDER (*.ndjson: one case a line; *.json: one case or a list; default ${defaults.folder}) to the
service and prints how often the site is right, how far the probabilities can be believed, and how often the causes, red
flags and first tests are right where a case fixes them. Then it examines simulated patients. The format of a case is in tests/evaluation/README.md.

  --misses N        explain the N worst misses (default ${defaults.misses})
  --only figures    print nothing that a case contains, for cases that are kept for measuring alone
  --json FILE       write everything to FILE as well
  --simulate N      N simulated examinations (default ${defaults.simulate}, 0 for none)
  --sequential N    N simulated patients examined item by item (default ${defaults.sequential}, 0 for none)
  --seed N          another draw of simulated patients (default ${defaults.seed})
  --help            this text

Exit status: 0 when everything was read and measured, whatever the figures; 1 when a case or an option is faulty.`;

const counts = ['misses', 'simulate', 'sequential', 'seed'] as const;
type Count = (typeof counts)[number];
const names = [...counts, 'only', 'json', 'help'];
/** A larger number is a slip of the hand. */
const countAtMost = 1_000_000;

/**
 * Reads the words after the command.
 * @throws Error in plain words, with every fault in a line of its own
 */
export function readOptions(words: readonly string[]): Options {
  const problems: string[] = [];
  const folders: string[] = [];
  let options = defaults;
  const rest = words.flatMap((word) =>
    /^--[a-z]+=/.test(word) ? [word.slice(0, word.indexOf('=')), word.slice(word.indexOf('=') + 1)] : [word],
  );
  for (let at = 0; at < rest.length; at += 1) {
    const word = rest[at] ?? '';
    if (!word.startsWith('-')) {
      folders.push(word);
      continue;
    }
    const name = word === '-h' ? 'help' : word.replace(/^--?/, '');
    if (name === 'help') {
      options = { ...options, help: true };
      continue;
    }
    if (!names.includes(name)) {
      const near = nearestKey(name, names);
      problems.push(
        `There is no option ${word}.${near === undefined ? ` The options are ${list(names)}.` : ` Did you mean --${near}?`}`,
      );
      continue;
    }
    const value = rest[at + 1];
    if (value === undefined || value.startsWith('--')) {
      problems.push(
        `--${name} needs ${name === 'json' ? 'a file' : name === 'only' ? 'the word figures' : 'a number'} after it.`,
      );
      continue;
    }
    at += 1;
    const taken = take(name, value);
    if (typeof taken === 'string') problems.push(taken);
    else options = { ...options, ...taken };
  }
  if (folders.length > 1)
    problems.push(`One folder is evaluated at a time; these are ${folders.length}: ${folders.join(', ')}.`);
  if (problems.length > 0 && !options.help) throw new Error(problems.join('\n'));
  return { ...options, folder: folders[0] ?? options.folder };
}

/** The option as read, or what is wrong with it. */
function take(name: string, value: string): Partial<Options> | string {
  if (name === 'json') return { json: value };
  if (name === 'only')
    return value === 'figures' ? { onlyFigures: true } : `--only takes the word figures, not ${value}.`;
  const number = Number(value);
  if (/^\d+$/.test(value) && number <= countAtMost) return { [name as Count]: number };
  return `--${name} takes a whole number from 0 to ${countAtMost}, not ${value}.`;
}

function list(options: readonly string[]): string {
  return options.map((name) => `--${name}`).join(', ');
}
