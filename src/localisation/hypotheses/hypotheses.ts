/**
 * Every hypothesis that an examination is compared with. What lives here: where lesions and processes can be, how large
 * they are, how often they are met. What does not: what they do to a sign; that follows from the wiring (`forward/`).
 */
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { brainHypotheses } from './brain.ts';
import { cordHypotheses } from './cord.ts';
import { cranialHypotheses } from './cranial-nerves.ts';
import { diffuseBrainHypotheses } from './diffuse-brain.ts';
import { motorNeuronHypotheses } from './motor-neuron.ts';
import { movementDisorderHypotheses } from './movement-disorders.ts';
import { muscleHypotheses } from './muscle-and-junction.ts';
import { peripheralHypotheses } from './peripheral.ts';
import { polyneuropathyHypotheses } from './polyneuropathy.ts';
import { wholeCerebellumHypotheses } from './whole-cerebellum.ts';
import { withoutLesion } from './without-lesion.ts';

/** Percent of examinations, among those sent here, that find nothing wrong. Judged. */
const nothingWrongPercent = 3.5;

const noLesion: Site = { key: 'no-lesion', label: 'No lesion', side: null, level: null, kind: 'none' };

export const hypotheses: readonly Hypothesis[] = [
  hypothesis(noLesion, 'none', nothingWrongPercent, intact),
  ...withoutLesion(noLesion),
  ...peripheralHypotheses(),
  ...cordHypotheses(),
  ...brainHypotheses(),
  ...cranialHypotheses(),
  ...movementDisorderHypotheses(),
  ...wholeCerebellumHypotheses(),
  ...diffuseBrainHypotheses(),
  ...polyneuropathyHypotheses(),
  ...motorNeuronHypotheses(),
  ...muscleHypotheses(),
];

/** Index of the hypothesis that nothing is wrong. */
export const noLesionIndex = 0;
