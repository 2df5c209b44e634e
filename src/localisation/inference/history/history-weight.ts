import { isSegment, type Segment, segmentIndex } from '../../../anatomy/segments.ts';
import type { SiteKind } from '../../../anatomy/site-kind.ts';
import { fromMemory, type Source } from '../../../kernel/cite.ts';
import type { Applies } from '../shift.ts';

/** How a statement of the history shifts the odds of sites: factor when present, and when denied. */
export interface HistoryWeight {
  /** Key of the catalogue; of the family history, `family/...`. */
  readonly key: string;
  readonly applies: Applies;
  readonly present: number;
  readonly denied: number;
  /** A clause that completes "... because ...". */
  readonly because: string;
  readonly source: Source;
}

/** All judged, and kept small on purpose: the examination decides. */
export const weigh = (
  keys: string | readonly string[],
  applies: Applies,
  present: number,
  denied: number,
  because: string,
): readonly HistoryWeight[] =>
  [keys].flat().map((key) => ({ key, applies, present, denied, because, source: fromMemory }));

const ofKinds = new Map<string, Applies>();
const ofKeys = new Map<string, Applies>();

/** The same list gives the same rule, wherever it is written, so that what it applies to is worked out once. */
function ruleOf(
  known: Map<string, Applies>,
  list: readonly string[],
  rule: (set: ReadonlySet<string>) => Applies,
): Applies {
  const name = list.join(' ');
  const found = known.get(name) ?? rule(new Set(list));
  known.set(name, found);
  return found;
}

export const kinds = (...list: readonly SiteKind[]): Applies =>
  ruleOf(
    ofKinds,
    list,
    (set) =>
      ({ kind }) =>
        set.has(kind),
  );

export const sites = (...list: readonly string[]): Applies =>
  ruleOf(
    ofKeys,
    list,
    (set) =>
      ({ key }) =>
        set.has(key),
  );

export const anyOf =
  (...list: readonly Applies[]): Applies =>
  (site) =>
    list.some((applies) => applies(site));

const between = (level: Segment | null, top: Segment, bottom: Segment): boolean =>
  level !== null &&
  isSegment(level) &&
  segmentIndex(level) >= segmentIndex(top) &&
  segmentIndex(level) <= segmentIndex(bottom);

export const lumbarRoots: Applies = (site) =>
  (site.kind === 'root' && between(site.level, 'L1', 'S3')) || site.kind === 'cauda-equina';
export const cervicalRoots: Applies = (site) => site.kind === 'root' && between(site.level, 'C3', 'T1');
export const thoracicRoots: Applies = (site) => site.kind === 'root' && between(site.level, 'T2', 'T12');
export const cervicalCord: Applies = (site) => site.kind === 'cord' && between(site.level, 'C1', 'C8');
export const thoracicCord: Applies = (site) => site.kind === 'cord' && between(site.level, 'T1', 'L1');

/** What cannot see in either half of the field. */
export const bothOccipitalLobes: Applies = ({ key, side }) => key === 'cortex-occipital' && side === 'both';

/** The parts of the cerebellum that poisons, hunger and genes waste first. */
export const wastingCerebellum = sites('cerebellar-degeneration', 'cerebellar-vermis', 'flocculonodular-lobe');

/** Both labyrinths or vestibular nerves at once. */
export const bothLabyrinths: Applies = ({ key, side }) => key === 'vestibular-nerve' && side === 'both';
