/** A column of a ViewDefinition. Source of all shapes here: SQL on FHIR 2.1.0-pre, StructureDefinition ViewDefinition. */
export interface ColumnDefinition {
  readonly name: string;
  readonly path: string;
  readonly type?: string;
  readonly collection?: boolean;
  readonly description?: string;
}

export interface SelectDefinition {
  readonly column?: readonly ColumnDefinition[];
  readonly select?: readonly SelectDefinition[];
  readonly unionAll?: readonly SelectDefinition[];
  readonly forEach?: string;
  readonly forEachOrNull?: string;
  readonly repeat?: readonly string[];
}

export interface ViewDefinition {
  readonly resourceType?: 'ViewDefinition';
  readonly id?: string;
  readonly url?: string;
  readonly name?: string;
  readonly title?: string;
  readonly description?: string;
  readonly status?: string;
  readonly fhirVersion?: readonly string[];
  readonly resource: string;
  readonly constant?: readonly Readonly<Record<string, unknown>>[];
  readonly where?: readonly { readonly path: string }[];
  readonly select: readonly SelectDefinition[];
}

export interface ViewColumn {
  readonly name: string;
  /** FHIR primitive type, or undefined where the view gives none. */
  readonly type: string | undefined;
  readonly collection: boolean;
  readonly description?: string;
}

export type Cell = string | number | boolean | null | readonly unknown[] | Readonly<Record<string, unknown>>;
/** Cells by column name, in the order of the columns. */
export type Row = Readonly<Record<string, Cell>>;
