import { spinalRegion } from '../causes/causes-at.ts';
import type { RankedCause } from '../causes/ranked-cause.ts';
import { imagesOfItsParts } from '../causes/value-rows.ts';
import { type Investigation, investigations } from '../exam/catalogue/investigations.ts';
import type { Exam } from '../exam/exam.ts';
import { citation } from '../kernel/citation.ts';
import { recalled } from '../kernel/cite.ts';
import { workAddresses } from '../kernel/work-addresses.ts';
import type { WorkKey } from '../kernel/works.ts';
import { type Localisation, namesAPlace, type RankedLocalisation } from '../localisation/localisation.ts';
import type { Assessment, RedFlag, WorkupItem } from './assessment.ts';
import { type BedsideFacts, bedsideFacts, mayBePregnant } from './bedside-facts.ts';
import { brainCauseTests } from './brain-cause-tests.ts';
import { brainTests } from './brain-tests.ts';
import { causeTests } from './cause-tests.ts';
import { chooseTests, investigationCoding } from './choose-tests.ts';
import { cordAndMuscleTests } from './cord-and-muscle-tests.ts';
import { furtherStoryTests } from './further-story-tests.ts';
import { headTests } from './head-tests.ts';
import { limbComplaintTests } from './limb-complaint-tests.ts';
import { meningesAndPressureTests } from './meninges-and-pressure-tests.ts';
import { movementTests } from './movement-tests.ts';
import { neuropathyTests } from './neuropathy-tests.ts';
import { rarerCauseTests } from './rarer-cause-tests.ts';
import { redFlagTests } from './red-flag-tests.ts';
import { remedyTests } from './remedy-tests.ts';
import { siteTests } from './site-tests.ts';
import { storyTests } from './story-tests.ts';
import { withheldTests } from './withheld-tests.ts';
import type { WithholdRule, WorkupRule } from './workup-rule.ts';

/** Of rules that press equally the first gives the reason. */
export const workupRules: readonly WorkupRule[] = [
  ...remedyTests,
  ...redFlagTests,
  ...neuropathyTests,
  ...siteTests,
  ...headTests,
  ...meningesAndPressureTests,
  ...brainTests,
  ...movementTests,
  ...cordAndMuscleTests,
  ...causeTests,
  ...rarerCauseTests,
  ...brainCauseTests,
  ...limbComplaintTests,
  ...storyTests,
  ...furtherStoryTests,
];

/** A site, other than the first, below this probability asks for no test of its own. Judged. */
const leastSiteProbability = 0.15;
/** Likewise a cause, by the tier of the test: what hurts or costs much is for causes that are likely. Judged. */
const leastCauseProbability: Readonly<Record<WorkupItem['tier'], number>> = { 1: 0.05, 2: 0.08, 3: 0.25 };
/** The same where a cause has neither a place nor a story to rest on: history and examination come first. Judged. */
const leastCauseOfAGuess = 0.25;
/** Where no place is named, a site from this probability asks for its tests, once something was found. Judged. */
const leastUnnamedProbability = 0.3;
/** Up to this probability that nothing is wrong a finding without a story asks for tests as well. Judged. */
const mayBeNothing = 0.2;
const longestList = 16;

/** The most pressing first. */
export const priorityOrder: Readonly<Record<WorkupItem['priority'], number>> = { stat: 0, urgent: 1, routine: 2 };

/** By its reason, which no other rule gives. */
const places: ReadonlyMap<string, number> = new Map(workupRules.map(({ because }, place) => [because, place]));

/** A leading cause must be at least this likely before guidance on it keeps a test back. Judged. */
const leadingFrom = 0.4;

/** From this probability on a cause is as good as named: its own tests come first, before those that would find another. Judged. */
const asGoodAsNamed = 0.7;

/** Tests that can tell something of some people alone, whichever rule asks. */
const onlyWhere: ReadonlyMap<string, (facts: BedsideFacts) => boolean> = new Map([
  ['pregnancy-test', mayBePregnant],
  // A forced breath is blown on request, from five or six years on.
  ['vital-capacity', canBlow],
  ['respiratory-pressures', canBlow],
]);

function canBlow({ exam }: BedsideFacts): boolean {
  return (exam.person.ageYears ?? 18) >= 5;
}

