import type { Course, ExamStatus, FamilyRelation, IdentifierValue, OnsetPace, ReferenceValue } from './exam.ts';
import type { NotTestedReason } from './finding.ts';

/** The parts of a request as they are typed once their schema holds. Nothing here is checked again. */
export type SideValue = 'left' | 'right' | 'both';

/** One entry of a section; the property that names the item and the one that holds its value differ by section. */
export interface FindingEntry {
  readonly side?: SideValue;
  readonly site?: string;
  readonly dermatome?: string;
  readonly territory?: string;
  readonly levelBelow?: string;
  readonly reinforced?: boolean;
  readonly notTested?: NotTestedReason;
  readonly note?: string;
  readonly [property: string]: unknown;
}

export interface ComaScaleEntry {
  readonly scale: 'glasgow-coma-scale';
  readonly eye?: number | { readonly notTested: NotTestedReason };
  readonly verbal?: number | { readonly notTested: NotTestedReason };
  readonly motor?: number | { readonly notTested: NotTestedReason };
  readonly total?: number;
  readonly notTested?: NotTestedReason;
  readonly note?: string;
}

export interface HistoryEntry {
  readonly key: string;
  readonly present: boolean;
  readonly relation?: FamilyRelation;
  readonly side?: SideValue;
}

export interface QuantityValue {
  readonly value: number;
  readonly comparator?: '<' | '<=' | '>=' | '>';
  readonly unit?: string;
  readonly code?: string;
}

export interface ResultEntry {
  readonly key?: string;
  readonly code?: { readonly system: string; readonly code: string };
  readonly valueQuantity?: QuantityValue;
  readonly value?: string;
  readonly note?: string;
}

export interface ExamRequest {
  readonly identifier?: IdentifierValue & { readonly system: string };
  readonly status?: ExamStatus;
  readonly subject?: ReferenceValue;
  readonly encounter?: ReferenceValue;
  readonly performer?: readonly ReferenceValue[];
  readonly examinedAt: string;
  readonly person?: { readonly ageYears?: number; readonly sex?: 'male' | 'female' | 'other' | 'unknown' };
  readonly history?: {
    readonly onset?: { readonly pace?: OnsetPace; readonly durationDays?: number };
    readonly course?: Course;
  };
  readonly requests?: readonly string[];
}
