import type { RankedCause, Reason } from '../causes/ranked-cause.ts';
import { itemById } from '../exam/catalogue/catalogue.ts';
import { comaScale } from '../exam/catalogue/coma-scale.ts';
import { type SectionKey, sectionKeys } from '../exam/catalogue/item.ts';
import { describeItem, describeParts, describeResult, describeStatements, lowerFirst } from '../exam/describe.ts';
import type { Exam, InvestigationResult } from '../exam/exam.ts';
import type { Finding, ScoredScale } from '../exam/finding.ts';
import { type BodySide, isBodySide, type Side } from '../kernel/side.ts';
import { joinWords, sentence } from '../kernel/words.ts';
import type { NextExamination } from '../localisation/localisation.ts';
import type { Assessment, RedFlag, WorkupItem } from '../workup/assessment.ts';
import { priorityOrder } from '../workup/propose-workup.ts';
import { type Detail, withinAMinute } from './detail.ts';
import { findingClauses, notTestedClauses, sectionClauses } from './findings-prose.ts';
import { openingSentences } from './opening.ts';
import { percent, siteSentences, withoutSide } from './site-prose.ts';
import { type Spelling, spell } from './spelling.ts';

export type PresentedParts = Omit<Assessment, 'presentation' | 'modelVersion'>;

/** Probability from which what speaks for the likeliest cause is accounted for by it. Judged. */
const accountedFor = 0.5;

/**
 * What a clinician would say to a colleague within a minute: red flags first, then the person and the course, the
 * positive findings in the order of the examination, the relevant negatives, what was not tested, pattern and place with
 * the best reasons, causes for and against, and next steps; after it the caution. Where much was found, less is said of the
 * rest; red flags, positive findings, the site and the likeliest cause are always said. Paragraphs are separated by a blank line.
 */
export function present(exam: Exam, parts: PresentedParts, options: { readonly spelling: Spelling }): string {
  const isExamined = exam.findings.length + exam.scales.length > 0;
  const grounds = groundsOf(parts);
  const speech = withinAMinute((detail) =>
    [
      flagSentences(parts.redFlags),
      openingSentences(exam, detail, new Set([...grounds.flags, ...grounds.causes])),
      [...examinationSentences(exam, parts, detail), ...resultSentences(exam, grounds, detail)],
      siteSentences(parts, { isExamined, ofCause: grounds.likeliest, ...detail }),
      causeSentences(parts.causes, detail),
      [...nextSentences(exam, parts, detail), ...needlessSentences(parts)],
    ]
      .map((sentences) => sentences.filter((text) => text !== '').join(' '))
      .filter((paragraph) => paragraph !== '')
      .join('\n\n'),
  );
  return spell([speech, parts.caution].filter((text) => text !== '').join('\n\n'), options.spelling);
}

/** Pointers to what conclusions rest on. */
interface Grounds {
  /** Of the red flags that are raised. */
  readonly flags: ReadonlySet<string>;
  /** For and against the two likeliest causes. */
  readonly causes: ReadonlySet<string>;
  /** For the two likeliest sites. */
  readonly sites: ReadonlySet<string>;
  /** For the likeliest cause, where it accounts for what speaks for it. */
  readonly likeliest: ReadonlySet<string>;
}

function groundsOf({ redFlags, causes, localisations }: PresentedParts): Grounds {
  const [first] = causes;
  return {
    flags: pointersOf(redFlags.filter(({ state }) => state === 'present').flatMap(({ because }) => because)),
    causes: pointersOf(causes.slice(0, 2).flatMap(({ supporting, against }) => [...supporting, ...against])),
    sites: new Set(localisations.slice(0, 2).flatMap(({ supporting }) => supporting.map(({ finding }) => finding))),
    likeliest: pointersOf(first !== undefined && first.probability >= accountedFor ? first.supporting : []),
  };
}

