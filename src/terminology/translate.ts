import type {
  ConceptMap,
  ConceptMapGroup,
  ConceptMapGroupElementTarget,
  Parameters,
  ParametersParameter,
} from 'fhir/r4.js';
import type { Coding } from '../kernel/coding.ts';

type Equivalence = ConceptMapGroupElementTarget['equivalence'];

/** What is asked of the maps. */
export interface TranslationQuestion {
  readonly system: string;
  readonly code: string;
  readonly targetSystem?: string | undefined;
  /** Value set that the answers must be in. */
  readonly target?: readonly Coding[] | undefined;
  /** From target to source: which codes may be mapped to this one. */
  readonly isReverse?: boolean;
}

/** One statement of a map, seen from the code that was asked about. */
interface Statement {
  readonly system: string | undefined;
  readonly code: string | undefined;
  readonly display: string | undefined;
  readonly equivalence: Equivalence;
}

/** The relation seen from the other end; the others say the same from both. */
const reversed: Readonly<Partial<Record<Equivalence, Equivalence>>> = {
  wider: 'narrower',
  narrower: 'wider',
  subsumes: 'specializes',
  specializes: 'subsumes',
};

/**
 * Answer of `ConceptMap/$translate`: what the maps say of a code, from source to target or back.
 * The equivalence is that of the answer to the code asked about, so it is turned round with the direction.
 * Source: http://hl7.org/fhir/R4/conceptmap-operation-translate.html
 */
export function translate(maps: readonly ConceptMap[], asked: TranslationQuestion): Parameters {
  const inTarget = asked.target && new Set(asked.target.map(({ system, code }) => `${system}|${code}`));
  const match = maps.flatMap(({ url, group = [] }) =>
    group
      .flatMap((one) => (asked.isReverse ? backward(one, asked) : forward(one, asked)))
      .filter(({ system }) => asked.targetSystem === undefined || asked.targetSystem === system)
      .filter(({ system, code }) => inTarget === undefined || inTarget.has(`${system}|${code}`))
      .map((statement) => matchOf(statement, url)),
  );
  const result = match.some(({ part }) => !['unmatched', 'disjoint'].includes(part?.[0]?.valueCode ?? ''));
  return {
    resourceType: 'Parameters',
    parameter: [
      { name: 'result', valueBoolean: result },
      ...(match.length > 0 ? [] : [{ name: 'message', valueString: 'No map has this code.' }]),
      ...match,
    ],
  };
}

function forward({ source, target: system, element }: ConceptMapGroup, asked: TranslationQuestion): Statement[] {
  if (source !== asked.system) return [];
  return element
    .filter(({ code }) => code === asked.code)
    .flatMap(({ target = [] }) => target)
    .map(({ code, display, equivalence }) => ({ system, code, display, equivalence }));
}

function backward({ source: system, target: from, element }: ConceptMapGroup, asked: TranslationQuestion): Statement[] {
  if (from !== asked.system) return [];
  return element.flatMap(({ code, display, target = [] }) =>
    target
      .filter((one) => one.code === asked.code)
      .map(({ equivalence }) => ({ system, code, display, equivalence: reversed[equivalence] ?? equivalence })),
  );
}

function matchOf({ system, code, display, equivalence }: Statement, url: string | undefined): ParametersParameter {
  return {
    name: 'match',
    part: [
      { name: 'equivalence', valueCode: equivalence },
      {
        name: 'concept',
        valueCoding: { ...(system && { system }), ...(code && { code }), ...(display && { display }) },
      },
      ...(url === undefined ? [] : [{ name: 'source', valueUri: url }]),
    ],
  };
}
