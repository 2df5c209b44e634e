/** Groups of signs of which it matters whether one side shows them or both (`sided`). */

/** What an optic nerve that fails shows, in one eye or in both. */
export const signsOfAnOpticNerve = [
  'cranial-nerves/reduced-visual-acuity',
  'cranial-nerves/central-scotoma',
  'cranial-nerves/optic-disc-pallor',
  'cranial-nerves/monocular-field-defect',
];

/** Movements that nobody wills, of one half of the body or of both. */
export const movementsInExcess = [
  'involuntary-movements/chorea',
  'involuntary-movements/hemiballism',
  'involuntary-movements/athetosis',
  'involuntary-movements/dystonia',
];

/** Palsies of the muscles of one eye or of both. */
export const eyeMusclePalsies = [
  'cranial-nerves/third-nerve-palsy',
  'cranial-nerves/fourth-nerve-palsy',
  'cranial-nerves/sixth-nerve-palsy',
  'cranial-nerves/eye-abduction-weakness',
  'cranial-nerves/esotropia',
  'cranial-nerves/ptosis',
];
