import { commonPractice, fromMemory, read, type Source } from '../../kernel/cite.ts';

/** How often a provocation test is positive with the lesion that it is meant for, and without it; 0 to 1. */
export interface SignAccuracy {
  readonly sensitivity: number;
  readonly falsePositive: number;
  readonly source: Source;
}

/** By item key. Tests that are not listed use `usualAccuracy`. */
const published = new Map<string, SignAccuracy>([
  [
    'straight-leg-raise',
    {
      sensitivity: 0.8,
      falsePositive: 0.3,
      source: read(
        'cochrane-lumbar-2010',
        'sensitivity 0.92, specificity 0.28 in surgical series; softened for unselected patients',
      ),
    },
  ],
  [
    'crossed-straight-leg-raise',
    {
      sensitivity: 0.28,
      falsePositive: 0.1,
      source: read('cochrane-lumbar-2010', 'sensitivity 0.28, specificity 0.90'),
    },
  ],
  [
    'phalen',
    { sensitivity: 0.57, falsePositive: 0.33, source: read('dabbagh-2023', 'sensitivity 0.57, specificity 0.67') },
  ],
  [
    'tinel-wrist',
    { sensitivity: 0.45, falsePositive: 0.22, source: read('dabbagh-2023', 'sensitivity 0.45, specificity 0.78') },
  ],
  // Both are positive in many whom nothing ails.
  ['roos', { sensitivity: 0.6, falsePositive: 0.25, source: fromMemory }],
  ['adson', { sensitivity: 0.5, falsePositive: 0.15, source: fromMemory }],
]);

const usualAccuracy: SignAccuracy = { sensitivity: 0.5, falsePositive: 0.1, source: commonPractice };

export function signAccuracy(itemKey: string): SignAccuracy {
  return published.get(itemKey) ?? usualAccuracy;
}

/**
 * Signs of upper-motor-neuron disturbance: chance of being present when descending control to the limb is fully lost, and
 * in people without such a lesion.
 */
const upperMotorPublished = new Map<string, SignAccuracy>([
  [
    'hoffmann',
    {
      sensitivity: 0.59,
      falsePositive: 0.03,
      source: read('hoffmann-2023', 'present in 2 to 3 % of people; sensitivity 0.59 after Fogarty 2018'),
    },
  ],
  [
    'inverted-brachioradialis',
    { sensitivity: 0.5, falsePositive: 0.15, source: read('hoffmann-2023', 'up to 26 % of symptom-free people') },
  ],
  ['pronator-drift', { sensitivity: 0.75, falsePositive: 0.03, source: commonPractice }],
]);

const usualUpperMotor: SignAccuracy = { sensitivity: 0.65, falsePositive: 0.015, source: commonPractice };

export function upperMotorAccuracy(itemKey: string): SignAccuracy {
  return upperMotorPublished.get(itemKey) ?? usualUpperMotor;
}

/**
 * Chance that a sign of the head is found in somebody old whom nothing ails, from an age at which all of it has come; 0 where age
 * does not bring it. Pupils shrink and primitive reflexes return; the shares are remembered or judged.
 */
const ofOldAge: ReadonlyMap<string, number> = new Map([
  ['small-pupil', 0.12],
  ['palmomental-reflex', 0.2],
  ['snout-reflex', 0.1],
  ['glabellar-reflex', 0.1],
]);

export function chanceInOldAge(itemKey: string): number {
  return ofOldAge.get(itemKey) ?? 0;
}
