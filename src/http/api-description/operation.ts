import type { JsonSchema } from '../../exam/schema/json-schema.ts';
import type { ProblemCode } from '../problems.ts';
import type { ApiHeader } from './headers.ts';
import type { SharedParameter } from './parameters.ts';

export type ApiMethod = 'get' | 'post' | 'put' | 'delete';

/** Parts of the interface, in the order in which a newcomer meets them. */
export const apiAreas = {
  Localisation: 'Where the lesion is, what it may be and what to do next. Nothing is kept.',
  Practice: 'Simulated, invented patients to examine and to localise. Nothing is kept.',
  Exams: 'Examinations that are kept, with every version, and the FHIR Bundle made from each.',
  Catalogue: 'What can be examined, and the schemas, profiles and terminology that are published.',
  'FHIR resources': 'What was made from exams, read and searched as on any FHIR R4 server.',
  'FHIR conformance': 'What the service says about itself: capabilities, profiles, code systems, value sets and maps.',
  'FHIR terminology': 'The terminology operations over the published codes.',
  'FHIR validation': 'Whether a resource keeps the rules of R4 and of the profiles.',
  'FHIR measures': 'Measures for audit, evaluated over the exams that are kept.',
  'FHIR subscriptions': 'Webhooks: a notice whenever something is kept that matches a search.',
  'FHIR audit': 'Who looked at what, and who changed it.',
  'CDS Hooks': 'Decision support as cards in the record. Source: CDS Hooks 2.0.',
  'Bulk export': 'Everything as NDJSON, in the background. Source: HL7 Bulk Data Access 2.0.0.',
  Tables: 'What was found as tables for analysts. Source: HL7 SQL on FHIR 2.1.0-pre.',
  Service: 'Health, metrics, access, and this description.',
} as const;
export type ApiArea = keyof typeof apiAreas;

export interface ApiParameter {
  readonly name: string;
  readonly in: 'path' | 'query' | 'header';
  readonly required?: boolean;
  readonly description: string;
  readonly schema: JsonSchema;
  /** Name among the components, for one that stands in several operations. */
  readonly component?: string;
}

export interface ApiBody {
  readonly description: string;
  readonly required?: boolean;
  readonly content: Readonly<Record<string, JsonSchema>>;
}

export interface ApiAnswer {
  readonly description: string;
  /** None for an answer without a body. */
  readonly content?: Readonly<Record<string, JsonSchema>>;
  readonly headers?: readonly ApiHeader[];
}

/** A value that the generator works out with the engine, so that it is right after every change of the tables. */
export interface WorkedOut {
  readonly workedOut: 'localisation' | 'bundle';
}

/** One request and its answer, all invented. A test sends it to a running service and compares. */
export interface ApiCall {
  /** Name of the example, the same in parameters, body and answer. */
  readonly name: string;
  readonly says: string;
  readonly parameters?: Readonly<Record<string, string | number | boolean | TakenFrom>>;
  readonly body?: { readonly type: string; readonly value: unknown };
  readonly status: number;
  readonly answer?: {
    readonly type: string;
    readonly value: unknown;
    /** Whether objects and lists of the real answer go on after what is shown. */
    readonly isExcerpt?: boolean;
    /** JSON Pointers of what is different each time, or on another address. */
    readonly varies?: readonly string[];
  };
}

/** A value of a parameter that an earlier call brings: the last segment of the address in a header. */
export interface TakenFrom {
  readonly shown: string;
  readonly from: { readonly operation: string; readonly example: string; readonly header: string };
}

/** One method of one path. */
export interface ApiOperation {
  readonly method: ApiMethod;
  /** As OpenAPI writes it: `/exams/{id}`. */
  readonly path: string;
  /** Name for programs, unique. */
  readonly id: string;
  readonly area: ApiArea;
  readonly summary: string;
  readonly description?: string;
  readonly parameters?: readonly (SharedParameter | ApiParameter)[];
  readonly body?: ApiBody;
  readonly answers: Readonly<Record<number, ApiAnswer>>;
  /** Ways to fail beside those of every operation. */
  readonly problems?: readonly ProblemCode[];
  readonly calls?: readonly ApiCall[];
  /** The path with `{type}`, where the same is done for several resource types. */
  readonly family?: string;
  /** For a POST that may be sent again without doing anything twice, so that a client may repeat it by itself. */
  readonly isRepeatable?: boolean;
}

export function componentSchema(name: string): JsonSchema {
  return { $ref: `#/components/schemas/${name}` };
}
