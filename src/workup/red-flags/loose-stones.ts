import type { Finding } from '../../exam/finding.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** Keeps what is no sign of an ear with loose stones: eyes that beat on one change of position, where that was tried, are. */
export function notOfLooseStones({ query }: Pick<BedsideFacts, 'query'>): (finding: Finding) => boolean {
  const isPositional = query.abnormal(['special-tests/dix-hallpike', 'special-tests/supine-roll']).length > 0;
  return ({ item }) => !(isPositional && ofLooseStones.has(item.key));
}

const ofLooseStones: ReadonlySet<string> = new Set(['torsional-nystagmus', 'upbeat-nystagmus', 'nystagmus']);
