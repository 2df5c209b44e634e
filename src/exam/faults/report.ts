import { ExamInvalidError, type Fault } from '../../kernel/errors.ts';

/** As many faults as a person can act on; an answer with more would only be large. */
const faultsReported = 100;

/** Throws if there is any fault; repeats are dropped, and of more than a hundred the last one says how many are not listed. */
export function throwIfAny(faults: readonly Fault[]): void {
  if (faults.length === 0) return;
  const distinct = [
    ...new Map(faults.map((fault) => [`${fault.pointer}\n${fault.code}\n${fault.message}`, fault])).values(),
  ];
  if (distinct.length <= faultsReported) throw new ExamInvalidError(distinct);
  const listed = distinct.slice(0, faultsReported - 1);
  throw new ExamInvalidError([
    ...listed,
    {
      pointer: '',
      code: 'MORE_FAULTS',
      message: `${distinct.length - listed.length} more faults are not listed; they show when these are mended.`,
    },
  ]);
}
