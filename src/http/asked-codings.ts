import type { Parameters } from 'fhir/r4.js';
import { RequestError } from '../kernel/errors.ts';
import type { AskedCoding, OperationInput } from './operation-parameters.ts';

type Values = OperationInput['values'];

/** @throws RequestError BAD_REQUEST */
export function required(values: Values, name: string): string {
  const value = values.get(name);
  if (value === undefined) throw new RequestError('BAD_REQUEST', `The parameter ${name} is missing.`);
  return value;
}

/**
 * One code, given as a Coding or by its code and system.
 * @param systemOf where the system comes from when it stands apart from the code
 * @throws RequestError BAD_REQUEST when it is given in both ways or in none
 */
export function codingOrCode(
  { values, codings }: OperationInput,
  codingName: string,
  codeName: string,
  systemOf: (values: Values, name: string) => string,
): AskedCoding {
  const coding = codings.get(codingName);
  if (coding === undefined) return { code: required(values, codeName), system: systemOf(values, 'system') };
  if (values.has(codeName)) throw onlyOne();
  return coding;
}

/**
 * The codes to work on: a code, a Coding or the codings of a CodeableConcept.
 * @param needs set when a code alone says too little
 * @throws RequestError BAD_REQUEST when a code is given in several ways or in none
 */
export function askedCodings(input: OperationInput, needs?: 'system'): readonly AskedCoding[] {
  const { values, codings, concepts } = input;
  const concept = concepts.get('codeableConcept');
  const given = [values.has('code'), codings.has('coding'), concept !== undefined].filter(Boolean);
  if (given.length > 1) throw onlyOne();
  if (concept !== undefined) return concept;
  const coding = codings.get('coding');
  if (coding !== undefined) return [coding];
  const code = required(values, 'code');
  const system = needs === undefined ? undefined : required(values, needs);
  const display = values.get('display');
  return [{ code, ...(system !== undefined && { system }), ...(display !== undefined && { display }) }];
}

/** The answer for the first coding that is right, or else for the first. @throws RequestError BAD_REQUEST for no codings */
export function bestAnswer(answers: readonly Parameters[]): Parameters {
  const found = answers.find(({ parameter }) => parameter?.[0]?.valueBoolean) ?? answers[0];
  if (found === undefined) throw new RequestError('BAD_REQUEST', 'There is no code to look at.');
  return found;
}

function onlyOne(): RequestError {
  return new RequestError('BAD_REQUEST', 'Give the code in one way: by itself, as a coding or as a concept.');
}
