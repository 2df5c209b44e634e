import { spinalRegion } from '../causes/rank-causes.ts';
import type { RankedCause } from '../causes/ranked-cause.ts';
import type { Exam } from '../exam/exam.ts';
import { citation } from '../kernel/citation.ts';
import { recalled } from '../kernel/cite.ts';
import type { Coding } from '../kernel/coding.ts';
import { type Localisation, namesAPlace, type RankedLocalisation } from '../localisation/localisation.ts';
import { systems } from '../terminology/systems.ts';
import type { RedFlag, WorkupItem } from './assessment.ts';
import { type Investigation, investigations } from './investigations.ts';
import { neuropathyTests } from './neuropathy-tests.ts';
import { redFlagTests } from './red-flag-tests.ts';
import { siteTests } from './site-tests.ts';
import type { WorkupRule } from './workup-rule.ts';

/** Of rules that press equally the first gives the reason. */
export const workupRules: readonly WorkupRule[] = [...redFlagTests, ...neuropathyTests, ...siteTests];

/** A site, other than the first, below this probability asks for no test of its own. Judged. */
const leastSiteProbability = 0.15;
/** Likewise a cause, by the tier of the test: what hurts or costs much is for causes that are likely. Judged. */
const leastCauseProbability: Readonly<Record<WorkupItem['tier'], number>> = { 1: 0.05, 2: 0.08, 3: 0.25 };
const longestList = 16;

const priorityOrder: Readonly<Record<WorkupItem['priority'], number>> = { stat: 0, urgent: 1, routine: 2 };

/**
 * The tests to consider, most pressing first: by red flag, by kind of site and by cause. A test whose result came with
 * the exam is left out. When no place or process is named only a red flag can ask for a test.
 */
export function proposeWorkup(
  exam: Exam,
  localisation: Localisation,
  causes: readonly RankedCause[],
  redFlags: readonly RedFlag[],
): readonly WorkupItem[] {
  const done = new Set(exam.results.map((result) => result.key));
  const situation: Situation = {
    sites: namesAPlace(localisation.conclusion) ? consideredSites(localisation) : [],
    causes: new Map(causes.map((cause) => [cause.key, cause.probability])),
    present: new Set(redFlags.filter((flag) => flag.state === 'present').map((flag) => flag.key)),
    undecided: new Set(redFlags.filter((flag) => flag.state === 'not-assessable').map((flag) => flag.key)),
  };
  const best = new Map<string, WorkupRule>();
  for (const written of [...workupRules, ...rootRules(situation.sites)]) {
    const rule = inForce(written, situation);
    if (rule === null) continue;
    for (const test of rule.tests) {
      const known = best.get(test);
      if (known === undefined || isMorePressing(rule, known)) best.set(test, rule);
    }
  }
  return investigations
    .flatMap((test) => {
      const rule = best.get(test.key);
      return rule === undefined || test.results.some((result) => done.has(result)) ? [] : [{ test, rule }];
    })
    .toSorted((a, b) => priorityOrder[a.rule.priority] - priorityOrder[b.rule.priority] || a.rule.tier - b.rule.tier)
    .slice(0, longestList)
    .map(({ test, rule }) => ({
      key: test.key,
      label: test.label,
      code: investigationCoding(test),
      tier: rule.tier,
      priority: rule.priority,
      because: rule.because,
      source: citation(rule.source),
    }));
}

/** LOINC where a code says the same, else the local code. */
function investigationCoding(test: Investigation): Coding {
  return test.loinc === undefined
    ? { system: systems.investigation, code: test.key, display: test.label }
    : { system: systems.loinc, code: test.loinc.code, display: test.loinc.display };
}

interface Situation {
  readonly sites: readonly RankedLocalisation[];
  /** Probability of each cause considered, by key. */
  readonly causes: ReadonlyMap<string, number>;
  readonly present: ReadonlySet<string>;
  readonly undecided: ReadonlySet<string>;
}

function consideredSites(localisation: Localisation): readonly RankedLocalisation[] {
  return localisation.localisations.filter((site, index) => index === 0 || site.probability >= leastSiteProbability);
}

/** The rule with the priority that it has here, or null when it does not apply. */
function inForce(rule: WorkupRule, { sites, causes, present, undecided }: Situation): WorkupRule | null {
  const applies =
    (rule.flags?.some((flag) => present.has(flag)) ?? false) ||
    (rule.causes?.some((cause) => (causes.get(cause) ?? 0) >= leastCauseProbability[rule.tier]) ?? false) ||
    sites.some((site) => (rule.sites?.includes(site.site) ?? false) || (rule.kinds?.includes(site.kind) ?? false));
  if (applies) return rule;
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
