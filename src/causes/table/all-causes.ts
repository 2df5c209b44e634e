import { brainCauses } from './brain-causes.ts';
import type { Cause } from './cause.ts';
import { cordCauses } from './cord-causes.ts';
import { focalCauses } from './focal-causes.ts';
import { hereditaryMuscleCauses } from './hereditary-muscle-causes.ts';
import { immuneNeuropathyCauses } from './immune-neuropathy-causes.ts';
import { junctionCauses } from './junction-causes.ts';
import { motorNeuronCauses } from './motor-neuron-causes.ts';
import { muscleCauses } from './muscle-causes.ts';
import { otherMuscleCauses } from './other-muscle-causes.ts';
import { polyneuropathyCauses } from './polyneuropathy-causes.ts';

/** Every cause that is considered, in the order of the tables. */
export const allCauses: readonly Cause[] = [
  ...polyneuropathyCauses,
  ...immuneNeuropathyCauses,
  ...focalCauses,
  ...cordCauses,
  ...motorNeuronCauses,
  ...junctionCauses,
  ...muscleCauses,
  ...otherMuscleCauses,
  ...hereditaryMuscleCauses,
  ...brainCauses,
];
