import type { ParameterRow } from '../parameter.ts';

/** Parameters that R4 defines for all resources. */
export const everyTypeRows: readonly ParameterRow[] = [
  {
    name: '_id',
    type: 'token',
    says: 'Id of the resource.',
    at: ['id:code'],
    expression: 'Resource.id',
    definition: 'Resource-id',
  },
  {
    name: '_lastUpdated',
    type: 'date',
    says: 'When this service last changed the resource.',
    at: ['meta.lastUpdated:dateTime'],
    expression: 'Resource.meta.lastUpdated',
    definition: 'Resource-lastUpdated',
  },
  {
    name: '_profile',
    type: 'uri',
    says: 'Address of a profile that the resource claims, whole.',
    at: ['meta.profile:canonical'],
    expression: 'Resource.meta.profile',
    definition: 'Resource-profile',
  },
  {
    name: '_tag',
    type: 'token',
    says: 'Tag of the resource.',
    at: ['meta.tag:Coding'],
    expression: 'Resource.meta.tag',
    definition: 'Resource-tag',
  },
];

/** The subject where it is a Patient; R4 defines it once for most clinical types. */
export const patientRow: ParameterRow = {
  name: 'patient',
  type: 'reference',
  says: 'The patient; `patient.identifier` finds one who is named by identifier alone.',
  at: ['subject:Reference'],
  expression: 'subject.where(resolve() is Patient)',
  definition: 'clinical-patient',
  isPatientOnly: true,
  targets: ['Patient'],
};

export const encounterRow: ParameterRow = {
  name: 'encounter',
  type: 'reference',
  says: 'The encounter of the examination.',
  at: ['encounter:Reference'],
  definition: 'clinical-encounter',
  targets: ['Encounter', 'EpisodeOfCare'],
};

export const identifierRow: ParameterRow = {
  name: 'identifier',
  type: 'token',
  says: 'Identifier, as system|value.',
  at: ['identifier:Identifier'],
};
