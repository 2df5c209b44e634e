/**
 * The resource types that are kept, in the order of the numbers under which a store knows them. New ones are added at
 * the end; the order never changes.
 */
export const storedTypes = [
  'Observation',
  'ClinicalImpression',
  'RiskAssessment',
  'ServiceRequest',
  'Provenance',
  'Device',
  'Measure',
  'MeasureReport',
  'AuditEvent',
  'Subscription',
] as const;
export type StoredType = (typeof storedTypes)[number];

export function isStoredType(type: string): type is StoredType {
  return (storedTypes as readonly string[]).includes(type);
}

export function numberOfType(type: StoredType): number {
  return storedTypes.indexOf(type);
}
