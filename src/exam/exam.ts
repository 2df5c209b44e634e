import type { Finding, NormalStatement, ScoredScale } from './finding.ts';

/** FHIR Reference and Identifier as far as an exam may carry them. */
export interface IdentifierValue {
  readonly system?: string;
  readonly value: string;
}
export interface ReferenceValue {
  readonly reference?: string;
  readonly type?: string;
  readonly identifier?: IdentifierValue;
  readonly display?: string;
}

export const onsetPaces = ['hyperacute', 'acute', 'subacute', 'chronic'] as const;
export type OnsetPace = (typeof onsetPaces)[number];
export const courses = [
  'progressive',
  'static',
  'improving',
  'relapsing-remitting',
  'fluctuating',
  'monophasic',
] as const;
export type Course = (typeof courses)[number];
export const familyRelations = [
  'parent',
  'sibling',
  'child',
  'grandparent',
  'aunt-or-uncle',
  'cousin',
  'other',
] as const;
export type FamilyRelation = (typeof familyRelations)[number];
export const examStatuses = ['preliminary', 'final', 'amended', 'entered-in-error'] as const;
export type ExamStatus = (typeof examStatuses)[number];

/** One statement of the history; `present: false` is a relevant negative, absence from the list says nothing. */
export interface HistoryStatement {
  readonly key: string;
  readonly label: string;
  readonly kind: 'symptom' | 'condition' | 'exposure' | 'family' | 'medication';
  readonly present: boolean;
  readonly relation?: FamilyRelation;
  readonly side?: 'left' | 'right' | 'both';
  readonly pointer: string;
}

/** A result already back, as the caller coded it; conversion to the unit of a threshold is `results.ts`. */
export interface InvestigationResult {
  /** Catalogue key of the result, found from its code or given as such. */
  readonly key: string;
  readonly label: string;
  /** Number in `unit` (the catalogue's own UCUM unit for this result), already converted; absent for coded results. */
  readonly quantity?: { readonly value: number; readonly unit: string };
  /** FHIR Quantity.comparator as sent: the number is a bound, not the value itself. */
  readonly comparator?: '<' | '<=' | '>=' | '>';
  /** Coded value for results without a number: a key of the result's own value list. */
  readonly value?: string;
  readonly note?: string;
  readonly pointer: string;
}

/** A valid exam, read and flattened. The order of the arrays follows the catalogue, not the request. */
export interface Exam {
  readonly identifier?: IdentifierValue & { readonly system: string };
  readonly status: ExamStatus;
  readonly subject?: ReferenceValue;
  readonly encounter?: ReferenceValue;
  readonly performer: readonly ReferenceValue[];
  /** As sent, with its zone. */
  readonly examinedAt: string;
  readonly person: { readonly ageYears?: number; readonly sex?: 'male' | 'female' | 'other' | 'unknown' };
  readonly onset: { readonly pace?: OnsetPace; readonly durationDays?: number };
  readonly course?: Course;
  readonly history: readonly HistoryStatement[];
  readonly findings: readonly Finding[];
  readonly scales: readonly ScoredScale[];
  /** The examiner's own summary statements, before expansion. */
  readonly otherwiseNormal: readonly NormalStatement[];
  readonly results: readonly InvestigationResult[];
  /**
   * Keys of the investigations that the examiner wants proposed, each once; without it whatever the service suggests is
   * proposed, and none where it is empty.
   */
  readonly requests?: readonly string[];
}
