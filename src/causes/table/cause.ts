import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { Course, OnsetPace } from '../../exam/exam.ts';
import { fromMemory, type Source } from '../../kernel/cite.ts';

/**
 * How large a share of the lesions at one place a cause makes up: over 20 %, 5 to 20 %, 1 to 5 %, under 1 %, or a few reports
 * of a place where it is hardly ever met.
 * The band is what the literature supports; the number used for it is judged, near the middle of the band.
 */
export const rateShares = {
  'very-common': 0.35,
  common: 0.1,
  uncommon: 0.025,
  rare: 0.005,
  exceptional: 0.001,
} as const;
export type Rate = keyof typeof rateShares;

/** What kind of trouble it is; an analyst counts by it. */
export type CauseGroup =
  | 'hereditary'
  | 'metabolic'
  | 'toxic'
  | 'nutritional'
  | 'immune'
  | 'infective'
  | 'paraneoplastic'
  | 'paraprotein'
  | 'compressive'
  | 'traumatic'
  | 'vascular'
  | 'neoplastic'
  | 'degenerative'
  | 'critical-illness'
  | 'paroxysmal'
  | 'functional';

export type Inheritance = 'autosomal-dominant' | 'autosomal-recessive' | 'x-linked' | 'mitochondrial';

export type SpinalRegion = 'cervical' | 'thoracic' | 'lumbosacral';

/** What a cause damages: named sites or whole kinds of site, where the level matters only in one region of the spine. */
export interface Produces {
  readonly sites?: readonly string[];
  readonly kinds?: readonly SiteKind[];
  readonly region?: SpinalRegion;
  /** One segment, for which the row outranks those of its region. */
  readonly level?: string;
  readonly rate: Rate;
}

/** Share of the cases of a cause that begin at each pace; sums to 1. Judged from the described tempo. */
export type Tempo = Readonly<Record<OnsetPace, number>>;

/**
 * Likelihood ratio of a statement of the history: when any of the keys is stated, and when all that are mentioned are
 * denied. A key of the family history is written `family/...`.
 */
export interface HistoryRatio {
  readonly keys: readonly string[];
  readonly present: number;
  readonly absent: number;
}

/** Likelihood ratio of a bedside sign: any of the items abnormal, or all that were tested normal. */
export interface SignRatio {
  readonly items: readonly string[];
  readonly present: number;
  readonly absent: number;
  /** Parts of the body at which alone the sign speaks for the cause; anywhere when not given. */
  readonly at?: readonly string[];
}

/** Likelihood ratios of finding any of the items on one side alone, and on both. */
export interface SideRatio {
  readonly items: readonly string[];
  readonly one: number;
  readonly both: number;
}

/** Likelihood ratio of a number against a published threshold, in one UCUM unit. */
export interface QuantityRatio {
  readonly result: string;
  readonly unit: string;
  readonly threshold: number;
  /** `from`: met at the threshold and above. `below`: met under it. */
  readonly met: 'from' | 'below';
  readonly whenMet: number;
  readonly whenNot: number;
  readonly source: Source;
}

/** Likelihood ratios of the values of a result that has no number; a value not listed says nothing. */
export interface ValueRatio {
  readonly result: string;
  readonly ratios: readonly (readonly [value: string, ratio: number])[];
  readonly source: Source;
}

export interface Cause {
  readonly key: string;
  readonly label: string;
  readonly group: CauseGroup;
  /** Ways in which it is passed on, the usual one first; absent where it does not run in families. */
  readonly inheritance?: readonly Inheritance[];
  /** MONDO class that says the same, with its label byte for byte; absent where MONDO has only a wider or narrower one. */
  readonly mondo?: { readonly code: string; readonly display: string };
  readonly produces: readonly Produces[];
  readonly tempo: Tempo;
  readonly courses?: Readonly<Partial<Record<Course, number>>>;
  /** Days from onset within which the disease is still getting worse, or before which it is not called by its name. */
  readonly durationDays?: {
    readonly from?: number;
    readonly to?: number;
    readonly outside: number;
    readonly source: Source;
  };
  /** Usual age in years at which it begins; `outside` is the likelihood ratio of a beginning before or after. */
  readonly age?: { readonly from: number; readonly to: number; readonly outside: number };
  readonly sex?: { readonly male: number; readonly female: number };
  readonly history?: readonly HistoryRatio[];
  readonly signs?: readonly SignRatio[];
  readonly sides?: readonly SideRatio[];
  /** Likelihood ratio of legs that hardly move, in lesions of the cord or cauda equina; a partial weakness follows from it. */
  readonly paralysis?: number;
  readonly quantities?: readonly QuantityRatio[];
  readonly values?: readonly ValueRatio[];
  readonly source: Source;
}