function pointersOf(reasons: readonly Reason[]): ReadonlySet<string> {
  return new Set(reasons.flatMap(({ pointer }) => (pointer === null ? [] : [pointer])));
}

/**
 * Every red flag by name, the action of the most urgent one, and what was not examined although it decides. The reasons
 * and actions of all of them stand in the answer's list.
 */
function flagSentences(flags: readonly RedFlag[]): readonly string[] {
  const present = flags.filter((flag) => flag.state === 'present');
  const [first] = present;
  const gaps = flags
    .filter((flag) => flag.state === 'not-assessable')
    .flatMap(({ because }) =>
      because.filter(({ pointer }) => pointer === null).map(({ text }) => text.replace(/ (?:was|were)? ?not .*$/, '')),
    );
  return [
    ...(first === undefined ? [] : [...namedFlags(present), first.action]),
    ...(gaps.length > 0 ? [sentence(`not examined, and it matters: ${joinWords([...new Set(gaps)])}`)] : []),
  ];
}

const urgencies = { immediate: 'immediate', 'same-day': 'same day', urgent: 'urgent' } as const;

/** "Red flag: suspected stroke (immediate)."; of several, those of one urgency together. */
function namedFlags(flags: readonly RedFlag[]): readonly string[] {
  const [first, ...others] = flags;
  if (first === undefined) return [];
  if (others.length === 0) return [`Red flag: ${lowerFirst(first.label)} (${urgencies[first.urgency]}).`];
  const groups = (Object.keys(urgencies) as RedFlag['urgency'][]).flatMap((urgency) => {
    const names = flags.filter((flag) => flag.urgency === urgency).map(({ label }) => lowerFirst(label));
    return names.length === 0 ? [] : [sentence(`${urgencies[urgency]}: ${names.join('; ')}`)];
  });
  return ['Red flags.', ...groups];
}

function examinationSentences(exam: Exam, parts: PresentedParts, detail: Detail): readonly string[] {
  if (exam.findings.length === 0 && exam.scales.length === 0) return ['No examination findings were recorded.'];
  const abnormal = exam.findings.filter((finding) => finding.abnormal);
  const positives = sectionKeys.flatMap((section) => sectionSentence(section, abnormal, exam.findings));
  const negatives = findingClauses(relevantNegatives(exam, parts, detail.negatives), exam.findings);
  const untested = notTestedClauses(exam.findings);
  const nothing = exam.scales.some(isLowered) ? [] : ['On examination nothing abnormal was found.'];
  return [
    ...(positives.length > 0 ? [positiveSentences(positives, new Set(abnormal.map(({ side }) => side)))] : nothing),
    ...exam.scales.map(scaleSentence),
    ...(negatives.length > 0 ? [sentence(`relevant negatives: ${negatives.join('; ')}`)] : []),
    ...otherwiseNormalSentence(exam),
    ...(untested.length > 0 ? [sentence(`not tested: ${joinWords(untested)}`)] : []),
  ];
}

/**
 * What is back already: first what a red flag rests on, then what tells for or against the first causes and sites, then the rest;
 * among these images first, which say more in fewer words. What a red flag rests on is always said.
 */
function resultSentences({ results }: Exam, { flags, causes, sites }: Grounds, detail: Detail): readonly string[] {
  const worth = ({ pointer, value }: InvestigationResult): number =>
    (isPointedAt(flags, pointer) ? 4 : 0) +
    (isPointedAt(causes, pointer) || isPointedAt(sites, pointer) ? 2 : 0) +
    (value === undefined ? 0 : 1);
  const most = Math.max(detail.results, results.filter(({ pointer }) => isPointedAt(flags, pointer)).length);
  const spoken = results.toSorted((a, b) => worth(b) - worth(a)).slice(0, most);
  const more = results.length - spoken.length;
  if (spoken.length === 0) return [];
  return [sentence(`results: ${spoken.map(describeResult).join('; ')}${more > 0 ? `; and ${more} more` : ''}`)];
}

