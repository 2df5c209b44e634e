import { Ajv2020, type ErrorObject, type ValidateFunction } from 'ajv/dist/2020.js';
import { keywordFault } from '../exam/faults/keyword-fault.ts';
import { unknownProperty } from '../exam/faults/unknown-property.ts';
import { closedObject, type JsonSchema } from '../exam/schema/json-schema.ts';
import { type Fault, PracticeInvalidError } from '../kernel/errors.ts';
import { type AskedItem, readAskedItems } from './asked-items.ts';
import { type Difficulty, difficultyKeys } from './difficulty.ts';
import { type NeuraxisPart, neuraxisPartKeys } from './neuraxis-parts.ts';
import { type Commitment, readCommitment } from './practice-sites.ts';

/** What may be wished for of a patient. */
export interface PatientWish {
  readonly difficulty?: Difficulty;
  readonly part?: NeuraxisPart;
  readonly seed?: number;
}

/** Items in one request, and in a whole examination: more than anybody does at a bedside. */
const askedAtMost = 100;
const examinedAtMost = 600;

/** Parts that may be asked for; that nothing is damaged is for the learner to find. */
export const wishedParts = neuraxisPartKeys.filter((part) => part !== 'none');

const text = (maxLength: number, description: string): JsonSchema => ({ type: 'string', maxLength, description });
const sides = { type: 'string', enum: ['left', 'right', 'both'], description: 'left, right or both' };
const patient = text(400, 'the patient, as POST /practice/patients gave it');

const askedItem = closedObject(
  {
    item: text(80, 'id of an item of the catalogue, such as power/ankle-dorsiflexion'),
    side: sides,
    site: text(60, 'part of the body or landmark'),
    dermatome: text(60, 'dermatome'),
    territory: text(60, 'territory of a nerve'),
  },
  ['item'],
);

const commitment = closedObject(
  {
    site: text(80, 'key of a site of GET /practice/sites'),
    side: sides,
    level: text(4, 'segment, such as L5'),
  },
  ['site'],
);

/** What the routes take. */
export const practiceSchemas = {
  patients: closedObject(
    {
      difficulty: { type: 'string', enum: difficultyKeys, description: 'how hard; usual where it is left out' },
      part: { type: 'string', enum: wishedParts, description: 'part of the neuraxis; any where it is left out' },
      seed: {
        type: 'integer',
        minimum: 0,
        maximum: 2 ** 31 - 1,
        description: 'the same seed brings the same patient; another one each time where it is left out',
      },
    },
    [],
  ),
  examinations: closedObject(
    {
      patient,
      items: { type: 'array', minItems: 1, maxItems: askedAtMost, description: 'what to examine', items: askedItem },
    },
    ['patient', 'items'],
  ),
  answers: closedObject(
    {
      patient,
      examined: { type: 'array', maxItems: examinedAtMost, description: 'what was examined', items: askedItem },
      commitment,
    },
    ['patient', 'examined', 'commitment'],
  ),
} as const;

const ajv = new Ajv2020({ allErrors: true, verbose: true, ownProperties: true, strict: false });
const compiled = new Map<keyof typeof practiceSchemas, ValidateFunction>();

function checked<T>(key: keyof typeof practiceSchemas, body: unknown): T {
  let validate = compiled.get(key);
  if (validate === undefined) {
    validate = ajv.compile(practiceSchemas[key]);
    compiled.set(key, validate);
  }
  if (validate(body)) return body as T;
  throw new PracticeInvalidError((validate.errors ?? []).map(faultOf));
}

function faultOf(error: ErrorObject): Fault {
  if (error.keyword === 'additionalProperties' || error.keyword === 'unevaluatedProperties') {
    const known = Object.keys((error.parentSchema?.properties ?? {}) as object);
    const name = String(error.params.additionalProperty ?? error.params.unevaluatedProperty);
    return unknownProperty(error.instancePath, name, known);
  }
  if (error.keyword === 'minItems') {
    return { pointer: error.instancePath, code: 'REQUIRED', message: 'At least one item is needed here.' };
  }
  return keywordFault(error);
}

/** @throws PracticeInvalidError with every fault */
export function readPatientWish(body: unknown): PatientWish {
  return checked<PatientWish>('patients', body);
}

interface ExaminationBody {
  readonly patient: string;
  readonly items: readonly AskedItem[];
}

/** @throws PracticeInvalidError with every fault */
export function readExamination(body: unknown) {
  const { patient: token, items } = checked<ExaminationBody>('examinations', body);
  const { targets, faults } = readAskedItems(items, '/items');
  if (faults.length > 0) throw new PracticeInvalidError(faults);
  return { token, targets };
}

interface AnswerBody {
  readonly patient: string;
  readonly examined: readonly AskedItem[];
  readonly commitment: Commitment;
}

/** @throws PracticeInvalidError with every fault */
export function readAnswer(body: unknown) {
  const { patient: token, examined, commitment: given } = checked<AnswerBody>('answers', body);
  const { targets, faults } = readAskedItems(examined, '/examined');
  const read = readCommitment(given, '/commitment');
  if ('faults' in read) throw new PracticeInvalidError([...faults, ...read.faults]);
  if (faults.length > 0) throw new PracticeInvalidError(faults);
  return { token, targets, committed: read.committed };
}
