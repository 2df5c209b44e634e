import type { Reason } from '../../causes/ranked-cause.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** A limb of one side that is told to be weak, clumsy or numb, or lost words: half a brain, before anybody has examined. */
export function oneSidedComplaints({ query, told }: BedsideFacts): readonly Reason[] {
  const isOfOneSide = (key: string) => ['left', 'right'].includes(query.history(key)?.side ?? '');
  const limbs = ['arm-weakness', 'leg-weakness', 'clumsiness', 'numbness'].filter(isOfOneSide);
  return told(...limbs, 'speech-difficulty');
}

/** What is told of these, but for what is told of both sides: a brain that loses an artery fails on one. */
export function notOfBothSides({ query, told }: BedsideFacts, ...keys: readonly string[]): readonly Reason[] {
  return told(...keys.filter((key) => query.history(key)?.side !== 'both'));
}

/** Weakness of which nobody names a limb, but a side. */
export function weaknessOfOneSide({ query, told }: BedsideFacts): readonly Reason[] {
  const side = query.history('weakness')?.side;
  return side === 'left' || side === 'right' ? told('weakness') : [];
}
