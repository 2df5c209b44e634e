import type { Reason } from '../../causes/ranked-cause.ts';
import { isBodySide } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** A limb of one side that is told to be weak, clumsy or numb, or lost words: half a brain, before anybody has examined. */
export function oneSidedComplaints(facts: BedsideFacts): readonly Reason[] {
  const limbs = ['arm-weakness', 'leg-weakness', 'clumsiness', 'numbness'].filter((key) => isToldOfOneSide(facts, key));
  return facts.told(...limbs, 'speech-difficulty');
}

/** What is told of these, but for what is told of both sides: a brain that loses an artery fails on one. */
export function notOfBothSides({ query, told }: BedsideFacts, ...keys: readonly string[]): readonly Reason[] {
  return told(...keys.filter((key) => query.history(key)?.side !== 'both'));
}

/** Whether this was told of the left or of the right alone. */
export const isToldOfOneSide = ({ query }: BedsideFacts, key: string): boolean => isBodySide(query.history(key)?.side);

/** Weakness of which nobody names a limb, but a side. */
export function weaknessOfOneSide(facts: BedsideFacts): readonly Reason[] {
  return isToldOfOneSide(facts, 'weakness') ? facts.told('weakness') : [];
}
