import type { MuscleGroup } from '../anatomy/movement.ts';
import { movementTable } from '../anatomy/movements.ts';
import { itemId } from '../exam/catalogue/item.ts';
import { describePlace } from '../exam/describe.ts';
import type { FindingPlace } from '../exam/finding.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';

/** Where somebody feels weak whose muscles of a group are; null for groups that only an examiner finds weak. */
const weakIn: Readonly<Record<MuscleGroup, string | null>> = {
  'neck-flexors': 'neck',
  'neck-extensors': 'neck',
  scapular: 'shoulder',
  shoulder: 'shoulder',
  'upper-arm': 'upper arm',
  'forearm-extensors': 'wrist and fingers',
  'forearm-flexors': 'forearm',
  'finger-flexors': 'grip',
  'hand-thenar': 'hand',
  hand: 'hand',
  respiratory: null,
  trunk: null,
  hip: 'hip and thigh',
  'knee-extensors': 'thigh',
  'knee-flexors': 'thigh',
  'leg-anterior': 'ankle and foot',
  'leg-posterior': 'calf',
  foot: null,
};

/** What people say themselves of signs that are not weakness or numbness of a limb; `{side}` is "left" or "right". */
const inOwnWords: Readonly<Record<string, string>> = {
  'higher-function/drowsiness': 'unusual sleepiness',
  'higher-function/confusion': 'confusion (as the family tells)',
  'higher-function/memory-impairment': 'forgetfulness',
  'higher-function/executive-dysfunction': 'trouble planning everyday tasks',
  'higher-function/expressive-aphasia': 'trouble finding words',
  'higher-function/receptive-aphasia': 'answers that miss the question (as the family tells)',
  'higher-function/alexia': 'trouble reading',
  'higher-function/acalculia': 'trouble with sums',
  'higher-function/neglect': 'bumping into things on the {side}',
  'higher-function/apraxia': 'trouble handling everyday things',
  'higher-function/prosopagnosia': 'trouble recognising faces',
  'higher-function/apathy': 'loss of interest (as the family tells)',
  'higher-function/disinhibition': 'a change of behaviour (as the family tells)',
  'higher-function/hallucinations': 'seeing things that are not there',
  'higher-function/pseudobulbar-affect': 'laughing or crying without cause',
  'cranial-nerves/anosmia': 'loss of smell',
  'cranial-nerves/reduced-visual-acuity': 'blurred sight in the {side} eye',
  'cranial-nerves/central-scotoma': 'a dark spot in the middle of the sight of the {side} eye',
  'cranial-nerves/altitudinal-field-defect': 'a shadow over half the sight of the {side} eye',
  'cranial-nerves/homonymous-hemianopia': 'not seeing what is on the {side}',
  'cranial-nerves/bitemporal-hemianopia': 'bumping into things at both sides',
  'cranial-nerves/dilated-pupil': 'a {side} pupil that is larger than the other',
  'cranial-nerves/ptosis': 'a drooping {side} eyelid',
  'cranial-nerves/fatigable-diplopia': 'double vision that grows through the day',
  'cranial-nerves/diplopia': 'double vision',
  'cranial-nerves/facial-numbness': 'numbness of the {side} side of the face',
  'cranial-nerves/jaw-weakness': 'a jaw that tires on chewing',
  'cranial-nerves/facial-weakness': 'weakness of the {side} side of the face',
  'cranial-nerves/lower-facial-weakness': 'a {side} corner of the mouth that droops',
  'cranial-nerves/loss-of-taste': 'loss of taste',
  'cranial-nerves/hyperacusis': 'sounds that are too loud in the {side} ear',
  'cranial-nerves/hearing-loss': 'loss of hearing in the {side} ear',
  'cranial-nerves/dysphagia': 'trouble swallowing',
  'cranial-nerves/dysphonia': 'hoarseness',
  'cranial-nerves/dysarthria': 'slurred speech',
  'cranial-nerves/nasal-speech': 'nasal speech',
  'cranial-nerves/drooling': 'drooling',
  'involuntary-movements/resting-tremor': 'a tremor at rest',
  'involuntary-movements/postural-tremor': 'a tremor of the outstretched hands',
  'involuntary-movements/action-tremor': 'a tremor on using the hands',
  'involuntary-movements/chorea': 'restless movements',
  'involuntary-movements/hemiballism': 'flinging movements of the {side} arm or leg',
  'involuntary-movements/dystonia': 'a twisted posture',
  'involuntary-movements/myoclonus': 'sudden jerks',
  'inspection/foot-drop': 'a {side} foot that drops',
  'inspection/wrist-drop': 'a {side} wrist that drops',
  'inspection/scapular-winging': 'a {side} shoulder blade that sticks out',
  'inspection/dropped-head': 'a head that falls forward',
  'coordination/finger-nose': 'clumsiness of the {side} hand',
  'coordination/heel-shin': 'clumsiness of the {side} leg',
  'gait/ataxic': 'unsteadiness on walking',
  'gait/sensory-ataxic': 'unsteadiness, worse in the dark',
  'gait/shuffling': 'walking with short steps',
  'gait/magnetic': 'feet that stick to the floor',
  'gait/spastic': 'stiff legs on walking',
  'gait/rising-from-chair': 'trouble rising from a chair',
  'gait/stairs': 'trouble with stairs',
  'sphincters/urinary-retention': 'being unable to pass water',
  'sphincters/urinary-urgency': 'having to pass water in a hurry',
  'sphincters/saddle-anaesthesia': 'numbness between the legs',
  'autonomic/orthostatic-hypotension': 'faintness on standing up',
  'autonomic/breathlessness-lying-flat': 'breathlessness on lying flat',
  'autonomic/dry-mouth': 'a dry mouth',
  'autonomic/hyperhidrosis': 'unusual sweating',
  'involuntary-movements/grip-myotonia': 'a grip that will not let go',
  'special-tests/dix-hallpike': 'dizziness on turning over in bed',
};

/** Ids of items that have words of their own. */
export const itemsInOwnWords: readonly string[] = Object.keys(inOwnWords);

/** What somebody complains of in whom an item is abnormal; null for signs that only an examiner finds. */
export function complaintWords({ item, side, place }: ProbeTarget): string | null {
  const own = inOwnWords[itemId(item)];
  if (own !== undefined) return place === undefined ? inSide(own, side) : null;
  const { probe } = item;
  if (probe.kind === 'movement') {
    const movement = movementTable.get(probe.movement);
    const where = movement === undefined ? null : weakIn[movement.group];
    return where === null ? null : `weakness of the ${side === 'midline' ? '' : `${side} `}${where}`;
  }
  if (probe.kind !== 'sensation' || probe.modality !== 'pinprick' || place === undefined) return null;
  return place.kind !== 'landmark' ? null : `numbness ${describePlace(place as FindingPlace, side)}`;
}

/** Words that speak of a side, of which nothing may be left without one. */
function inSide(words: string, side: ProbeTarget['side']): string | null {
  if (!words.includes('{side}')) return words;
  return side === 'midline' ? null : words.replace('{side}', side);
}
