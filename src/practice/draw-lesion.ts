import type { OnsetPace } from '../exam/exam.ts';
import { type Chance, pick } from '../kernel/chance.ts';
import { hypotheses } from '../localisation/hypotheses/hypotheses.ts';
import { siteId } from '../localisation/hypothesis.ts';
import { softmax } from '../localisation/inference/score.ts';
import { unexamined } from '../simulation/unexamined.ts';
import { type Difficulty, difficulties } from './difficulty.ts';
import { type NeuraxisPart, neuraxisPartKeys, neuraxisParts, partOfKind } from './neuraxis-parts.ts';
import type { PracticeModel } from './practice-model.ts';

/** The hypotheses of every part, by site. */
const sitesOfPart: ReadonlyMap<NeuraxisPart, readonly (readonly number[])[]> = new Map(
  neuraxisPartKeys.map((part) => {
    const sites = new Map<string, number[]>();
    hypotheses.forEach(({ site }, index) => {
      if (partOfKind(site.kind) !== part) return;
      const members = sites.get(siteId(site));
      if (members === undefined) sites.set(siteId(site), [index]);
      else members.push(index);
    });
    return [part, [...sites.values()]] as const;
  }),
);

export interface LesionWish {
  readonly difficulty: Difficulty;
  /** Any part where none is named. */
  readonly part?: NeuraxisPart;
}

/** The part that was asked for, or one by the shares of the table. */
export function drawPart({ difficulty, part }: LesionWish, chance: Chance): NeuraxisPart {
  if (part !== undefined) return part;
  const { maybeHealthy } = difficulties[difficulty];
  const parts = neuraxisPartKeys.filter((key) => maybeHealthy || key !== 'none');
  const shares = parts.map((key) => neuraxisParts[key].share);
  return parts[pick(shares, chance.next())] ?? 'none';
}

/**
 * A lesion of one part: the site by how often the engine expects it in this person, evened out as the difficulty has it;
 * then its extent by how often that is met.
 * @returns index among the hypotheses
 */
export function drawLesion(
  { priors }: PracticeModel,
  part: NeuraxisPart,
  difficulty: Difficulty,
  person: { readonly ageYears: number; readonly pace: OnsetPace },
  chance: Chance,
): number {
  const weights = softmax(priors.logWeights(unexamined(person)));
  const sites = sitesOfPart.get(part) ?? [];
  const { evenness } = difficulties[difficulty];
  const ofSite = sites.map((members) => members.reduce((sum, index) => sum + (weights[index] ?? 0), 0) ** evenness);
  const members = sites[pick(ofSite, chance.next())] ?? [];
  const own = members.map((index) => weights[index] ?? 0);
  return members[pick(own, chance.next())] ?? 0;
}
