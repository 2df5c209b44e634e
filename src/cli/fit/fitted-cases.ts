import { fittedCauseOdds } from '../../causes/table/fitted-cause-odds.ts';
import { scoreCauses } from '../../differential/rank-causes.ts';
import { createEngine, type Engine, weigh } from '../../localisation/engine.ts';
import { fittedSiteOdds } from '../../localisation/hypotheses/fitted-site-odds.ts';
import { hypotheses } from '../../localisation/hypotheses/hypotheses.ts';
import { sentFor } from '../../localisation/inference/prior.ts';
import type { Localiser } from '../../localisation/localise.ts';
import type { EvaluationCase } from '../evaluate/evaluation-case.ts';
import type { FittedCase } from './fit-log-odds.ts';

/** From this probability of several sites at once, a case says little about the odds of single ones. Judged. */
const mostlySeveral = 0.5;

/**
 * Every case that expects a site, with the sites as answers: each weighs the sum of its hypotheses without the odds fitted
 * before. Cases that are taken for several sites at once are left out.
 */
export function siteCases(cases: readonly EvaluationCase[]): readonly FittedCase[] {
  const engine = createEngine(null);
  return cases.flatMap((one) => {
    const { sites } = one.expect;
    return sites.length === 0 ? [] : siteCase(one, new Set(sites), engine);
  });
}

function siteCase(one: EvaluationCase, expected: ReadonlySet<string>, engine: Engine): readonly FittedCase[] {
  const { inference } = weigh(one.exam, engine);
  const several = inference.combinations.reduce((sum, { probability }) => sum + probability, 0);
  if (several > mostlySeveral) return [];
  const { score } = inference.scored;
  const best = score.reduce((most, value) => Math.max(most, value));
  const sums = new Map<string, number>();
  hypotheses.forEach(({ site: { key } }, index) => {
    sums.set(key, (sums.get(key) ?? 0) + Math.exp((score[index] ?? 0) - best));
  });
  const answers = [...sums].map(([key, sum]) => ({
    key,
    log: Math.log(sum) - sentFor * Math.log(fittedSiteOdds[key] ?? 1),
    isRight: expected.has(key),
  }));
  return [answers];
}

/** Every case that expects a cause, with the causes that are considered at its sites as answers, without the odds fitted before. */
export function causeCases(cases: readonly EvaluationCase[], localiser: Localiser): readonly FittedCase[] {
  return cases.flatMap((one) => {
    const expected = new Set(one.expect.advice.causes ?? []);
    if (expected.size === 0) return [];
    const { scores } = scoreCauses(one.exam, localiser.localise(one.exam));
    const answers = scores
      .filter(({ score }) => score > 0)
      .map(({ cause: { key }, score }) => ({
        key,
        log: Math.log(score / (fittedCauseOdds[key] ?? 1)),
        isRight: expected.has(key),
      }));
    return answers.length === 0 ? [] : [answers];
  });
}
