import { isBodySide } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { isOnBothSides } from './cord.ts';
import { centralSigns, isPoisonedEvenly, oneSidedWeakness, onOneSide } from './sudden-deficit.ts';

/** What a mass brings beside the deficit, or who is known to grow them. */
const ofAMass = [
  ...['headache', 'new-headache', 'morning-headache', 'vomiting', 'seizure', 'transient-visual-loss', 'diplopia'],
  ...['cancer', 'lymphoma', 'immunosuppression', 'hiv-infection'],
] as const;

/** Medicines of which too much, or too long, takes both halves of the cerebellum. */
const poisonsOfTheCerebellum = ['phenytoin', 'carbamazepine', 'lithium', 'metronidazole', 'amiodarone'] as const;

/**
 * A trouble of the brain that spreads over both halves alike, in one of whom nothing is told that masses bring: a cerebellum
 * under a medicine that poisons it, or one that has swayed for years, and a failing mind with jerks. A mass begins in one
 * place and shows there first.
 */
export function isOfBothHalves(facts: BedsideFacts): boolean {
  if (isPoisonedEvenly(facts)) return true;
  if (facts.told(...ofAMass).length > 0 || isOfOneSide(facts)) return false;
  if (facts.query.hasAbnormal('cranial-nerves/optic-disc-swelling')) return false;
  return isPoisonedCerebellum(facts) || isOldAtaxia(facts) || isFailingWithJerks(facts);
}

function isPoisonedCerebellum({ query, told }: BedsideFacts): boolean {
  const swaying = query.abnormalWhere(({ item }) => item.key === 'ataxic' || item.probe.kind === 'cerebellar');
  return told(...poisonsOfTheCerebellum).length > 0 && swaying.length > 0;
}

/** Of which nobody has counted the years; a child who sways has a flag of its own. */
function isOldAtaxia({ exam, query }: BedsideFacts): boolean {
  const { pace, durationDays } = exam.onset;
  const clumsy = query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar');
  return (
    pace === 'chronic' && durationDays === undefined && isOnBothSides(clumsy) && (exam.person.ageYears ?? 18) >= 16
  );
}

function isFailingWithJerks({ query }: BedsideFacts): boolean {
  const jerks = query.abnormal(['involuntary-movements/myoclonus', 'involuntary-movements/exaggerated-startle']);
  const mind = query.abnormalWhere(({ item }) => item.section === 'higherFunction');
  return jerks.length > 0 && mind.length > 0;
}

/** Weakness, a plain sign of the brain, clumsiness or jerks of one side alone. */
function isOfOneSide(facts: BedsideFacts): boolean {
  const clumsy = facts.query
    .abnormalWhere(({ item }) => item.probe.kind === 'cerebellar' || item.section === 'involuntaryMovements')
    .filter(({ side }) => isBodySide(side));
  const central = centralSigns(facts.query).filter(({ side }) => isBodySide(side));
  return oneSidedWeakness(facts).length + onOneSide(central).length + onOneSide(clumsy).length > 0;
}
