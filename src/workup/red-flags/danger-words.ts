import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { headache } from './brain-flags.ts';
import { clouded } from './consciousness.ts';
import { spinalPain } from './cord.ts';

/** Groups of complaints and signs that several flags ask for beside something else; each gives the reasons that were met. */
export const dangerOf = {
  headPain: (facts: BedsideFacts): readonly Reason[] => facts.told(...headache),
  spinalPain: (facts: BedsideFacts): readonly Reason[] => facts.told(...spinalPain),
  /** An ill brain or irritated meninges. */
  mindOrMeninges: (facts: BedsideFacts): readonly Reason[] => [
    ...facts.told(...headache, 'fever', 'photophobia'),
    ...findingReasons(
      facts.query.abnormal([
        ...clouded,
        'higher-function/memory-impairment',
        'special-tests/neck-stiffness',
        'autonomic/fever',
      ]),
      3,
    ),
  ],
  /** Limbs, gait or bladder that fail, found or told. */
  limbTrouble: (facts: BedsideFacts): readonly Reason[] => [
    ...findingReasons([...facts.weakLimbs, ...facts.trunkSensoryLoss, ...facts.upperMotorSignsInLegs], 3),
    ...facts.told(
      'leg-weakness',
      'arm-weakness',
      'weakness',
      'difficulty-walking',
      'numbness',
      'unsteadiness',
      'bladder-disturbance',
    ),
  ],
  anyDeficit: (facts: BedsideFacts): readonly Reason[] => [
    ...findingReasons(facts.abnormalFindings, 3),
    ...facts.told(
      'weakness',
      'arm-weakness',
      'leg-weakness',
      'speech-difficulty',
      'slurred-speech',
      'numbness',
      'face-numbness',
      'face-droop',
      'visual-loss',
      'diplopia',
      'vertigo',
    ),
  ],
  thirdNerveTrouble: (facts: BedsideFacts): readonly Reason[] => [
    ...findingReasons(
      facts.query.abnormal([
        'cranial-nerves/third-nerve-palsy',
        'cranial-nerves/ptosis',
        'cranial-nerves/dilated-pupil',
        'cranial-nerves/unreactive-pupil',
        'cranial-nerves/sluggish-pupil',
        'cranial-nerves/ophthalmoplegia',
      ]),
    ),
    ...facts.told('drooping-eyelids', 'diplopia'),
  ],
} as const;
