import { bodyPartTable } from '../../anatomy/body-parts.ts';
import { movements } from '../../anatomy/movements.ts';
import type { Ontology } from '../../anatomy/ontology.ts';
import { type SkinPlaceKind, skinPlace, skinPlaceKeys } from '../../anatomy/skin-places.ts';
import { allCauses } from '../../causes/table/all-causes.ts';
import { historyRows, items, resultRows } from '../../exam/catalogue/catalogue.ts';
import { comaScale } from '../../exam/catalogue/coma-scale.ts';
import { investigations } from '../../exam/catalogue/investigations.ts';
import { itemId } from '../../exam/catalogue/item.ts';
import { sections } from '../../exam/catalogue/sections.ts';
import { reportCodes } from '../../fhir/composition.ts';
import { notTestedCodes } from '../../fhir/local-codes.ts';
import { sideSystem } from '../../questionnaire/option-sets.ts';
import { systems } from '../../terminology/systems.ts';
import type { CodeUse } from './code-use.ts';

/** Every open code that a table of the project or a builder of resources names, with the place that names it. */
export function codesInUse(): CodeUse[] {
  return [
    ...catalogueCodes(),
    ...anatomyCodes(),
    ...causeCodes(),
    ...investigationCodes(),
    ...reportUses(),
    ...hl7Codes(),
  ];
}

const use = (table: CodeUse['table'], where: string, code: Ontology | undefined): CodeUse[] =>
  code ? [{ table, where, code: code.code, display: code.display }] : [];

function catalogueCodes(): CodeUse[] {
  return [
    ...items.flatMap((item) => [
      ...use('hpo', itemId(item), item.hpo),
      ...Object.values(item.hpoByValue ?? {}).flatMap((term) => use('hpo', itemId(item), term)),
      ...use('loinc', itemId(item), item.loinc),
    ]),
    ...historyRows.flatMap((row) => [
      ...use('hpo', `${row.kind} ${row.key}`, row.hpo),
      ...use('mondo', `${row.kind} ${row.key}`, row.mondo),
    ]),
    ...resultRows.flatMap((row) => row.loinc.flatMap((code) => use('loinc', `result ${row.key}`, code))),
    ...sections.flatMap((section) => use('loinc', `section ${section.key}`, section.loinc)),
    ...[comaScale.panel, comaScale.total, ...comaScale.parts.map((part) => part.loinc)].flatMap((code) =>
      use('loinc', comaScale.key, code),
    ),
  ];
}

function anatomyCodes(): CodeUse[] {
  const skinKinds: readonly SkinPlaceKind[] = ['dermatome', 'landmark', 'territory'];
  return [
    ...[...bodyPartTable].flatMap(([key, part]) => use('uberon', `body part ${key}`, part.uberon)),
    ...Object.entries(movements).flatMap(([key, movement]) => [
      ...use('uberon', `movement ${key}`, movement.uberon),
      ...use('hpo', `movement ${key}`, movement.hpo),
    ]),
    ...skinKinds.flatMap((kind) =>
      skinPlaceKeys(kind).flatMap((key) => use('uberon', `${kind} ${key}`, skinPlace(kind, key)?.uberon)),
    ),
  ];
}

function reportUses(): CodeUse[] {
  return Object.entries(reportCodes).flatMap(([part, code]) => use('loinc', `report ${part}`, code));
}

function causeCodes(): CodeUse[] {
  return allCauses.flatMap((cause) => use('mondo', `cause ${cause.key}`, cause.mondo));
}

function investigationCodes(): CodeUse[] {
  return investigations.flatMap((test) => use('loinc', `investigation ${test.key}`, test.loinc));
}

/** HL7 codes that the builders of `src/fhir` write, and those of the Questionnaire. A test holds the builders to them. */
function hl7Codes(): CodeUse[] {
  const { observationCategory, interpretation, dataAbsentReason, riskProbability, dataOperation } = systems;
  const written: readonly (readonly [system: string, code: string, display: string])[] = [
    [observationCategory, 'exam', 'Exam'],
    [interpretation, 'A', 'Abnormal'],
    [interpretation, 'N', 'Normal'],
    [dataAbsentReason, 'unknown', 'Unknown'],
    ...Object.values(notTestedCodes).map(({ absent }) => [dataAbsentReason, ...absent] as const),
    [systems.provenanceParticipantType, 'assembler', 'Assembler'],
    [dataOperation, 'CREATE', 'create'],
    [dataOperation, 'UPDATE', 'revise'],
    [dataOperation, 'NULLIFY', 'nullify'],
    [riskProbability, 'negligible', 'Negligible likelihood'],
    [riskProbability, 'low', 'Low likelihood'],
    [riskProbability, 'moderate', 'Moderate likelihood'],
    [riskProbability, 'high', 'High likelihood'],
    [sideSystem, 'L', 'Left'],
    [sideSystem, 'R', 'Right'],
  ];
  return written.map(([system, code, display]) => ({ table: 'hl7', system, code, display, where: 'src/fhir' }));
}
