import type { ExamReader } from '../exam/read-exam.ts';
import { RequestError } from '../kernel/errors.ts';
import type { Localiser } from '../localisation/localise.ts';
import { modelVersion } from '../localisation/model-version.ts';
import { answerCommitment } from './answer-commitment.ts';
import { difficulties, difficultyKeys } from './difficulty.ts';
import { examinePatient } from './examine-patient.ts';
import { drawPatient, type PatientSeed, type PracticePatient } from './patient.ts';
import { readAnswer, readExamination, readPatientWish } from './practice-bodies.ts';
import { practiceModel } from './practice-model.ts';
import { practiceSites, sitesByPart } from './practice-sites.ts';
import { vignette } from './vignette.ts';

/** What goes with everything that practice answers. */
export const practiceCaution =
  'For practice: the patient is simulated and invented, drawn from the model of this service. Nobody like this exists, ' +
  'and real patients differ from any model.';

/** How a patient is named to a learner, who must not read from it what the lesion is. */
export interface PatientNames {
  readonly seal: (patient: string) => string;
  /** @throws RequestError BAD_REQUEST for what `seal` did not make */
  readonly open: (token: string) => string;
}

/** Examining simulated patients; nothing is kept of one, since all follows from its seed. */
export interface Practice {
  /** @param drawn a seed for when none is asked for @throws PracticeInvalidError */
  readonly admit: (body: unknown, drawn: string, names: PatientNames) => unknown;
  /** @throws PracticeInvalidError, RequestError */
  readonly examine: (body: unknown, names: PatientNames) => unknown;
  /** Yields now and then, so that a caller can do other things in between. @throws PracticeInvalidError, RequestError */
  readonly answer: (body: unknown, names: PatientNames) => Generator<void, unknown>;
  readonly sites: () => unknown;
}

const offeredDifficulties = difficultyKeys.map((difficulty) => ({ difficulty, label: difficulties[difficulty].label }));

export function createPractice(reader: ExamReader, localiser: Localiser): Practice {
  const model = practiceModel(reader, localiser);
  const patientOf = (token: string, { open }: PatientNames): PracticePatient =>
    drawPatient(model, unpacked(open(token)));
  return {
    admit(body, drawn, { seal }) {
      const { difficulty = 'usual', part, seed } = readPatientWish(body);
      const wish: PatientSeed = {
        seed: seed === undefined ? drawn : `asked ${seed}`,
        difficulty,
        ...(part === undefined ? {} : { part }),
      };
      const patient = drawPatient(model, wish);
      const { person, history } = patient;
      return { patient: seal(packed(wish)), person, history, vignette: vignette(patient), caution: practiceCaution };
    },
    examine(body, names) {
      const { token, targets } = readExamination(body);
      return { ...examinePatient(patientOf(token, names), targets), caution: practiceCaution };
    },
    *answer(body, names) {
      const { token, targets, committed } = readAnswer(body);
      const answer = yield* answerCommitment(model, patientOf(token, names), targets, committed);
      return { ...answer, caution: practiceCaution, modelVersion };
    },
    sites: () => ({
      difficulties: offeredDifficulties,
      parts: sitesByPart(),
      count: practiceSites.length,
      caution: practiceCaution,
    }),
  };
}

/** A patient follows from its seed by one version of the model only. */
function packed(seed: PatientSeed): string {
  return JSON.stringify({ modelVersion, ...seed });
}

function unpacked(text: string): PatientSeed {
  const { modelVersion: version, ...seed } = JSON.parse(text) as PatientSeed & { readonly modelVersion: string };
  if (version !== modelVersion)
    throw new RequestError('BAD_REQUEST', 'The patient is of another version of the model.');
  return seed;
}
