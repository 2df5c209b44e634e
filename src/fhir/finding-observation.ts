import type { CodeableConcept, Coding, Observation } from 'fhir/r4.js';
import { hpoOf } from '../exam/catalogue/catalogue.ts';
import { type CodeLink, type Item, itemId } from '../exam/catalogue/item.ts';
import type { Finding } from '../exam/finding.ts';
import { type Grade, type Scale, scales } from '../exam/scales.ts';
import { scaleSystem, systems } from '../terminology/systems.ts';
import { bodySiteConcept } from './body-site-codes.ts';
import { coding, concept, interpretations, localConcept, shared } from './codings.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { notTestedCodes } from './local-codes.ts';
import { fhirText, isBlank, narrative, paragraph } from './narrative.ts';
import { remembered } from './remembered.ts';

/** R4's own extension for the number behind an ordinal answer. */
export const ordinalValueUrl = 'http://hl7.org/fhir/StructureDefinition/ordinalValue';

/**
 * One Observation for one finding. A finding that was not tested has no value and a `dataAbsentReason` instead; it is
 * never normal. One that the examiner only implied leads back to the statement that implied it.
 */
export function findingObservation(finding: Finding, frame: Frame): Observation {
  const { note } = finding;
  const codes = codesOf(finding.item);
  const id = frame.id(finding.id);
  const said = paragraph(frame.say(finding));
  const made: Observation = {
    resourceType: 'Observation',
    id,
    meta: frame.meta('neuro-exam-finding'),
    text: narrative(note === undefined ? said : said + paragraph(note)),
    identifier: [ownIdentifier(id)],
    ...frame.stated,
    code: codes.code,
  };
  setValue(made, finding, codes);
  if (note !== undefined && !isBlank(note)) made.note = [{ text: fhirText(note) }];
  const site = bodySiteConcept(finding);
  if (site !== undefined) made.bodySite = site;
  const method = methodOf(finding);
  if (method !== undefined) made.method = method;
  const statement = frame.statementOf(finding);
  if (statement !== undefined) made.derivedFrom = [frame.ref(statement)];
  const phenotype = phenotypeOf(finding);
  if (phenotype !== undefined) {
    made.component = [{ code: localConcept('abnormalFinding'), valueCodeableConcept: phenotype }];
  }
  return made;
}

/** The HPO term that says the same as an abnormal finding; undefined where there is none. */
export function phenotypeOf({ item, value, abnormal }: Finding): CodeableConcept | undefined {
  if (!abnormal || value === null) return undefined;
  const term = hpoOf(item, value);
  return term?.relation === 'equivalent' ? phenotypeConcept(term) : undefined;
}

// Findings share the rows of the catalogue, so what depends on a row alone is made once.
const phenotypeConcept = remembered((term: CodeLink) => shared(concept(systems.hpo, term.code, term.display)));
const codesOf = remembered(makeCodes);

interface ItemCodes {
  readonly code: CodeableConcept;
  readonly grades: ReadonlyMap<string, CodeableConcept>;
}

function makeCodes(item: Item): ItemCodes {
  const { hpo, loinc, scale } = item;
  const codings = [coding(systems.examItem, itemId(item), item.label)];
  // The HPO term names the sign itself, so it may be the code only where the value says present or absent.
  if (hpo?.relation === 'equivalent' && (scale === 'presence' || scale === 'test-result')) {
    codings.push(coding(systems.hpo, hpo.code, hpo.display));
  }
  if (loinc?.relation === 'equivalent') codings.push(coding(systems.loinc, loinc.code, loinc.display));
  return { code: shared({ coding: codings, text: item.label }), grades: gradesOf(scale) };
}

const gradeConcepts = new Map<string, ReadonlyMap<string, CodeableConcept>>(
  Object.entries(scales).map(([key, scale]) => [
    key,
    new Map(scale.grades.map((grade) => [grade.key, shared(gradeConcept(key, grade))])),
  ]),
);
const noGrades: ReadonlyMap<string, CodeableConcept> = new Map();

function gradesOf(scale: Item['scale']): ReadonlyMap<string, CodeableConcept> {
  return gradeConcepts.get(scale) ?? noGrades;
}

/** A grade as a coded value, with its ordinal number where the scale has one; its text is what a clinician writes. */
export function gradeConcept(scale: string, grade: Grade): CodeableConcept {
  const outOf = Object.hasOwn(scales, scale) ? (scales as Readonly<Record<string, Scale>>)[scale]?.outOf : undefined;
  const graded: Coding = coding(scaleSystem(scale), grade.key, grade.label);
  return {
    coding: [
      grade.ordinal === undefined
        ? graded
        : { extension: [{ url: ordinalValueUrl, valueDecimal: grade.ordinal }], ...graded },
    ],
    text: outOf === undefined ? grade.label : `${grade.key}/${outOf}`,
  };
}

function setValue(made: Observation, { value, notTested, abnormal }: Finding, codes: ItemCodes): void {
  if (value === null || notTested !== undefined) {
    made.dataAbsentReason = absentReason(notTested ?? 'other');
    return;
  }
  if (typeof value === 'number') {
    made.valueQuantity = { value, unit: 'beats', system: systems.ucum, code: '{beats}' };
  } else {
    made.valueCodeableConcept = codes.grades.get(value) ?? { text: fhirText(value) };
  }
  made.interpretation = abnormal ? interpretations.abnormal : interpretations.normal;
}

/** HL7's reason, which the binding asks for, with our more exact one beside it. */
export function absentReason(reason: keyof typeof notTestedCodes): CodeableConcept {
  return absentReasons[reason];
}

const absentReasons = Object.fromEntries(
  Object.entries(notTestedCodes).map(([reason, { display, absent }]) => [
    reason,
    shared({
      coding: [
        coding(systems.dataAbsentReason, absent[0], absent[1]),
        coding(systems.notTestedReason, reason, display),
      ],
      text: display,
    }),
  ]),
) as Record<keyof typeof notTestedCodes, CodeableConcept>;

function methodOf(finding: Finding): CodeableConcept | undefined {
  // A summary statement says nothing about how the single item was tested, so it goes before the item's own method.
  if (finding.origin === 'otherwise-normal') return localConcept('examinerSummaryStatement');
  if (finding.value === null) return undefined;
  if (finding.reinforced === true) return localConcept('reinforcement');
  return finding.item.scale === 'mrc-power' ? localConcept('manualMuscleTesting') : undefined;
}

/** A reason of HL7's kind `unknown` with what is not known in words. */
export const unknownReason = (text: string): CodeableConcept =>
  concept(systems.dataAbsentReason, 'unknown', 'Unknown', text);
