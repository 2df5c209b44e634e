import { causesAt, type Place } from '../../causes/causes-at.ts';
import { type ExamQuery, queryExam } from '../../causes/exam-query.ts';
import type { Reason } from '../../causes/ranked-cause.ts';
import { allCauses } from '../../causes/table/all-causes.ts';
import type { Cause } from '../../causes/table/cause.ts';
import { weighStory } from '../../causes/weigh-cause.ts';
import { lowerFirst } from '../../exam/describe.ts';
import type { Exam } from '../../exam/exam.ts';
import { hypotheses } from '../hypotheses/hypotheses.ts';
import { severalNerves } from '../hypotheses/process-signs.ts';
import type { Site } from '../hypothesis.ts';
import type { Applies, Shift } from './shift.ts';

/** No story decides alone: the odds of a place become so many times larger or smaller at most. Judged. */
const most = 100;

/** A shift nearer to 1 than this is left out. */
const leastLog = 0.02;

interface KnownPlace {
  readonly place: Place;
  readonly applies: Applies;
}

let known: readonly KnownPlace[] | undefined;

/** Every place that a hypothesis has and of which the tables know causes. */
function knownPlaces(): readonly KnownPlace[] {
  if (known !== undefined) return known;
  const sites = [severalNerves, ...hypotheses.map(({ site }) => site)];
  known = [...new Map(sites.map((site) => [`${site.key} ${site.kind} ${site.level}`, site])).values()]
    .map(({ key, kind, level }) => ({
      place: { site: key, kind, level },
      applies: (site: Site) => site.key === key && site.kind === kind && site.level === level,
    }))
    .filter(({ place }) => causesAt(place).length > 0);
  return known;
}

type Ratios = ReadonlyMap<Cause, number>;

/**
 * A place is as likely as the diseases that strike there are likely in this person: its odds shift by the mean of the ratios
 * that person, history and results give them, by how often each is met there.
 */
export function causeShifts(exam: Exam): readonly Shift[] {
  const query = queryExam(exam);
  const ratios: Ratios = new Map(allCauses.map((cause) => [cause, weighStory(cause, query).ratio]));
  return knownPlaces().flatMap(({ place, applies }): readonly Shift[] => {
    const causes = causesAt(place);
    let total = 0;
    let fitting = 0;
    for (const [cause, share] of causes) {
      total += share;
      fitting += share * (ratios.get(cause) ?? 1);
    }
    const factor = Math.min(most, Math.max(1 / most, fitting / total));
    if (Math.abs(Math.log(factor)) < leastLog) return [];
    return [new CauseShift(applies, factor, causes, ratios, query)];
  });
}

/** The cause that moves the odds of the place most speaks for it or against it, with its strongest reason; put into words only where it is said. */
class CauseShift implements Shift {
  readonly applies: Applies;
  readonly factor: number;
  readonly abnormal: boolean;
  readonly #causes: ReturnType<typeof causesAt>;
  readonly #ratios: Ratios;
  readonly #query: ExamQuery;

  constructor(applies: Applies, factor: number, causes: ReturnType<typeof causesAt>, ratios: Ratios, query: ExamQuery) {
    this.applies = applies;
    this.factor = factor;
    this.abnormal = factor >= 1;
    this.#causes = causes;
    this.#ratios = ratios;
    this.#query = query;
  }

  get #leading(): Cause {
    const direction = this.abnormal ? 1 : -1;
    const weight = ([cause, share]: readonly [Cause, number]): number =>
      direction * share * ((this.#ratios.get(cause) ?? 1) - 1);
    return this.#causes.reduce((best, one) => (weight(one) > weight(best) ? one : best))[0];
  }

  get #reason(): Reason | undefined {
    const { supporting, against } = weighStory(this.#leading, this.#query).reasons();
    return (this.abnormal ? supporting : against)[0];
  }

  get text(): string {
    return this.#reason?.text ?? 'the story as a whole';
  }

  get pointer(): string {
    return this.#reason?.pointer ?? (this.#query.exam.history.length > 0 ? '/history' : '');
  }

  get because(): string {
    return `it speaks ${this.abnormal ? 'for' : 'against'} ${lowerFirst(this.#leading.label)}, which is met there`;
  }

  get id(): string {
    return `causes/${this.#leading.key}`;
  }
}
