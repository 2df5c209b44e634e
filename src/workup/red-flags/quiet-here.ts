import type { BedsideFacts } from '../bedside-facts.ts';
import { feverReasons } from './fever.ts';
import { isPoisonedEvenly } from './sudden-deficit.ts';

/** What a fit under way shows by itself. */
const ofAFit: ReadonlySet<string> = new Set([
  ...['forced-gaze-deviation', 'seizure-seen', 'drowsiness', 'stupor', 'coma', 'confusion', 'unresponsiveness'],
  ...['dilated-pupil', 'sluggish-pupil', 'drooling', 'resting-tachycardia', 'generalised-spasms'],
]);

/**
 * A fit that has not stopped in somebody known to have fits, without fever or a headache before it, and with nothing but what a fit
 * does: eyes driven aside, a clouded mind, an extensor toe. What is still there when it has been stopped is looked into then.
 */
function isOfAKnownFit(facts: BedsideFacts): boolean {
  const { told, abnormalFindings } = facts;
  if (told('epilepsy').length === 0 || told('ongoing-seizure').length === 0) return false;
  const other = told(
    ...['headache', 'new-headache', 'thunderclap-headache', 'behaviour-change', 'head-injury', 'anticoagulant'],
    ...['immunosuppression', 'hiv-infection', 'cancer', 'atrial-fibrillation', 'speech-difficulty'],
  );
  const isOwn = abnormalFindings.every(({ item }) => ofAFit.has(item.key) || item.section === 'plantars');
  return isOwn && other.length === 0 && feverReasons(facts).length === 0;
}

/** Whether another danger that was found accounts for what would raise this flag by its rule or its stories. */
export function isQuietHere(flag: string, facts: BedsideFacts): boolean {
  if (flag === 'suspected-stroke') return isPoisonedEvenly(facts) || isOfAKnownFit(facts);
  return flag === 'suspected-encephalitis' && isOfAKnownFit(facts);
}
