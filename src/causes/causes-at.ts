import { isSegment, segmentIndex } from '../anatomy/segments.ts';
import type { SiteKind } from '../anatomy/site-kind.ts';
import { allCauses } from './table/all-causes.ts';
import { type Cause, type Produces, rateShares, type SpinalRegion } from './table/cause.ts';

/** A site as far as its causes go. */
export interface Place {
  /** Key of the site. */
  readonly site: string;
  readonly kind: SiteKind;
  /** Segment of a root or of the cord. */
  readonly level: string | null;
}

const knownPlaces = new Map<string, readonly (readonly [Cause, number])[]>();

/** The causes met at a site with their shares; the same for every exam, so worked out once. */
export function causesAt(place: Place): readonly (readonly [Cause, number])[] {
  const key = `${place.site} ${place.kind} ${place.level}`;
  const known = knownPlaces.get(key);
  if (known !== undefined) return known;
  const shares = allCauses.map((cause) => [cause, shareAt(cause, place)] as const).filter(([, share]) => share > 0);
  knownPlaces.set(key, shares);
  return shares;
}

/** A row that names the segment outranks one that names the site, and that a row that names its kind; of equals the larger share counts. */
function shareAt(cause: Cause, site: Place): number {
  const fitting = cause.produces.filter((row) => affects(row, site));
  const exact = fitting.filter((row) => row.level !== undefined);
  const named = fitting.filter((row) => row.sites !== undefined);
  const rows = exact.length > 0 ? exact : named.length > 0 ? named : fitting;
  return rows.reduce((most, row) => Math.max(most, rateShares[row.rate]), 0);
}

function affects(row: Produces, site: Place): boolean {
  const placed = row.sites?.includes(site.site) ?? row.kinds?.includes(site.kind) ?? false;
  return (
    placed &&
    (row.level ?? site.level) === site.level &&
    (row.region ?? spinalRegion(site.level)) === spinalRegion(site.level)
  );
}

/** Region of a segment: C1 to T1 cervical (the spine's neck supplies the arm), T2 to T12 thoracic, below that lumbosacral. */
export function spinalRegion(level: string | null): SpinalRegion | null {
  if (level === null || !isSegment(level)) return null;
  const index = segmentIndex(level);
  if (index <= segmentIndex('T1')) return 'cervical';
  return index <= segmentIndex('T12') ? 'thoracic' : 'lumbosacral';
}
