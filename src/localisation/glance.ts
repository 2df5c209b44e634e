import type { Exam } from '../exam/exam.ts';
import { type Engine, nextOf, weigh } from './engine.ts';
import { round } from './explanation/explain.ts';
import { hypotheses } from './hypotheses/hypotheses.ts';
import type { Site } from './hypothesis.ts';
import type { NextExamination } from './localisation.ts';

/** The short form of a localisation. */
export interface Glance {
  /** The likeliest single site; of a site of the cord at its likeliest level. */
  readonly leading: { readonly site: Site; readonly probability: number };
  readonly nextExamination: readonly NextExamination[];
}

/** The leading site and what to examine next, without the reasons that make most of the work. */
export function glance(exam: Exam, engine: Engine): Glance {
  const weighed = weigh(exam, engine);
  const { inference, weights } = weighed;
  const [first] = inference.groups;
  if (first === undefined) throw new RangeError('there is always a hypothesis');
  const level = weights.level(first.group)?.level ?? null;
  const sites = weights.within(first.group).flatMap(({ index }) => hypotheses[index]?.site ?? []);
  const site = sites.find((one) => level === null || one.level === level) ?? sites[0];
  if (site === undefined) throw new RangeError('there is always a hypothesis');
  return {
    leading: { site, probability: round(first.probability) },
    nextExamination: nextOf(exam, weighed, engine),
  };
}
