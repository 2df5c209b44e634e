import type { BedsideFacts } from '../bedside-facts.ts';
import { clouded } from './consciousness.ts';
import { trueFever } from './fever.ts';

/**
 * A feverish child of half a year to six years who has had a fit, whose mind was tried and is clear again, and in whom nothing
 * was found or told that an infection of brain or meninges brings. A child who was not looked at is not meant.
 */
export function isSimpleFebrileSeizure(facts: BedsideFacts): boolean {
  const { ageYears } = facts.exam.person;
  const isOfThatAge = ageYears !== undefined && ageYears >= 0.5 && ageYears < 6;
  if (!isOfThatAge || facts.told('seizure').length === 0 || trueFever(facts).length === 0) return false;
  const isMindClear = facts.query.tested([...clouded]).length > 0;
  const nothingFound = facts.abnormalFindings.every(({ item }) => item.key === 'fever');
  return isMindClear && nothingFound && facts.told(...ofAnInfectedBrain).length === 0 && facts.beganWithin(3) === 'yes';
}

const ofAnInfectedBrain = [
  ...['ongoing-seizure', 'headache', 'new-headache', 'vomiting', 'rash', 'photophobia', 'behaviour-change'],
  ...['speech-difficulty', 'immunosuppression', 'hiv-infection', 'ventricular-shunt', 'travel', 'epilepsy'],
] as const;
