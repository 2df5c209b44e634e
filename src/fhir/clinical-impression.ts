import type { ClinicalImpression, ClinicalImpressionFinding } from 'fhir/r4.js';
import type { Exam } from '../exam/exam.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment, WorkupItem } from '../workup/assessment.ts';
import { conceptOf, localConcept, rowConcept } from './codings.ts';
import {
  concludedSite,
  evidenceIds,
  localisationName,
  localisationNarrative,
  patternConcept,
  percent,
  percentText,
  redFlagName,
  siteText,
} from './derived-observation.ts';
import { modelUri, softwareName } from './device.ts';
import { phenotypeOf } from './finding-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { conclusionCodes } from './local-codes.ts';
import { fhirText, isBlank, list, narrative, paragraph, titled } from './narrative.ts';
import { examinationName, type SectionContent, sectionName } from './panel-observation.ts';
import { causeList, rankedCausesName, reasonTexts } from './risk-assessment.ts';

/** Name of the impression within the exam, for its id. */
export const impressionName = 'impression';

const causesShown = 5;

/**
 * The computed impression: pattern and localisation first, then the leading causes, each with the Observation that speaks
 * most for it (or the localisation, where none does), then the abnormal findings as phenotype terms. What the leading
 * causes rest on besides stands in the supporting information.
 * It stays in progress and has no assessor, because nobody has reviewed it; a clinician who adopts it completes it.
 */
export function clinicalImpression(
  exam: Exam,
  assessment: Assessment,
  sections: readonly SectionContent[],
  frame: Frame,
): ClinicalImpression {
  const id = frame.id(impressionName);
  const { presentation, caution, modelVersion } = assessment;
  const notes = [caution, ...notChosenNote(assessment)].filter((text) => !isBlank(text));
  return {
    resourceType: 'ClinicalImpression',
    id,
    meta: frame.meta('neuro-exam-impression'),
    text: narrative(impressionNarrative(exam, assessment, frame)),
    identifier: [ownIdentifier(id), frame.sender],
    status: frame.inError ? 'entered-in-error' : 'in-progress',
    description: `Computed from the coded examination by ${softwareName}, model version ${modelVersion}; not reviewed by a clinician.`,
    ...frame.about,
    effectiveDateTime: frame.examinedAt,
    date: frame.examinedAt,
    investigation: [
      {
        code: localConcept('examination'),
        item: [examinationName, ...sections.map(({ section }) => sectionName(section))].map(frame.ref),
      },
      {
        code: { text: 'Computed from the examination' },
        item: [localisationName, ...assessment.redFlags.map(redFlagName), rankedCausesName].map(frame.ref),
      },
    ],
    protocol: [modelUri(modelVersion), ...guidanceOf(assessment)],
    ...(isBlank(presentation) ? {} : { summary: fhirText(presentation) }),
    finding: findings(exam, assessment, frame),
    supportingInfo: [rankedCausesName, ...restingOn(exam, assessment, frame)].map(frame.ref),
    ...(notes.length === 0 ? {} : { note: notes.map((text) => ({ text: fhirText(text) })) }),
  };
}

/** The published guidance that the proposed tests follow, each once. */
function guidanceOf({ proposed }: Assessment): readonly string[] {
  return [...new Set(proposed.flatMap(({ guidance }) => guidance ?? []))];
}

const leftOut = 'Suggested and not chosen';

/** What the examiner did not want proposed is no request, but it is not forgotten that it was suggested, and why. */
function notChosenNote({ notChosen }: Assessment): readonly string[] {
  return notChosen.length === 0 ? [] : [`${leftOut}: ${notChosen.map(withReason).join('. ')}.`];
}

function withReason({ label, priority, because }: WorkupItem): string {
  return `${label} (${priority}): ${because}`;
}

function findings(exam: Exam, assessment: Assessment, frame: Frame): ClinicalImpressionFinding[] {
  const { causes } = assessment;
  const evidence = evidenceIds(exam, frame);
  const total = causes.length;
  return [
    patternFinding(assessment, frame),
    localisationFinding(assessment, frame),
    ...causes.slice(0, causesShown).map((cause, index) => ({
      itemCodeableConcept: rowConcept(cause, systems.cause),
      itemReference: frame.ref(evidence(cause.supporting)[0] ?? localisationName),
      basis: [`Rank ${index + 1} of ${total}, ${percentText(cause.probability)}.`, ...reasonTexts(cause)].join(' '),
    })),
    ...exam.findings.flatMap((finding) => {
      const phenotype = phenotypeOf(finding);
      return phenotype === undefined
        ? []
        : [
            {
              itemCodeableConcept: phenotype,
              itemReference: frame.ref(finding.id),
              basis: fhirText(frame.say(finding)),
            },
          ];
    }),
  ];
}

function patternFinding(assessment: Assessment, frame: Frame): ClinicalImpressionFinding {
  return { itemCodeableConcept: patternConcept(assessment), itemReference: frame.ref(localisationName) };
}

/** The Observations for and against the leading causes, each once. */
function restingOn(exam: Exam, { causes }: Assessment, frame: Frame): readonly string[] {
  const reasons = causes.slice(0, causesShown).flatMap(({ supporting, against }) => [...supporting, ...against]);
  return evidenceIds(exam, frame)(reasons);
}

function localisationFinding(assessment: Assessment, frame: Frame): ClinicalImpressionFinding {
  const said = conclusionCodes[assessment.conclusion];
  const site = concludedSite(assessment);
  const itemReference = frame.ref(localisationName);
  if (site === undefined) return { itemCodeableConcept: { text: said }, itemReference };
  return {
    itemCodeableConcept: conceptOf(site.code, siteText(site)),
    itemReference,
    basis: `${said}, ${percentText(site.probability)} among the sites considered; accounts for ${percent(site.fit)} % of the abnormal findings.`,
  };
}

function impressionNarrative(exam: Exam, assessment: Assessment, frame: Frame): string {
  const { causes, redFlags, presentation, caution, notChosen } = assessment;
  const flagged = redFlags.filter((flag) => flag.state === 'present');
  const open = redFlags.filter((flag) => flag.state === 'not-assessable');
  const missing = exam.findings.filter((finding) => finding.value === null);
  return (
    titled('Red flags present', list(flagged.map((flag) => `${flag.label}. ${flag.action}`))) +
    titled('Red flags that could not be assessed', list(open.map((flag) => flag.label))) +
    paragraph(presentation) +
    localisationNarrative(assessment, frame) +
    titled('Causes considered', causeList(causes.slice(0, causesShown))) +
    titled('Not tested', list(missing.map(frame.say))) +
    titled(leftOut, list(notChosen.map(withReason))) +
    paragraph(caution)
  );
}
