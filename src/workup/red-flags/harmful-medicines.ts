import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { commonPractice, read, recalled, type Source } from '../../kernel/cite.ts';
import type { Urgency } from '../assessment.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { isOnBothSides } from './cord.ts';
import { certainMyasthenia, tiringSigns } from './junction.ts';
import { present, type RedFlagRule } from './rule.ts';
import { each, none } from './story.ts';

/** A medicine that harms in the illness at hand, with what to do about it. */
interface HarmfulMedicine {
  readonly urgency: Urgency;
  /** Medicine and illness; empty where either is missing. */
  readonly check: (facts: BedsideFacts) => readonly Reason[];
  readonly action: string;
  readonly source: Source;
}

/** The most dangerous first; the first that holds gives the action. */
const harmfulMedicines: readonly HarmfulMedicine[] = [
  {
    urgency: 'same-day',
    check: (facts) => each(facts.told('antipsychotic', 'metoclopramide'), lewyBodies(facts)),
    action:
      'Review the antipsychotic today and stop it if it can be: with Lewy bodies it may bring rigidity, stupor and death; go through anticholinergics as well.',
    source: read('neuroleptic-sensitivity-1992', 'abstract: severe reactions in half of those who were given them'),
  },
  {
    urgency: 'same-day',
    check: (facts) =>
      each(facts.told('fluoroquinolone', 'aminoglycoside', 'macrolide', 'magnesium'), weakJunction(facts)),
    action:
      'Change the antibiotic today, or stop the magnesium, unless nothing else will do: it blocks the junction further; watch the breathing.',
    source: recalled('mg-consensus-2021', 'medicines to avoid'),
  },
  {
    urgency: 'urgent',
    check: (facts) => each(facts.told('tetracycline', 'retinoid'), swollenDiscs(facts)),
    action: 'Stop the tetracycline or retinoid, which raises the pressure in the head by itself.',
    source: recalled('adams-victor', 'idiopathic intracranial hypertension'),
  },
  {
    urgency: 'urgent',
    check: (facts) => each(facts.told('hormonal-contraceptive'), aura(facts)),
    action:
      'Ask whether the contraceptive has an oestrogen; if so, change it to one without: with an aura it raises the risk of stroke.',
    source: read('contraceptives-migraine-2017', 'abstract: combined contraceptives and aura'),
  },
];

/** The flag of a medicine that is dangerous in the illness it meets. */
export const harmfulMedicineFlags: readonly RedFlagRule[] = [
  {
    key: 'harmful-medicine',
    label: 'Medicine that is dangerous in this illness',
    urgency: 'same-day',
    action: 'Review the medicine today with whoever prescribed it.',
    source: commonPractice,
    check: (facts) => {
      const met = harmfulMedicines.flatMap(({ check, urgency }) => {
        const because = check(facts);
        return because.length > 0 ? [{ because, urgency }] : [];
      });
      const [first] = met;
      return first === undefined
        ? null
        : present(
            met.flatMap(({ because }) => because),
            first.urgency,
          );
    },
  },
];

/** What to do about the first that holds. */
export function actionOnMedicine(facts: BedsideFacts): Pick<HarmfulMedicine, 'action' | 'source'> | undefined {
  return harmfulMedicines.find(({ check }) => check(facts).length > 0);
}

/** Slow and stiff limbs with visions and a mind that fails or comes and goes; a disorder of the mind of old sees things without. */
function lewyBodies(facts: BedsideFacts): readonly Reason[] {
  const { query, told } = facts;
  if (told('psychiatric-disorder').length > 0) return none;
  const stiff = query.abnormalWhere(
    ({ item, value }) =>
      item.key === 'bradykinesia' || item.key === 'shuffling' || (item.probe.kind === 'tone' && value === 'rigid'),
  );
  const visions = [
    ...findingReasons(query.abnormal(['higher-function/hallucinations']), 1),
    ...told('hallucinations', 'visual-hallucinations'),
  ];
  const mind = [
    ...findingReasons(query.abnormal(['higher-function/fluctuating-consciousness', 'higher-function/inattention']), 2),
    ...told('cognitive-change', 'fluctuating-symptoms', 'dream-enactment'),
  ];
  return each(visions, findingReasons(stiff, 2), mind);
}

/** Known or proven myasthenia, or muscles that tire where the junction is the place. */
function weakJunction(facts: BedsideFacts): readonly Reason[] {
  const tires = facts.kindProbability('junction') >= 0.8 ? facts.query.abnormal(tiringSigns) : [];
  return [...certainMyasthenia(facts), ...findingReasons(tires, 2)];
}

/** Discs that swell on both sides, of which no image has shown another cause. */
function swollenDiscs({ query }: BedsideFacts): readonly Reason[] {
  const discs = query.abnormal(['cranial-nerves/optic-disc-swelling']);
  const mri = query.result('mri-brain')?.value;
  return isOnBothSides(discs) && (mri === undefined || mri === 'normal') ? findingReasons(discs, 2) : none;
}

/** What spreads over minutes and has gone, with a headache or as before: an aura. */
function aura({ told }: BedsideFacts): readonly Reason[] {
  return each(
    told('spreading-over-minutes'),
    [...told('resolved-deficit', 'similar-attacks-before', 'transient-visual-loss')],
    told('migraine', 'headache', 'family/migraine', 'photophobia'),
  );
}
