import { findingReasons } from '../../causes/reasons.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { clouded } from './consciousness.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { trueFever } from './fever.ts';
import { present, type Verdict } from './rule.ts';
import { onOneSide } from './sudden-deficit.ts';

const headOrEar = [
  'headache',
  'new-headache',
  'morning-headache',
  'orthostatic-headache',
  'thunderclap-headache',
  'ear-pain',
  'sinus-or-ear-infection',
] as const;

/** Swollen discs, a headache, an ear or sinus, a stiff neck, or childhood: vomiting comes of these by itself. */
function isPressedOrStiff(facts: BedsideFacts): boolean {
  const { query, exam } = facts;
  if ((exam.person.ageYears ?? 16) < 16) return facts.told('weight-loss', 'cancer').length === 0;
  return (
    query.hasAbnormal('cranial-nerves/optic-disc-swelling') ||
    query.hasAbnormal('special-tests/neck-stiffness') ||
    facts.told(...headOrEar).length > 0
  );
}

/** Two of four: poor diet, eye signs, cerebellar signs, altered mental state, with a reason to lack thiamine; or the triad. */
export function checkWernicke(facts: BedsideFacts): Verdict | null {
  const { pace } = facts.exam.onset;
  if (pace === 'chronic' || pace === 'hyperacute') return null;
  const starving = facts.told('malnutrition', 'bariatric-surgery', 'gastrectomy', 'hyperemesis-gravidarum');
  // Vomiting that came with the illness has emptied no store of thiamine yet, nor is it hunger where pressure or meninges bring it.
  const isOfTheHead = starving.length === 0 && facts.told('pregnancy').length === 0 && isPressedOrStiff(facts);
  const vomiting = facts.beganWithin(5) === 'yes' || isOfTheHead ? [] : facts.told('vomiting');
  const risk = [...vomiting, ...facts.told('alcohol-excess', 'malabsorption'), ...starving];
  const { query } = facts;
  const diet = [...vomiting, ...starving, ...facts.told('weight-loss')];
  const eyes = query.abnormal([
    ...eyeMovementSigns,
    'cranial-nerves/eye-depression-weakness',
    'cranial-nerves/gaze-palsy',
    'cranial-nerves/nystagmus',
    'cranial-nerves/gaze-evoked-nystagmus',
    'cranial-nerves/vertical-nystagmus',
    'cranial-nerves/upbeat-nystagmus',
    'cranial-nerves/pendular-nystagmus',
    'cranial-nerves/internuclear-ophthalmoplegia',
  ]);
  const clumsy = query.abnormalWhere(
    ({ item, value }) => item.probe.kind === 'cerebellar' && value !== 'impaired-by-weakness',
  );
  // Thiamine fails the middle of the cerebellum: the limbs of one side alone are a lesion of that side.
  const isOfOneSide = onOneSide(clumsy).length > 0;
  const cerebellar = [...(isOfOneSide ? [] : clumsy), ...query.abnormal(['gait/ataxic'])];
  const mental = query.abnormal([...clouded, 'higher-function/memory-impairment', 'higher-function/amnesia']);
  const brainMet = [eyes, cerebellar, mental].filter((signs) => signs.length > 0).length;
  // The whole triad needs no reason to lack thiamine: the reason is often not told.
  const isClouded = mental.some(({ item }) => item.key !== 'memory-impairment');
  const isTriad = brainMet === 3 && isClouded && facts.beganWithin(28) !== 'no' && trueFever(facts).length === 0;
  // In a drinker one sign of the three, newly come, is treated. Source: NICE CG100, recalled.
  const drinker = facts.told('alcohol-excess');
  const isPresumed = drinker.length > 0 && eyes.length + mental.length > 0 && facts.beganWithin(28) === 'yes';
  if (!isTriad && !isPresumed && (risk.length === 0 || brainMet === 0 || brainMet + (diet.length > 0 ? 1 : 0) < 2))
    return null;
  return present([...risk, ...findingReasons([...eyes, ...cerebellar, ...mental], 5)]);
}
