import type { Reason } from '../../causes/ranked-cause.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** Lids, eyes and limbs that tire on being tried. */
export const tiringSigns = [
  'cranial-nerves/fatigable-ptosis',
  'cranial-nerves/fatigable-diplopia',
  'special-tests/limb-fatigability',
];

/** A myasthenia that is known, or proven by its antibody. */
export function certainMyasthenia({ query, told }: BedsideFacts): readonly Reason[] {
  const antibody = query.result('achr-antibody');
  return [
    ...told('myasthenia-gravis'),
    ...(antibody?.value === 'positive' ? [{ pointer: antibody.pointer, text: antibody.label }] : []),
  ];
}

/** From this probability on the junction alone accounts for weak muscles. Judged. */
const plainly = 0.9;

/**
 * Weakness that the junction accounts for, so that nobody looks for inflamed roots: a myasthenia that is known or proven while the
 * jerks are kept, and an infant whose lids, face and gut have stopped together, in whom inflamed roots are hardly ever met.
 */
export function isOfTheJunction(facts: BedsideFacts): boolean {
  const { query, told, exam } = facts;
  if (facts.kindProbability('junction') < plainly) return false;
  const isFelt = query.abnormalWhere(({ item }) => item.section === 'sensation').length > 0;
  const gut = [...told('bowel-disturbance'), ...query.abnormal(['sphincters/constipation'])];
  const isInfant = (exam.person.ageYears ?? 18) < 1 && gut.length > 0;
  return (certainMyasthenia(facts).length > 0 && facts.reducedReflexes.length === 0 && !isFelt) || isInfant;
}

/** Days within which too much acetylcholine paralyses; the neuropathy of the same poison comes after two weeks. Source: adams-victor, recalled. */
const cholinergicDays = 4;

/** Weak muscles under a poison that was told of, with glands, pupils or a heart that run over. */
export function isCholinergic({ query, told, beganWithin }: BedsideFacts): boolean {
  const wet = query.abnormal([
    'autonomic/hypersecretion',
    'autonomic/hyperhidrosis',
    'autonomic/bradycardia',
    'cranial-nerves/small-pupil',
    'cranial-nerves/drooling',
  ]);
  return told('organophosphate').length > 0 && wet.length > 0 && beganWithin(cholinergicDays) === 'yes';
}
