import type { Parameters, ParametersParameter } from 'fhir/r4.js';
import { NotFoundError, RequestError } from '../kernel/errors.ts';
import type { Codes } from './hierarchy.ts';

/**
 * Answer of `CodeSystem/$lookup`: name, version, display and properties of a code.
 * @throws NotFoundError for a system, version or code that is not here
 * Source: http://hl7.org/fhir/R4/codesystem-operation-lookup.html
 */
export function lookUp(
  codes: Codes,
  { system, code, version }: { system: string; code: string; version?: string | undefined },
): Parameters {
  const concepts = codes.concepts(system);
  if (concepts === undefined) throw new NotFoundError('No code of this system is here.');
  const codeSystem = codes.codeSystem(system);
  checkVersion(version, codeSystem?.version);
  const concept = concepts.get(code);
  if (concept === undefined) {
    throw new NotFoundError(
      codeSystem === undefined
        ? 'Only a fragment of this code system is here, and the code is not in it.'
        : 'This code system has no such code.',
    );
  }
  const property: ParametersParameter[] = (concept.property ?? []).map(({ code: name, ...value }) => ({
    name: 'property',
    part: [
      { name: 'code', valueCode: name },
      { name: 'value', ...value },
    ],
  }));
  const notice = codes.notice(system);
  if (notice !== undefined) property.push(textProperty('copyright', notice));
  if (concept.definition !== undefined) property.push(textProperty('definition', concept.definition));
  return {
    resourceType: 'Parameters',
    parameter: [
      { name: 'name', valueString: codeSystem?.name ?? system },
      ...(codeSystem?.version === undefined ? [] : [{ name: 'version', valueString: codeSystem.version }]),
      { name: 'display', valueString: concept.display ?? code },
      ...property,
    ],
  };
}

/** @throws RequestError BAD_REQUEST when another version is asked for than the one that is here */
export function checkVersion(asked: string | undefined, here: string | undefined): void {
  if (asked === undefined || asked === here) return;
  throw new RequestError(
    'BAD_REQUEST',
    `This version is not here; ${here === undefined ? 'the fragment has none' : `the one here is ${here}`}.`,
  );
}

function textProperty(code: string, text: string): ParametersParameter {
  return {
    name: 'property',
    part: [
      { name: 'code', valueCode: code },
      { name: 'value', valueString: text },
    ],
  };
}
