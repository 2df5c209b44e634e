import type { Finding } from '../../exam/finding.ts';
import { type Conclusion, isDiffuse, type RankedLocalisation } from '../localisation.ts';

/** Fewer items than this cannot say that all is well. Judged. */
const enoughNormal = 10;
/** Below this share of the abnormal findings, by weight, a site does not account for the examination. Judged. */
const poorFit = 0.6;
/** Below this one, findings that are many enough to know better follow no anatomy. Judged. */
const noFit = 0.5;
/** Below this probability the leading site is only one of several. Judged. */
const faintLead = 0.25;
const fewAbnormal = 4;
/** One thing found wrong, be it on both sides, names a place or process only when it leads as clearly as this. Judged. */
const leadFromOneItem = 0.5;
/** Several nerves can be chosen to fit nearly any scatter: they have to fit better than one place. Judged. */
const fitOfSeveral = 0.75;
/** From this share of the leading site's probability on, another is a rival to it. Judged. */
const rivalFrom = 0.3;
/** Deviations are put down to health and age when that has this probability, or some and is so much likelier than the next. Judged. */
const clearlyNormal = { probability: 0.33, atLeast: 0.2, aheadBy: 2 } as const;

/** Positive signs that a movement can be made after all; so many, without any sign that cannot be willed, decide. Judged. */
const effortSigns = 2;
const unwilled: ReadonlySet<string> = new Set([
  'reflex',
  'plantar',
  'tone',
  'clonus',
  'denervation',
  'long-standing-deformity',
]);

/** What the inference says beyond the ranked sites. */
export interface Fit {
  /** Probability that more than one site is needed. */
  readonly severalProbability: number;
  /** Share of the abnormal findings that the best combination accounts for. */
  readonly jointFit: number;
  /** Whether everything abnormal is what healthy people of this age often show. */
  readonly isUsualInHealth: boolean;
}

/**
 * What may be concluded. Nothing is forced: too little information is said to be too little, and findings that no place
 * or process accounts for are said not to follow the anatomy.
 */
export function conclude(
  findings: readonly Finding[],
  ranked: readonly RankedLocalisation[],
  { severalProbability, jointFit, isUsualInHealth }: Fit,
): Conclusion {
  const tested = findings.filter((finding) => finding.value !== null);
  const abnormal = tested.filter((finding) => finding.abnormal);
  const best = ranked[0];
  if (best === undefined || tested.length === 0) return 'insufficient';
  const isWide = tested.length >= enoughNormal;
  if (abnormal.length === 0) return isWide ? 'no-abnormality' : 'insufficient';
  if (best.kind === 'none') {
    if (abnormal.some(isEffortSign)) return 'not-anatomical';
    return isWide && isUsualInHealth && isClearlyNormal(best, ranked[1]) ? 'no-abnormality' : 'insufficient';
  }
  if (isAgainstAnatomy(tested)) return 'not-anatomical';
  const fit = severalProbability > 0.5 ? jointFit : best.fit;
  if (fit < poorFit) {
    return fit < noFit && abnormal.length >= fewAbnormal && !hasFittingRival(ranked)
      ? 'not-anatomical'
      : 'insufficient';
  }
  if (severalProbability > 0.5 || best.kind === 'multiple-nerves') return 'multiple-sites';
  if (best.probability < faintLead && abnormal.length < fewAbnormal) return 'insufficient';
  if (best.probability < leadFromOneItem && isOneItem(abnormal)) return 'insufficient';
  return isDiffuse(best) ? 'diffuse-process' : 'single-site';
}

function isClearlyNormal({ probability }: RankedLocalisation, next: RankedLocalisation | undefined): boolean {
  if (probability >= clearlyNormal.probability) return true;
  return probability >= clearlyNormal.atLeast && probability >= clearlyNormal.aheadBy * (next?.probability ?? 0);
}

/** Whether all that is wrong, and that anything can be drawn from, is one item: one jerk, one movement, on one side or both. */
function isOneItem(abnormal: readonly Finding[]): boolean {
  const telling = abnormal.filter(({ item }) => item.probe.kind !== 'recorded-only');
  return new Set(telling.map(({ item, place }) => `${item.section}/${item.key}@${place?.key ?? ''}`)).size <= 1;
}

/** Whether a site not much less likely than the leading one accounts for the findings: then they do follow the anatomy. */
function hasFittingRival(ranked: readonly RankedLocalisation[]): boolean {
  const least = rivalFrom * (ranked[0]?.probability ?? 0);
  const enough = (kind: RankedLocalisation['kind']): number => (kind === 'multiple-nerves' ? fitOfSeveral : poorFit);
  return ranked.some(({ kind, probability, fit }) => kind !== 'none' && probability >= least && fit >= enough(kind));
}

function isEffortSign({ item }: Finding): boolean {
  return item.probe.kind === 'faculty' && item.probe.faculty === 'effort';
}

/** Nothing wrong that cannot be willed, and signs that the strength is there after all. */
function isAgainstAnatomy(tested: readonly Finding[]): boolean {
  const abnormal = tested.filter((finding) => finding.abnormal);
  if (abnormal.some(({ item }) => unwilled.has(item.probe.kind))) return false;
  const effort = abnormal.filter(isEffortSign).length;
  return effort >= effortSigns || (effort > 0 && givesWay(tested, abnormal));
}

/** Slight weakness is what is graded when a movement that could be full gives way. */
const slight: ReadonlySet<unknown> = new Set(['4-', '4', '4+']);
/** Normal signs that cannot be willed, from which on weakness that gives way is put down to pain or effort. Judged. */
const enoughUnwilled = 2;

/**
 * Weakness that gives way, from pain or for want of effort, and no more: every movement moves against resistance, nothing
 * but strength is wrong, and what cannot be willed was looked at and is normal.
 */
function givesWay(tested: readonly Finding[], abnormal: readonly Finding[]): boolean {
  const onlyStrength = abnormal.every(
    (finding) => isEffortSign(finding) || (finding.item.probe.kind === 'movement' && slight.has(finding.value)),
  );
  const normal = tested.filter(({ item, abnormal: isAbnormal }) => !isAbnormal && unwilled.has(item.probe.kind));
  return onlyStrength && normal.length >= enoughUnwilled;
}