/** A reason may point at a value inside of what was sent. */
function isPointedAt(pointers: ReadonlySet<string>, pointer: string): boolean {
  return pointers.has(pointer) || [...pointers].some((one) => one.startsWith(`${pointer}/`));
}

/** Whether a part that was tested misses its best score. */
function isLowered({ parts }: ScoredScale): boolean {
  return comaScale.parts.some(({ key, scores: [best] }) => parts[key] !== null && parts[key] !== best?.score);
}

/** From so many sentences on that all speak of one side, the side is said once for all of them. Judged. */
const sideOnceFrom = 3;

function positiveSentences(positives: readonly string[], sides: ReadonlySet<Side>): string {
  const [side, other] = sides;
  if (isBodySide(side) && other === undefined && positives.length >= sideOnceFrom) {
    const without = positives.map((text) => withoutItsSide(text, side)).join(' ');
    if (!/\b(?:left|right|the side)\b/.test(without))
      return `On examination of the ${side} side, ${lowerFirst(without)}`;
  }
  return `On examination, ${lowerFirst(positives.join(' '))}`;
}

function withoutItsSide(text: string, side: BodySide): string {
  return text.replaceAll(` on the ${side}`, '').replaceAll(new RegExp(`\\b(at the|the) ${side} `, 'gi'), '$1 ');
}

function scaleSentence(scale: ScoredScale): string {
  return scale.total === null
    ? `On the Glasgow coma scale: ${describeParts(scale)}.`
    : `The Glasgow coma scale is ${scale.total} of 15.`;
}

function sectionSentence(
  section: SectionKey,
  abnormal: readonly Finding[],
  tested: readonly Finding[],
): readonly string[] {
  const clauses = sectionClauses(section, abnormal, tested);
  return clauses.length === 0 ? [] : [sentence(clauses.join(section === 'power' ? '; ' : ', '))];
}

/** Normal findings that were recorded one by one, those that speak most for the leading site first. */
function relevantNegatives(exam: Exam, parts: PresentedParts, most: number): readonly Finding[] {
  const weight = new Map(
    (parts.localisations[0]?.supporting ?? []).map((evidence) => [evidence.findingId, evidence.weight] as const),
  );
  const alternatives = new Map(
    parts.localisations
      .slice(1)
      .flatMap((site) => site.against.map((evidence) => [evidence.findingId, -evidence.weight] as const)),
  );
  const always = new Set(['plantars', 'sphincters']);
  const abnormal = exam.findings.filter((finding) => finding.abnormal);
  const affected = new Set(abnormal.map(neighbourhood));
  const affectedParts = new Set(abnormal.map(({ item, side }) => `${item.bodyPart} ${side}`));
  const score = (finding: Finding) =>
    (weight.get(finding.id) ?? 0) +
    (alternatives.get(finding.id) ?? 0) +
    (always.has(finding.item.section) ? 1 : 0) +
    (affected.has(neighbourhood(finding)) ? 0.8 : 0) +
    (finding.item.bodyPart !== undefined && affectedParts.has(`${finding.item.bodyPart} ${finding.side}`) ? 0.6 : 0);
  const normal = exam.findings.filter(
    (finding) => !finding.abnormal && finding.value !== null && finding.origin === 'recorded',
  );
  // The same on both sides is one negative, so its two halves are chosen or left out together.
  const pairs = pairsOf(normal)
    .map((halves) => ({ halves, score: Math.max(...halves.map(score)) }))
    .sort((a, b) => b.score - a.score)
    .slice(0, most);
  const chosen = new Set(pairs.flatMap(({ halves }) => halves));
  return exam.findings.filter((finding) => chosen.has(finding));
}

/** Findings in their order, those together that differ in nothing but the side. */
function pairsOf(findings: readonly Finding[]): readonly (readonly Finding[])[] {
  const pairs = new Map<string, Finding[]>();
  for (const finding of findings) {
    const name = `${withoutSide(finding.id)}|${finding.value}`;
    pairs.set(name, [...(pairs.get(name) ?? []), finding]);
  }
  return [...pairs.values()];
}

