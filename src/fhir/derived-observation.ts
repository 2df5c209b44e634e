import type { CodeableConcept, Observation, ObservationComponent, Reference } from 'fhir/r4.js';
import type { Exam } from '../exam/exam.ts';
import { impliedFindings } from '../exam/implied-facts.ts';
import { scales } from '../exam/scales.ts';
import type { Conclusion, Evidence, RankedLocalisation } from '../localisation/localisation.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment, RedFlag } from '../workup/assessment.ts';
import { concept, conceptOf, examCategory, localConcept, shared } from './codings.ts';
import { gradeConcept, unknownReason } from './finding-observation.ts';
import type { Frame } from './frame.ts';
import { ownIdentifier } from './identity.ts';
import { conclusionCodes } from './local-codes.ts';
import { fhirText, list, narrative, paragraph, titled } from './narrative.ts';
import { scaleName } from './scale-observation.ts';
import { isObserved } from './summary-statement.ts';

/** Name of the localisation within the exam, for its id. */
export const localisationName = 'localisation';

export function redFlagName(flag: Pick<RedFlag, 'key'>): string {
  return `red-flag/${flag.key}`;
}

const candidatesShown = 5;

/** The site that the conclusion names; undefined when it names none, however likely the best candidate looks. */
export function concludedSite({ conclusion, localisations }: Assessment): RankedLocalisation | undefined {
  return conclusion === 'insufficient' || conclusion === 'not-anatomical' ? undefined : localisations[0];
}

/**
 * The computed localisation. Its value is the leading site; where the findings do not allow a conclusion there is no
 * value but a reason, so that nobody takes the best of several poor candidates for an answer.
 */
export function localisationObservation(assessment: Assessment, evidence: EvidenceIds, frame: Frame): Observation {
  const id = frame.id(localisationName);
  const { conclusion, localisations } = assessment;
  const leading = localisations[0];
  const site = concludedSite(assessment);
  const value =
    site === undefined
      ? { dataAbsentReason: unknownReason(conclusionCodes[conclusion]) }
      : { valueCodeableConcept: conceptOf(site.code, siteText(site)) };
  const candidates = localisations.slice(0, candidatesShown);
  const component: ObservationComponent[] = [
    { code: localConcept('localisationConclusion'), valueCodeableConcept: conclusions[conclusion] },
    { code: localConcept('localisationPattern'), valueCodeableConcept: patternConcept(assessment) },
    ...(leading === undefined
      ? []
      : [
          { code: localConcept('localisationProbability'), valueQuantity: percentQuantity(leading.probability) },
          { code: localConcept('localisationFit'), valueQuantity: percentQuantity(leading.fit) },
        ]),
    ...candidates.map((site) => ({
      code: localConcept('localisationCandidate'),
      valueCodeableConcept: conceptOf(site.code, `${siteText(site)} (${percentText(site.probability)})`),
    })),
  ];
  const used = leading === undefined ? [] : [...leading.supporting, ...leading.against];
  const said = localisationNarrative(assessment, frame);
  return {
    ...computed(id, said, localConcept('localisation'), localConcept('computedLocalisation'), frame),
    ...value,
    ...derivedFrom(evidence(used), frame),
    component,
  };
}

/** The syndromic pattern as a code of our own. */
export function patternConcept({ pattern }: Assessment): CodeableConcept {
  return concept(systems.pattern, pattern.key, fhirText(pattern.label));
}

/** The leading sites in words, as said in every narrative about the localisation. */
export function localisationNarrative(assessment: Assessment, frame: Frame): string {
  const { conclusion, localisations, pattern } = assessment;
  const leading = localisations[0];
  const because = (pieces: readonly Evidence[]) => list(pieces.map((piece) => `${piece.text}: ${piece.because}`));
  return (
    paragraph(`Computed localisation: ${conclusionCodes[conclusion].toLowerCase()}. Pattern: ${pattern.label}.`) +
    list(
      localisations.slice(0, candidatesShown).map((site) => `${siteText(site)}: ${percentText(site.probability)}`),
      'ol',
    ) +
    (leading === undefined
      ? ''
      : titled('For the leading site', because(leading.supporting)) +
        titled('Against it', because(leading.against)) +
        titled('Not explained by it', list(leading.unexplained.map((piece) => piece.text)))) +
    unreviewed(frame)
  );
}

