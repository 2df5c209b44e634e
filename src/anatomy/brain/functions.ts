import type { FunctionRow } from './function-row.ts';
import { eyeMovementFunctions } from './functions/eye-movement-functions.ts';
import { faceAndThroatFunctions } from './functions/face-and-throat-functions.ts';
import { higherFunctions } from './functions/higher-functions.ts';
import { movementFunctions } from './functions/movement-functions.ts';
import { visionFunctions } from './functions/vision-functions.ts';

/** Every function of the brain and the cranial nerves that the wiring decides, by the name that signs use for it. */
const functions = {
  ...higherFunctions,
  ...visionFunctions,
  ...eyeMovementFunctions,
  ...faceAndThroatFunctions,
  ...movementFunctions,
} as const;

export type WiredFunction = keyof typeof functions;

export const brainFunctions: Readonly<Record<WiredFunction, FunctionRow>> = functions;
export const brainFunctionTable: ReadonlyMap<string, FunctionRow> = new Map(Object.entries(functions));
