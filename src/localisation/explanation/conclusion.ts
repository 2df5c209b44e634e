import type { Finding } from '../../exam/finding.ts';
import type { Conclusion, RankedLocalisation, SiteKind } from '../localisation.ts';

const diffuseKinds: ReadonlySet<SiteKind> = new Set([
  'muscle',
  'junction',
  'polyneuropathy',
  'polyradiculoneuropathy',
  'ganglion',
  'anterior-horn',
  'motor-neuron-system',
]);

/** Fewer items than this cannot say that all is well. Judged. */
const enoughNormal = 10;
/** Below this share of the abnormal findings, by weight, a site does not account for the examination. Judged. */
const poorFit = 0.65;
/** Below this probability the leading site is only one of several. Judged. */
const faintLead = 0.25;
const fewAbnormal = 4;
/** From this probability on, deviations are put down to health and age. Judged. */
const clearlyNormal = 0.33;

/**
 * What may be concluded. Nothing is forced: too little information is said to be too little, and findings that no place
 * or process accounts for are said not to follow the anatomy.
 * @param pairProbability probability that two sites are needed
 * @param jointFit        share of the abnormal findings that the two leading sites account for together
 */
export function conclude(
  findings: readonly Finding[],
  ranked: readonly RankedLocalisation[],
  pairProbability: number,
  jointFit: number,
): Conclusion {
  const tested = findings.filter((finding) => finding.value !== null);
  const abnormal = tested.filter((finding) => finding.abnormal);
  const best = ranked[0];
  if (best === undefined || tested.length === 0) return 'insufficient';
  if (abnormal.length === 0) return tested.length >= enoughNormal ? 'no-abnormality' : 'insufficient';
  if (best.kind === 'none')
    return tested.length >= enoughNormal && best.probability >= clearlyNormal ? 'no-abnormality' : 'insufficient';
  const fit = pairProbability > 0.5 ? jointFit : best.fit;
  if (fit < poorFit) return abnormal.length >= fewAbnormal ? 'not-anatomical' : 'insufficient';
  if (pairProbability > 0.5) return 'multiple-sites';
  if (best.probability < faintLead && abnormal.length < fewAbnormal) return 'insufficient';
  return diffuseKinds.has(best.kind) ? 'diffuse-process' : 'single-site';
}
