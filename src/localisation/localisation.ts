import type { SiteKind } from '../anatomy/site-kind.ts';
import type { Coding } from '../kernel/coding.ts';
import type { BodySide } from '../kernel/side.ts';
import type { Site } from './hypothesis.ts';

/** One finding as evidence about one site. */
export interface Evidence {
  /** JSON Pointer of the finding in the request. */
  readonly finding: string;
  /** Side that the weight is about; a finding sent as `both` gives two pieces of evidence. */
  readonly side: BodySide | 'midline';
  /** Item in words: "left ankle dorsiflexion 3". */
  readonly text: string;
  /** Natural-log likelihood ratio; positive speaks for the site. */
  readonly weight: number;
  readonly because: string;
  /** Whether what was found is a deviation, or a symptom that is there. */
  readonly abnormal: boolean;
  /** `Finding.id`. */
  readonly findingId: string;
}

export interface RankedLocalisation {
  /** Key of a place or process: `common-fibular-nerve`, `nerve-root`, `spinal-cord-hemisection`, `length-dependent-polyneuropathy`. */
  readonly site: string;
  readonly label: string;
  /** null for what lies in the midline or has no side, and where nothing tells which side it is. */
  readonly side: BodySide | 'both' | null;
  /** Whether it lies on one side and nothing tells on which. */
  readonly isEitherSide?: boolean;
  /** Segment of roots and cord sites, the most likely one. */
  readonly level: string | null;
  /** Highest and lowest segment that together hold 80 % of this site's probability; null without a level. */
  readonly levelRange: readonly [string, string] | null;
  readonly kind: SiteKind;
  readonly isDiffuse?: boolean;
  readonly code: Coding;
  /** Among the hypotheses considered, 0 to 1. */
  readonly probability: number;
  /** Share of the abnormal findings, by weight, that the site accounts for, 0 to 1. */
  readonly fit: number;
  readonly supporting: readonly Evidence[];
  readonly against: readonly Evidence[];
  readonly unexplained: readonly Evidence[];
}

/** Kinds that are a process over the whole body rather than a place. */
const diffuseKinds: ReadonlySet<SiteKind> = new Set([
  'muscle',
  'junction',
  'polyneuropathy',
  'polyradiculoneuropathy',
  'ganglion',
  'anterior-horn',
  'motor-neuron-system',
  'meninges',
  'intracranial-pressure',
  'encephalopathy',
]);

/** Whether a site is a process over the whole body or brain rather than a place. */
export function isDiffuse({ kind, isDiffuse: declared }: Pick<Site, 'kind' | 'isDiffuse'>): boolean {
  return declared === true || diffuseKinds.has(kind);
}

export interface Pattern {
  readonly key: string;
  readonly label: string;
  readonly motorNeuron: 'lower' | 'upper' | 'both' | 'none';
  readonly symmetry: 'symmetrical' | 'asymmetrical' | 'one-sided' | 'midline' | 'none';
  readonly modalities: readonly string[];
}

export type Conclusion =
  | 'single-site'
  | 'multiple-sites'
  | 'diffuse-process'
  | 'no-abnormality'
  | 'not-anatomical'
  | 'insufficient';

/** Whether a conclusion names a place or process, so that causes and tests of its own can follow from it. */
export function namesAPlace(conclusion: Conclusion): boolean {
  return conclusion === 'single-site' || conclusion === 'multiple-sites' || conclusion === 'diffuse-process';
}

export interface NextExamination {
  /** Item id, with the place for sensation: `power/hip-abduction`, `sensation/pinprick`. */
  readonly item: string;
  readonly label: string;
  readonly side: BodySide | null;
  /** For sensation: where. */
  readonly place?: string;
  readonly because: string;
  /** Whether `because` names two sites that the result would tell apart. */
  readonly tellsApart: boolean;
  /** Expected information gain over the leading sites, in bits. */
  readonly gainBits: number;
}

export interface Localisation {
  readonly localisations: readonly RankedLocalisation[];
  readonly pattern: Pattern;
  readonly conclusion: Conclusion;
  readonly nextExamination: readonly NextExamination[];
}
