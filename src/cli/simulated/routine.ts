import { skinPlace } from '../../anatomy/skin-places.ts';
import { itemById } from '../../exam/catalogue/catalogue.ts';
import { bodySides, type Side } from '../../kernel/side.ts';
import { everyTarget } from '../../localisation/explanation/next-examination.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';

/**
 * A routine neurological examination from head to toe, in the order in which it is done at the bedside. Items of a side are
 * done on the left and then on the right. `@` names the place where sensation is tested. Common practice; the choice is
 * judged.
 */
const routineSteps: readonly string[] = [
  'higher-function/drowsiness',
  'higher-function/disorientation',
  'higher-function/inattention',
  'higher-function/expressive-aphasia',
  'higher-function/receptive-aphasia',
  'higher-function/neglect',
  'cranial-nerves/reduced-visual-acuity',
  'cranial-nerves/homonymous-hemianopia',
  'cranial-nerves/relative-afferent-pupillary-defect',
  'cranial-nerves/dilated-pupil',
  'cranial-nerves/ptosis',
  'cranial-nerves/eye-abduction-weakness',
  'cranial-nerves/eye-adduction-weakness',
  'cranial-nerves/eye-elevation-weakness',
  'cranial-nerves/gaze-palsy',
  'cranial-nerves/nystagmus',
  'cranial-nerves/facial-numbness',
  'cranial-nerves/lower-facial-weakness',
  'cranial-nerves/upper-facial-weakness',
  'cranial-nerves/hearing-loss',
  'cranial-nerves/dysarthria',
  'cranial-nerves/dysphagia',
  'cranial-nerves/palatal-weakness',
  'cranial-nerves/tongue-deviation',
  'power/neck-flexion',
  'special-tests/pronator-drift',
  'tone/upper-limb',
  'power/shoulder-abduction',
  'power/elbow-flexion',
  'power/elbow-extension',
  'power/wrist-extension',
  'power/finger-extension',
  'power/finger-flexion',
  'power/finger-abduction',
  'power/thumb-abduction',
  'reflexes/biceps',
  'reflexes/brachioradialis',
  'reflexes/triceps',
  'coordination/finger-nose',
  'coordination/rapid-alternating-movements',
  'sensation/pinprick@outer-upper-arm',
  'sensation/pinprick@thumb',
  'sensation/pinprick@middle-finger',
  'sensation/pinprick@little-finger',
  'sensation/joint-position@index-finger',
  'sensation/pinprick@nipple',
  'sensation/pinprick@umbilicus',
  'tone/lower-limb',
  'power/hip-flexion',
  'power/hip-abduction',
  'power/knee-extension',
  'power/knee-flexion',
  'power/ankle-dorsiflexion',
  'power/ankle-plantarflexion',
  'power/great-toe-extension',
  'reflexes/knee',
  'reflexes/ankle',
  'clonus/ankle',
  'plantars/plantar-response',
  'coordination/heel-shin',
  'sensation/pinprick@front-of-thigh',
  'sensation/pinprick@inner-shin',
  'sensation/pinprick@dorsum-of-foot',
  'sensation/pinprick@outer-border-of-foot',
  'sensation/vibration@great-toe',
  'sensation/vibration@ankle',
  'sensation/joint-position@great-toe',
  'gait/rising-from-chair',
  'gait/heel-walking',
  'gait/toe-walking',
  'gait/tandem',
  'gait/romberg',
  'gait/shuffling',
];

/** Every step of the routine, side by side. */
export const routine: readonly ProbeTarget[] = routineSteps.flatMap((step): readonly ProbeTarget[] => {
  const [id = '', place] = step.split('@');
  const item = itemById.get(id);
  if (item === undefined) throw new RangeError(`the routine has an unknown item ${id}`);
  const sides: readonly Side[] = item.sides === 'midline' ? ['midline'] : bodySides;
  if (place === undefined) return sides.map((side) => ({ item, side }));
  if (skinPlace('landmark', place) === undefined) throw new RangeError(`the routine has an unknown place ${place}`);
  return sides.map((side) => ({ item, side, place: { kind: 'landmark', key: place } }));
});

/** Everything that can be examined at all. */
export const everything: readonly ProbeTarget[] = [...everyTarget()];
