/** What an answer says, in the words of the trade. Numbers are judged by the bands named here and shown beside the words. */
import type { Evidence, Localisation, LocalisationAnswer, RedFlag } from '../../client/generated/api-types.ts';

/** Guyon's canal keeps its capital, and so do segments and abbreviations. */
function lowerFirst(text: string): string {
  return /^(Guyon|[A-Z]{2}|[CTLS]\d)/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}

/** A site with its side: "Common fibular nerve at the fibular neck, left". */
export function siteName({ label, side }: Pick<Localisation, 'label' | 'side'>): string {
  return side === 'left' || side === 'right' ? `${label}, ${side}` : label;
}

export function sideWords({ side }: Pick<Localisation, 'side'>): string | null {
  return side === 'both' ? 'Both sides' : side === null ? null : side === 'left' ? 'Left' : 'Right';
}

/** "C6", or "C6; C5 to C7 possible" where less than 80 % of the probability lies at one level. */
export function levelWords({
  level,
  levelRange,
  kind,
}: Pick<Localisation, 'level' | 'levelRange' | 'kind'>): string | null {
  if (level === null) return null;
  const [top, bottom] = levelRange ?? [level, level];
  if (top === bottom) return level;
  return kind === 'root' ? `${top} to ${bottom}` : `${level}; ${top} to ${bottom} possible`;
}

/** Judged bands of a probability among the sites considered. */
const bands = [
  { from: 0.95, words: 'Very likely' },
  { from: 0.75, words: 'Likely' },
  { from: 0.5, words: 'More likely than not' },
  { from: 0.15, words: 'Possible' },
  { from: 0.03, words: 'Less likely' },
  { from: 0, words: 'Unlikely' },
] as const;

export function likelihoodWords(probability: number): string {
  return bands.find(({ from }) => probability >= from)?.words ?? 'Unlikely';
}

/** Never a flat 0 or 100 %, which would claim more than the model knows. */
export function percentWords(probability: number): string {
  if (probability >= 0.995) return '> 99 %';
  return probability < 0.01 ? '< 1 %' : `${Math.round(100 * probability)} %`;
}

export function fitWords(fit: number): string {
  if (fit >= 0.995) return 'Accounts for every abnormal finding';
  return `Accounts for ${Math.round(100 * fit)} % of the abnormal findings, weighted`;
}

/** Natural log of the likelihood ratio from which a finding speaks strongly, and moderately: ratios of about 7 and 3. Judged. */
const strong = 2;
const moderate = 1;

export function strengthOf({ weight }: Pick<Evidence, 'weight'>): { readonly sign: string; readonly words: string } {
  const size = Math.abs(weight);
  if (size >= strong) return { sign: '+++', words: 'strong' };
  return size >= moderate ? { sign: '++', words: 'moderate' } : { sign: '+', words: 'slight' };
}

export const urgencyWords: Readonly<Record<RedFlag['urgency'], string>> = {
  immediate: 'Immediate',
  'same-day': 'Same day',
  urgent: 'Urgent',
};

/** Whether an answer names a place or process at all. */
export function namesAPlace({ conclusion }: Pick<LocalisationAnswer, 'conclusion'>): boolean {
  return conclusion === 'single-site' || conclusion === 'multiple-sites' || conclusion === 'diffuse-process';
}

/** From this probability on a site belongs to an answer of several sites. */
const partFrom = 0.5;

/** The sites that an answer of several sites holds together; the process that picks out nerves or roots names them itself. */
export function sitesTogether({ localisations }: Pick<LocalisationAnswer, 'localisations'>): readonly Localisation[] {
  const likely = localisations.filter(({ probability }) => probability >= partFrom);
  return likely.length > 1 ? likely.filter((site) => !namesItsParts(site)) : likely;
}

function namesItsParts({ label }: Localisation): boolean {
  return label.includes(': ');
}

export interface ConclusionWords {
  readonly heading: string;
  /** What may be drawn from it. */
  readonly advice?: string;
}

/** The conclusion in one sentence. What is not known is said to be not known. */
export function conclusionWords(answer: LocalisationAnswer): ConclusionWords {
  switch (answer.conclusion) {
    case 'no-abnormality':
      return {
        heading: 'No abnormality in what was examined.',
        advice: 'A normal examination does not exclude a lesion.',
      };
    case 'not-anatomical':
      return {
        heading: 'The findings do not follow the anatomy of any lesion or process.',
        advice: 'Repeat what does not fit before relying on any site below; a second opinion may help.',
      };
    case 'insufficient':
      return {
        heading: 'Insufficient findings to name a site.',
        advice: 'The sites below are ranked by what is recorded so far; none of them can be concluded yet.',
      };
    case 'multiple-sites': {
      const together = sitesTogether(answer);
      const names = together.map((site) => lowerFirst(siteName(site))).join('; ');
      if (together.length > 1 || together[0]?.kind === 'multiple-nerves')
        return { heading: `More than one lesion: ${names}.` };
      return { heading: `More than one lesion is needed${together.length === 1 ? `; one of them: ${names}` : ''}.` };
    }
    case 'diffuse-process':
      return { heading: explainedBy('a diffuse process', answer) };
    case 'single-site':
      return { heading: explainedBy('a single lesion', answer) };
  }
}

/** From this probability on a site is likelier than all others together. */
const settledFrom = 0.5;

function explainedBy(what: string, { localisations }: LocalisationAnswer): string {
  const [best, next] = localisations;
  if (best === undefined) return `Best explained by ${what}.`;
  if (best.probability >= settledFrom || next === undefined) return `Best explained by ${what}: ${bestWords(best)}.`;
  return `Best explained by ${what}, not settled which: ${bestWords(best)}, then ${bestWords(next)}.`;
}

function bestWords(best: Localisation): string {
  return `${lowerFirst(siteName(best))} (${percentWords(best.probability)})`;
}
