import type { HistoryStatement } from './exam.ts';

type ToldSide = NonNullable<HistoryStatement['side']>;

/** Nouns of which a person has two, in one and in many, as labels of the history name them. */
const pairs: readonly (readonly [one: string, many: string])[] = [
  ['arm', 'arms'],
  ['leg', 'legs'],
  ['hand', 'hands'],
  ['foot', 'feet'],
  ['thigh', 'thighs'],
  ['eye', 'eyes'],
  ['ear', 'ears'],
  ['eyelid', 'eyelids'],
];

/**
 * The label of what is told, with its side: "Weakness of the arms" on the right is "Weakness of the right arm", "Clumsy hands"
 * "Clumsy right hand", and what names no part of which there are two, as numbness, is "on the right" or "on both sides".
 */
export function sidedLabel(label: string, side: ToldSide): string {
  if (label.includes(' both ')) return label;
  for (const [one, many] of pairs) {
    const inPhrase = new RegExp(`\\b(of|in|behind|around) (?:the|one|an?) (?:${many}|${one})\\b`);
    if (inPhrase.test(label))
      return label.replace(inPhrase, side === 'both' ? `$1 both ${many}` : `$1 the ${side} ${one}`);
    const described = new RegExp(`^([A-Z][a-z]+(?: or [a-z]+)?) (?:${many}|${one})$`);
    if (described.test(label) && !/ pain$/.test(label))
      return side === 'both' ? label.replace(described, `$1 ${many}`) : label.replace(described, `$1 ${side} ${one}`);
  }
  return `${label} on ${side === 'both' ? 'both sides' : `the ${side}`}`;
}