/** Normal findings beside abnormal ones draw the border of the deficit. */
function neighbourhood({ item, side }: Finding): string {
  return `${item.section} ${item.region} ${side}`;
}

function otherwiseNormalSentence(exam: Exam): readonly string[] {
  const words = describeStatements(exam.otherwiseNormal);
  const isLongList = words.some((text) => / and /.test(text));
  return words.length === 0 ? [] : [sentence(`otherwise normal: ${isLongList ? words.join('; ') : joinWords(words)}`)];
}

/** Probability below which the first of the causes is listed and not said: one in twenty is hardly likelier than the next ones. Judged. */
const standsOut = 0.05;

function causeSentences(causes: readonly RankedCause[], detail: Detail): readonly string[] {
  const [first, ...others] = causes;
  if (first === undefined) return [];
  if (first.probability < standsOut) return ['No cause stands out.'];
  const pro = joinWords(spokenReasons(first.supporting, detail.causeReasons));
  const contra = joinWords(spokenReasons(first.against, detail.causeReasons));
  const rest = others.filter((cause) => cause.probability >= 0.03).slice(0, detail.otherCauses);
  return [
    sentence(
      [
        `the likeliest cause is ${causeName(first)} (${percent(first.probability)})`,
        ...(pro === '' ? [] : [`for it ${pro}`]),
        ...(contra === '' ? [] : [`against it ${contra}`]),
      ].join('; '),
    ),
    ...(rest.length > 0
      ? [
          sentence(
            `next ${rest.length === 1 ? 'comes' : 'come'} ${joinWords(rest.map((cause) => `${causeName(cause)} (${percent(cause.probability)})`))}`,
          ),
        ]
      : []),
  ];
}

/** The cause without the list of what it comprises: "tumour of the skull base". */
function causeName({ label }: RankedCause): string {
  return lowerFirst(label.replace(/ \([^)]*,[^)]*\)/, ''));
}

/**
 * The first reasons. After "for it" and "against it" nobody says once more that it fits, or that it is unusual, nor tells a
 * complaint beside the sign of the same name.
 */
function spokenReasons(reasons: readonly Reason[], most: number): readonly string[] {
  // One measurement that is over several limits is said once.
  const measured = new Set<string>();
  const once = reasons.filter(({ pointer }) => {
    if (!pointer?.startsWith('/results/')) return true;
    const isAgain = measured.has(pointer);
    measured.add(pointer);
    return !isAgain;
  });
  const texts = once.map(({ text }) => text.replace(/ (fits|is unusual)$/, ''));
  return texts.filter((text, at) => !texts.some((other, i) => i !== at && other.startsWith(`${text} `))).slice(0, most);
}

/** Information, in bits, below which an item of the examination is listed but not said; the list says why. Judged. */
const worthSaying = 0.08;

function nextSentences(exam: Exam, parts: PresentedParts, detail: Detail): readonly string[] {
  const spoken = turnByTurn(parts.workup.filter(({ tier }) => tier < 3)).slice(0, detail.tests);
  const tests = exam.requests === undefined ? testSentences('Suggested next', spoken) : choiceSentences(parts);
  return [...tests, ...(detail.hasBedside ? bedsideSentence(parts) : [])];
}

/** What to examine next: a sign is looked for, anything else is examined. */
function bedsideSentence({ nextExamination, conclusion, localisations }: PresentedParts): readonly string[] {
  const [next] = nextExamination;
  if (next === undefined || conclusion === 'no-abnormality' || next.gainBits < worthSaying) return [];
  // Where no likely site has a side, either side tells as much.
  const isEitherSide =
    localisations.some((site) => site.isEitherSide === true) ||
    localisations.every(({ side, probability }) => probability < likelySite || !isBodySide(side));
  const verb = itemById.get(next.item)?.scale === 'presence' ? 'looking for' : 'examining';
  return [sentence(`worth ${verb} next: ${itemWords(next, isEitherSide)}`)];
}