/** One red flag that was considered: present, absent, or not assessable because something was not examined. */
export function redFlagObservation(flag: RedFlag, evidence: EvidenceIds, frame: Frame): Observation {
  const name = redFlagName(flag);
  const said =
    paragraph(`Red flag, computed: ${flag.label}: ${flag.state.replace('-', ' ')}.`) +
    titled('Because', list(flag.because.map((reason) => reason.text))) +
    (flag.state === 'absent' ? '' : paragraph(`Urgency: ${flag.urgency.replace('-', ' ')}. ${flag.action}`)) +
    unreviewed(frame);
  const notes = [
    ...flag.because.map((reason) => reason.text),
    ...(flag.state === 'absent' ? [] : [`${flag.action} (${flag.urgency.replace('-', ' ')})`]),
    `Source: ${flag.source}`,
  ];
  return {
    ...computed(
      frame.id(name),
      said,
      concept(systems.examItem, name, fhirText(flag.label)),
      localConcept('computedRedFlag'),
      frame,
    ),
    ...(flag.state === 'not-assessable'
      ? { dataAbsentReason: notAssessable }
      : { valueCodeableConcept: flag.state === 'present' ? present : absent }),
    note: notes.map((text) => ({ text: fhirText(text) })),
    ...derivedFrom(evidence(flag.because), frame),
  };
}

/** Sentence that every computed narrative ends with. */
export function unreviewed(frame: Frame): string {
  return paragraph(`Computed by model version ${frame.modelVersion}; not reviewed by a clinician.`);
}

/** Site in words with its side: "Common fibular nerve at the fibular neck, left". */
export function siteText(site: Pick<RankedLocalisation, 'label' | 'side'>): string {
  const side = site.side === 'both' ? 'both sides' : site.side;
  return side === null || site.label.toLowerCase().includes(side) ? site.label : `${site.label}, ${side}`;
}

/**
 * Probability (0 to 1) in percent with one decimal. What is neither impossible nor certain never becomes 0 or 100: below
 * a tenth of a percent one significant digit is kept, down to 0.001.
 */
export function percent(probability: number): number {
  const rounded = Math.round(probability * 1000) / 10;
  if (probability <= 0 || probability >= 1 || (rounded > 0 && rounded < 100)) return rounded;
  return rounded === 0 ? Math.max(0.001, Number((probability * 100).toPrecision(1))) : 99.9;
}

/** The same for people: "81.2 %", "below 0.1 %". */
export function percentText(probability: number): string {
  const value = percent(probability);
  return value < 0.1 ? 'below 0.1 %' : `${value} %`;
}

/**
 * The distinct findings, scales and statements behind some evidence, as names within the exam; others are left out. A
 * finding without an Observation of its own is represented by the statement that implied it.
 */
export type EvidenceIds = (
  pieces: readonly { readonly findingId?: string; readonly pointer?: string | null }[],
) => readonly string[];

export function evidenceIds(exam: Exam, frame: Frame): EvidenceIds {
  const nameById = new Map<string, string | undefined>([
    ...exam.findings.map((one) => [one.id, isObserved(one) ? one.id : frame.statementOf(one)] as const),
    ...impliedFindings(exam).flatMap(({ id, pointer }) =>
      exam.scales.filter((scale) => scale.pointer === pointer).map((scale) => [id, scaleName(scale)] as const),
    ),
    ...exam.scales.map((scale) => [scaleName(scale), scaleName(scale)] as const),
  ]);
  // A reason that reads the score as a whole is no finding, and leads to it by its pointer alone.
  const scaleByPointer = new Map(exam.scales.map((scale) => [scale.pointer, scaleName(scale)] as const));
  return (pieces) => {
    const names = pieces.flatMap(
      ({ findingId = '', pointer }) => nameById.get(findingId) ?? scaleByPointer.get(pointer ?? '') ?? [],
    );
    return [...new Set(names)];
  };
}

function computed(id: string, said: string, code: CodeableConcept, method: CodeableConcept, frame: Frame) {
  return {
    resourceType: 'Observation' as const,
    id,
    meta: frame.meta('neuro-exam-derived-observation'),
    text: narrative(said),
    identifier: [ownIdentifier(id)],
    status: frame.computed,
    category: examCategory,
    code,
    ...frame.about,
    effectiveDateTime: frame.examinedAt,
    method,
    device: frame.device,
  };
}

function derivedFrom(names: readonly string[], frame: Frame): { derivedFrom?: Reference[] } {
  return names.length === 0 ? {} : { derivedFrom: names.map(frame.ref) };
}

const percentQuantity = (share: number) => ({ value: percent(share), unit: '%', system: systems.ucum, code: '%' });

const [presentGrade, absentGrade] = scales.presence.grades;
const present = shared(gradeConcept('presence', presentGrade));
const absent = shared(gradeConcept('presence', absentGrade));
const notAssessable = shared(unknownReason('Not assessable: something that decides it was not examined or not stated'));

const conclusions = Object.fromEntries(
  Object.entries(conclusionCodes).map(([code, display]) => [code, shared(concept(systems.conclusion, code, display))]),
) as Record<Conclusion, CodeableConcept>;
