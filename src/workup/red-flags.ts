import type { RankedCause, Reason } from '../causes/ranked-cause.ts';
import type { Exam } from '../exam/exam.ts';
import { citation } from '../kernel/citation.ts';
import type { Localisation } from '../localisation/localisation.ts';
import type { RedFlag, Urgency } from './assessment.ts';
import { type BedsideFacts, bedsideFacts } from './bedside-facts.ts';
import { actionHere } from './red-flags/actions-by-case.ts';
import { brainFlags } from './red-flags/brain-flags.ts';
import { earAndInfantFlags } from './red-flags/ear-and-infant-flags.ts';
import { eyeFlags } from './red-flags/eye-flags.ts';
import { harmfulMedicineFlags } from './red-flags/harmful-medicines.ts';
import { headFlags } from './red-flags/head-flags.ts';
import { likelihoodOfFlags, raisedByCauses } from './red-flags/likely-emergencies.ts';
import { muscleAndNerveFlags } from './red-flags/muscle-and-nerve-flags.ts';
import { neuromuscularFlags } from './red-flags/neuromuscular-flags.ts';
import { isQuietHere } from './red-flags/quiet-here.ts';
import { shownBy } from './red-flags/results-that-raise.ts';
import { present, type RedFlagRule, type Verdict } from './red-flags/rule.ts';
import { spinalFlags } from './red-flags/spinal-flags.ts';
import { toldBy } from './red-flags/stories-that-raise.ts';
import { systemicFlags } from './red-flags/systemic-flags.ts';

/** Every red flag that the service knows, in the order in which equals are listed. */
export const redFlagRules: readonly RedFlagRule[] = [
  ...brainFlags,
  ...neuromuscularFlags,
  ...spinalFlags,
  ...eyeFlags,
  ...headFlags,
  ...muscleAndNerveFlags,
  ...systemicFlags,
  ...earAndInfantFlags,
  ...harmfulMedicineFlags,
];

/** Flags that say nothing more once the other is raised: what threatens has come. */
const partOf: ReadonlyMap<string, string> = new Map([
  ['threatened-cauda-equina', 'suspected-cauda-equina-syndrome'],
  ['slow-weakness-with-breathlessness', 'threatened-myasthenic-crisis'],
  ['slow-weakness-with-swallowing-trouble', 'threatened-myasthenic-crisis'],
]);

/** What kills or maims within minutes is said first among flags that are as urgent. */
const lifeFirst: ReadonlySet<string> = new Set([
  'status-epilepticus',
  'hypoglycaemia-with-deficit',
  'dangerous-sodium-or-calcium',
  'neuromuscular-respiratory-failure',
  'high-cord-lesion-with-breathing-at-risk',
]);

const poisoning = 'suspected-poisoning';
/** Days within which a poison kills before it is found; metals take longer. Judged. */
const poisonOfDays = 14;

/** From this probability of the causes behind it a flag comes before others of its urgency, so that its action is said first. Judged. */
const leadsFrom = 0.5;

const stateOrder: Readonly<Record<RedFlag['state'], number>> = { present: 0, 'not-assessable': 1, absent: 2 };
const urgencyOrder: Readonly<Record<Urgency, number>> = { immediate: 0, 'same-day': 1, urgent: 2 };

/**
 * The red flags that matter for this exam: those whose trigger is met, those that were looked for and are absent, and
 * those that cannot be decided because something was not examined. They are computed from findings, history and results;
 * neither the causes nor the probability of a benign site can remove one. Causes that are likely enough add those that no
 * rule has raised (`likely-emergencies.ts`). Present ones come first, the most urgent first, and of these what is likeliest to be behind them.
 *
 * @param causes as `rankCauses` gives them; with none the flags are those of the rules alone
 */
export function assessRedFlags(
  exam: Exam,
  localisation: Localisation,
  causes: readonly RankedCause[] = [],
): readonly RedFlag[] {
  const facts = bedsideFacts(exam, localisation);
  const verdicts = redFlagRules.map((rule) => ({ rule, verdict: verdictOf(rule, facts) }));
  const raised = verdicts.filter(({ verdict }) => verdict?.state === 'present').length;
  const likely = raisedByCauses(facts, causes, raised);
  const flags = verdicts.flatMap(({ rule, verdict: usual }): readonly RedFlag[] => {
    const reasons = usual?.state === 'present' ? undefined : likely.get(rule.key);
    const verdict = reasons === undefined ? usual : present(reasons);
    if (verdict === null) return [];
    const { action, source } = (verdict.state === 'present' ? actionHere(rule.key, facts) : undefined) ?? rule;
    return [
      {
        key: rule.key,
        label: rule.label,
        state: verdict.state,
        urgency: verdict.urgency ?? rule.urgency,
        because: distinct(verdict.because),
        action,
        source: citation(source),
      },
    ];
  });
  const met = new Set(flags.filter(({ state }) => state === 'present').map(({ key }) => key));
  const own = flags.filter(({ key }) => !met.has(partOf.get(key) ?? ''));
  const likelihoods = likelihoodOfFlags(causes);
  const lead = ({ key, state }: RedFlag): number => {
    const likelihood = likelihoods.get(key) ?? 0;
    return state === 'present' && likelihood >= leadsFrom ? likelihood : 0;
  };
  // A poison that was measured, or is as good as known and of days, kills while others are looked for.
  const isKnownPoison = (key: string): boolean =>
    key === poisoning &&
    (shownBy(key, facts).length > 0 ||
      (facts.beganWithin(poisonOfDays) === 'yes' && (likelihoods.get(key) ?? 0) >= leadsFrom));
  const isOfMinutes = ({ key, state }: RedFlag): boolean =>
    state === 'present' && (lifeFirst.has(key) || isKnownPoison(key));
  return own.toSorted(
    (a, b) =>
      stateOrder[a.state] - stateOrder[b.state] ||
      urgencyOrder[a.urgency] - urgencyOrder[b.urgency] ||
      Number(isOfMinutes(b)) - Number(isOfMinutes(a)) ||
      lead(b) - lead(a),
  );
}

/** A finding or statement that several clauses of a rule name is one reason. */
const distinct = (reasons: readonly Reason[]): readonly Reason[] => [
  ...new Map(reasons.map((reason) => [`${reason.pointer} ${reason.text}`, reason])).values(),
];

/** What the rule finds in the usual record; where that does not raise the flag, a result or a story may that guidance acts on. */
function verdictOf(rule: RedFlagRule, facts: BedsideFacts): Verdict | null {
  if (isQuietHere(rule.key, facts)) return null;
  const usual = rule.check(facts);
  if (usual?.state === 'present') return usual;
  const further = [...shownBy(rule.key, facts), ...toldBy(rule.key, facts)];
  return further.length > 0 ? present(further) : usual;
}
