import type { ExamReader } from '../exam/read-exam.ts';
import { hypotheses } from '../localisation/hypotheses/hypotheses.ts';
import { Priors } from '../localisation/inference/prior.ts';
import type { Localiser } from '../localisation/localise.ts';

/** The engine, by which patients are drawn and answers are held against it. */
export interface PracticeModel {
  readonly reader: ExamReader;
  readonly localiser: Localiser;
  readonly priors: Priors;
}

export function practiceModel(reader: ExamReader, localiser: Localiser): PracticeModel {
  return { reader, localiser, priors: new Priors(hypotheses) };
}
