import type { BedsideFacts } from '../bedside-facts.ts';
import { centralSigns, oneSidedWeakness, onOneSide } from './sudden-deficit.ts';

/** What a mass brings beside the deficit, or who is known to grow them. */
const ofAMass = [
  ...['headache', 'new-headache', 'morning-headache', 'vomiting', 'seizure', 'transient-visual-loss', 'diplopia'],
  ...['cancer', 'lymphoma', 'immunosuppression', 'hiv-infection'],
] as const;

/** Medicines of which too much, or too long, takes both halves of the cerebellum. */
const poisonsOfTheCerebellum = ['phenytoin', 'carbamazepine', 'lithium', 'metronidazole', 'amiodarone'] as const;

/**
 * A trouble of the brain that spreads over both halves alike, in one of whom nothing is told that masses bring: a cerebellum
 * under a medicine that poisons it, a failing mind with jerks, or stiffness and slowness that hold nearly all of the probability.
 * A mass begins in one place and shows there first.
 */
export function isOfBothHalves(facts: BedsideFacts): boolean {
  if (facts.told(...ofAMass).length > 0) return false;
  if (facts.query.hasAbnormal('cranial-nerves/optic-disc-swelling')) return false;
  return isPoisonedCerebellum(facts) || isFailingWithJerks(facts) || isStiffAndSlow(facts);
}

function isPoisonedCerebellum(facts: BedsideFacts): boolean {
  const { query, told } = facts;
  const swaying = query.abnormalWhere(({ item }) => item.key === 'ataxic' || item.probe.kind === 'cerebellar');
  return told(...poisonsOfTheCerebellum).length > 0 && swaying.length > 0 && !isOfOneSide(facts);
}

function isFailingWithJerks(facts: BedsideFacts): boolean {
  const jerks = facts.query.abnormal(['involuntary-movements/myoclonus', 'involuntary-movements/exaggerated-startle']);
  return jerks.length > 0 && facts.kindProbability('encephalopathy') >= 0.8 && !isOfOneSide(facts);
}

function isStiffAndSlow({ localisation: { localisations } }: BedsideFacts): boolean {
  const [first] = localisations;
  return first?.site === 'akinetic-rigid-syndrome' && first.probability >= 0.9;
}

/** Weakness, a plain sign of the brain or clumsiness of one side alone. */
function isOfOneSide(facts: BedsideFacts): boolean {
  const clumsy = facts.query
    .abnormalWhere(({ item }) => item.probe.kind === 'cerebellar')
    .filter(({ side }) => side === 'left' || side === 'right');
  const central = centralSigns(facts.query).filter(({ side }) => side === 'left' || side === 'right');
  return oneSidedWeakness(facts).length + onOneSide(central).length + onOneSide(clumsy).length > 0;
}
