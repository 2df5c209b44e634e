import { type Parameter, type ParameterRow, parametersFor } from './parameter.ts';
import { clinicalImpressionRows } from './parameters/clinical-impression.ts';
import { deviceRows } from './parameters/device.ts';
import { measureReportRows, measureRows } from './parameters/measure.ts';
import { observationRows } from './parameters/observation.ts';
import { everyTypeRows } from './parameters/of-every-type.ts';
import { provenanceRows } from './parameters/provenance.ts';
import { riskAssessmentRows } from './parameters/risk-assessment.ts';
import { serviceRequestRows } from './parameters/service-request.ts';
import { subscriptionRows } from './parameters/subscription.ts';

/** Every type that can be searched: its parameters, and which of them is its clinical date. */
const table = {
  Observation: { rows: observationRows, date: 'date' },
  ClinicalImpression: { rows: clinicalImpressionRows, date: 'date' },
  RiskAssessment: { rows: riskAssessmentRows, date: 'date' },
  ServiceRequest: { rows: serviceRequestRows, date: 'authored' },
  Provenance: { rows: provenanceRows, date: 'recorded' },
  Device: { rows: deviceRows, date: null },
  Measure: { rows: measureRows, date: 'date' },
  MeasureReport: { rows: measureReportRows, date: 'date' },
  Subscription: { rows: subscriptionRows, date: null },
} as const satisfies Record<string, { rows: readonly ParameterRow[]; date: string | null }>;

export type SearchedType = keyof typeof table;
export const searchedTypes = Object.keys(table) as readonly SearchedType[];

/** Types whose resources come from one exam and refer to each other by `Type/uuid`. */
export const linkedTypes: ReadonlySet<string> = new Set([
  'Observation',
  'ClinicalImpression',
  'RiskAssessment',
  'ServiceRequest',
  'Provenance',
]);

const byType = new Map<string, ReadonlyMap<string, Parameter>>(
  searchedTypes.map((type) => {
    const parameters = parametersFor(type, [...everyTypeRows, ...table[type].rows]).map((parameter) =>
      // `subject.where(...)` stands once for all types.
      parameter.expression.startsWith('subject.')
        ? { ...parameter, expression: `${type}.${parameter.expression}` }
        : parameter,
    );
    return [type, new Map(parameters.map((parameter) => [parameter.name, parameter]))];
  }),
);

const none: ReadonlyMap<string, Parameter> = new Map();

/** Parameters of a type by name; empty for a type that is not searched. */
export function parametersOf(type: string): ReadonlyMap<string, Parameter> {
  return byType.get(type) ?? none;
}

/** Name of the parameter that is the type's clinical date; null for a type without one. */
export function dateParameterOf(type: string): string | null {
  return Object.hasOwn(table, type) ? table[type as SearchedType].date : null;
}

/**
 * The parameter under which every resource of a type made here has a value that equals its id, so that none is without;
 * those values are not in the index.
 */
export function ownParameterOf(type: string): 'identifier' | '_tag' | null {
  if (type === 'Provenance') return '_tag'; // R4's Provenance has no identifier
  return linkedTypes.has(type) || type === 'Device' ? 'identifier' : null;
}

/**
 * Parameters that are by definition what two others hold together: HL7 defines `combo-code` as `code | component.code`,
 * and so on. An index need not hold them again.
 */
const unions: Readonly<Record<string, readonly string[]>> = {
  'combo-code': ['code', 'component-code'],
  'combo-value-concept': ['value-concept', 'component-value-concept'],
  'combo-value-quantity': ['value-quantity', 'component-value-quantity'],
  'combo-data-absent-reason': ['data-absent-reason', 'component-data-absent-reason'],
  'combo-code-value-concept': ['code-value-concept', 'component-code-value-concept'],
  'combo-code-value-quantity': ['code-value-quantity', 'component-code-value-quantity'],
};

/** The parameters under which the values of one are indexed; itself unless it is the union of others. */
export function indexedUnder(type: string, name: string): readonly string[] {
  return (type === 'Observation' ? unions[name] : undefined) ?? [name];
}
