import { canonicalBase } from '../../terminology/systems.ts';
import type { ParameterRow } from '../parameter.ts';
import { encounterRow, identifierRow, patientRow } from './of-every-type.ts';

/** Addresses of the parameters that R4 lacks and that are published here. */
const own = (id: string) => `${canonicalBase}/SearchParameter/${id}`;

const values: readonly ParameterRow[] = [
  {
    name: 'value-concept',
    type: 'token',
    says: 'Coded value: a grade, a sign present or absent.',
    at: ['valueCodeableConcept:CodeableConcept'],
    expression: '(Observation.value as CodeableConcept)',
  },
  {
    name: 'value-quantity',
    type: 'quantity',
    says: 'Measured value, as number|system|unit.',
    at: ['valueQuantity:Quantity'],
    expression: '(Observation.value as Quantity) | (Observation.value as SampledData)',
  },
  {
    name: 'value-string',
    type: 'string',
    says: 'Value in words, or the words of a coded value.',
    at: ['valueString:string', 'valueCodeableConcept.text:string'],
    expression: '(Observation.value as string) | (Observation.value as CodeableConcept).text',
  },
  {
    name: 'value-date',
    type: 'date',
    says: 'Value that is a date.',
    at: ['valueDateTime:dateTime', 'valuePeriod:Period'],
    expression: '(Observation.value as dateTime) | (Observation.value as Period)',
  },
  {
    name: 'data-absent-reason',
    type: 'token',
    says: 'Why there is no value, such as not tested.',
    at: ['dataAbsentReason:CodeableConcept'],
  },
];

const components: readonly ParameterRow[] = [
  {
    name: 'component-code',
    type: 'token',
    says: 'Code of a component.',
    at: ['component.code:CodeableConcept'],
  },
  {
    name: 'component-value-concept',
    type: 'token',
    says: 'Coded value of a component.',
    at: ['component.valueCodeableConcept:CodeableConcept'],
    expression: '(Observation.component.value as CodeableConcept)',
  },
  {
    name: 'component-value-quantity',
    type: 'quantity',
    says: 'Measured value of a component.',
    at: ['component.valueQuantity:Quantity'],
    expression: '(Observation.component.value as Quantity) | (Observation.component.value as SampledData)',
  },
  {
    name: 'component-data-absent-reason',
    type: 'token',
    says: 'Why a component has no value.',
    at: ['component.dataAbsentReason:CodeableConcept'],
  },
  {
    name: 'combo-code',
    type: 'token',
    says: 'Code of the observation or of a component.',
    at: ['code:CodeableConcept', 'component.code:CodeableConcept'],
    expression: 'Observation.code | Observation.component.code',
  },
  {
    name: 'combo-value-concept',
    type: 'token',
    says: 'Coded value of the observation or of a component.',
    at: ['valueCodeableConcept:CodeableConcept', 'component.valueCodeableConcept:CodeableConcept'],
    expression: '(Observation.value as CodeableConcept) | (Observation.component.value as CodeableConcept)',
  },
  {
    name: 'combo-value-quantity',
    type: 'quantity',
    says: 'Measured value of the observation or of a component.',
    at: ['valueQuantity:Quantity', 'component.valueQuantity:Quantity'],
    expression:
      '(Observation.value as Quantity) | (Observation.value as SampledData) | (Observation.component.value as Quantity) | (Observation.component.value as SampledData)',
  },
  {
    name: 'combo-data-absent-reason',
    type: 'token',
    says: 'Why the observation or a component has no value.',
    at: ['dataAbsentReason:CodeableConcept', 'component.dataAbsentReason:CodeableConcept'],
    expression: 'Observation.dataAbsentReason | Observation.component.dataAbsentReason',
  },
];

const codeAndConcept: ParameterRow['parts'] = [
  { type: 'token', at: 'code:CodeableConcept' },
  { type: 'token', at: 'valueCodeableConcept:CodeableConcept' },
];
const codeAndAbsence: ParameterRow['parts'] = [
  { type: 'token', at: 'code:CodeableConcept' },
  { type: 'token', at: 'dataAbsentReason:CodeableConcept' },
];
const codeAndQuantity: ParameterRow['parts'] = [
  { type: 'token', at: 'code:CodeableConcept' },
  { type: 'quantity', at: 'valueQuantity:Quantity' },
];

