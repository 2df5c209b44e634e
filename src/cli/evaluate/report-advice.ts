import { relative } from 'node:path';
import { table, wrap } from '../demo/layout.ts';
import { groupBy } from './figures.ts';
import { flagFiguresOf } from './flag-figures.ts';
import { type AdviceJudgement, adviceFiguresOf } from './judge-advice.ts';
import { decimals, shareText } from './report.ts';

const head = [
  '',
  'cases',
  'first cause',
  'first 3',
  'red flags raised',
  'false alarms',
  'undecided said',
  'first tests',
  'needless tests',
  'calibration of causes',
];

/** Causes, red flags and tests: the figures of each file, of each kind and of all cases that fix any of them. */
export function reportAdvice(judgements: readonly AdviceJudgement[], folder: string): string {
  const groups = (name: (judgement: AdviceJudgement) => string | undefined) => [...groupBy(judgements, name)];
  const rows = [
    ...groups(({ evaluated }) => relative(folder, evaluated.file) || evaluated.file),
    ...groups(({ evaluated }) => evaluated.kind),
    ['all', judgements] as const,
  ].map(([name, own]) => row(name, own));
  return [
    `CAUSES, RED FLAGS, TESTS (${judgements.length} cases that fix any)`,
    table([head, ...rows], Number.POSITIVE_INFINITY),
  ].join('\n');
}

function row(name: string, judgements: readonly AdviceJudgement[]): readonly string[] {
  const figures = adviceFiguresOf(judgements);
  return [
    name,
    String(judgements.length),
    ...[
      figures.firstCause,
      figures.firstThreeCauses,
      figures.flagsRaised,
      figures.falseAlarms,
      figures.undecidedSaid,
      figures.testsProposed,
      figures.needlessTests,
    ].map(shareText),
    decimals(figures.causeCalibrationError),
  ];
}

/** How often each red flag was expected, raised, missed and raised beyond that; the most often missed first. */
export function reportFlags(judgements: readonly AdviceJudgement[]): string {
  const figures = flagFiguresOf(judgements).toSorted(
    (a, b) => b.missed - a.missed || b.falseAlarms - a.falseAlarms || b.expected - a.expected,
  );
  const sums = flagCounts.map((count) => figures.reduce((sum, flag) => sum + flag[count], 0));
  return [
    `RED FLAGS (${figures.length} that were expected, or raised beyond that)`,
    table(
      [
        ['', 'expected', 'raised', 'missed', 'false alarms', 'beside others'],
        ...figures.map((flag) => [flag.key, ...flagCounts.map((count) => String(flag[count]))]),
        ['all', ...sums.map(String)],
      ],
      Number.POSITIVE_INFINITY,
    ),
  ].join('\n');
}

const flagCounts = ['expected', 'raised', 'missed', 'falseAlarms', 'besideOthers'] as const;

/** What went wrong, case by case, most first. */
export function reportAdviceMisses(judgements: readonly AdviceJudgement[], most: number, width: number): string {
  const misses = judgements.filter((one) => gravity(one) > 0).toSorted((a, b) => gravity(b) - gravity(a));
  const shown = misses.slice(0, most).map((miss) => describe(miss, width));
  const title = `MISSES OF CAUSES, RED FLAGS, TESTS (${misses.length}${shown.length < misses.length ? `, the worst ${shown.length} shown` : ''})`;
  return [title, ...shown].join('\n\n');
}

/** A red flag that was not raised weighs more than anything else. Judged. */
function gravity({ cause, flags, undecided, tests, needless }: AdviceJudgement): number {
  const wrongCause = cause !== null && (cause.rank === null || cause.rank > 3) ? 3 : 0;
  const falseAlarm = flags !== null && flags.expected === 0 && flags.extra.length > 0 ? 2 : 0;
  return (
    10 * (flags?.missed.length ?? 0) +
    wrongCause +
    falseAlarm +
    (undecided?.missed.length ?? 0) +
    (tests?.missed.length ?? 0) +
    (needless?.length ?? 0)
  );
}

function describe(
  { evaluated, answer, cause, flags, undecided, tests, needless }: AdviceJudgement,
  width: number,
): string {
  const row = (label: string, keys: readonly string[] = []): readonly string[] =>
    keys.length === 0 ? [] : [wrap(keys.join(', '), width, ' '.repeat(18), `  ${label.padEnd(16)}`)];
  const isWrong = cause !== null && (cause.rank === null || cause.rank > 3);
  const given = answer.causes.slice(0, 5).map(({ key, probability }) => `${key} ${probability.toFixed(2)}`);
  const site = answer.localisations[0];
  return [
    `${evaluated.name}, ${evaluated.file}:${evaluated.line}`,
    ...(isWrong ? [...row('cause', evaluated.expect.advice.causes), ...row('answered', given)] : []),
    ...(isWrong && site !== undefined
      ? row('at', [`${site.site} ${site.probability.toFixed(2)}`, answer.conclusion])
      : []),
    ...row('not raised', flags?.missed),
    ...(flags !== null && flags.expected === 0 ? row('false alarm', flags.extra) : []),
    ...row('not undecided', undecided?.missed),
    ...row('not proposed', tests?.missed),
    ...row('needless', needless ?? []),
  ].join('\n');
}