/** Probability from which the side of a site counts for what to examine. Judged. */
const likelySite = 0.1;

/** The item with its side, and with none where nothing tells it; a place of the skin is named with its side already. */
function itemWords({ item, label, side, place }: NextExamination, isEitherSide: boolean): string {
  const known = place === undefined ? itemById.get(item) : undefined;
  if (known === undefined) return isEitherSide ? ofNoSide(lowerFirst(label)) : lowerFirst(label);
  return describeItem(known, isEitherSide || known.section === 'gait' ? 'midline' : (side ?? 'midline'));
}

function ofNoSide(label: string): string {
  return label.replace(/\b(?:left|right) /, '').replace(/ on the (?:left|right)$/, '');
}

/**
 * The most pressing first, first-line tests before others; of what presses alike the first of all, then images of the head and
 * spine, which show the place, then the first of every reason before the second of any: a long panel hides nothing.
 */
function turnByTurn(items: readonly WorkupItem[]): readonly WorkupItem[] {
  const turns = new Map<string, number>();
  const taken = items.map((item) => {
    const reason = `${item.priority} ${item.because}`;
    const turn = turns.get(reason) ?? 0;
    turns.set(reason, turn + 1);
    return { item, turn };
  });
  return taken
    .toSorted(
      (a, b) =>
        priorityOrder[a.item.priority] - priorityOrder[b.item.priority] ||
        a.item.tier - b.item.tier ||
        Number(b.item === items[0]) - Number(a.item === items[0]) ||
        Number(isImage(b.item)) - Number(isImage(a.item)) ||
        a.turn - b.turn,
    )
    .map(({ item }) => item);
}

function isImage({ key }: WorkupItem): boolean {
  return /^(?:ct|mri?)-/.test(key);
}

/** What the examiner wants, all of it, and what was suggested besides. */
function choiceSentences({ proposed, notChosen }: PresentedParts): readonly string[] {
  const chosen = testSentences('Asked for by the examiner', proposed);
  return [
    ...(chosen.length > 0 ? chosen : ['The examiner asked for no investigation.']),
    ...(notChosen.length > 0 ? [`Suggested and not chosen: ${joinWords(notChosen.map(leftOutName))}.`] : []),
  ];
}

function testSentences(opening: string, tests: readonly Pick<WorkupItem, 'label' | 'priority'>[]): readonly string[] {
  const words = { stat: 'At once', urgent: 'Urgently', routine: 'Then' } as const;
  const groups = (['stat', 'urgent', 'routine'] as const).flatMap((priority) => {
    const names = tests.filter((item) => item.priority === priority).map(testName);
    return names.length === 0 ? [] : [`${words[priority]}: ${joinWords(names)}.`];
  });
  const [only] = groups;
  if (only === undefined) return [];
  const isRoutine = tests.every(({ priority }) => priority === 'routine');
  return [isRoutine ? only.replace(/^[^:]*:/, `${opening}:`) : `${opening}. ${groups.join(' ')}`];
}

/** What guidance says need not be done; the reasons stand in the answer's list. */
function needlessSentences({ needless }: PresentedParts): readonly string[] {
  const labels = [...new Set(needless.map(({ label }) => lowerFirst(label)))];
  return labels.length === 0 ? [] : [sentence(`not needed, or not yet: ${joinWords(labels)}`)];
}

/** What was left out although it presses is heard as such. */
function leftOutName(item: WorkupItem): string {
  const words = { stat: ' (at once)', urgent: ' (urgent)', routine: '' } as const;
  return `${testName(item)}${words[item.priority]}`;
}

function testName(item: Pick<WorkupItem, 'label'>): string {
  return lowerFirst(item.label.replace(/:.*$/, ''));
}
