/** The caution that goes with every answer. */
export const caution =
  'Decision support for trained clinicians, not a diagnosis: local protocols and licensed practice come first, and an ' +
  'emergency is handled as one without waiting for this answer.';

/** Age in years from which the priors, causes and normal findings of the model hold. */
const adultFrom = 18;

/** The caution for one person: children are not small adults, and the model knows adults only. */
export function cautionFor(ageYears: number | undefined): string {
  return ageYears === undefined || ageYears >= adultFrom
    ? caution
    : `${caution} The model was made for adults: for a person under ${adultFrom} its causes and probabilities may mislead.`;
}