/** Imaging that the whole spine includes. */
const partsOfTheSpine = ['mri-cervical-spine', 'mri-lumbar-spine'] as const;

/** The whole spine stands for its parts: where it is asked for, and where both ends of it are. */
function imageTheSpineOnce(best: Map<string, WorkupRule>, done: ReadonlySet<string>): void {
  const parts = partsOfTheSpine.flatMap((key) => best.get(key) ?? []);
  const [one, other] = parts;
  if (one !== undefined && other !== undefined && !partsOfTheSpine.some((part) => done.has(part))) {
    const first = isMorePressing(other, one) ? other : one;
    const known = best.get('mri-whole-spine');
    if (known === undefined || isMorePressing(first, known)) best.set('mri-whole-spine', first);
  }
  const whole = best.get('mri-whole-spine');
  for (const part of partsOfTheSpine) {
    const own = best.get(part);
    if (whole !== undefined && own !== undefined && !isMorePressing(own, whole)) best.delete(part);
  }
}

/** What to do next, what of it goes out as a proposal, and what guidance says is not needed. */
export type Workup = Pick<Assessment, 'workup' | 'proposed' | 'notChosen' | 'needless'>;

/**
 * The tests to consider, most pressing first: by red flag, by kind of site and by cause. A test whose result came with
 * the exam is left out, and so is one that guidance finds needless, unless a
 * red flag asks for it; one that is unsafe is left out whatever asks. When no place or
 * process is named only a red flag, a cause or a story can ask for a test.
 */
export function proposeWorkup(
  exam: Exam,
  localisation: Localisation,
  causes: readonly RankedCause[],
  redFlags: readonly RedFlag[],
): Workup {
  const done = new Set(exam.results.map((result) => result.key));
  if (imagesOfItsParts.every((part) => done.has(part))) done.add('mri-whole-spine');
  const facts = bedsideFacts(exam, localisation);
  const situation: Situation = {
    facts,
    isGuess: localisation.conclusion === 'insufficient' && !hasStory(exam),
    sites: namesAPlace(localisation.conclusion) ? consideredSites(localisation) : unnamedSites(facts),
    causes: new Map(causes.map((cause) => [cause.key, cause.probability])),
    named: leadingCause(causes, asGoodAsNamed),
    present: new Set(redFlags.filter((flag) => flag.state === 'present').map((flag) => flag.key)),
    undecided: new Set(redFlags.filter((flag) => flag.state === 'not-assessable').map((flag) => flag.key)),
  };
  const { named } = situation;
  const pressing = redFlags.filter(({ state }) => state === 'present').map(({ key }) => key);
  const leading = leadingCause(causes, leadingFrom);
  /** Tests that the leading cause asks for: a long list is not cut at their cost. */
  const ofTheLeadingCause = new Set<string>();
  const best = new Map<string, WorkupRule>();
  for (const written of [...workupRules, ...rootRules(situation.sites)]) {
    const rule = inForce(written, situation);
    if (rule === null) continue;
    const isOfLeading = isOf(rule, leading);
    for (const test of rule.tests) {
      if (isOfLeading) ofTheLeadingCause.add(test);
      const known = best.get(test);
      const isOfAFlagBefore =
        known !== undefined && !isMorePressing(known, rule) && isOfEarlierFlag(rule, known, pressing);
      if (known === undefined || isMorePressing(rule, known) || isOfAFlagBefore) best.set(test, rule);
    }
  }
  imageTheSpineOnce(best, done);
  const withheld = withheldTests.filter((rule) => isWithheld(rule, leading, localisation, facts));
  const isNeedless = (test: string, { flags }: WorkupRule): boolean =>
    withheld.some(
      ({ tests, outranksFlags }) =>
        (tests === 'all' || tests.includes(test)) && (outranksFlags === true || !asksByFlag(flags, situation)),
    );
  const wanted = investigations
    .flatMap((test) => {
      const rule = best.get(test.key);
      const isLeftOut =
        rule === undefined ||
        onlyWhere.get(test.key)?.(facts) === false ||
        test.results.some((result) => done.has(result)) ||
        isNeedless(test.key, rule);
      return isLeftOut ? [] : [{ test, rule }];
    })
    .toSorted(
      (a, b) =>
        priorityOrder[a.rule.priority] - priorityOrder[b.rule.priority] ||
        a.rule.tier - b.rule.tier ||
        placeOf(a.rule, pressing, named) - placeOf(b.rule, pressing, named),
    );
  const workup = cutTo(
    longestList,
    wanted,
    ({ test, rule }) =>
      ofTheLeadingCause.has(test.key) ||
      isOfTheBrainItself(test.key, rule) ||
      isFirstOfAFlag(test.key, rule, situation.present),
  ).map(({ test, rule }) => ({
    key: test.key,
    label: test.label,
    code: investigationCoding(test),
    tier: rule.tier,
    priority: rule.priority,
    because: rule.because,
    source: citation(rule.source),
    ...guidanceOf(rule.source.work),
  }));
  const proposed = new Set(workup.map(({ key }) => key));
  const against = (test: Investigation): readonly string[] => [
    ...(test.results.some((result) => done.has(result)) ? ['a result of it came with the examination'] : []),
    ...withheld.filter(({ tests }) => tests === 'all' || tests.includes(test.key)).map(({ because }) => because),
  ];
  return {
    workup,
    ...chooseTests(exam.requests, workup, against),
    needless: withheld
      .filter(({ tests }) => tests === 'all' || !tests.some((test) => proposed.has(test)))
      .map(({ key, label, because, source }) => ({ key, label, because, source: citation(source) })),
  };
}

