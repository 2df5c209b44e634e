import { type Figures, figuresOf, groupBy } from './figures.ts';
import { type FlagFigures, flagFiguresOf } from './flag-figures.ts';
import type { Judgement } from './judge.ts';
import { type AdviceFigures, type AdviceJudgement, adviceFiguresOf } from './judge-advice.ts';
import type { Sequential } from './sequential.ts';
import type { Simulation } from './simulate.ts';

/** Everything that was measured, for programs: the content of the file that `--json` names. */
export interface Results {
  readonly modelVersion: string;
  readonly seed: number;
  readonly all: Figures;
  /** Causes, red flags and tests; absent when no case fixes any. */
  readonly advice?: AdviceFigures;
  /** Red flags by key; absent when no case fixes any. */
  readonly redFlags?: readonly FlagFigures[];
  readonly byFile: Readonly<Record<string, Figures>>;
  readonly byKind: Readonly<Record<string, Figures>>;
  /** Case by case; absent when only figures are wanted. */
  readonly cases?: readonly CaseResult[];
  readonly simulated?: { readonly figures: Figures; readonly levelInRange: Simulation['levelInRange'] };
  readonly sequential?: Sequential;
}

interface CaseResult {
  readonly name: string;
  readonly file: string;
  readonly line: number;
  readonly expected: Judgement['evaluated']['expect'];
  readonly rank: number | null;
  readonly side: boolean | null;
  readonly level: boolean | null;
  readonly conclusion: boolean | null;
  readonly isRight: boolean;
  readonly accepted: number;
  readonly brier: number;
  readonly isSureAndWrong: boolean;
  readonly answered: {
    readonly conclusion: string;
    readonly localisations: readonly {
      readonly site: string;
      readonly side: string | null;
      readonly level: string | null;
      readonly probability: number;
      readonly fit: number;
    }[];
  };
}

export interface Measured {
  readonly judgements: readonly Judgement[];
  readonly advice: readonly AdviceJudgement[];
  readonly simulation: Simulation | null;
  readonly sequential: Sequential | null;
}

export function resultsOf(
  { judgements, advice, simulation, sequential }: Measured,
  options: { readonly seed: number; readonly onlyFigures: boolean; readonly modelVersion: string },
): Results {
  const figures = (groups: ReadonlyMap<string, readonly Judgement[]>): Record<string, Figures> =>
    Object.fromEntries([...groups].map(([name, own]) => [name, figuresOf(own)]));
  return {
    modelVersion: options.modelVersion,
    seed: options.seed,
    all: figuresOf(judgements),
    ...(advice.length === 0 ? {} : { advice: adviceFiguresOf(advice) }),
    ...(advice.some(({ flags }) => flags !== null) ? { redFlags: flagFiguresOf(advice) } : {}),
    byFile: figures(groupBy(judgements, ({ evaluated }) => evaluated.file)),
    byKind: figures(groupBy(judgements, ({ evaluated }) => evaluated.kind)),
    ...(options.onlyFigures ? {} : { cases: judgements.map(caseResult) }),
    ...(simulation === null
      ? {}
      : { simulated: { figures: figuresOf(simulation.judgements), levelInRange: simulation.levelInRange } }),
    ...(sequential === null ? {} : { sequential }),
  };
}

function caseResult({ evaluated, answer, ...judged }: Judgement): CaseResult {
  const { rank, side, level, conclusion, isRight, accepted, brier, isSureAndWrong } = judged;
  return {
    name: evaluated.name,
    file: evaluated.file,
    line: evaluated.line,
    expected: evaluated.expect,
    rank,
    side,
    level,
    conclusion,
    isRight,
    accepted,
    brier,
    isSureAndWrong,
    answered: {
      conclusion: answer.conclusion,
      localisations: answer.localisations.map((one) => ({
        site: one.site,
        side: one.side,
        level: one.level,
        probability: one.probability,
        fit: one.fit,
      })),
    },
  };
}