const composites: readonly ParameterRow[] = [
  {
    name: 'code-value-concept',
    type: 'composite',
    says: 'Code and coded value together, as code$value.',
    at: [':Element'],
    expression: 'Observation',
    parts: codeAndConcept,
  },
  {
    name: 'code-data-absent-reason',
    type: 'composite',
    says: 'Code and the reason why there is no value together, as code$reason: what was not tested, and why.',
    at: [':Element'],
    expression: 'Observation',
    definition: own('code-data-absent-reason'),
    parts: codeAndAbsence,
  },
  {
    name: 'code-value-quantity',
    type: 'composite',
    says: 'Code and measured value together, as code$value.',
    at: [':Element'],
    expression: 'Observation',
    parts: codeAndQuantity,
  },
  {
    name: 'combo-code-value-concept',
    type: 'composite',
    says: 'Code and coded value of the observation or of one component.',
    at: [':Element', 'component:Element'],
    expression: 'Observation | Observation.component',
    parts: codeAndConcept,
  },
  {
    name: 'combo-code-value-quantity',
    type: 'composite',
    says: 'Code and measured value of the observation or of one component.',
    at: [':Element', 'component:Element'],
    expression: 'Observation | Observation.component',
    parts: codeAndQuantity,
  },
  {
    name: 'component-code-value-concept',
    type: 'composite',
    says: 'Code and coded value of one component.',
    at: ['component:Element'],
    parts: codeAndConcept,
  },
  {
    name: 'component-code-value-quantity',
    type: 'composite',
    says: 'Code and measured value of one component.',
    at: ['component:Element'],
    parts: codeAndQuantity,
  },
];

const references: readonly ParameterRow[] = [
  patientRow,
  {
    name: 'subject',
    type: 'reference',
    says: 'Whom the observation is about.',
    at: ['subject:Reference'],
    targets: ['Group', 'Device', 'Patient', 'Location'],
  },
  encounterRow,
  {
    name: 'performer',
    type: 'reference',
    says: 'Who examined.',
    at: ['performer:Reference'],
    targets: ['Practitioner', 'Organization', 'CareTeam', 'Patient', 'PractitionerRole', 'RelatedPerson'],
  },
  {
    name: 'has-member',
    type: 'reference',
    says: 'Panel that holds this observation.',
    at: ['hasMember:Reference'],
    targets: ['Observation', 'MolecularSequence', 'QuestionnaireResponse'],
    isLink: true,
    follows: ['Observation'],
  },
  {
    name: 'derived-from',
    type: 'reference',
    says: 'What rests on this observation.',
    at: ['derivedFrom:Reference'],
    targets: [
      'Media',
      'Observation',
      'ImagingStudy',
      'MolecularSequence',
      'QuestionnaireResponse',
      'DocumentReference',
    ],
    isLink: true,
    follows: ['Observation'],
  },
  {
    name: 'device',
    type: 'reference',
    says: 'Software that computed it.',
    at: ['device:Reference'],
    targets: ['Device', 'DeviceMetric'],
    follows: ['Device'],
  },
  {
    name: 'focus',
    type: 'reference',
    says: 'What it speaks of, beside its subject.',
    at: ['focus:Reference'],
    isLink: true,
  },
  {
    name: 'part-of',
    type: 'reference',
    says: 'Larger event that it is part of.',
    at: ['partOf:Reference'],
    targets: [
      'Immunization',
      'MedicationDispense',
      'MedicationAdministration',
      'Procedure',
      'ImagingStudy',
      'MedicationStatement',
    ],
  },
  {
    name: 'based-on',
    type: 'reference',
    says: 'Request that it fulfils.',
    at: ['basedOn:Reference'],
    targets: [
      'CarePlan',
      'MedicationRequest',
      'NutritionOrder',
      'DeviceRequest',
      'ServiceRequest',
      'ImmunizationRecommendation',
    ],
    isLink: true,
  },
];

export const observationRows: readonly ParameterRow[] = [
  { ...identifierRow, definition: 'clinical-identifier' },
  { name: 'status', type: 'token', says: 'Status of the observation.', at: ['status:code'] },
  {
    name: 'code',
    type: 'token',
    says: 'What was examined or computed.',
    at: ['code:CodeableConcept'],
    definition: 'clinical-code',
  },
  { name: 'category', type: 'token', says: 'Category, such as exam.', at: ['category:CodeableConcept'] },
  {
    name: 'date',
    type: 'date',
    says: 'When the examination took place.',
    at: ['effectiveDateTime:dateTime', 'effectiveInstant:dateTime', 'effectivePeriod:Period', 'effectiveTiming:Timing'],
    expression: 'Observation.effective',
    definition: 'clinical-date',
  },
  { name: 'method', type: 'token', says: 'How it was examined.', at: ['method:CodeableConcept'] },
  ...references,
  ...values,
  ...components,
  ...composites,
  {
    name: 'body-site',
    type: 'token',
    says: 'Place on the body, with its side.',
    at: ['bodySite:CodeableConcept'],
    definition: own('body-site'),
  },
  {
    name: 'interpretation',
    type: 'token',
    says: 'Interpretation, such as abnormal.',
    at: ['interpretation:CodeableConcept'],
    definition: own('interpretation'),
  },
  {
    name: 'ordinal',
    type: 'number',
    says: 'Rank of a graded value on its scale; for order and thresholds, not for means.',
    at: ['valueCodeableConcept.coding.extension:ordinalValue'],
    expression:
      "(Observation.value as CodeableConcept).coding.extension('http://hl7.org/fhir/StructureDefinition/ordinalValue').value",
    definition: own('ordinal'),
  },
];
