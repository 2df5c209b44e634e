import { ataxiaCauses } from './ataxia-causes.ts';
import { autonomicAndGanglionCauses } from './autonomic-and-ganglion-causes.ts';
import { brainCauses } from './brain-causes.ts';
import { brainInfectionCauses } from './brain-infection-causes.ts';
import { brainInflammationCauses } from './brain-inflammation-causes.ts';
import { brainInjuryCauses } from './brain-injury-causes.ts';
import type { Cause } from './cause.ts';
import { childhoodBrainCauses } from './childhood-brain-causes.ts';
import { cognitiveDeclineCauses } from './cognitive-decline-causes.ts';
import { cordCauses } from './cord-causes.ts';
import { cordDiseaseCauses } from './cord-disease-causes.ts';
import { cordInflammationCauses } from './cord-inflammation-causes.ts';
import { cordTractCauses } from './cord-tract-causes.ts';
import { cranialNerveCauses } from './cranial-nerve-causes.ts';
import { dystoniaCauses } from './dystonia-causes.ts';
import { encephalopathyCauses } from './encephalopathy-causes.ts';
import { eyeMovementCauses } from './eye-movement-causes.ts';
import { fluidPressureCauses } from './fluid-pressure-causes.ts';
import { focalCauses } from './focal-causes.ts';
import { functionalCauses } from './functional-causes.ts';
import { hearingAndBalanceCauses } from './hearing-and-balance-causes.ts';
import { hereditaryAtaxiaCauses } from './hereditary-ataxia-causes.ts';
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
import { otherBrainCauses } from './other-brain-causes.ts';
import { otherCranialNerveCauses } from './other-cranial-nerve-causes.ts';
import { otherEyeCauses } from './other-eye-causes.ts';
import { otherMovementCauses } from './other-movement-causes.ts';
import { otherMuscleCauses } from './other-muscle-causes.ts';
import { otherVascularBrainCauses } from './other-vascular-brain-causes.ts';
import { paraproteinNeuropathyCauses } from './paraprotein-neuropathy-causes.ts';
import { plexusAndRootCauses } from './plexus-and-root-causes.ts';
import { poisoningCauses } from './poisoning-causes.ts';
import { polyneuropathyCauses } from './polyneuropathy-causes.ts';
import { pupilAndHornerCauses } from './pupil-and-horner-causes.ts';
import { rarerBrainCauses } from './rarer-brain-causes.ts';
import { rarerCauses } from './rarer-causes.ts';
import { rarerCordAndNerveCauses } from './rarer-cord-and-nerve-causes.ts';
import { rarerMuscleCauses } from './rarer-muscle-causes.ts';
import { rarerNerveCauses } from './rarer-nerve-causes.ts';
import { rootCauses } from './root-causes.ts';
import { seizureAndAttackCauses } from './seizure-and-attack-causes.ts';
import { smellCauses } from './smell-causes.ts';
import { systemicNeuropathyCauses } from './systemic-neuropathy-causes.ts';
import { throatAndTongueCauses } from './throat-and-tongue-causes.ts';
import { toxicNeuropathyCauses } from './toxic-neuropathy-causes.ts';
import { vascularBrainCauses } from './vascular-brain-causes.ts';
import { visualCauses } from './visual-causes.ts';
import { withdrawalAndAcidosisCauses } from './withdrawal-and-acidosis-causes.ts';

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
  ...cordTractCauses,
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
  ...throatAndTongueCauses,
  ...smellCauses,
  ...otherCranialNerveCauses,
  ...hearingAndBalanceCauses,
  ...eyeMovementCauses,
  ...pupilAndHornerCauses,
  ...visualCauses,
  ...opticCompressionCauses,
  ...otherEyeCauses,
  ...meningealAndPressureCauses,
  ...fluidPressureCauses,
  ...vascularBrainCauses,
  ...otherVascularBrainCauses,
  ...brainInflammationCauses,
  ...brainInfectionCauses,
  ...hereditaryBrainCauses,
  ...encephalopathyCauses,
  ...poisoningCauses,
  ...withdrawalAndAcidosisCauses,
  ...brainInjuryCauses,
  ...seizureAndAttackCauses,
  ...cognitiveDeclineCauses,
  ...ataxiaCauses,
  ...hereditaryAtaxiaCauses,
  ...movementCauses,
  ...hyperkineticCauses,
  ...dystoniaCauses,
  ...otherMovementCauses,
  ...rarerCauses,
  ...otherBrainCauses,
  ...rarerBrainCauses,
  ...childhoodBrainCauses,
  ...rarerCordAndNerveCauses,
  ...rarerNerveCauses,
  ...rarerMuscleCauses,
  ...functionalCauses,
];
