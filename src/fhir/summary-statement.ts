import type { Observation } from 'fhir/r4.js';
import { type SectionKey, sectionCode } from '../exam/catalogue/item.ts';
import { describeStatement } from '../exam/describe.ts';
import type { Exam } from '../exam/exam.ts';
import type { Finding, NormalStatement } from '../exam/finding.ts';
import { capitalised } from '../kernel/words.ts';
import { regionConcept } from './body-site-codes.ts';
import { interpretations, localConcept } from './codings.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { narrative, paragraph } from './narrative.ts';

/**
 * Sections whose items are graded and counted one by one. In the others an examiner who says "otherwise normal" looked
 * for nothing in particular, and a list of every sign as absent would claim more than was said.
 */
const countedSections: ReadonlySet<SectionKey> = new Set([
  'tone',
  'clonus',
  'power',
  'reflexes',
  'plantars',
  'sensation',
  'coordination',
]);

/** Whether a finding has an Observation of its own, and is not only part of what a summary statement says. */
export function isObserved({ origin, item }: Finding): boolean {
  return origin === 'recorded' || countedSections.has(item.section);
}

/** Name of a statement within the exam, for its id: `otherwise-normal/power@lower-limbs|left`. */
export function statementName({ section, region, side }: Omit<NormalStatement, 'pointer'>): string {
  const sides = side === undefined || side === 'both' ? '' : `|${side}`;
  return `otherwise-normal/${sectionCode(section)}${region === undefined ? '' : `@${region}`}${sides}`;
}

/** The statements of an exam; the same one made twice counts once. */
export function distinctStatements({ otherwiseNormal }: Pick<Exam, 'otherwiseNormal'>): readonly NormalStatement[] {
  return [...new Map(otherwiseNormal.map((one) => [statementName(one), one])).values()];
}

/** "Power of the left lower limb otherwise normal" */
export function statementText(statement: NormalStatement): string {
  return `${capitalised(describeStatement(statement))} otherwise normal`;
}

/** What the examiner declared normal in one sentence, as the one Observation that it was. */
export function statementObservation(statement: NormalStatement, frame: Frame): Observation {
  const { region, side } = statement;
  const id = frame.id(statementName(statement));
  const text = statementText(statement);
  const bodySite =
    region === undefined ? undefined : regionConcept(region, side === undefined || side === 'both' ? 'midline' : side);
  return {
    resourceType: 'Observation',
    id,
    meta: frame.meta('neuro-exam-finding'),
    text: narrative(paragraph(`${text}.`)),
    identifier: [ownIdentifier(id)],
    ...frame.stated,
    code: { ...localConcept('otherwiseNormal'), text },
    valueCodeableConcept: localConcept('overallNormal'),
    interpretation: interpretations.normal,
    ...(bodySite === undefined ? {} : { bodySite }),
    method: localConcept('examinerSummaryStatement'),
  };
}
