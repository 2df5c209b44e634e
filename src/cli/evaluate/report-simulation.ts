import { hypotheses } from '../../localisation/hypotheses/hypotheses.ts';
import { table } from '../demo/layout.ts';
import { figuresOf, groupBy, mean, share } from './figures.ts';
import { type Judgement, sureFrom } from './judge.ts';
import { reportCalibration, shareText } from './report.ts';
import { itemsAtMost, type Sequential, type SequentialRun } from './sequential.ts';
import type { Simulation } from './simulate.ts';

const unlimited = Number.POSITIVE_INFINITY;

/** The figures of simulated examinations, as a whole and by kind of site. */
export function reportSimulation({ judgements, levelInRange, items }: Simulation, seed: number): string {
  const all = figuresOf(judgements);
  return [
    `SIMULATED EXAMINATIONS (${judgements.length}, seed ${seed}), drawn from the engine's own model with its examiner noise`,
    `${Math.min(...items)} to ${Math.max(...items)} items each, ${whole(mean(items))} on average`,
    `the very site first ${shareText(all.first)}, among the first three ${shareText(all.firstThree)}; ` +
      `side ${shareText(all.side)}; segment of a root ${shareText(all.exactLevel)}`,
    `level of a cord lesion within the stated range ${shareText(levelInRange)}; meant to be 80%`,
    `wrong with a probability of at least ${sureFrom}: ${shareText(all.sureAndWrong)}`,
    '',
    reportCalibration(all),
    '',
    byKind(judgements),
  ].join('\n');
}

const kindOfSite: ReadonlyMap<string, string> = new Map(hypotheses.map(({ site }) => [site.key, site.kind]));

function byKind(judgements: readonly Judgement[]): string {
  const groups = groupBy(judgements, ({ evaluated }) => kindOfSite.get(evaluated.expect.sites[0] ?? ''));
  const rows = [...groups]
    .sort(([, a], [, b]) => b.length - a.length)
    .map(([kind, own]) => {
      const { first, firstThree, sureAndWrong } = figuresOf(own);
      const right = share(own.map(({ isRight }) => isRight));
      return [
        kind,
        shareText(first),
        shareText(firstThree),
        shareText(right),
        (mean(own.map(({ stated }) => stated)) ?? 0).toFixed(2),
        String(sureAndWrong.right),
      ];
    });
  const head = ['kind of lesion', 'first', 'first 3', 'first, side and level', 'mean stated', 'sure, wrong'];
  return table([head, ...rows], unlimited);
}

/** How soon each order of examining leads to the right site. */
export function reportSequential({ runs, sooner }: Sequential, seed: number): string {
  const count = runs[0]?.items.length ?? 0;
  const rows = runs.map(({ name, items }) => [
    name,
    shareText(share(items.map((one) => one !== null))),
    medianText(items),
    (mean(items.map((one) => one ?? itemsAtMost)) ?? 0).toFixed(1),
  ]);
  return [
    `ITEM BY ITEM (${count} simulated patients, seed ${seed}): items after the complaint until the right site is first with a`,
    `probability of at least ${sureFrom}; ended after ${itemsAtMost}, which the mean counts as ${itemsAtMost}`,
    table([['order', 'reached', 'median', 'mean'], ...rows], unlimited),
    `sooner as proposed than head to toe in ${sooner.proposals}, later in ${sooner.routine}`,
  ].join('\n');
}

function medianText(items: SequentialRun['items']): string {
  const sorted = items.map((one) => one ?? unlimited).sort((a, b) => a - b);
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  const median = ((low ?? unlimited) + (high ?? unlimited)) / 2;
  return median === unlimited ? `over ${itemsAtMost}` : String(median);
}

function whole(value: number | null): string {
  return value === null ? '-' : value.toFixed(0);
}
