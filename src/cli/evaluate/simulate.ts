import { isSegment, segmentIndex } from '../../anatomy/segments.ts';
import { type Site, siteId } from '../../localisation/hypothesis.ts';
import { columnName } from '../../localisation/inference/columns.ts';
import type { RankedLocalisation } from '../../localisation/localisation.ts';
import type { Localiser } from '../../localisation/localise.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';
import { partOf } from '../../simulation/body-part.ts';
import { everything, routine } from '../simulated/routine.ts';
import { SimulatedPatient, type SimulationModel } from '../simulated/simulated-patient.ts';
import type { Expectation } from './evaluation-case.ts';
import { type Share, share } from './figures.ts';
import { type Judgement, judge } from './judge.ts';

export interface Simulation {
  readonly judgements: readonly Judgement[];
  /** Of the cord sites named first and rightly, those whose level lies in the stated range, which is meant to hold 0.8. */
  readonly levelInRange: Share;
  /** Items of each examination. */
  readonly items: readonly number[];
}

/** Judges the localiser on examinations that are drawn from its own model. */
export function simulate(model: SimulationModel, localiser: Localiser, count: number, seed: number): Simulation {
  const runs = Array.from({ length: count }, (_, index) => {
    const patient = new SimulatedPatient(model, seed, index + 1);
    const exam = patient.examOf(examined(patient).flatMap((target) => patient.find(target) ?? []));
    const { site } = patient.lesion;
    const evaluated = {
      name: `${index + 1} ${siteId(site)}`,
      expect: expectationOf(site),
      exam,
      file: 'simulated',
      line: index + 1,
    };
    const judgement = judge(evaluated, localiser.localise(exam));
    return { judgement, isInRange: holdsLevel(judgement, site), items: exam.findings.length };
  });
  return {
    judgements: runs.map(({ judgement }) => judgement),
    levelInRange: share(runs.map(({ isInRange }) => isInRange)),
    items: runs.map(({ items }) => items),
  };
}

/** The very site; the level of a cord lesion is a range within one answer, every root is an answer of its own. */
function expectationOf({ key, side, level, kind }: Site): Expectation {
  return {
    sites: [key],
    sides: [side],
    levelWithin: 0,
    advice: {},
    ...(kind === 'cord' || level === null ? {} : { levels: [level] }),
  };
}

/** Whether an answer is the very site. */
export function namesSite(answer: RankedLocalisation, site: Site): boolean {
  return answer.site === site.key && answer.side === site.side && (site.kind === 'cord' || answer.level === site.level);
}

function holdsLevel({ isRight, answer }: Judgement, { kind, level }: Site): boolean | null {
  const range = answer.localisations[0]?.levelRange ?? null;
  if (!isRight || kind !== 'cord' || level === null || range === null) return null;
  const [top, bottom] = range.map((one) => (isSegment(one) ? segmentIndex(one) : 0));
  return segmentIndex(level) >= (top ?? 0) && segmentIndex(level) <= (bottom ?? 0);
}

/** Least and greatest share of the routine that is done: a short report leaves out most of it. Judged. */
const leastThorough = 0.1;
const mostThorough = 0.9;
/** An item is in trouble from this much above health on; the part of the body is then gone into, and the sign strikes the eye. */
const troubled = 0.4;
/** Further items of the troubled parts, and striking signs, that are noted by the most thorough. Judged. */
const goneInto = 24;
const noted = 8;

/**
 * What is examined: a part of the routine, some of what else can be examined where the trouble is, and some of the signs that
 * strike the eye. Whether an item is done does not depend on what is found.
 */
function examined(patient: SimulatedPatient): readonly ProbeTarget[] {
  const { chance } = patient;
  const thoroughness = leastThorough + (mostThorough - leastThorough) * chance.next();
  const some = (from: readonly ProbeTarget[], most: number): readonly ProbeTarget[] =>
    from.filter(() => chance.isSo((most * thoroughness) / from.length));
  const striking = patient.isHealthy ? [] : everything.filter((target) => patient.trouble(target) >= troubled);
  const parts = new Set(striking.map(partOf));
  const chosen = [
    ...routine.filter(() => chance.isSo(thoroughness)),
    ...some(
      everything.filter((target) => parts.has(partOf(target))),
      goneInto,
    ),
    ...some(striking, noted),
  ];
  return [...new Map(chosen.map((target) => [columnName(target), target])).values()];
}
