import type { Composition, CompositionSection, Reference } from 'fhir/r4.js';
import { sectionOf } from '../exam/catalogue/sections.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment } from '../workup/assessment.ts';
import { impressionName } from './clinical-impression.ts';
import { concept, shared } from './codings.ts';
import { localisationName, localisationNarrative, redFlagName, unreviewed } from './derived-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { fhirText, list, narrative, paragraph } from './narrative.ts';
import {
  examinationName,
  type SectionContent,
  sectionConcept,
  sectionName,
  sectionNarrative,
} from './panel-observation.ts';
import { provenanceName } from './provenance.ts';
import { rankedCausesName } from './risk-assessment.ts';
import { requestName } from './service-request.ts';

/** Name of the report within the exam, for its id. */
export const reportName = 'report';

const consultNote = shared(concept(systems.loinc, '11488-4', 'Consult note'));
const evaluation = shared(concept(systems.loinc, '51848-0', 'Evaluation note', 'Assessment'));
const plan = shared(concept(systems.loinc, '18776-5', 'Plan of care note', 'Proposed investigations'));

/**
 * The head of a document Bundle: the examination section by section, then what was computed from it. Preliminary,
 * because part of it was computed and nobody has attested the whole.
 */
export function report(sections: readonly SectionContent[], assessment: Assessment, frame: Frame): Composition {
  const id = frame.id(reportName);
  const title = 'Neurological examination with computed localisation';
  const { encounter } = frame.about;
  const authors = frame.performer.map(byName).filter(isAuthor);
  return {
    resourceType: 'Composition',
    id,
    text: narrative(paragraph(`${title}, ${frame.examinedAt}.`) + unreviewed(frame)),
    identifier: ownIdentifier(id),
    status: frame.computed,
    type: consultNote,
    subject: byName(frame.about.subject),
    ...(encounter === undefined ? {} : { encounter: byName(encounter) }),
    date: frame.examinedAt,
    author: [...authors, frame.device],
    title,
    section: [...sections.map((content) => examSection(content, frame)), ...assessmentSections(assessment, frame)],
  };
}

function examSection(content: SectionContent, frame: Frame): CompositionSection {
  const { section, members } = content;
  return {
    title: sectionOf(section).label,
    code: sectionConcept(section),
    text: narrative(sectionNarrative(content, frame)),
    entry: [sectionName(section), ...members].map(frame.ref),
  };
}

function assessmentSections(assessment: Assessment, frame: Frame): CompositionSection[] {
  const computed = [
    examinationName,
    localisationName,
    ...assessment.redFlags.map(redFlagName),
    impressionName,
    rankedCausesName,
    provenanceName(frame.version),
  ];
  const requests = assessment.workup;
  return [
    {
      title: 'Assessment',
      code: evaluation,
      text: narrative(
        paragraph(assessment.presentation) + localisationNarrative(assessment, frame) + paragraph(assessment.caution),
      ),
      entry: computed.map(frame.ref),
    },
    ...(requests.length === 0
      ? []
      : [
          {
            title: 'Proposed investigations',
            code: plan,
            text: narrative(
              list(requests.map((item) => fhirText(`${item.label}: ${item.because}`))) + unreviewed(frame),
            ),
            entry: requests.map((item) => frame.ref(requestName(item))),
          },
        ]),
  ];
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
