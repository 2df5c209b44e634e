import { brainCauses } from './brain-causes.ts';
import { brainInflammationCauses } from './brain-inflammation-causes.ts';
import type { Cause } from './cause.ts';
import { cognitiveDeclineCauses } from './cognitive-decline-causes.ts';
import { cordCauses } from './cord-causes.ts';
import { encephalopathyCauses } from './encephalopathy-causes.ts';
import { focalCauses } from './focal-causes.ts';
import { immuneNeuropathyCauses } from './immune-neuropathy-causes.ts';
import { motorCauses } from './motor-causes.ts';
import { polyneuropathyCauses } from './polyneuropathy-causes.ts';
import { vascularBrainCauses } from './vascular-brain-causes.ts';

/** Every cause that is considered, in the order of the tables. */
export const allCauses: readonly Cause[] = [
  ...polyneuropathyCauses,
  ...immuneNeuropathyCauses,
  ...focalCauses,
  ...cordCauses,
  ...motorCauses,
  ...brainCauses,
  ...vascularBrainCauses,
  ...brainInflammationCauses,
  ...encephalopathyCauses,
  ...cognitiveDeclineCauses,
];
