import fc from 'fast-check';
import type { AuditRecord, PatientReference } from '../../src/audit/audit-record.ts';
import { interactionNames } from '../../src/audit/interactions.ts';

/** Nobody in these exists. Few values each, so that records share some. */
const patient: fc.Arbitrary<PatientReference> = fc.oneof(
  fc
    .constantFrom('Patient/1', 'Patient/2', 'https://clinic.example/fhir/Patient/1')
    .map((reference) => ({ reference })),
  fc
    .constantFrom({ system: 'https://clinic.example/mrn', value: '7' }, { value: 'x' })
    .map((identifier) => ({ identifier })),
);

/** Any record that a request may leave, and texts of any kind where texts come from outside. */
export const auditRecords: fc.Arbitrary<AuditRecord> = fc
  .record(
    {
      at: fc
        .integer({ min: 0, max: 5_000 })
        .map((ms) => new Date(Date.parse('2026-11-01T00:00:00Z') + ms).toISOString()),
      interaction: fc.constantFrom(...interactionNames),
      action: fc.constantFrom('C', 'R', 'U', 'D', 'E'),
      outcome: fc.constantFrom('0', '4', '8'),
      reason: fc.constantFrom('Not Found', 'Forbidden'),
      client: fc.oneof(fc.constantFrom('analyst', 'Analyst-2', 'poster'), fc.string({ minLength: 1, unit: 'binary' })),
      user: fc.constantFrom('user-1', 'analyst'),
      address: fc.constantFrom('127.0.0.1', '::1'),
      operation: fc.constantFrom('$export', '$localise'),
      exam: fc.constantFrom('00000000-0000-5000-8000-000000000001', '00000000-0000-5000-8000-000000000002'),
      resource: fc.constantFrom('Observation/a', 'Observation/a/_history/2', 'Measure/b'),
      job: fc.constant('00000000-0000-4000-8000-000000000003'),
      patients: fc.array(patient, { maxLength: 3 }),
      query: fc.string({ unit: 'binary', minLength: 1 }),
      request: fc.constant('0123'),
      software: fc.constant('0.1.0'),
    },
    { requiredKeys: ['at', 'interaction', 'action', 'outcome', 'client'] },
  )
  .filter(({ client }) => client.trim() !== '');
