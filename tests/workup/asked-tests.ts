import { createLocaliser } from '../../src/localisation/localise.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { bedsideExam } from '../support/bedside.ts';

type Parts = Parameters<typeof bedsideExam>[0];

const assessor = createAssessor(createLocaliser());

/** A story that asks for a test, beside its nearest neighbour. */
export interface Asked {
  readonly what: string;
  readonly test: string;
  readonly asks: Parts;
  /** Nearly the same, for which the test is not proposed. */
  readonly not: Parts;
}

/** Keys of the tests proposed for such an exam. */
export const testsOf = (parts: Parts): readonly string[] =>
  assessor.assess(bedsideExam(parts)).workup.map(({ key }) => key);