/** The first cause, where it is at least so likely. */
function leadingCause([first]: readonly RankedCause[], least: number): string | undefined {
  return first !== undefined && first.probability >= least ? first.key : undefined;
}

/** Whether a rule asks for tests of this cause. */
function isOf({ causes }: Pick<WorkupRule, 'causes'>, cause: string | undefined): boolean {
  return cause !== undefined && causes?.includes(cause) === true;
}

/** Of two rules that press alike that of the flag which is said first gives the reason and the place in the list. */
function isOfEarlierFlag(rule: WorkupRule, known: WorkupRule, pressing: readonly string[]): boolean {
  const flagOf = ({ flags }: WorkupRule) => {
    const place = pressing.findIndex((key) => flags?.includes(key));
    return place === -1 ? pressing.length : place;
  };
  return flagOf(rule) < flagOf(known);
}

/** Tests of the most pressing red flag first, then those of the named cause, then by place in the tables; rules that are made for one exam come last. */
function placeOf(rule: WorkupRule, pressing: readonly string[], named: string | undefined): number {
  const flag = pressing.findIndex((key) => rule.flags?.includes(key));
  if (flag !== -1) return flag;
  const place = places.get(rule.because) ?? workupRules.length;
  return pressing.length + place + (isOf(rule, named) ? 0 : workupRules.length + 1);
}

/** The first of a list; what must not be missing comes in place of the last ones. */
function cutTo<Item>(length: number, list: readonly Item[], isKept: (item: Item) => boolean): readonly Item[] {
  const kept = new Set(list.filter(isKept).slice(0, length));
  let free = length - kept.size;
  return list.filter((item) => {
    if (kept.has(item)) return true;
    free -= 1;
    return free >= 0;
  });
}

/** The image and the tracing of a brain that is thought to be ill are not lost to a long list of blood tests. */
function isOfTheBrainItself(test: string, { tier, priority }: WorkupRule): boolean {
  return (test === 'mri-brain' || test === 'electroencephalogram') && tier === 1 && priority !== 'routine';
}

/** What a raised flag asks for first and at once is done, however many flags are raised. */
function isFirstOfAFlag(test: string, { flags, tests, priority }: WorkupRule, present: ReadonlySet<string>): boolean {
  return priority === 'stat' && tests[0] === test && (flags?.some((flag) => present.has(flag)) ?? false);
}

function guidanceOf(work: WorkKey): { readonly guidance?: string } {
  const address = workAddresses[work];
  return address === undefined ? {} : { guidance: address };
}

function asksByFlag(flags: readonly string[] | undefined, { present, undecided }: Situation): boolean {
  return flags?.some((flag) => present.has(flag) || undecided.has(flag)) ?? false;
}

