/** A code of a code system, in the shape that FHIR and the localisation answer share. */
export interface Coding {
  readonly system: string;
  readonly code: string;
  readonly display: string;
  readonly version?: string;
}
