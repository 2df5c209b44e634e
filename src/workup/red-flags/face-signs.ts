/** What tells that the face was looked at: whether it moves, and whether the forehead does. */
export const faceSigns = [
  'cranial-nerves/facial-weakness',
  'cranial-nerves/lower-facial-weakness',
  'cranial-nerves/upper-facial-weakness',
] as const;
