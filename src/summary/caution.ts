/** The caution that goes with every answer. */
export const caution =
  'Decision support for trained clinicians, not a diagnosis. It sees only what was entered. Local protocols and the ' +
  'judgement of a licensed practitioner come first; an emergency is handled as an emergency, without waiting for this answer.';
