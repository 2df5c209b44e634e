/**
 * `npm run fit-odds -- sites|causes [FOLDER]`: corrects how often sites or causes are taken to be met by how often they are
 * right in the cases of a folder, and writes the odds into the model. Sites first: what causes are considered depends on them.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SiteKind } from '../anatomy/site-kind.ts';
import { createExamReader } from '../exam/read-exam.ts';
import { hypotheses } from '../localisation/hypotheses/hypotheses.ts';
import { sentFor } from '../localisation/inference/prior.ts';
import { createLocaliser } from '../localisation/localise.ts';
import { casesBelow } from './evaluate/case-files.ts';
import type { EvaluationCase } from './evaluate/evaluation-case.ts';
import { fitLogOdds, type SharesOf } from './fit/fit-log-odds.ts';
import { causeCases, siteCases } from './fit/fitted-cases.ts';
import { oddsFile } from './fit/odds-file.ts';

const rootDir = join(import.meta.dirname, '..', '..');
const developmentCases = 'tests/evaluation/development';

/** Precision of the shifts before any case is seen: of those of sites and kinds of site, and of causes. Chosen on cases that were not fitted. */
const shrinkage = { sites: 4, causes: 3 } as const;

/** Kinds whose odds stay as they are, since several nerves or places are weighed together. */
const unfitted: ReadonlySet<SiteKind> = new Set(['multiple-nerves', 'multiple-sites']);

function fitSites(cases: readonly EvaluationCase[]): void {
  const kinds = new Map(hypotheses.map(({ site: { key, kind } }) => [key, kind]));
  const sharesOf: SharesOf = (key) => {
    const kind = kinds.get(key);
    return kind === undefined || unfitted.has(kind) ? [] : [key, `kind ${kind}`];
  };
  const shifts = fitLogOdds(siteCases(cases), sharesOf, shrinkage.sites);
  // Reports tell of patients in whom something was found: how seldom nothing was is learnt, so that it burdens no site, and left out.
  const odds = [...kinds].flatMap(([key, kind]): readonly (readonly [string, number])[] => {
    if (kind === 'none') return [];
    const shift = sharesOf(key).reduce((sum, name) => sum + (shifts.get(name) ?? 0), 0);
    return [[key, Math.exp(shift / sentFor)]];
  });
  write('src/localisation/hypotheses/fitted-site-odds.ts', oddsFile('site', odds));
}

function fitCauses(cases: readonly EvaluationCase[]): void {
  const shifts = fitLogOdds(causeCases(cases, createLocaliser()), (key) => [key], shrinkage.causes);
  const odds = [...shifts].map(([key, shift]): readonly [string, number] => [key, Math.exp(shift)]);
  write('src/causes/table/fitted-cause-odds.ts', oddsFile('cause', odds));
}

function write(path: string, text: string): void {
  writeFileSync(join(rootDir, path), text);
  process.stdout.write(`${path}\n`);
}

const [what, folder = join(rootDir, developmentCases)] = process.argv.slice(2);
try {
  if (what === 'sites') fitSites(casesBelow(folder, createExamReader()));
  else if (what === 'causes') fitCauses(casesBelow(folder, createExamReader()));
  else throw new Error('Say what to fit: npm run fit-odds -- sites|causes [FOLDER]');
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
