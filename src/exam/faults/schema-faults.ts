import type { ErrorObject } from 'ajv/dist/2020.js';
import type { Fault } from '../../kernel/errors.ts';
import { findingContext, missingNameFaults, propertyFault, unknownItemFaults } from './finding-faults.ts';
import { keywordFault } from './keyword-fault.ts';
import { misplacedKeyFault } from './misplaced-key.ts';
import { pointerSteps } from './pointer.ts';
import { repeatedEntries } from './repeated-entries.ts';
import { unknownProperty } from './unknown-property.ts';

/**
 * What the schema validator found, in words for the person who sent the exam: one fault for each thing to mend.
 * Errors of the validator that only repeat another one (the branches of a choice, `if`) are left out.
 */
export function schemaFaults(errors: readonly ErrorObject[], body: unknown): readonly Fault[] {
  const distinct = errors.filter((error) => !isBranchOfChoice(error));
  const faults = distinct.slice(0, errorsPutInWords).flatMap((error) => faultsOf(error, body));
  const rest = distinct
    .slice(errorsPutInWords)
    .map(({ instancePath }): Fault => ({ pointer: instancePath, code: 'INVALID', message: 'Not as the schema asks.' }));
  return withoutEchoes([...faults, ...rest]);
}

/** Looking for the nearest key costs time, and no more than a hundred faults are answered anyway. */
const errorsPutInWords = 250;

function isBranchOfChoice(error: ErrorObject): boolean {
  if (error.keyword === 'if') return true;
  // What is not even an object fails every rule about the properties of one.
  if (error.keyword === 'not')
    return typeof error.data !== 'object' || error.data === null || Array.isArray(error.data);
  return error.keyword === 'required' && /\/(?:anyOf|oneOf)\/\d+\/required$/.test(error.schemaPath) && isBare(error);
}

/** Alternatives of a choice are written as `{ required: [...] }` and nothing else. */
function isBare(error: ErrorObject): boolean {
  return error.parentSchema !== undefined && Object.keys(error.parentSchema).length === 1;
}

function faultsOf(error: ErrorObject, body: unknown): readonly Fault[] {
  const context = findingContext(pointerSteps(error.instancePath), body);
  switch (error.keyword) {
    case 'additionalProperties': {
      const name = String(error.params.additionalProperty);
      const special = context === null ? null : propertyFault(context, error.instancePath, name);
      return [special ?? unknownProperty(error.instancePath, name, knownProperties(error))];
    }
    case 'required':
      return context !== null && error.params.missingProperty === context.nameProperty
        ? missingNameFaults(context, error.instancePath)
        : [keywordFault(error)];
    case 'enum':
    case 'const':
      if (context !== null && pointerSteps(error.instancePath).at(-1) === context.nameProperty) {
        return unknownItemFaults(context, error.instancePath.slice(0, error.instancePath.lastIndexOf('/')));
      }
      return [misplacedKeyFault(error) ?? keywordFault(error)];
    case 'uniqueItems':
      return repeatedEntries(error.data as readonly unknown[], error.instancePath);
    default:
      return [keywordFault(error)];
  }
}

function knownProperties(error: ErrorObject): readonly string[] {
  const properties: unknown = error.parentSchema?.properties;
  return typeof properties === 'object' && properties !== null ? Object.keys(properties) : [];
}

/**
 * Leaves out what another fault already says: a property that is missing because its name is misspelt, a value that is
 * missing because it was given under another name, and all but the first fault of one and the same value.
 */
function withoutEchoes(faults: readonly Fault[]): readonly Fault[] {
  const explained = new Set<string>();
  for (const fault of faults) {
    const parent = fault.pointer.slice(0, fault.pointer.lastIndexOf('/'));
    if (fault.code === 'UNKNOWN_PROPERTY' && fault.suggestion !== undefined) {
      explained.add(`${parent} ${fault.suggestion}`);
    } else if (fault.code === 'WRONG_VALUE_PROPERTY') explained.add(`${parent} value`);
  }
  const seen = new Set<string>();
  return faults.filter((fault) => {
    if (fault.code === 'REQUIRED') return !explained.has(`${fault.pointer} ${fault.suggestion ?? ''}`);
    if (fault.code === 'VALUE_MISSING') return !explained.has(`${fault.pointer} value`);
    const isRepeat = seen.has(fault.pointer);
    seen.add(fault.pointer);
    return !isRepeat;
  });
}
