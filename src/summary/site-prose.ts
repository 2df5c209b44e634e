import type { SiteKind } from '../anatomy/site-kind.ts';
import { onBothSides } from '../causes/reasons.ts';
import { itemById } from '../exam/catalogue/catalogue.ts';
import { lowerFirst } from '../exam/describe.ts';
import { joinWords, sentence, withArticle } from '../kernel/words.ts';
import { lowerKinds } from '../localisation/explanation/pattern.ts';
import { siteWords } from '../localisation/explanation/site-words.ts';
import type { Evidence, Localisation, RankedLocalisation } from '../localisation/localisation.ts';
import type { Detail } from './detail.ts';

/** Whether anything was examined, what the likeliest cause accounts for by pointer, and how much is said. */
type Manner = { readonly isExamined: boolean; readonly ofCause?: ReadonlySet<string> } & Pick<
  Detail,
  'reasons' | 'hasPath'
>;

/** Pattern, place and reasons; what speaks against it; the nearest alternative. */
export function siteSentences(localisation: Localisation, manner: Manner): readonly string[] {
  const [first, second] = localisation.localisations;
  switch (localisation.conclusion) {
    case 'no-abnormality':
      return [
        manner.isExamined
          ? 'A normal examination does not exclude a lesion.'
          : 'No abnormality was found; a normal examination does not exclude a lesion.',
      ];
    case 'insufficient':
      return [
        'Too little was examined to say where the lesion is.',
        ...broadGuess(localisation.localisations, manner.isExamined),
      ];
    case 'not-anatomical':
      return [
        'The findings together do not follow the anatomy of any one lesion or process.',
        ...(first?.kind === 'none'
          ? [sentence(`that there is no structural lesion fits best (${percent(first.probability)})`)]
          : leadingGuess(first)),
      ];
    default:
  }
  if (first === undefined) return ['Too little was examined to say where the lesion is.'];
  const syndrome = lowerFirst(localisation.pattern.label);
  // Where the pattern is the site itself it is named once.
  const pattern = syndrome === siteWords(first) ? 'the findings are' : `the pattern is ${article(syndrome)},`;
  const isSeveral = localisation.conclusion === 'multiple-sites';
  const verb = isSeveral ? 'more than one site is involved; the leading account is' : `${pattern} best explained by`;
  const reasons = bestReasons(first, localisation.localisations, manner);
  return [
    sentence(
      `${verb} ${siteWords(first)} (${percent(first.probability)})${reasons === '' ? '' : `, chiefly because of ${reasons}`}`,
    ),
    ...(isSeveral ? besideSentences(first, second, manner) : unexplainedSentence(first.unexplained, manner)),
    ...(!isSeveral && isWorthNaming(second)
      ? [sentence(`the main alternative is ${siteWords(second)} (${percent(second.probability)})`)]
      : []),
  ];
}

/** What the sites of one kind belong to, as said when only that much is known. */
const broadPlaces: Readonly<Partial<Record<SiteKind, string>>> = {
  muscle: 'muscle',
  junction: 'the neuromuscular junction',
  nerve: 'single nerves',
  plexus: 'the plexus',
  root: 'the nerve roots',
  cord: 'the spinal cord',
  brainstem: 'the brainstem',
  cerebellum: 'the cerebellum',
  hemisphere: 'the cerebral hemisphere',
  'visual-pathway': 'the visual pathway',
  'cranial-nerve': 'the cranial nerves',
  'basal-ganglia': 'the basal ganglia',
};

/** From this probability on, the sites of one kind together are worth saying. Judged. */
const broadFrom = 0.4;

