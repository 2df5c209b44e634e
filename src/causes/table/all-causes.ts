import { autonomicAndGanglionCauses } from './autonomic-and-ganglion-causes.ts';
import { brainCauses } from './brain-causes.ts';
import type { Cause } from './cause.ts';
import { cordCauses } from './cord-causes.ts';
import { focalCauses } from './focal-causes.ts';
import { hereditaryNeuropathyCauses } from './hereditary-neuropathy-causes.ts';
import { immuneNeuropathyCauses } from './immune-neuropathy-causes.ts';
import { motorCauses } from './motor-causes.ts';
import { polyneuropathyCauses } from './polyneuropathy-causes.ts';
import { systemicNeuropathyCauses } from './systemic-neuropathy-causes.ts';
import { toxicNeuropathyCauses } from './toxic-neuropathy-causes.ts';

/** Every cause that is considered, in the order of the tables. */
export const allCauses: readonly Cause[] = [
  ...polyneuropathyCauses,
  ...hereditaryNeuropathyCauses,
  ...toxicNeuropathyCauses,
  ...immuneNeuropathyCauses,
  ...systemicNeuropathyCauses,
  ...autonomicAndGanglionCauses,
  ...focalCauses,
  ...cordCauses,
  ...motorCauses,
  ...brainCauses,
];
