import fhirpath from 'fhirpath';
import { boundaryOf } from './boundaries.ts';
import { r4Model } from './r4-model.ts';

/** Functions a view may call: those of the shareable and experimental lists, and others whose work is bounded by input. */
export const allowedFunctions: ReadonlySet<string> = new Set(
  `where exists empty extension ofType first last tail skip take single count all allTrue anyTrue allFalse anyFalse not
   join lowBoundary highBoundary getResourceKey getReferenceKey distinct isDistinct iif is as hasValue getValue toString
   toInteger toDecimal toBoolean toDate toDateTime toTime startsWith endsWith contains substring indexOf lower upper
   length split trim abs ceiling floor round truncate`.split(/\s+/),
);

/** A node of the resource or a value, as the library hands it out and takes it back. */
export type FhirPathNode = unknown;
export type ViewPath = (context: FhirPathNode, variables: Readonly<Record<string, unknown>>) => readonly FhirPathNode[];

interface SyntaxNode {
  readonly type: string;
  readonly text?: string;
  readonly children?: readonly SyntaxNode[];
}

/** Functions that run their criteria once for every item. */
const loops = new Set(['where', 'exists', 'all']);

interface PathUse {
  readonly functions: string[];
  readonly variables: string[];
  /** How many loops stand inside one another: the work grows with the power of it. */
  readonly loops: number;
}

/** What a path uses, or undefined when it does not parse. */
export function namesInPath(path: string): PathUse | undefined {
  let root: SyntaxNode;
  try {
    root = fhirpath.parse(path) as SyntaxNode;
  } catch {
    return undefined;
  }
  const functions: string[] = [];
  const variables: string[] = [];
  let deepest = 0;
  const visit = (node: SyntaxNode, depth = 0) => {
    const name = node.type === 'Functn' ? (node.children?.[0]?.text ?? '') : undefined;
    if (name !== undefined) functions.push(name);
    const inside = depth + Number(name !== undefined && loops.has(name) && (node.children?.length ?? 0) > 1);
    deepest = Math.max(deepest, inside);
    if (node.type === 'ExternalConstantTerm') variables.push((node.text ?? '').replaceAll(/^%|^[`']|[`']$/g, ''));
    for (const child of node.children ?? []) visit(child, inside);
  };
  visit(root);
  return { functions, variables, loops: deepest };
}

interface NodeLike {
  readonly data?: unknown;
  readonly fhirNodeDataType?: string | null;
}

function dataOf(node: unknown): unknown {
  return typeof node === 'object' && node !== null && 'fhirNodeDataType' in node ? (node as NodeLike).data : node;
}

function resourceKey(nodes: readonly unknown[]): unknown[] {
  return nodes.flatMap((node) => {
    const { resourceType, id } = (dataOf(node) ?? {}) as { resourceType?: string; id?: string };
    return resourceType === undefined || id === undefined ? [] : [id];
  });
}

const reference = /(?:^|\/)(?<type>[A-Z][A-Za-z]+)\/(?<id>[A-Za-z0-9\-.]{1,64})(?:\/_history\/[A-Za-z0-9\-.]{1,64})?$/;
const uuid = /^urn:uuid:(?<id>[0-9a-f-]{36})$/;

/**
 * The id that a reference leads to. A `urn:uuid:` names no type, so with a type asked for it needs `Reference.type`.
 */
function referenceKey(nodes: readonly unknown[], wanted?: unknown): unknown[] {
  const type = typeof wanted === 'object' && wanted !== null ? (wanted as { name?: string }).name : wanted;
  return nodes.flatMap((node) => {
    const value = (dataOf(node) ?? {}) as { reference?: unknown; type?: string };
    if (typeof value.reference !== 'string') return [];
    const local = uuid.exec(value.reference)?.groups;
    if (local) return type === undefined || value.type === undefined || value.type === type ? [local.id] : [];
    const found = reference.exec(value.reference)?.groups;
    return found && (type === undefined || found.type === type) ? [found.id] : [];
  });
}

function joined(nodes: readonly unknown[], separator = ''): string {
  return nodes.map((node) => String(dataOf(node))).join(separator);
}

const functions = {
  getResourceKey: { fn: resourceKey, arity: { 0: [] }, internalStructures: true },
  getReferenceKey: { fn: referenceKey, arity: { 0: [], 1: ['TypeSpecifier'] }, internalStructures: true },
  lowBoundary: { fn: boundaryOf('low'), arity: { 0: [], 1: ['Integer'] }, internalStructures: true },
  highBoundary: { fn: boundaryOf('high'), arity: { 0: [], 1: ['Integer'] }, internalStructures: true },
  join: { fn: joined, arity: { 0: [], 1: ['String'] }, internalStructures: true },
};

const options = { resolveInternalTypes: false, userInvocationTable: functions, preciseMath: true } as never;

/** @throws Error of the library when the path does not parse */
export function compilePath(path: string): ViewPath {
  return fhirpath.compile(path, r4Model, options) as unknown as (
    context: unknown,
    variables: Readonly<Record<string, unknown>>,
  ) => unknown[];
}

/** The cell of one node: numbers and strings plain, times as their text, complex values as JSON. */
export function plainValue(node: FhirPathNode): unknown {
  const [value] = [fhirpath.resolveInternalTypes([node])].flat();
  return value;
}
