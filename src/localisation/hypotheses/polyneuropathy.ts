import type { Hypothesis } from '../hypothesis.ts';
import { confluentMononeuropathyHypotheses } from './confluent-mononeuropathy.ts';
import { ganglionopathyHypotheses } from './ganglionopathy.ts';
import {
  armFirstMotorHypotheses,
  autonomicHypotheses,
  lengthDependentHypotheses,
  patchySmallFibreHypothesis,
} from './length-dependent.ts';
import { multifocalMotorHypotheses } from './multifocal-motor.ts';
import { polyradiculoneuropathyHypotheses } from './polyradiculoneuropathy.ts';

/** Every disease of many nerves at once. */
export function polyneuropathyHypotheses(): Hypothesis[] {
  return [
    ...lengthDependentHypotheses(),
    ...armFirstMotorHypotheses(),
    patchySmallFibreHypothesis(),
    ...autonomicHypotheses(),
    ...polyradiculoneuropathyHypotheses(),
    ...multifocalMotorHypotheses(),
    ...confluentMononeuropathyHypotheses(),
    ...ganglionopathyHypotheses(),
  ];
}
