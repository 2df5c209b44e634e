import { rankCauses } from '../differential/rank-causes.ts';
import type { Exam } from '../exam/exam.ts';
import { withImpliedFacts } from '../exam/implied-facts.ts';
import type { Localisation } from '../localisation/localisation.ts';
import { createLocaliser } from '../localisation/localise.ts';
import { modelVersion } from '../localisation/model-version.ts';
import type { Assessment } from '../workup/assessment.ts';
import { proposeWorkup } from '../workup/propose-workup.ts';
import { assessRedFlags } from '../workup/red-flags.ts';
import { cautionFor } from './caution.ts';
import { present } from './present.ts';
import type { Spelling } from './spelling.ts';

export interface Assessor {
  /** Everything computed from one exam; pure, the same exam gives the same answer. UK spelling unless told otherwise. */
  readonly assess: (exam: Exam, options?: { readonly spelling?: Spelling }) => Assessment;
  /** Works out beforehand what exams would otherwise wait for, a little at a time. */
  readonly prepare: () => Iterable<unknown>;
}

/** Builds the localiser once; another one may be given in its place. */
export function createAssessor(
  localiser: {
    readonly localise: (exam: Exam) => Localisation;
    readonly prepare?: () => Iterable<unknown>;
  } = createLocaliser(),
): Assessor {
  return {
    prepare: () => localiser.prepare?.() ?? [],
    assess: (stated, { spelling = 'uk' } = {}) => {
      const exam = withImpliedFacts(stated);
      const localisation = localiser.localise(exam);
      const causes = rankCauses(exam, localisation);
      const redFlags = assessRedFlags(exam, localisation, causes);
      const workup = proposeWorkup(exam, localisation, causes, redFlags);
      const parts = { ...localisation, causes, redFlags, ...workup, caution: cautionFor(exam.person.ageYears) };
      return { ...parts, presentation: present(stated, parts, { spelling }), modelVersion };
    },
  };
}
