/** Sites of the two large plexuses, the whole and its parts. */
export const brachialPlexusSites = [
  'brachial-plexus',
  'upper-trunk',
  'middle-trunk',
  'lower-trunk',
  'lateral-cord',
  'posterior-cord',
  'medial-cord',
] as const;

export const lumbosacralPlexusSites = [
  'lumbosacral-plexus',
  'lumbar-plexus',
  'sacral-plexus',
  'lumbosacral-trunk',
] as const;
