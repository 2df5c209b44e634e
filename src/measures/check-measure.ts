import { nearestKey } from '../exam/faults/nearest-key.ts';
import type { Fault } from '../kernel/errors.ts';
import { plainText } from '../kernel/plain-text.ts';
import { type CriterionKind, checkCriterion } from './check-criterion.ts';
import { checkShape, isObject, type Json, measureElements } from './measure-shape.ts';
import {
  aggregateMethods,
  criteriaLanguage,
  extensions,
  type PopulationCode,
  populationBasis,
  populationCodes,
  populationSystem,
  populationsOf,
  type Scoring,
  scoringSystem,
  scorings,
} from './published-codes.ts';

/** Limits of a Measure that a stranger sends. Judged: far above what a report for people needs. */
const most = { characters: 300_000, groups: 60, stratifiers: 20, expressions: 300 };

const ofEveryElement = ['id', 'extension'];
const groupKeys = [...ofEveryElement, 'code', 'description', 'population', 'stratifier'];
const partKeys = [...ofEveryElement, 'code', 'description', 'criteria'];
const criteriaKeys = [...ofEveryElement, 'description', 'name', 'language', 'expression'];

type AddFault = (pointer: string, code: Fault['code'], message: string, suggestion?: string) => void;

/** Every fault of a Measure, with a JSON Pointer into it; none when it can be compiled. */
export function checkMeasure(measure: unknown): readonly Fault[] {
  const faults: Fault[] = [];
  const add: AddFault = (pointer, code, message, suggestion) => {
    faults.push({ pointer, code, message, ...(suggestion === undefined ? {} : { suggestion }) });
  };
  if (!isObject(measure)) return [{ pointer: '', code: 'WRONG_TYPE', message: 'A Measure is a JSON object.' }];
  if (JSON.stringify(measure).length > most.characters) {
    return [{ pointer: '', code: 'TOO_LARGE', message: `A Measure has at most ${most.characters} characters.` }];
  }
  if (measure.resourceType !== 'Measure') {
    const code = measure.resourceType === undefined ? 'REQUIRED' : 'UNKNOWN_KEY';
    add('/resourceType', code, 'Expected the type Measure.', 'Measure');
  }
  checkKeys(measure, measureElements, '', add);
  checkShape(measure, add);
  checkBasis(measure, add);
  const scoring = scoringIn(measure, add);
  const groups = objectsIn(measure.group, '/group', add, most.groups, true);
  for (const [group, pointer] of groups) checkGroup(group, pointer, scoring, add);
  const expressions = groups.flatMap(([{ population, stratifier }]) => [population, stratifier].flat());
  if (expressions.length > most.expressions) {
    add('/group', 'TOO_LARGE', `A Measure has at most ${most.expressions} expressions.`);
  }
  return faults;
}

function checkGroup(group: Json, pointer: string, scoring: Scoring | undefined, add: AddFault): void {
  checkKeys(group, groupKeys, pointer, add);
  const found: PopulationCode[] = [];
  for (const [population, place] of objectsIn(group.population, `${pointer}/population`, add, 20, true)) {
    checkKeys(population, partKeys, place, add);
    const code = codeIn(population.code, populationSystem, populationCodes, `${place}/code`, add);
    checkCriteria(population.criteria, code === 'measure-observation' ? 'number' : 'boolean', `${place}/criteria`, add);
    if (code === 'measure-observation') aggregateIn(population, place, add);
    if (code === undefined || scoring === undefined) continue;
    const { needed, allowed } = populationsOf[scoring];
    if (found.includes(code)) add(`${place}/code`, 'ONLY_ONE', `A group has one ${code} at most.`);
    else if (![...needed, ...allowed].includes(code)) {
      const names = [...needed, ...allowed].join(', ');
      add(`${place}/code`, 'CONTRADICTION', `A group with the scoring ${scoring} has only: ${names}.`);
    }
    found.push(code);
  }
  for (const code of scoring === undefined ? [] : populationsOf[scoring].needed) {
    if (found.includes(code)) continue;
    add(`${pointer}/population`, 'REQUIRED', `A group with the scoring ${scoring} needs the population ${code}.`);
  }
  const stratifiers = objectsIn(group.stratifier, `${pointer}/stratifier`, add, most.stratifiers);
  for (const [stratifier, place] of stratifiers) {
    checkKeys(stratifier, partKeys, place, add);
    checkCriteria(stratifier.criteria, 'value', `${place}/criteria`, add);
  }
}

