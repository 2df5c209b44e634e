import type { Fault } from '../assessment.ts';

/** The faults that the service found at a place of the exam or within it. */
export function faultsWithin(faults: readonly Fault[], pointer: string): readonly Fault[] {
  return faults.filter((fault) => fault.pointer === pointer || (fault.pointer ?? '').startsWith(`${pointer}/`));
}