/** Where several sites of one kind share what is likely, what they have in common is said before the first of them. */
function broadGuess(localisations: readonly RankedLocalisation[], isExamined: boolean): readonly string[] {
  const shares = new Map<string, RankedLocalisation[]>();
  for (const site of localisations) {
    const place = broadPlaces[site.kind];
    if (place === undefined) continue;
    const where = site.side === 'left' || site.side === 'right' ? `${place} on the ${site.side}` : place;
    shares.set(where, [...(shares.get(where) ?? []), site]);
  }
  for (const [where, [nearest, ...others]] of shares) {
    if (nearest === undefined || others.length === 0) continue;
    const total = [nearest, ...others].reduce((sum, { probability }) => sum + probability, 0);
    if (total < broadFrom) continue;
    return [
      sentence(
        `what was ${isExamined ? 'found' : 'told'} points most to ${where} (${percent(total)} over several sites), nearest to ${siteWords(nearest)} (${percent(nearest.probability)})`,
      ),
    ];
  }
  return leadingGuess(localisations[0]);
}

function leadingGuess(first: RankedLocalisation | undefined): readonly string[] {
  return first === undefined || first.kind === 'none'
    ? []
    : [sentence(`the nearest fit is ${siteWords(first)} (${percent(first.probability)})`)];
}

/** Words of a path that a listener follows; longer ones stand in the answer's list of evidence. */
const longestPath = 16;

/**
 * The strongest reasons out of different sections of the examination; what was found wrong says more than what was not, and what
 * tells the site from its rivals more than what all of them explain. Of what was told nobody followed the path through the nervous
 * system: it must tell far more to come first.
 */
function bestReasons(
  site: RankedLocalisation,
  all: readonly RankedLocalisation[],
  { reasons, hasPath }: Manner,
): string {
  const chosen: Evidence[] = [];
  const isBelowTheTracts = belowTheTracts.has(site.kind);
  const wrong = site.supporting.filter((one) => one.abnormal && !(isBelowTheTracts && isOfTracts(one)));
  const rivals = all.filter((other) => other.site !== site.site).slice(0, mostRivals);
  const ranked = (wrong.length > 0 ? wrong : site.supporting)
    .map((evidence) => ({ evidence, worth: tellsApart(evidence, rivals) / (isTold(evidence) ? seenOverTold : 1) }))
    .toSorted((a, b) => b.worth - a.worth);
  for (const { evidence } of ranked) {
    const same = chosen.some((other) => other.because === evidence.because || sectionOf(other) === sectionOf(evidence));
    if (!same) chosen.push(evidence);
    if (chosen.length === reasons) break;
  }
  // The path in words is given once; the answer's list of evidence has it for each finding.
  return joinWords(
    chosen.map((evidence, index) => {
      const { text, because } = bothSidesAtOnce(evidence, wrong);
      const isFollowed = hasPath && index === 0 && !isTold(evidence);
      return isFollowed && because !== null && isShort(because) ? `${text} (${because})` : text;
    }),
  );
}

/** Rivals of a site that its reasons are to tell it from. */
const mostRivals = 3;

/** Share of its weight that a reason keeps where every rival explains it as well. Judged. */
const ofItsOwn = 0.3;

/** How much a finding speaks for the site beyond what it says for its rivals on the average, in natural logarithms. */
function tellsApart({ findingId, weight }: Evidence, rivals: readonly RankedLocalisation[]): number {
  if (rivals.length === 0) return weight;
  const forRivals = rivals.reduce((sum, { supporting, against }) => {
    const same = [...supporting, ...against].find((other) => other.findingId === findingId);
    return sum + (same?.weight ?? 0);
  }, 0);
  return weight - forRivals / rivals.length + ofItsOwn * weight;
}

/** How much more what was told must weigh than what was seen to be said before it. Judged. */
const seenOverTold = 3;

function isTold({ finding }: Evidence): boolean {
  return finding.startsWith('/history/');
}

/** Kinds that leave the descending tracts alone: signs of these may be allowed for, but are no reason to name such a place. */
const belowTheTracts: ReadonlySet<SiteKind> = new Set([...lowerKinds, 'muscle', 'junction', 'ganglion']);
const ofTracts: ReadonlySet<string> = new Set(['plantar', 'clonus', 'upper-motor']);

