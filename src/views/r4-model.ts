import type { Model } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';

/** FHIR R4 for the FHIRPath engine; its own types leave properties undefined where the engine's leave them out. */
export const r4Model = r4 as unknown as Model;
