import type { ParameterRow } from '../parameter.ts';
import { encounterRow, identifierRow, patientRow } from './of-every-type.ts';

export const riskAssessmentRows: readonly ParameterRow[] = [
  { ...identifierRow, definition: 'clinical-identifier' },
  {
    name: 'date',
    type: 'date',
    says: 'When the examination took place.',
    at: ['occurrenceDateTime:dateTime'],
    expression: '(RiskAssessment.occurrence as dateTime)',
    definition: 'clinical-date',
  },
  patientRow,
  {
    name: 'subject',
    type: 'reference',
    says: 'Whom the causes are weighed for.',
    at: ['subject:Reference'],
    targets: ['Group', 'Patient'],
  },
  encounterRow,
  {
    name: 'performer',
    type: 'reference',
    says: 'Software that ranked the causes.',
    at: ['performer:Reference'],
    targets: ['Practitioner', 'Device', 'PractitionerRole'],
    follows: ['Device'],
  },
  {
    name: 'condition',
    type: 'reference',
    says: 'Condition that is assessed.',
    at: ['condition:Reference'],
    targets: ['Condition'],
  },
  { name: 'method', type: 'token', says: 'How the causes were ranked.', at: ['method:CodeableConcept'] },
  {
    name: 'probability',
    type: 'number',
    says: 'Probability of a cause in percent.',
    at: ['prediction.probabilityDecimal:decimal'],
    expression: 'RiskAssessment.prediction.probability',
  },
  {
    name: 'risk',
    type: 'token',
    says: 'Likelihood of a cause in words.',
    at: ['prediction.qualitativeRisk:CodeableConcept'],
  },
];
