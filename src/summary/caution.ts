/** The caution that goes with every answer. */
export const caution =
  'Decision support for trained clinicians, not a diagnosis: local protocols and licensed practice come first, and an ' +
  'emergency is handled as one without waiting for this answer.';
