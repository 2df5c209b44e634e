import { shows } from './cause.ts';

/** What arms and face show; what lies in the loins or the pelvis does nothing to them. */
export const aboveTheLoins = shows(
  [
    'power/shoulder-abduction',
    'power/elbow-flexion',
    'power/elbow-extension',
    'power/finger-abduction',
    'reflexes/biceps',
    'reflexes/triceps',
    'cranial-nerves/facial-weakness',
    'cranial-nerves/eye-abduction-weakness',
    'cranial-nerves/esotropia',
  ],
  0.15,
  1,
);
