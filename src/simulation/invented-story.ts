import type { SiteKind } from '../anatomy/site-kind.ts';
import { conditions } from '../exam/catalogue/conditions.ts';
import { symptoms } from '../exam/catalogue/symptoms.ts';
import { type Course, courses, type OnsetPace } from '../exam/exam.ts';
import { type Chance, pick } from '../kernel/chance.ts';
import type { Site } from '../localisation/hypothesis.ts';
import { historyWeightRows } from '../localisation/inference/history-weights.ts';

/** Share of complaints that begin at each pace. Judged. */
export const paceShares: Readonly<Record<OnsetPace, number>> = {
  hyperacute: 0.15,
  acute: 0.25,
  subacute: 0.25,
  chronic: 0.35,
};

/** Least and greatest days from onset to the first examination; between them each order of size is as common. Judged. */
const durations: Readonly<Record<OnsetPace, readonly [number, number]>> = {
  hyperacute: [1, 20],
  acute: [2, 60],
  subacute: [21, 200],
  chronic: [120, 2500],
};

/** How often each course is told, in the order of `courses`. Judged. */
const courseShares: Readonly<Record<OnsetPace, readonly number[]>> = {
  hyperacute: [1, 4, 5, 0, 0, 1],
  acute: [4, 3, 4, 0.3, 0, 2],
  subacute: [6, 2, 2, 1, 0.3, 1],
  chronic: [7, 3, 0.5, 0.5, 0.5, 0],
};

/** Trouble of the junction varies through the day, whatever its pace. */
const fluctuating: ReadonlySet<SiteKind> = new Set(['junction']);
const fluctuates = 0.7;

export function drawPace(chance: Chance): OnsetPace {
  return (Object.keys(paceShares) as OnsetPace[])[pick(Object.values(paceShares), chance.next())] ?? 'chronic';
}

export function drawDuration(pace: OnsetPace, chance: Chance): number {
  const [least, most] = durations[pace];
  return Math.round(least * (most / least) ** chance.next());
}

export function drawCourse(pace: OnsetPace, { kind }: Site, chance: Chance): Course {
  if (fluctuating.has(kind) && chance.isSo(fluctuates)) return 'fluctuating';
  return courses[pick(courseShares[pace], chance.next())] ?? 'static';
}

/** Statements about what has nothing to do with the lesion, and how often each is so. Judged. */
const askedOfEverybody = [
  { list: 'symptoms', key: 'fever', share: 0.03 },
  { list: 'symptoms', key: 'weight-loss', share: 0.05 },
  { list: 'symptoms', key: 'bladder-disturbance', share: 0.05 },
  { list: 'conditions', key: 'diabetes-mellitus', share: 0.12 },
  { list: 'conditions', key: 'hypertension', share: 0.3 },
  { list: 'conditions', key: 'cancer', share: 0.06 },
  { list: 'exposures', key: 'alcohol-excess', share: 0.08 },
  { list: 'exposures', key: 'trauma', share: 0.05 },
  { list: 'family', key: 'similar-disorder', share: 0.04 },
] as const;
const asked = 0.7;

/** Statements about the lesion that one story holds at most. */
const toldAtMost = 5;
const told = 0.6;

export interface Statement {
  readonly key: string;
  readonly present: boolean;
}
export type StoryLists = Readonly<Partial<Record<(typeof askedOfEverybody)[number]['list'], readonly Statement[]>>>;

/**
 * What is told of complaints and illnesses. What belongs to a site is drawn as often as the engine's own weights of the
 * history say: a statement whose presence multiplies the odds of the site by p and whose denial by n is made by a share
 * p (1 - n) / (p - n) of those who have the lesion, since p is that share over the one in others, and n the same of denials.
 */
export function drawStory(site: Site, chance: Chance): StoryLists {
  const lists: Partial<Record<keyof StoryLists, Statement[]>> = {};
  const seen = new Set<string>();
  const state = (list: keyof StoryLists, key: string, share: number): void => {
    if (seen.has(key)) return;
    seen.add(key);
    const statements = lists[list] ?? [];
    statements.push({ key, present: chance.isSo(share) });
    lists[list] = statements;
  };
  let count = 0;
  for (const { key, applies, present, denied } of historyWeightRows) {
    const list = listOf.get(key);
    if (list === undefined || count === toldAtMost || present <= 1 || denied >= 1 || !applies(site)) continue;
    if (!chance.isSo(told)) continue;
    count += 1;
    state(list, key, (present * (1 - denied)) / (present - denied));
  }
  for (const { list, key, share } of askedOfEverybody) if (chance.isSo(asked)) state(list, key, share);
  return lists;
}

/** The list of the history in which a key of the weights is stated. */
const listOf: ReadonlyMap<string, 'symptoms' | 'conditions'> = new Map([
  ...symptoms.map(({ key }) => [key, 'symptoms'] as const),
  ...conditions.map(({ key }) => [key, 'conditions'] as const),
]);
