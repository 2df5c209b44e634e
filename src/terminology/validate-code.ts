import { closest } from 'fastest-levenshtein';
import type { Parameters } from 'fhir/r4.js';
import type { Coding } from '../kernel/coding.ts';

/** Longest text that is compared letter by letter; the distance is quadratic in it. */
const longest = 80;

/**
 * Answer of `$validate-code`: whether one of the codings is this code of this system, under this display if one is given.
 * @param asked.system left out to accept any system
 * @param isHeading whether the code is one that is never recorded itself and was not asked for as such
 * Source: http://hl7.org/fhir/R4/valueset-operation-validate-code.html
 */
export function validateCode(
  known: readonly Coding[],
  asked: { code: string; system?: string | undefined; display?: string | undefined },
  isHeading: (coding: Coding) => boolean,
): Parameters {
  const ofSystem = known.filter(({ system }) => asked.system === undefined || asked.system === system);
  const found = ofSystem.find(({ code }) => code === asked.code);
  if (found === undefined) {
    const near =
      asked.code.length > longest || ofSystem.length === 0
        ? undefined
        : closest(
            asked.code,
            ofSystem.map(({ code }) => code),
          );
    return answer(
      false,
      near === undefined
        ? 'The code is not known here.'
        : `The code is not known here. The nearest known code is ${near}.`,
    );
  }
  if (isHeading(found)) {
    return answer(false, 'The code is a heading and not for use; abstract=true takes it.', found.display);
  }
  if (asked.display !== undefined && asked.display.toLowerCase() !== found.display.toLowerCase()) {
    return answer(false, `The display of this code is "${found.display}".`, found.display);
  }
  return answer(true, undefined, found.display);
}

function answer(result: boolean, message?: string, display?: string): Parameters {
  return {
    resourceType: 'Parameters',
    parameter: [
      { name: 'result', valueBoolean: result },
      ...(message === undefined ? [] : [{ name: 'message', valueString: message }]),
      ...(display === undefined ? [] : [{ name: 'display', valueString: display }]),
    ],
  };
}
