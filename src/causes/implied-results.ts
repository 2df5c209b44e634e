import type { Exam, InvestigationResult } from '../exam/exam.ts';

/**
 * Level of the acetylcholine receptor antibody in nmol/L from which it is positive, and below which it is negative; between
 * them laboratories differ. Usual limits of the radioimmunoassay, from memory.
 */
const receptorLevels = { positiveFrom: 0.5, negativeBelow: 0.25 } as const;

/**
 * Fall of systolic pressure in mmHg that is orthostatic hypotension; more is asked of who lies with a high pressure, here taken
 * from 150 mmHg on. Source: `orthostatic-consensus-2011`, recalled; the pressure from which it is high is judged.
 */
const leastFall = { usual: 20, fromHigh: 30, highFrom: 150 } as const;

/** Results with what their numbers mean where tables ask for the reading: a level that is positive, a pressure that falls. */
export function withImpliedResults(exam: Exam): readonly InvestigationResult[] {
  const { results } = exam;
  const implied = [readLevel(results), readFall(exam)].filter((result) => result !== undefined);
  return implied.length === 0 ? results : [...results, ...implied];
}

function named(results: readonly InvestigationResult[], key: string): InvestigationResult | undefined {
  return results.find((result) => result.key === key);
}

function readLevel(results: readonly InvestigationResult[]): InvestigationResult | undefined {
  const level = named(results, 'achr-antibody-level');
  if (level?.quantity === undefined || named(results, 'achr-antibody') !== undefined) return undefined;
  const { positiveFrom, negativeBelow } = receptorLevels;
  const { value } = level.quantity;
  const { comparator = '' } = level;
  if (comparator.startsWith('>') && value < positiveFrom) return undefined;
  if (comparator.startsWith('<') && value > negativeBelow) return undefined;
  const isNegative = value < negativeBelow || comparator.startsWith('<');
  return {
    ...level,
    key: 'achr-antibody',
    value: value >= positiveFrom ? 'positive' : isNegative ? 'negative' : 'equivocal',
  };
}

/** Not where the examiner says in so many words whether the pressure falls, or the autonomic functions were measured. */
function readFall({ results, findings }: Exam): InvestigationResult | undefined {
  const lying = named(results, 'systolic-pressure-supine')?.quantity?.value;
  const standing = named(results, 'systolic-pressure-standing');
  if (lying === undefined || standing?.quantity === undefined || standing.comparator !== undefined) return undefined;
  if (named(results, 'systolic-pressure-supine')?.comparator !== undefined) return undefined;
  const isStated = findings.some(({ item, value }) => item.key === 'orthostatic-hypotension' && value !== null);
  if (isStated || named(results, 'autonomic-tests') !== undefined) return undefined;
  const fall = lying - standing.quantity.value;
  const least = lying >= leastFall.highFrom ? leastFall.fromHigh : leastFall.usual;
  if (fall < least) return undefined;
  return {
    key: 'autonomic-tests',
    label: 'Fall of systolic pressure on standing',
    value: 'orthostatic-hypotension',
    quantity: { value: fall, unit: standing.quantity.unit },
    pointer: standing.pointer,
  };
}