const tempo = (hyperacute: number, acute: number, subacute: number, chronic: number): Tempo => ({
  hyperacute,
  acute,
  subacute,
  chronic,
});

/** The tempos that recur in the tables. */
export const tempos = {
  sudden: tempo(0.86, 0.1, 0.03, 0.01),
  suddenOrAcute: tempo(0.45, 0.45, 0.08, 0.02),
  acute: tempo(0.08, 0.7, 0.19, 0.03),
  acuteOrSubacute: tempo(0.03, 0.42, 0.45, 0.1),
  subacute: tempo(0.01, 0.14, 0.6, 0.25),
  subacuteOrChronic: tempo(0.01, 0.04, 0.4, 0.55),
  chronic: tempo(0.01, 0.02, 0.14, 0.83),
  lifelong: tempo(0.005, 0.005, 0.03, 0.96),
  any: tempo(0.2, 0.3, 0.25, 0.25),
  steps: tempo(0.1, 0.35, 0.3, 0.25),
} as const satisfies Record<string, Tempo>;

export const at = (sites: readonly string[], rate: Rate, region?: SpinalRegion): Produces =>
  region === undefined ? { sites, rate } : { sites, rate, region };

export const inKind = (kinds: readonly SiteKind[], rate: Rate, region?: SpinalRegion): Produces =>
  region === undefined ? { kinds, rate } : { kinds, rate, region };

/** At the root of one segment. */
export const atRoot = (level: string, rate: Rate): Produces => ({ kinds: ['root'], level, rate });

/** A history ratio; without the second number a denial says little. */
export const told = (keys: string | readonly string[], present: number, absent = 0.85): HistoryRatio => ({
  keys: typeof keys === 'string' ? [keys] : keys,
  present,
  absent,
});

export const shows = (items: readonly string[], present: number, absent = 0.9): SignRatio => ({
  items,
  present,
  absent,
});

/** A sign that speaks for the cause at these parts of the body, and against it at others. */
export const showsAt = (
  items: readonly string[],
  at: readonly string[],
  present: number,
  absent: number,
): SignRatio => ({
  items,
  at,
  present,
  absent,
});

/** What is met on one side alone, or on both. */
export const sided = (items: readonly string[], ratios: Pick<SideRatio, 'one' | 'both'>): SideRatio => ({
  items,
  ...ratios,
});

export const atLeast = (
  result: string,
  threshold: number,
  unit: string,
  whenMet: number,
  whenNot: number,
  source: Source = fromMemory,
): QuantityRatio => ({ result, unit, threshold, met: 'from', whenMet, whenNot, source });

export const under = (
  result: string,
  threshold: number,
  unit: string,
  whenMet: number,
  whenNot: number,
  source: Source = fromMemory,
): QuantityRatio => ({ result, unit, threshold, met: 'below', whenMet, whenNot, source });

export const reads = (
  result: string,
  ratios: readonly (readonly [value: string, ratio: number])[],
  source: Source = fromMemory,
): ValueRatio => ({ result, ratios, source });

export const mondo = (code: string, display: string): { readonly code: string; readonly display: string } => ({
  code,
  display,
});

/** Sites of a symmetrical loss of nerve fibres from the feet upwards in which sensation suffers. */
export const lengthDependent = ['length-dependent-polyneuropathy', 'sensory-polyneuropathy'] as const;

/** Deformities that take years of weak distal muscles. */
export const longStandingSigns = ['inspection/pes-cavus', 'inspection/hammer-toes', 'inspection/claw-toes'] as const;