function isOfTracts({ findingId, text }: Evidence): boolean {
  const probe = itemById.get(findingId.split('|')[0] ?? '')?.probe.kind ?? '';
  if (probe === 'reflex') return /\bbrisk\b/.test(text);
  if (probe === 'tone') return /\bspastic\b/.test(text);
  return ofTracts.has(probe);
}

function isShort(words: string): boolean {
  return words.split(' ').length <= longestPath;
}

interface Said {
  readonly text: string;
  /** null when the path is of one side and the finding is on both. */
  readonly because: string | null;
}

/** A finding that speaks for the site on both sides alike is said once, of both. */
function bothSidesAtOnce(evidence: Evidence, all: readonly Evidence[]): Said {
  const { text, because, side } = evidence;
  if (!all.some((other) => other.side !== side && saysTheSame(other, evidence))) return { text, because };
  const path = because.replace(/\bthe (?:left|right) side of\b/, 'both sides of');
  return { text: onBothSides(text, side), because: /\b(?:left|right)\b/.test(path) ? null : path };
}

/** `/findings/power/3` is of the section `power`. */
function sectionOf({ finding }: Evidence): string {
  return finding.split('/')[2] ?? '';
}

const isWorthNaming = (site: RankedLocalisation | undefined): site is RankedLocalisation =>
  site !== undefined && site.probability >= 0.1;

/** The second of several places that are ill together, and what neither of them accounts for. */
function besideSentences(
  first: RankedLocalisation,
  second: RankedLocalisation | undefined,
  manner: Manner,
): readonly string[] {
  // An account of several places names what would be said beside it.
  if (!isWorthNaming(second) || first.label.includes(lowerFirst(second.label)))
    return unexplainedSentence(first.unexplained, manner);
  const open = new Set(second.unexplained.map(({ findingId }) => findingId));
  return [
    sentence(`beside it is ${siteWords(second)} (${percent(second.probability)})`),
    ...unexplainedSentence(
      first.unexplained.filter(({ findingId }) => open.has(findingId)),
      manner,
    ),
  ];
}

/** What the site leaves open and the likeliest cause does not account for either. */
function unexplainedSentence(evidence: readonly Evidence[], { ofCause }: Manner): readonly string[] {
  const unexplained = evidence.filter(({ finding }) => ofCause?.has(finding) !== true);
  const texts = unexplained.flatMap((evidence, index) => {
    const twin = (other: Evidence) => other.side !== evidence.side && saysTheSame(other, evidence);
    if (unexplained.slice(0, index).some(twin)) return [];
    return [unexplained.some(twin) ? onBothSides(evidence.text, evidence.side) : evidence.text];
  });
  if (texts.length === 0) return [];
  const shown = texts.slice(0, 3);
  const more = texts.length > shown.length ? [`${texts.length - shown.length} more`] : [];
  return [sentence(`this leaves unexplained ${joinWords([...shown, ...more])}`)];
}

/** Whether two findings differ in nothing but the side, however they were sent. */
function saysTheSame(a: Evidence, b: Evidence): boolean {
  return (
    withoutSide(a.findingId) === withoutSide(b.findingId) && onBothSides(a.text, a.side) === onBothSides(b.text, b.side)
  );
}

/** `Finding.id` without its last part, which is the side. */
export function withoutSide(findingId: string): string {
  return findingId.slice(0, findingId.lastIndexOf('|'));
}

/** Whole per cent, never 0 or 100: an inference is neither impossible nor certain. */
export function percent(probability: number): string {
  const whole = Math.round(probability * 100);
  if (whole >= 100) return 'over 99 %';
  return whole <= 0 ? 'under 1 %' : `${whole} %`;
}

function article(name: string): string {
  if (/^(?:raised|more than)/.test(name)) return name;
  if (/s$/.test(name) && !/(?:ss|is|us)$/.test(name)) return name;
  return withArticle(name);
}
