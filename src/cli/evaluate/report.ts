import { relative } from 'node:path';
import { table } from '../demo/layout.ts';
import type { ReliabilityBin } from './calibration.ts';
import { type Figures, figuresOf, groupBy, type Share } from './figures.ts';
import type { Judgement } from './judge.ts';
import { describeMiss, worstMisses } from './misses.ts';

/** The figures of all cases, of each file and of each kind, with the reliability of the stated probabilities. */
export function reportFigures(judgements: readonly Judgement[], folder: string): string {
  const all = figuresOf(judgements);
  const rows = [
    ...[...groupBy(judgements, ({ evaluated }) => evaluated.file)].map(([file, own]) =>
      row(relative(folder, file) || file, figuresOf(own)),
    ),
    ...[...groupBy(judgements, ({ evaluated }) => evaluated.kind)].map(([kind, own]) => row(kind, figuresOf(own))),
    row('all', all),
  ];
  return [`CASES (${all.cases})`, table([head, ...rows], unlimited), '', reportCalibration(all)].join('\n');
}

/** A row of figures is worth a long line: cut short it would be of no use. */
const unlimited = Number.POSITIVE_INFINITY;

const head = [
  '',
  'cases',
  'first',
  'first 3',
  'side',
  'level',
  'exact',
  'conclusion',
  '1/rank',
  'sure, wrong',
  'Brier',
  'calibration',
];

function row(name: string, figures: Figures): readonly string[] {
  const { cases, first, firstThree, side, level, exactLevel, conclusion, reciprocalRank, sureAndWrong } = figures;
  return [
    name,
    String(cases),
    ...[first, firstThree, side, level, exactLevel, conclusion].map(shareText),
    decimals(reciprocalRank),
    String(sureAndWrong.right),
    decimals(figures.brier),
    decimals(figures.calibrationError),
  ];
}

/** Brier score, calibration error and the reliability figure of one set. */
export function reportCalibration({ brier, calibrationError, reliability }: Figures): string {
  return [
    `Brier score ${decimals(brier)} (0 best, 2 worst); expected calibration error ${decimals(calibrationError)}`,
    reliabilityFigure(reliability),
  ].join('\n');
}

const barLength = 20;

/** Share right as a bar beside the mean stated probability, marked `|`: a bar that ends at its mark is well calibrated. */
function reliabilityFigure(bins: readonly ReliabilityBin[]): string {
  const rows = bins.map(({ from, to, count, meanStated, shareRight }) => [
    `${from.toFixed(1)}-${to.toFixed(1)}`,
    String(count),
    meanStated.toFixed(2),
    shareRight.toFixed(2),
    bar(meanStated, shareRight),
  ]);
  return table(
    [['stated', 'cases', 'mean stated', 'share right', 'bar: share right, |: mean stated'], ...rows],
    unlimited,
  );
}

function bar(stated: number, right: number): string {
  const mark = Math.round(stated * barLength);
  const filled = Math.round(right * barLength);
  return Array.from({ length: barLength + 1 }, (_, at) => (at === mark ? '|' : at < filled ? '#' : '.')).join('');
}

/** The worst misses, each with its explanation. */
export function reportMisses(judgements: readonly Judgement[], most: number, width: number): string {
  const misses = worstMisses(judgements);
  const shown = misses.slice(0, most).map((miss, index) => describeMiss(miss, index + 1, width));
  const title = `MISSES (${misses.length}${shown.length < misses.length ? `, the worst ${shown.length} shown` : ''})`;
  return [title, ...shown].join('\n\n');
}

/** "98/104 94.2%", or a dash where there is nothing to count. */
export function shareText({ right, of }: Share): string {
  return of === 0 ? '-' : `${right}/${of} ${((100 * right) / of).toFixed(1)}%`;
}

export function decimals(value: number | null): string {
  return value === null ? '-' : value.toFixed(3);
}
