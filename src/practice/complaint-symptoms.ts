import { movementTable } from '../anatomy/movements.ts';
import { itemId } from '../exam/catalogue/item.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';

/** Symptoms of the history that a complaint is, by the item at which it would show. */
export const symptomsOfItem: Readonly<Record<string, readonly string[]>> = {
  'higher-function/memory-impairment': ['cognitive-change'],
  'higher-function/executive-dysfunction': ['cognitive-change'],
  'higher-function/confusion': ['cognitive-change'],
  'higher-function/expressive-aphasia': ['speech-difficulty'],
  'higher-function/receptive-aphasia': ['speech-difficulty'],
  'higher-function/apathy': ['behaviour-change'],
  'higher-function/disinhibition': ['behaviour-change'],
  'cranial-nerves/anosmia': ['loss-of-smell'],
  'cranial-nerves/reduced-visual-acuity': ['visual-loss'],
  'cranial-nerves/central-scotoma': ['visual-loss'],
  'cranial-nerves/altitudinal-field-defect': ['visual-loss'],
  'cranial-nerves/homonymous-hemianopia': ['visual-loss'],
  'cranial-nerves/bitemporal-hemianopia': ['visual-loss'],
  'cranial-nerves/ptosis': ['drooping-eyelids'],
  'cranial-nerves/fatigable-diplopia': ['diplopia'],
  'cranial-nerves/diplopia': ['diplopia'],
  'cranial-nerves/hearing-loss': ['hearing-loss'],
  'cranial-nerves/dysphagia': ['dysphagia'],
  'cranial-nerves/dysphonia': ['voice-change'],
  'cranial-nerves/nasal-speech': ['voice-change'],
  'cranial-nerves/dysarthria': ['slurred-speech'],
  'involuntary-movements/resting-tremor': ['tremor'],
  'involuntary-movements/postural-tremor': ['tremor'],
  'involuntary-movements/action-tremor': ['tremor'],
  'involuntary-movements/bradykinesia': ['slowness'],
  'involuntary-movements/chorea': ['involuntary-movements'],
  'involuntary-movements/hemiballism': ['involuntary-movements'],
  'involuntary-movements/dystonia': ['involuntary-movements'],
  'coordination/finger-nose': ['clumsiness'],
  'gait/ataxic': ['unsteadiness'],
  'gait/sensory-ataxic': ['unsteadiness', 'worse-in-the-dark'],
  'gait/shuffling': ['difficulty-walking'],
  'gait/magnetic': ['difficulty-walking'],
  'gait/spastic': ['difficulty-walking', 'stiffness'],
  'gait/rising-from-chair': ['difficulty-with-stairs'],
  'gait/stairs': ['difficulty-with-stairs'],
  'sphincters/urinary-retention': ['bladder-disturbance'],
  'sphincters/urinary-urgency': ['bladder-disturbance'],
  'sphincters/saddle-anaesthesia': ['saddle-numbness'],
  'autonomic/orthostatic-hypotension': ['light-headed-on-standing'],
  'autonomic/breathlessness-lying-flat': ['orthopnoea'],
  'autonomic/dry-mouth': ['dry-mouth'],
  'autonomic/hyperhidrosis': ['altered-sweating'],
};

/** What the history states of somebody with a complaint, so that nothing complained of is denied. */
export function complaintSymptoms({ item }: ProbeTarget): readonly string[] {
  const { probe } = item;
  if (probe.kind === 'sensation') return ['numbness'];
  if (probe.kind !== 'movement') return symptomsOfItem[itemId(item)] ?? [];
  const region = movementTable.get(probe.movement)?.region;
  if (region === 'upper-limbs') return ['weakness', 'arm-weakness'];
  return region === 'lower-limbs' ? ['weakness', 'leg-weakness'] : ['weakness'];
}
