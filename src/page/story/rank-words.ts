/** A cause as an answer lists it. */
export interface Ranked {
  readonly key: string;
  readonly label: string;
}

export function ordinal(rank: number): string {
  const tens = rank % 100;
  const ending = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][rank % 10] ?? 'th');
  return `${rank}${ending}`;
}

/** How the first of a list stood in the list before: "(was 3rd)", "(as before)"; empty where there was no list before. */
export function changeOfFirst(now: readonly Ranked[], before: readonly Ranked[] | undefined): string {
  const [first] = now;
  if (first === undefined || before === undefined || before.length === 0) return '';
  const rank = before.findIndex(({ key }) => key === first.key) + 1;
  if (rank === 0) return '(not listed before)';
  return rank === 1 ? '(as before)' : `(was ${ordinal(rank)})`;
}
