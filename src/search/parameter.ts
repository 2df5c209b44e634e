/** One search parameter of one resource type, with everything that reading, indexing and publishing need. */
export interface Parameter {
  readonly name: string;
  readonly type: ParameterType;
  /** Canonical address of the SearchParameter resource. */
  readonly definition: string;
  /** FHIRPath as published in that resource, the part for this type alone. */
  readonly expression: string;
  readonly documentation: string;
  readonly places: readonly Place[];
  /** Only references to a Patient count. */
  readonly isPatientOnly: boolean;
  /** Types that a reference may name; empty for any. */
  readonly targets: readonly string[];
  /** Refers to resources of the same exam; those references are kept as links. */
  readonly isLink: boolean;
  /** Types of our own that the emitted references lead to; these can be included. */
  readonly follows: readonly string[];
  /** The two values of a composite, which stand together below each place. */
  readonly parts?: readonly [ParameterPart, ParameterPart];
}

export type ParameterType = 'token' | 'reference' | 'string' | 'date' | 'number' | 'quantity' | 'uri' | 'composite';

export interface ParameterPart {
  readonly type: 'token' | 'quantity';
  readonly place: Place;
}

/** Where values lie, as JSON property names (arrays are entered of themselves), and their datatype. */
export interface Place {
  readonly steps: readonly string[];
  readonly datatype: Datatype;
}

export type Datatype =
  | 'CodeableConcept'
  | 'Coding'
  | 'Identifier'
  | 'code'
  | 'string'
  | 'uri'
  | 'canonical'
  | 'Reference'
  | 'dateTime'
  | 'Period'
  | 'Timing'
  | 'Quantity'
  | 'decimal'
  | 'ordinalValue'
  | 'Element';

/** A row of the tables: places are written `component.valueCodeableConcept:CodeableConcept`. */
export interface ParameterRow {
  readonly name: string;
  readonly type: ParameterType;
  readonly says: string;
  readonly at: readonly `${string}:${Datatype}`[];
  /** Where it is not the type and the only place. */
  readonly expression?: string;
  /** Last part of HL7's address, or the whole address; `<Type>-<name>` where absent. */
  readonly definition?: string;
  readonly isPatientOnly?: true;
  readonly targets?: readonly string[];
  readonly isLink?: true;
  readonly follows?: readonly string[];
  readonly parts?: readonly [
    { readonly type: 'token'; readonly at: `${string}:${Datatype}` },
    { readonly type: 'token' | 'quantity'; readonly at: `${string}:${Datatype}` },
  ];
}

export function parametersFor(type: string, rows: readonly ParameterRow[]): readonly Parameter[] {
  return rows.map((row) => {
    const address = row.definition ?? `${type}-${row.name}`;
    return {
      name: row.name,
      type: row.type,
      definition: address.includes('://') ? address : `http://hl7.org/fhir/SearchParameter/${address}`,
      expression: row.expression ?? `${type}.${row.at[0]?.split(':')[0]}`,
      documentation: row.says,
      places: row.at.map(placeOf),
      isPatientOnly: row.isPatientOnly ?? false,
      targets: row.targets ?? [],
      isLink: row.isLink ?? false,
      follows: row.follows ?? [],
      ...(row.parts === undefined
        ? {}
        : {
            parts: [
              { type: row.parts[0].type, place: placeOf(row.parts[0].at) },
              { type: row.parts[1].type, place: placeOf(row.parts[1].at) },
            ] as const,
          }),
    };
  });
}

function placeOf(text: string): Place {
  const [path = '', datatype] = text.split(':');
  return { steps: path === '' ? [] : path.split('.'), datatype: datatype as Datatype };
}
