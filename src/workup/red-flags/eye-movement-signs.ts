/** Signs of an eye that does not move as it should, by nerve and by direction. */
export const eyeMovementSigns = [
  'cranial-nerves/ophthalmoplegia',
  'cranial-nerves/third-nerve-palsy',
  'cranial-nerves/fourth-nerve-palsy',
  'cranial-nerves/sixth-nerve-palsy',
  'cranial-nerves/eye-abduction-weakness',
  'cranial-nerves/esotropia',
  'cranial-nerves/eye-adduction-weakness',
  'cranial-nerves/exotropia',
  'cranial-nerves/eye-elevation-weakness',
];
