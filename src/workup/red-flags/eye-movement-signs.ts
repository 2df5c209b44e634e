import type { Finding } from '../../exam/finding.ts';
import { isOnBothSides } from './cord.ts';

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

/** Whether the eyes of both sides are meant: said of each, or of no side. */
export function areBothEyes(found: readonly Finding[]): boolean {
  return isOnBothSides(found) || found.some(({ side }) => side === 'midline');
}