/** By the leading cause, or by the leading site where a place is named. */
function isWithheld(
  rule: WithholdRule,
  leading: string | undefined,
  { conclusion, localisations: [site] }: Localisation,
  facts: BedsideFacts,
): boolean {
  const byCause = isOf(rule, leading);
  const bySite = site !== undefined && namesAPlace(conclusion) && (rule.sites?.includes(site.site) ?? false);
  const byItself = rule.causes === undefined && rule.sites === undefined;
  return (byCause || bySite || byItself) && (rule.when?.(facts) ?? true);
}

interface Situation {
  readonly facts: BedsideFacts;
  /** Whether too little was examined to name a place, and no story was told. */
  readonly isGuess: boolean;
  readonly sites: readonly RankedLocalisation[];
  /** Probability of each cause considered, by key. */
  readonly causes: ReadonlyMap<string, number>;
  /** The cause that is as good as named. */
  readonly named: string | undefined;
  readonly present: ReadonlySet<string>;
  readonly undecided: ReadonlySet<string>;
}

function hasStory({ onset, course, history }: Exam): boolean {
  return onset.pace !== undefined || course !== undefined || history.some(({ present }) => present);
}

function consideredSites(localisation: Localisation): readonly RankedLocalisation[] {
  return localisation.localisations.filter((site, index) => index === 0 || site.probability >= leastSiteProbability);
}

/**
 * Where something was found, the likeliest place is looked into though it cannot be named yet: with a story, and without one
 * where it is as good as certain that something is wrong.
 */
function unnamedSites({ exam, localisation, abnormalFindings }: BedsideFacts): readonly RankedLocalisation[] {
  const { conclusion, localisations } = localisation;
  if (conclusion !== 'insufficient' || abnormalFindings.length === 0) return [];
  const nothing = localisations.find(({ kind }) => kind === 'none')?.probability ?? 0;
  return hasStory(exam) || nothing <= mayBeNothing
    ? localisations.filter(({ probability }) => probability >= leastUnnamedProbability)
    : [];
}

/** The rule with the priority that it has here, or null when it does not apply. */
function inForce(rule: WorkupRule, situation: Situation): WorkupRule | null {
  const { facts, isGuess, sites, causes, named, present, undecided } = situation;
  const least = isGuess ? leastCauseOfAGuess : leastCauseProbability[rule.tier];
  if (rule.when !== undefined && !rule.when(facts)) return null;
  if (rule.flags?.some((flag) => present.has(flag)) === true) return rule;
  const applies =
    rule.byStory === true ||
    (rule.causes?.some((cause) => (causes.get(cause) ?? 0) >= least) ?? false) ||
    sites.some((site) => (rule.sites?.includes(site.site) ?? false) || (rule.kinds?.includes(site.kind) ?? false));
  // What presses because of a red flag presses less where only a cause or a site asks.
  const isCalm = rule.flags !== undefined && rule.priority === 'stat';
  if (applies) {
    const tier = isOf(rule, named) ? (rule.tierOfTheNamed ?? rule.tier) : rule.tier;
    return { ...rule, tier, priority: isCalm ? 'urgent' : rule.priority };
  }
  if (rule.flags?.some((flag) => undecided.has(flag)) !== true) return null;
  return { ...rule, priority: rule.whenUndecided ?? (rule.priority === 'stat' ? 'urgent' : rule.priority) };
}

function isMorePressing(a: WorkupRule, b: WorkupRule): boolean {
  const difference = priorityOrder[a.priority] - priorityOrder[b.priority];
  return difference < 0 || (difference === 0 && a.tier < b.tier);
}

/** A root lesion is imaged at its own level; the guideline keeps imaging for weakness, progression or six weeks of pain. */
function rootRules(sites: readonly RankedLocalisation[]): readonly WorkupRule[] {
  return sites
    .filter((site) => site.kind === 'root')
    .map((site) => {
      const region = spinalRegion(site.level);
      const test =
        region === 'cervical'
          ? 'mri-cervical-spine'
          : region === 'lumbosacral'
            ? 'mri-lumbar-spine'
            : 'mri-whole-spine';
      return {
        tests: [test],
        sites: [site.site],
        tier: 1,
        priority: 'routine',
        because: 'weakness, progression or more than six weeks of pain justify imaging of the root',
        source: recalled('nice-ng59', 'imaging'),
      };
    });
}
