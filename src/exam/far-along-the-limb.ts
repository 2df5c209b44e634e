/** Keys of movements below elbow or knee; those above are of roots and motor cells as often as of a nerve. */
export const farMovement =
  /^(wrist|finger|thumb|index-finger|middle-finger|little-finger|metacarpophalangeal|ankle|great-toe|toe)-/;

/** Keys of tests over a nerve of the hand where it is pressed, which it answers. */
export const overNervesOfTheHand: readonly string[] = [
  ...['tinel-elbow', 'elbow-flexion-test', 'tinel-wrist', 'phalen', 'carpal-compression', 'tinel-ulnar-wrist'],
];
