import type { CodeableConcept, RiskAssessment, RiskAssessmentPrediction } from 'fhir/r4.js';
import type { RankedCause, Reason } from '../causes/ranked-cause.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment } from '../workup/assessment.ts';
import { concept, localConcept, rowConcept, shared } from './codings.ts';
import { type EvidenceIds, localisationName, percent, percentText, unreviewed } from './derived-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { fhirText, isBlank, list, narrative, paragraph } from './narrative.ts';

/** Name of the ranked causes within the exam, for their id. */
export const rankedCausesName = 'ranked-causes';

/**
 * The causes in rank order, each with its probability in percent (R4 counts 0 to 100 here) among the causes considered.
 * Without causes it is still made, with no prediction, so that a correction replaces an earlier ranking.
 */
export function rankedCauses(assessment: Assessment, evidence: EvidenceIds, frame: Frame): RiskAssessment {
  const { causes, caution } = assessment;
  const id = frame.id(rankedCausesName);
  const reasons = evidence(causes.flatMap((cause) => [...cause.supporting, ...cause.against]));
  return {
    resourceType: 'RiskAssessment',
    id,
    meta: frame.meta('neuro-exam-ranked-causes'),
    text: narrative(
      paragraph(causes.length === 0 ? 'No cause was ranked.' : 'Computed causes, most likely first:') +
        causeList(causes) +
        unreviewed(frame),
    ),
    identifier: [ownIdentifier(id)],
    status: frame.computed,
    method: localConcept('computedCauseRanking'),
    code: localConcept('rankedCauses'),
    ...frame.about,
    occurrenceDateTime: frame.examinedAt,
    performer: frame.device,
    reasonReference: [frame.ref(localisationName)],
    basis: [localisationName, ...reasons].map(frame.ref),
    ...(causes.length === 0 ? {} : { prediction: causes.map(prediction) }),
    ...(isBlank(caution) ? {} : { note: [{ text: fhirText(caution) }] }),
  };
}

/** Causes in words, in rank order. */
export function causeList(causes: readonly RankedCause[]): string {
  return list(
    causes.map((cause) => `${cause.label}: ${percentText(cause.probability)}`),
    'ol',
  );
}

function prediction(cause: RankedCause): RiskAssessmentPrediction {
  return {
    outcome: rowConcept(cause, systems.cause),
    probabilityDecimal: percent(cause.probability),
    qualitativeRisk: likelihood(cause.probability),
    rationale: [...reasonTexts(cause), `Source: ${fhirText(cause.source)}`].join(' '),
  };
}

/** What speaks for a cause and what against it, a sentence each where there is something. */
export function reasonTexts({ supporting, against }: Pick<RankedCause, 'supporting' | 'against'>): readonly string[] {
  const said = (heading: string, reasons: readonly Reason[]) =>
    reasons.length === 0 ? [] : [`${heading}: ${reasons.map((reason) => fhirText(reason.text)).join('; ')}.`];
  return [...said('For', supporting), ...said('Against', against)];
}

// The steps are our own choice; HL7 gives the words and no numbers. `certain` is never said of a computed cause.
const steps = shared([
  { below: 0.01, risk: concept(systems.riskProbability, 'negligible', 'Negligible likelihood') },
  { below: 0.1, risk: concept(systems.riskProbability, 'low', 'Low likelihood') },
  { below: 0.5, risk: concept(systems.riskProbability, 'moderate', 'Moderate likelihood') },
]);
const high = shared(concept(systems.riskProbability, 'high', 'High likelihood'));

function likelihood(probability: number): CodeableConcept {
  return steps.find(({ below }) => probability < below)?.risk ?? high;
}
