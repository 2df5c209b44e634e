import type { Ontology } from '../../anatomy/ontology.ts';
import type { Source } from '../../kernel/cite.ts';
import type { Grade } from '../scales.ts';

interface ResultBase {
  readonly key: string;
  readonly label: string;
  /** LOINC codes under which the result is accepted; empty when it comes under its key alone. */
  readonly loinc: readonly Ontology[];
  readonly source: Source;
}

/** Straight line from a unit that UCUM cannot or must not convert: canonical value = factor x value + offset. */
export interface UnitLine {
  /** UCUM code in which the value arrives. */
  readonly unit: string;
  readonly factor: number;
  readonly offset: number;
  readonly source: Source;
}

/** A measured result. Thresholds belong to the tables of causes; here is only what is possible at all. */
export interface QuantityResult extends ResultBase {
  readonly kind: 'quantity';
  /** Canonical UCUM unit; every value is converted to it. */
  readonly unit: string;
  /** In the canonical unit, ends included; a value outside cannot be true of a living person and is a fault. */
  readonly plausible: readonly [low: number, high: number];
  /** g/mol; present where mass and amount of substance are both in use. */
  readonly molarMass?: number;
  /** Taken before UCUM conversion is tried. */
  readonly lines?: readonly UnitLine[];
}

/** A result that is read, not measured. */
export interface CodedResult extends ResultBase {
  readonly kind: 'coded';
  readonly values: readonly Grade[];
  /** Keys of `values` that are not an abnormality. */
  readonly normal: readonly string[];
}

export type ResultRow = QuantityResult | CodedResult;

export const loinc = (code: string, display: string): Ontology => ({ code, display });
