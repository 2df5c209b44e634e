import type { Hypothesis } from '../hypothesis.ts';
import { confluentMononeuropathyHypotheses } from './confluent-mononeuropathy.ts';
import { ganglionopathyHypotheses } from './ganglionopathy.ts';
import {
  armFirstMotorHypotheses,
  autonomicHypotheses,
  handsAndFeetHypotheses,
  lengthDependentHypotheses,
  patchySmallFibreHypothesis,
} from './length-dependent.ts';
import { multifocalMotorHypotheses, multifocalSensorimotorHypotheses } from './multifocal-motor.ts';
import { nerveOnNeuropathyHypotheses } from './nerve-on-neuropathy.ts';
import { polyradiculoneuropathyHypotheses } from './polyradiculoneuropathy.ts';

/** Every disease of many nerves at once. */
export function polyneuropathyHypotheses(): Hypothesis[] {
  return [
    ...lengthDependentHypotheses(),
    ...armFirstMotorHypotheses(),
    ...handsAndFeetHypotheses(),
    patchySmallFibreHypothesis(),
    ...autonomicHypotheses(),
    ...polyradiculoneuropathyHypotheses(),
    ...multifocalMotorHypotheses(),
    ...multifocalSensorimotorHypotheses(),
    ...confluentMononeuropathyHypotheses(),
    ...nerveOnNeuropathyHypotheses(),
    ...ganglionopathyHypotheses(),
  ];
}
