import type { ParameterRow } from '../parameter.ts';
import { identifierRow } from './of-every-type.ts';

export const measureRows: readonly ParameterRow[] = [
  identifierRow,
  { name: 'url', type: 'uri', says: 'Canonical address, whole.', at: ['url:uri'] },
  { name: 'name', type: 'string', says: 'Name for programs.', at: ['name:string'] },
  { name: 'title', type: 'string', says: 'Name for people.', at: ['title:string'] },
  { name: 'status', type: 'token', says: 'Status of the measure.', at: ['status:code'] },
  { name: 'version', type: 'token', says: 'Version, as its author counts.', at: ['version:code'] },
  { name: 'date', type: 'date', says: 'When it was last changed.', at: ['date:dateTime'] },
  { name: 'description', type: 'string', says: 'Description in words.', at: ['description:string'] },
  { name: 'publisher', type: 'string', says: 'Who publishes it.', at: ['publisher:string'] },
  { name: 'topic', type: 'token', says: 'What it is about.', at: ['topic:CodeableConcept'] },
  { name: 'jurisdiction', type: 'token', says: 'Where it is meant to be used.', at: ['jurisdiction:CodeableConcept'] },
  { name: 'effective', type: 'date', says: 'When it is meant to be used.', at: ['effectivePeriod:Period'] },
];

export const measureReportRows: readonly ParameterRow[] = [
  identifierRow,
  { name: 'status', type: 'token', says: 'Status of the report.', at: ['status:code'] },
  { name: 'date', type: 'date', says: 'When the report was made.', at: ['date:dateTime'] },
  { name: 'period', type: 'date', says: 'Time that the report covers.', at: ['period:Period'] },
  {
    name: 'measure',
    type: 'reference',
    says: 'Canonical address of the measure.',
    at: ['measure:canonical'],
    targets: ['Measure'],
  },
  {
    name: 'subject',
    type: 'reference',
    says: 'Whom the report is about.',
    at: ['subject:Reference'],
  },
  {
    name: 'patient',
    type: 'reference',
    says: 'The patient, where the report is about one.',
    at: ['subject:Reference'],
    expression: 'MeasureReport.subject.where(resolve() is Patient)',
    isPatientOnly: true,
    targets: ['Patient'],
  },
  {
    name: 'reporter',
    type: 'reference',
    says: 'Who reports.',
    at: ['reporter:Reference'],
    targets: ['Practitioner', 'PractitionerRole', 'Location', 'Organization'],
  },
];
