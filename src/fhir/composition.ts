import type { Composition, CompositionSection, Observation, Reference } from 'fhir/r4.js';
import { resourceId } from '../exam/exam-id.ts';
import { joinWords } from '../kernel/words.ts';
import { systems } from '../terminology/systems.ts';
import { concept, shared } from './codings.ts';
import { fullUrlOf, type Identified } from './entry.ts';
import { ownIdentifier } from './identity.ts';
import { list, narrative, paragraph } from './narrative.ts';
import type { ReportedParts } from './reported-parts.ts';

/** How the paragraph of the presentation begins that the sections of the report hold in full. */
const examined = 'On examination';

/** Name of the report, for its id. */
export const reportName = 'report';

/** LOINC codes of the report and of the sections that are not of the examination. */
export const reportCodes = {
  whole: { code: '11488-4', display: 'Consult note' },
  assessment: { code: '51848-0', display: 'Evaluation note' },
  proposals: { code: '18776-5', display: 'Plan of care note' },
} as const;

const codedAs = ({ code, display }: { readonly code: string; readonly display: string }, text?: string) =>
  shared(concept(systems.loinc, code, display, text));
const consultNote = codedAs(reportCodes.whole);
const evaluation = codedAs(reportCodes.assessment, 'Assessment');
const plan = codedAs(reportCodes.proposals, 'Proposed investigations');

/**
 * The head of a document Bundle: the examination section by section, then what was computed from it. Preliminary,
 * because part of it was computed and nobody has attested the whole.
 */
export function report(parts: ReportedParts): Identified<Composition> {
  const { examination, sections, impression, device, examinedAt } = parts;
  const id = resourceId(examination.id, reportName);
  const title = 'Neurological examination with computed localisation';
  const { subject, encounter, performer = [] } = examination;
  return {
    resourceType: 'Composition',
    id,
    text: narrative(paragraph(`${title}, ${examinedAt}.`) + unreviewed(parts)),
    identifier: ownIdentifier(id),
    status: impression.status === 'entered-in-error' ? 'entered-in-error' : 'preliminary',
    type: consultNote,
    ...(subject === undefined ? {} : { subject: byName(subject) }),
    ...(encounter === undefined ? {} : { encounter: byName(encounter) }),
    date: examinedAt,
    author: [...performer.map(byName).filter(isAuthor), device],
    title,
    section: [...sections.map(examSection), assessmentSection(parts), ...proposalSections(parts)],
  };
}

function examSection(panel: Identified<Observation>): CompositionSection {
  const { code, text, hasMember = [] } = panel;
  return {
    ...(code.text === undefined ? {} : { title: code.text }),
    code,
    ...(text === undefined ? {} : { text }),
    entry: [refTo(panel), ...hasMember],
  };
}

/** What was examined stands in the sections before, so that the whole fits a page: the assessment does not say it again. */
function assessmentSection(parts: ReportedParts): CompositionSection {
  const { examination, computed, impression, provenance } = parts;
  const said = (impression.summary ?? '').split(/\n\s*\n/).filter((text) => text !== '' && !text.startsWith(examined));
  return {
    title: 'Assessment',
    code: evaluation,
    text: narrative(said.map(paragraph).join('') + unreviewed(parts)),
    entry: [examination, ...computed, provenance].map(refTo),
  };
}

function proposalSections(parts: ReportedParts): CompositionSection[] {
  const { proposals } = parts;
  if (proposals.length === 0) return [];
  // Tests with one reason are said together.
  const byReason = new Map<string, string[]>();
  for (const { code, note } of proposals) {
    const reason = note?.[0]?.text ?? '';
    byReason.set(reason, [...(byReason.get(reason) ?? []), code?.text ?? '']);
  }
  const said = [...byReason].map(([reason, tests]) => `${joinWords(tests)}. ${reason}`);
  return [
    {
      title: 'Proposed investigations',
      code: plan,
      text: narrative(list(said) + unreviewed(parts)),
      entry: proposals.map(refTo),
    },
  ];
}

/** By what it was computed, and that nobody has reviewed it, as the impression says. */
function unreviewed({ impression }: ReportedParts): string {
  return paragraph(impression.description ?? '');
}

function refTo({ id }: Identified): Reference {
  return { reference: fullUrlOf(id) };
}

const authorTypes: ReadonlySet<string> = new Set([
  'Practitioner',
  'PractitionerRole',
  'Patient',
  'RelatedPerson',
  'Organization',
]);

/** R4 lets fewer types be the author of a Composition than the performer of an Observation. */
function isAuthor({ type }: Reference): boolean {
  return type !== undefined && authorTypes.has(type);
}

/**
 * A reference of the sender's as one by name: what a Composition points at must be in the document (R4, documents), and
 * the service has neither the person nor the encounter. The resources inside keep the sender's references.
 */
function byName({ reference, type, identifier, display }: Reference): Reference {
  const target = type ?? /([A-Z][A-Za-z]+)\/[^/]+(?:\/_history\/[^/]+)?$/.exec(reference ?? '')?.[1];
  const name = display ?? reference;
  return {
    ...(target === undefined ? {} : { type: target }),
    ...(identifier === undefined ? {} : { identifier }),
    ...(name === undefined ? {} : { display: name }),
  };
}
