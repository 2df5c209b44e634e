import type { Segment } from '../anatomy/segments.ts';
import type { SiteKind } from '../anatomy/site-kind.ts';
import type { OnsetPace } from '../exam/exam.ts';
import type { BodySide } from '../kernel/side.ts';
import { fittedSiteOdds } from './hypotheses/fitted-site-odds.ts';
import { type Damage, Pathways } from './lesion.ts';
import type { FacultyChances, Process } from './process.ts';
import { noProcess } from './process.ts';

/** A place or process as it is named to the outside; several hypotheses of different extent may share one site. */
export interface Site {
  readonly key: string;
  readonly label: string;
  readonly side: BodySide | 'both' | null;
  readonly level: Segment | null;
  /** Highest and lowest segment of a site that takes several. */
  readonly span?: readonly [Segment, Segment];
  readonly kind: SiteKind;
  /** True for a process over much of the nervous system whose kind also has places. */
  readonly isDiffuse?: boolean;
}

/** A process over much of the nervous system whose kind also has places, as it is named to the outside. */
export function widespreadSite(key: string, label: string, kind: SiteKind): Site {
  return { key, label, side: 'both', level: null, kind, isDiffuse: true };
}

/** One way in which things may stand: what is damaged, how much, and how often that is met. */
export interface Hypothesis {
  readonly site: Site;
  /** Tells hypotheses of one site apart: extent, spread. */
  readonly variant: string;
  readonly damage: Damage;
  /** What the damage leaves of the long pathways. */
  readonly pathways: Pathways;
  readonly process: Process;
  readonly faculties: FacultyChances;
  /**
   * Relative frequency among examinations that find something; not normalised. Judged unless its table says otherwise, then
   * corrected by the odds that were fitted for the site; see `fittedSiteOdds`.
   */
  readonly frequency: number;
  /** How much likelier than others of its kind it is when the trouble came on at this pace; 1 when not given. Judged. */
  readonly paces?: PaceFactors;
  /** At what age it is met, when that is not any age. Judged. */
  readonly ages?: Ages;
  readonly lasting?: Lasting;
}

/** Odds of a form when the trouble has lasted longer than so many years. Judged. */
export interface Lasting {
  readonly years: number;
  readonly beyond: number;
}

/** Years of age at which a form is met, and the odds outside them. */
export interface AgeRange {
  readonly from?: number;
  readonly to?: number;
  readonly outside: number;
}

/** One range, or several of which each counts. */
export type Ages = AgeRange | readonly AgeRange[];

export type PaceFactors = Readonly<Partial<Record<OnsetPace, number>>>;

const noFaculties: FacultyChances = new Map();

export function hypothesis(
  site: Site,
  variant: string,
  frequency: number,
  damage: Damage,
  extra: {
    readonly process?: Process;
    readonly faculties?: FacultyChances;
    readonly paces?: PaceFactors;
    readonly ages?: Ages;
    readonly lasting?: Lasting;
  } = {},
): Hypothesis {
  let pathways: Pathways | undefined;
  return {
    site,
    variant,
    damage,
    // Followed when first asked for: most hypotheses are never asked once their states are known.
    get pathways() {
      pathways ??= new Pathways(damage);
      return pathways;
    },
    process: extra.process ?? noProcess,
    faculties: extra.faculties ?? noFaculties,
    frequency: frequency * (fittedSiteOdds[site.key] ?? 1),
    ...(extra.paces && { paces: extra.paces }),
    ...(extra.ages && { ages: extra.ages }),
    ...(extra.lasting && { lasting: extra.lasting }),
  };
}

/** Name of a site that tells it from every other: key, level and side. */
export function siteId(site: Pick<Site, 'key' | 'level' | 'side'>): string {
  const level = site.level === null ? '' : `-${site.level}`;
  const side = site.side === null ? '' : `.${site.side}`;
  return `${site.key}${level}${side}`;
}
