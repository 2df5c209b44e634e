import { softmax } from '../../localisation/inference/score.ts';

/** One case to learn from: the answers that compete in it. */
export type FittedCase = readonly FittedAnswer[];

export interface FittedAnswer {
  readonly key: string;
  /** Natural log of what the answer weighs without what is fitted; not normalised. */
  readonly log: number;
  readonly isRight: boolean;
}

/** Names under which a key is shifted: its own, and those of groups that shift together. */
export type SharesOf = (key: string) => readonly string[];

const rounds = 400;
/** Further than this below the best, in nats, an answer matters to no case. */
const outOfPlay = 20;

/**
 * Shifts of the log odds of answers that make the right ones likeliest over all cases, held back toward 0.
 *
 * The penalised likelihood is the sum over cases of the log of the probability of the right answers together,
 * less half of `shrinkage` times the sum of the squared shifts: a multinomial logistic regression on intercepts alone with
 * a normal prior of variance 1 / `shrinkage` for each (Agresti, Categorical Data Analysis, chapter on baseline-category
 * logits; from memory). Each round steps every shift by its gradient over a bound of its curvature.
 *
 * @param sharesOf the shifts that add up for an answer; none where its odds stay as they are
 * @returns the shift of each name, in nats; 0 without cases
 */
export function fitLogOdds(
  cases: readonly FittedCase[],
  sharesOf: SharesOf,
  shrinkage: number,
): ReadonlyMap<string, number> {
  const inPlay = cases.flatMap(withinReach);
  const shifts = new Map<string, number>();
  for (const answers of inPlay) for (const { key } of answers) for (const name of sharesOf(key)) shifts.set(name, 0);
  const shiftOf = (key: string): number => sharesOf(key).reduce((sum, name) => sum + (shifts.get(name) ?? 0), 0);
  for (let round = 0; round < rounds; round += 1) {
    const wanted = new Map<string, number>();
    const expected = new Map<string, number>();
    let overlap = 1;
    for (const answers of inPlay) {
      const all = softmax(answers.map(({ key, log }) => log + shiftOf(key)));
      const right = answers.reduce((sum, { isRight }, place) => sum + (isRight ? (all[place] ?? 0) : 0), 0);
      answers.forEach(({ key, isRight }, place) => {
        const probability = all[place] ?? 0;
        const names = sharesOf(key);
        overlap = Math.max(overlap, names.length);
        for (const name of names) {
          add(expected, name, probability);
          if (isRight) add(wanted, name, probability / right);
        }
      });
    }
    for (const [name, shift] of shifts) {
      const gradient = (wanted.get(name) ?? 0) - (expected.get(name) ?? 0) - shrinkage * shift;
      shifts.set(
        name,
        shift + gradient / (overlap * Math.max(wanted.get(name) ?? 0, expected.get(name) ?? 0) + shrinkage),
      );
    }
  }
  return shifts;
}

/** The answers that matter; no case where none of them is right, for no shift within reason would make it so. */
function withinReach(answers: FittedCase): readonly FittedCase[] {
  const best = Math.max(...answers.map(({ log }) => log));
  const near = answers.filter(({ log }) => log > best - outOfPlay);
  return near.some(({ isRight }) => isRight) ? [near] : [];
}

function add(sums: Map<string, number>, name: string, value: number): void {
  sums.set(name, (sums.get(name) ?? 0) + value);
}
