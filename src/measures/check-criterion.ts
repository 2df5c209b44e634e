import fhirpath from 'fhirpath';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import type { Fault } from '../kernel/errors.ts';
import { allowedFunctions as allowedInViews } from '../views/view-path.ts';
import { compileCriterion } from './criterion.ts';
import { examLists, listNames } from './exam-lists.ts';

/**
 * Limits of an expression that a stranger sends. Judged. A condition inside another looks at every pair of findings,
 * some ten thousand for one exam; one inside that would look at a million.
 */
const most = { characters: 2000, parentheses: 20, depth: 2, nested: 4 };

/** Those that the views have and do not make up, and the time between two dates. */
const ofViewsAlone = ['getResourceKey', 'getReferenceKey', 'lowBoundary', 'highBoundary', 'join'];
export const allowedFunctions: ReadonlySet<string> = new Set([
  ...[...allowedInViews].filter((name) => !ofViewsAlone.includes(name)),
  'duration',
]);

/** Functions that evaluate what they are given once for every item. */
const iterating = ['where', 'exists', 'all'];

/** Names that FHIRPath itself defines. */
const systemVariables = ['context', 'resource', 'rootResource', 'ucum', 'sct', 'loinc'];

/** What an expression has to give. */
export type CriterionKind = 'boolean' | 'number' | 'value';

type AddFault = (pointer: string, code: Fault['code'], message: string, suggestion?: string) => void;

interface SyntaxNode {
  readonly type: string;
  readonly text?: string;
  readonly delimitedText?: string;
  readonly children?: readonly SyntaxNode[];
}

/** Tells every fault of one expression. */
export function checkCriterion(expression: unknown, kind: CriterionKind, pointer: string, add: AddFault): void {
  if (typeof expression !== 'string' || expression.trim() === '') {
    add(pointer, expression === undefined ? 'REQUIRED' : 'WRONG_TYPE', 'Expected a FHIRPath as text.');
    return;
  }
  const root = parsed(expression);
  if (root === undefined) {
    const limits = `${most.characters} characters and ${most.parentheses} parentheses inside each other`;
    add(pointer, 'FORMAT', `Expected a FHIRPath of at most ${limits}.`);
    return;
  }
  let isKnown = true;
  const unknown = (message: string, name: string, known: Iterable<string>) => {
    isKnown = false;
    add(pointer, 'UNKNOWN_KEY', message, nearestKey(name, known));
  };
  let nested = 0;
  let deepest = 0;
  const visit = (node: SyntaxNode, depth: number) => {
    let inside = depth;
    if (node.type === 'Functn') {
      const name = node.children?.[0]?.text ?? '';
      if (!allowedFunctions.has(name)) {
        unknown('The expression calls a function that measures cannot use.', name, allowedFunctions);
      }
      if (iterating.includes(name) && (node.children?.length ?? 0) > 1) {
        inside += 1;
        deepest = Math.max(deepest, inside);
        if (inside > 1) nested += 1;
      }
    }
    if (node.type === 'ExternalConstantTerm') {
      const name = node.delimitedText ?? node.text ?? '';
      const known = [...listNames, ...systemVariables];
      if (!known.includes(name)) unknown('The expression uses a variable that measures do not have.', name, listNames);
    }
    for (const child of node.children ?? []) visit(child, inside);
  };
  visit(root, 0);
  if (deepest > most.depth || nested > most.nested) {
    const limits = `one condition inside another at most, and at most ${most.nested} such pairs`;
    add(pointer, 'TOO_LARGE', `Expected ${limits}: more would take too long for every exam.`);
    return;
  }
  if (isKnown) checkKind(expression, kind, pointer, add);
}

function parsed(expression: string): SyntaxNode | undefined {
  let open = 0;
  for (const character of expression) {
    if (character === '(') open += 1;
    if (character === ')') open -= 1;
    if (open > most.parentheses) return undefined;
  }
  if (expression.length > most.characters) return undefined;
  try {
    return fhirpath.parse(expression) as SyntaxNode;
  } catch {
    return undefined;
  }
}

const emptyExam = {
  impression: { resourceType: 'ClinicalImpression', status: 'in-progress', date: '2000-01-01T00:00:00Z' },
  lists: examLists([]),
};

/** Tries the expression on an exam in which nothing was documented; what it gives for others is seen in time. */
function checkKind(expression: string, kind: CriterionKind, pointer: string, add: AddFault): void {
  let values: readonly unknown[];
  try {
    values = compileCriterion(expression)(emptyExam.impression, emptyExam.lists);
  } catch {
    add(pointer, 'INVALID', 'The expression cannot be evaluated on an exam in which nothing was documented.');
    return;
  }
  if (!isOfKind(values, kind)) add(pointer, 'WRONG_TYPE', kindTexts[kind]);
}

/** Whether an expression gave what its place asks for; nothing is allowed everywhere. */
export function isOfKind(values: readonly unknown[], kind: CriterionKind): boolean {
  if (kind === 'value') return values.every((value) => ['string', 'boolean', 'number'].includes(typeof value));
  return values.length <= 1 && values.every((value) => typeof value === kind);
}

export const kindTexts: Readonly<Record<CriterionKind, string>> = {
  boolean: 'Expected an expression that gives true, false or nothing.',
  number: 'Expected an expression that gives one number or nothing.',
  value: 'Expected an expression that gives texts, numbers, true or false.',
};
