import type { CodeableConcept, Observation } from 'fhir/r4.js';
import { type SectionKey, sectionCode, sectionKeys } from '../exam/catalogue/item.ts';
import { sectionOf } from '../exam/catalogue/sections.ts';
import type { Exam } from '../exam/exam.ts';
import type { Finding, NormalStatement, ScoredScale } from '../exam/finding.ts';
import { systems } from '../terminology/systems.ts';
import { coding, localConcept, shared } from './codings.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { list, narrative, paragraph, titled } from './narrative.ts';
import { scaleName, scaleText } from './scale-observation.ts';
import { distinctStatements, isObserved, statementName, statementText } from './summary-statement.ts';

/** Name of the whole-exam panel within the exam, for its id. */
export const examinationName = 'examination';

export function sectionName(section: SectionKey): string {
  return `section/${sectionCode(section)}`;
}

/** What one section of the exam holds; scored scales belong to the higher functions. */
export interface SectionContent {
  readonly section: SectionKey;
  /** The findings that have an Observation of their own. */
  readonly findings: readonly Finding[];
  readonly statements: readonly NormalStatement[];
  readonly scales: readonly ScoredScale[];
  /** Names of the members within the exam, in the order of the exam. */
  readonly members: readonly string[];
}

/** The sections that the exam says something about, in examination order. */
export function sectionsOf(exam: Exam): readonly SectionContent[] {
  const bySection = new Map<SectionKey, Finding[]>(sectionKeys.map((section) => [section, []]));
  for (const one of exam.findings) if (isObserved(one)) bySection.get(one.item.section)?.push(one);
  const stated = distinctStatements(exam);
  return sectionKeys.flatMap((section) => {
    const findings = bySection.get(section) ?? [];
    const scales = section === 'higherFunction' ? exam.scales : [];
    const statements = stated.filter((statement) => statement.section === section);
    const members = [
      ...scales.map(scaleName),
      ...findings.map((finding) => finding.id),
      ...statements.map(statementName),
    ];
    return members.length === 0 ? [] : [{ section, findings, statements, scales, members }];
  });
}

/** A panel without a value: one section, its members, and in words what was abnormal and what was not tested. */
export function sectionPanel(content: SectionContent, frame: Frame): Observation {
  const { section, members } = content;
  return panel(sectionName(section), sectionConcept(section), members, sectionNarrative(content, frame), frame);
}

/** The panel of the whole examination; its members are the section panels. Carries the sender's own identifier too. */
export function examinationPanel(sections: readonly SectionContent[], frame: Frame): Observation {
  const members = sections.map(({ section }) => sectionName(section));
  const recorded = sections.flatMap(({ findings }) => findings.filter(({ origin }) => origin === 'recorded')).length;
  const stated = sections.flatMap(({ statements }) => statements.map(statementText));
  const abnormal = sections.flatMap(({ findings }) => findings.filter((finding) => finding.abnormal));
  const missing = sections.flatMap(({ findings }) => findings.filter((finding) => finding.value === null));
  const said =
    paragraph(`Neurological examination: ${recorded} findings stated one by one; ${sections.length} sections.`) +
    titled('Abnormal', list(abnormal.map(frame.say))) +
    titled('Stated as a whole', list(stated)) +
    titled('Not tested', list(missing.map(frame.say)));
  const made = panel(examinationName, examinationConcept, members, said, frame);
  return { ...made, identifier: [...(made.identifier ?? []), frame.sender] };
}

function panel(
  name: string,
  code: CodeableConcept,
  members: readonly string[],
  said: string,
  frame: Frame,
): Observation {
  const id = frame.id(name);
  return {
    resourceType: 'Observation',
    id,
    meta: frame.meta('neuro-exam-panel'),
    text: narrative(said),
    identifier: [ownIdentifier(id)],
    ...frame.stated,
    code,
    ...(members.length === 0 ? {} : { hasMember: members.map(frame.ref) }),
  };
}

/** What a section says in words; also the text of the section in a document. */
function sectionNarrative({ section, findings, statements, scales }: SectionContent, frame: Frame): string {
  const abnormal = findings.filter((finding) => finding.abnormal);
  const normal = findings.filter(({ abnormal, value, origin }) => !abnormal && value !== null && origin === 'recorded');
  const missing = findings.filter((finding) => finding.value === null);
  return (
    paragraph(`${sectionOf(section).label}.`) +
    titled('Abnormal', list(abnormal.map(frame.say))) +
    titled('Normal', list([...normal.map(frame.say), ...statements.map(statementText)])) +
    list(scales.map(scaleText)) +
    titled('Not tested', list(missing.map(frame.say)))
  );
}

const examinationConcept = localConcept('examination');

const sectionConcepts = new Map<SectionKey, CodeableConcept>(
  sectionKeys.map((section) => {
    const { label, loinc } = sectionOf(section);
    const codings = [coding(systems.examItem, sectionName(section), label)];
    if (loinc?.relation === 'equivalent') codings.push(coding(systems.loinc, loinc.code, loinc.display));
    return [section, shared({ coding: codings, text: label })];
  }),
);

/** Code of a section: our own and, where LOINC has a code for a section of that name, LOINC's. */
function sectionConcept(section: SectionKey): CodeableConcept {
  return sectionConcepts.get(section) ?? examinationConcept;
}
