import { ataxiaCauses } from './ataxia-causes.ts';
import { autonomicAndGanglionCauses } from './autonomic-and-ganglion-causes.ts';
import { brainCauses } from './brain-causes.ts';
import { brainInfectionCauses } from './brain-infection-causes.ts';
import { brainInflammationCauses } from './brain-inflammation-causes.ts';
import { brainInjuryCauses } from './brain-injury-causes.ts';
import type { Cause } from './cause.ts';
import { cognitiveDeclineCauses } from './cognitive-decline-causes.ts';
import { cordCauses } from './cord-causes.ts';
import { cordDiseaseCauses } from './cord-disease-causes.ts';
import { cordInflammationCauses } from './cord-inflammation-causes.ts';
import { cranialNerveCauses } from './cranial-nerve-causes.ts';
import { encephalopathyCauses } from './encephalopathy-causes.ts';
import { eyeMovementCauses } from './eye-movement-causes.ts';
import { fluidPressureCauses } from './fluid-pressure-causes.ts';
import { focalCauses } from './focal-causes.ts';
import { functionalCauses } from './functional-causes.ts';
import { hearingAndBalanceCauses } from './hearing-and-balance-causes.ts';
import { hereditaryBrainCauses } from './hereditary-brain-causes.ts';
import { hereditaryMuscleCauses } from './hereditary-muscle-causes.ts';
import { hereditaryNeuropathyCauses } from './hereditary-neuropathy-causes.ts';
import { hereditarySystemicNeuropathyCauses } from './hereditary-systemic-neuropathy-causes.ts';
import { hyperkineticCauses } from './hyperkinetic-causes.ts';
import { immuneNeuropathyCauses } from './immune-neuropathy-causes.ts';
import { junctionCauses } from './junction-causes.ts';
import { meningealAndPressureCauses } from './meningeal-and-pressure-causes.ts';
import { motorNeuronCauses } from './motor-neuron-causes.ts';
import { movementCauses } from './movement-causes.ts';
import { muscleCauses } from './muscle-causes.ts';
import { muscleChannelCauses } from './muscle-channel-causes.ts';
import { nerveCauses } from './nerve-causes.ts';
import { opticCompressionCauses } from './optic-compression-causes.ts';
import { otherMuscleCauses } from './other-muscle-causes.ts';
import { otherVascularBrainCauses } from './other-vascular-brain-causes.ts';
import { paraproteinNeuropathyCauses } from './paraprotein-neuropathy-causes.ts';
import { plexusAndRootCauses } from './plexus-and-root-causes.ts';
import { polyneuropathyCauses } from './polyneuropathy-causes.ts';
import { pupilAndHornerCauses } from './pupil-and-horner-causes.ts';
import { rarerCauses } from './rarer-causes.ts';
import { rarerMuscleCauses } from './rarer-muscle-causes.ts';
import { rarerNerveCauses } from './rarer-nerve-causes.ts';
import { rootCauses } from './root-causes.ts';
import { seizureAndAttackCauses } from './seizure-and-attack-causes.ts';
import { systemicNeuropathyCauses } from './systemic-neuropathy-causes.ts';
import { toxicNeuropathyCauses } from './toxic-neuropathy-causes.ts';
import { vascularBrainCauses } from './vascular-brain-causes.ts';
import { visualCauses } from './visual-causes.ts';

/** Every cause that is considered, in the order of the tables. */
export const allCauses: readonly Cause[] = [
  ...polyneuropathyCauses,
  ...paraproteinNeuropathyCauses,
  ...hereditaryNeuropathyCauses,
  ...hereditarySystemicNeuropathyCauses,
  ...toxicNeuropathyCauses,
  ...immuneNeuropathyCauses,
  ...systemicNeuropathyCauses,
  ...autonomicAndGanglionCauses,
  ...focalCauses,
  ...nerveCauses,
  ...plexusAndRootCauses,
  ...rootCauses,
  ...cordCauses,
  ...cordInflammationCauses,
  ...cordDiseaseCauses,
  ...motorNeuronCauses,
  ...junctionCauses,
  ...muscleCauses,
  ...otherMuscleCauses,
  ...hereditaryMuscleCauses,
  ...muscleChannelCauses,
  ...brainCauses,
  ...cranialNerveCauses,
  ...hearingAndBalanceCauses,
  ...eyeMovementCauses,
  ...pupilAndHornerCauses,
  ...visualCauses,
  ...opticCompressionCauses,
  ...meningealAndPressureCauses,
  ...fluidPressureCauses,
  ...vascularBrainCauses,
  ...otherVascularBrainCauses,
  ...brainInflammationCauses,
  ...brainInfectionCauses,
  ...hereditaryBrainCauses,
  ...encephalopathyCauses,
  ...brainInjuryCauses,
  ...seizureAndAttackCauses,
  ...cognitiveDeclineCauses,
  ...ataxiaCauses,
  ...movementCauses,
  ...hyperkineticCauses,
  ...rarerCauses,
  ...rarerNerveCauses,
  ...rarerMuscleCauses,
  ...functionalCauses,
];
