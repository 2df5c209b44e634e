/** What the page reads of an OpenAPI document; whatever else is there is left alone. */
export interface ReadDocument {
  readonly info: { readonly title: string; readonly version: string; readonly description: string };
  readonly tags: readonly { readonly name: string; readonly description: string }[];
  readonly paths: Readonly<Record<string, Readonly<Record<string, ReadOperation>>>>;
  readonly components: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

export interface ReadOperation {
  readonly operationId: string;
  readonly tags: readonly string[];
  readonly summary: string;
  readonly description?: string;
  readonly 'x-family'?: string;
  readonly parameters: readonly unknown[];
  readonly requestBody?: { readonly description: string; readonly required: boolean; readonly content: ReadContent };
  readonly responses: Readonly<Record<string, unknown>>;
  /** Alternatives: by name of the scheme what is needed of it. */
  readonly security: readonly { readonly bearer?: readonly string[] }[];
}

export interface ReadParameter {
  readonly name: string;
  readonly in: string;
  readonly description: string;
  readonly required?: boolean;
  readonly schema: ReadSchema;
  readonly examples?: Readonly<Record<string, ReadExample>>;
}

export interface ReadResponse {
  readonly description: string;
  readonly headers?: Readonly<Record<string, unknown>>;
  readonly content?: ReadContent;
}

export type ReadContent = Readonly<
  Record<string, { readonly schema: ReadSchema; readonly examples?: Readonly<Record<string, ReadExample>> }>
>;

export interface ReadExample {
  readonly summary: string;
  readonly value: unknown;
  readonly 'x-excerpt'?: boolean;
}

export interface ReadSchema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly description?: string;
  readonly format?: string;
  readonly pattern?: string;
  readonly default?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxProperties?: number;
  readonly properties?: Readonly<Record<string, ReadSchema>>;
  readonly required?: readonly string[];
  readonly items?: ReadSchema;
  readonly anyOf?: readonly ReadSchema[];
  readonly oneOf?: readonly ReadSchema[];
  readonly externalDocs?: { readonly description: string; readonly url: string };
}

/** One operation, or the same one of several resource types. */
export interface OperationGroup {
  readonly method: string;
  /** With `{type}` where there are several. */
  readonly path: string;
  readonly area: string;
  readonly members: readonly OperationMember[];
}
export interface OperationMember {
  readonly path: string;
  readonly operation: ReadOperation;
}

/** The operations in the order of the document, those of one family together. */
export function groupOperations({ paths }: ReadDocument): readonly OperationGroup[] {
  const groups = new Map<string, OperationGroup & { readonly members: OperationMember[] }>();
  for (const [path, methods] of Object.entries(paths)) {
    for (const [method, operation] of Object.entries(methods)) {
      const [area = ''] = operation.tags;
      const shown = operation['x-family'] ?? path;
      const key = `${area} ${method} ${shown}`;
      const group = groups.get(key) ?? { method: method.toUpperCase(), path: shown, area, members: [] };
      groups.set(key, group);
      group.members.push({ path, operation });
    }
  }
  return [...groups.values()];
}

/** Follows a reference into the components. */
export function resolve<Part>(document: ReadDocument, part: unknown): Part {
  const reference = (part as { $ref?: string }).$ref;
  if (reference === undefined) return part as Part;
  const [, kind = '', name = ''] = /^#\/components\/(\w+)\/(.+)$/.exec(reference) ?? [];
  return document.components[kind]?.[name] as Part;
}

export function parametersOf(document: ReadDocument, operation: ReadOperation): readonly ReadParameter[] {
  return operation.parameters.map((parameter) => resolve<ReadParameter>(document, parameter));
}