function checkCriteria(criteria: unknown, kind: CriterionKind, pointer: string, add: AddFault): void {
  if (!isObject(criteria)) {
    add(pointer, criteria === undefined ? 'REQUIRED' : 'WRONG_TYPE', 'Expected an Expression of FHIR.');
    return;
  }
  checkKeys(criteria, criteriaKeys, pointer, add);
  if (criteria.language === criteriaLanguage) checkCriterion(criteria.expression, kind, `${pointer}/expression`, add);
  else {
    const code = criteria.language === undefined ? 'REQUIRED' : 'UNKNOWN_KEY';
    add(`${pointer}/language`, code, `Expected the language ${criteriaLanguage}.`, criteriaLanguage);
  }
}

function checkBasis({ extension }: Json, add: AddFault): void {
  const basis = extensionIn(extension, extensions.populationBasis);
  if (basis?.valueCode === populationBasis) return;
  const code = basis === undefined ? 'REQUIRED' : 'UNKNOWN_KEY';
  const message = `Expected the extension ${extensions.populationBasis} with the code ${populationBasis}: exams are counted, by their impressions.`;
  add('/extension', code, message, populationBasis);
}

function scoringIn({ scoring }: Json, add: AddFault): Scoring | undefined {
  return codeIn(scoring, scoringSystem, scorings, '/scoring', add);
}

function aggregateIn({ extension }: Json, place: string, add: AddFault): void {
  const method = extensionIn(extension, extensions.aggregateMethod)?.valueCode;
  if (aggregateMethods.some((known) => known === method)) return;
  const message = `Expected the extension ${extensions.aggregateMethod} with one of: ${aggregateMethods.join(', ')}.`;
  const near = method === undefined ? undefined : nearestKey(plainText(method), aggregateMethods);
  add(`${place}/extension`, method === undefined ? 'REQUIRED' : 'UNKNOWN_KEY', message, near);
}

/** The code of a CodeableConcept that is one of a system's. */
function codeIn<Code extends string>(
  concept: unknown,
  system: string,
  known: readonly Code[],
  pointer: string,
  add: AddFault,
): Code | undefined {
  const codings = isObject(concept) && Array.isArray(concept.coding) ? concept.coding.filter(isObject) : [];
  const codes = codings.filter((coding) => coding.system === system).map(({ code }) => plainText(code));
  const found = known.find((code) => codes.includes(code));
  if (found !== undefined) return found;
  const message = `Expected a code of ${system}, one of: ${known.join(', ')}.`;
  const near = codes[0] === undefined ? undefined : nearestKey(codes[0], known);
  add(pointer, concept === undefined ? 'REQUIRED' : 'UNKNOWN_KEY', message, near);
  return undefined;
}

function extensionIn(extension: unknown, url: string): Json | undefined {
  return Array.isArray(extension) ? extension.filter(isObject).find((one) => one.url === url) : undefined;
}

function checkKeys(value: Json, known: readonly string[], pointer: string, add: AddFault): void {
  for (const key of Object.keys(value)) {
    if (known.includes(key)) continue;
    const place = `${pointer}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    add(
      place,
      'UNKNOWN_PROPERTY',
      'A Measure has no such element here, or none that is understood.',
      nearestKey(key, known),
    );
  }
}

function objectsIn(
  value: unknown,
  pointer: string,
  add: AddFault,
  atMost: number,
  isNeeded = false,
): readonly (readonly [Json, string])[] {
  if (value === undefined && !isNeeded) return [];
  if (!Array.isArray(value) || value.length === 0) {
    add(pointer, value === undefined ? 'REQUIRED' : 'WRONG_TYPE', 'Expected a list with at least one object.');
    return [];
  }
  if (value.length > atMost) {
    add(pointer, 'TOO_LARGE', `Expected at most ${atMost} of these.`);
    return [];
  }
  return value.flatMap((item, index) => {
    if (isObject(item)) return [[item, `${pointer}/${index}`] as const];
    add(`${pointer}/${index}`, 'WRONG_TYPE', 'Expected an object.');
    return [];
  });
}
