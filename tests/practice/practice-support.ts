import { createExamReader } from '../../src/exam/read-exam.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { createPractice, type PatientNames } from '../../src/practice/practice.ts';
import { practiceModel } from '../../src/practice/practice-model.ts';
import { compiledByBuild } from '../support/built.ts';

const compiled = compiledByBuild();
const reader = createExamReader(compiled?.validators);
const localiser = createLocaliser(compiled?.model);

export const model = practiceModel(reader, localiser);
export const practice = createPractice(reader, localiser);

/** Names that hide nothing; how they are sealed is the affair of the service. */
export const plainNames: PatientNames = { seal: (patient) => patient, open: (token) => token };

/** The outcome of work in pieces. */
export function outcomeOf<T>(pieces: Generator<void, T>): T {
  for (;;) {
    const { done, value } = pieces.next();
    if (done === true) return value;
  }
}
