import type { Site } from '../hypothesis.ts';

/** Which sites a statement or a result speaks for or against. */
export type Applies = (site: Site) => boolean;

/** Something told or measured that shifts the odds of some sites, ready to be weighed and to be said. */
export interface Shift {
  readonly applies: Applies;
  /** Odds factor. */
  readonly factor: number;
  /** A clause that completes "... because ...". */
  readonly because: string;
  /** JSON Pointer in the request. */
  readonly pointer: string;
  readonly text: string;
  /** Whether what was told is there, or what was measured is a deviation. */
  readonly abnormal: boolean;
  readonly id: string;
}

/** Odds factors of shifts for a list of sites; which sites a shift applies to is worked out once, for as long as it lives. */
export class SiteFactors {
  private readonly sites: readonly Site[];
  private readonly applying = new WeakMap<Applies, Uint16Array>();

  constructor(sites: readonly Site[]) {
    this.sites = sites;
  }

  /** Factor of each site; null when there is no shift. */
  factors(shifts: readonly Shift[]): Float64Array | null {
    if (shifts.length === 0) return null;
    const factors = new Float64Array(this.sites.length).fill(1);
    for (const { applies, factor } of shifts) {
      for (const index of this.placesOf(applies)) factors[index] = (factors[index] ?? 1) * factor;
    }
    return factors;
  }

  private placesOf(applies: Applies): Uint16Array {
    const known = this.applying.get(applies);
    if (known !== undefined) return known;
    const places = Uint16Array.from(this.sites.flatMap((site, index) => (applies(site) ? [index] : [])));
    this.applying.set(applies, places);
    return places;
  }
}
