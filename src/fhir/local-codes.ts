import type { SiteKind } from '../anatomy/site-kind.ts';
import type { CauseGroup } from '../causes/table/cause.ts';
import type { NotTestedReason } from '../exam/finding.ts';
import type { Conclusion } from '../localisation/localisation.ts';
import { systems } from '../terminology/systems.ts';

/** One code of our own that is not a row of a clinical table. */
export interface LocalCode {
  readonly system: string;
  readonly code: string;
  readonly display: string;
  readonly definition: string;
}

const examItem = (code: string, display: string, definition: string): LocalCode => ({
  system: systems.examItem,
  code,
  display,
  definition,
});
const method = (code: string, display: string, definition: string): LocalCode => ({
  system: systems.method,
  code,
  display,
  definition,
});

/**
 * What the Bundle says beyond the rows of the catalogue: panels, computed results, their parts, and methods. Sections
 * (`section/...`) and red flags (`red-flag/...`) come from their own tables.
 */
export const localCodes = {
  examination: examItem('examination', 'Neurological examination', 'Panel of all sections of one examination.'),
  abnormalFinding: examItem(
    'abnormal-finding',
    'Abnormal finding',
    'Component that repeats an abnormal finding as a phenotype term, so that graded and present-or-absent findings are found alike.',
  ),
  otherwiseNormal: examItem(
    'otherwise-normal',
    'Otherwise normal',
    'The examiner stated that all the rest of a section, of a region or of a side was tested and normal. The text says of what, and the section panel holds it.',
  ),
  localisation: examItem('localisation', 'Computed localisation', 'Place or process that explains the findings best.'),
  localisationConclusion: examItem(
    'localisation-conclusion',
    'Conclusion of the localisation',
    'Whether the findings point to one site, several, a diffuse process, none, or cannot be decided.',
  ),
  localisationPattern: examItem(
    'localisation-pattern',
    'Pattern of the findings',
    'Syndromic pattern that the abnormal findings form.',
  ),
  localisationProbability: examItem(
    'localisation-probability',
    'Probability of the leading site',
    'Probability of the leading site among the sites considered, in percent.',
  ),
  localisationFit: examItem(
    'localisation-fit',
    'Fit of the leading site',
    'Share of the abnormal findings, by weight, that the leading site accounts for, in percent.',
  ),
  localisationCandidate: examItem(
    'localisation-candidate',
    'Localisation candidate',
    'One of the leading sites; the components are in rank order.',
  ),
  rankedCauses: examItem('ranked-causes', 'Ranked causes', 'Causes considered for the findings, with probabilities.'),
  overallNormal: {
    system: systems.overall,
    code: 'normal',
    display: 'Normal',
    definition: 'Everything that the statement speaks of was tested and normal, but for what is stated item by item.',
  },
  computedLocalisation: method(
    'computed-localisation',
    'Computed localisation',
    'Inference by the software from the coded findings and a model of the nervous system; not reviewed by a clinician.',
  ),
  computedRedFlag: method(
    'computed-red-flag',
    'Computed red flag',
    'Rule applied by the software to the coded findings and history; not reviewed by a clinician.',
  ),
  computedCauseRanking: method(
    'computed-cause-ranking',
    'Computed ranking of causes',
    'Inference by the software from the localisation, history and results; not reviewed by a clinician.',
  ),
  manualMuscleTesting: method(
    'manual-muscle-testing',
    'Manual muscle testing',
    'Power against gravity and the resistance of the examiner.',
  ),
  reinforcement: method(
    'reinforcement',
    'With reinforcement',
    'Reflex elicited while the person contracts distant muscles.',
  ),
  examinerSummaryStatement: method(
    'examiner-summary-statement',
    "Examiner's summary statement",
    'The examiner stated that everything else of a section or region was tested and normal.',
  ),
} as const satisfies Record<string, LocalCode>;

/** Our reasons for a missing value, each with the HL7 reason that stands beside it. */
export const notTestedCodes = {
  pain: { display: 'Pain prevents testing', absent: ['not-performed', 'Not Performed'] },
  declined: { display: 'The person declined', absent: ['asked-declined', 'Asked But Declined'] },
  unable: { display: 'Unable to take part', absent: ['not-performed', 'Not Performed'] },
  'not-done': { display: 'Not done', absent: ['not-performed', 'Not Performed'] },
  'limb-absent': { display: 'The body part is absent', absent: ['not-applicable', 'Not Applicable'] },
  other: { display: 'Other reason', absent: ['not-performed', 'Not Performed'] },
} as const satisfies Record<NotTestedReason, { display: string; absent: readonly [string, string] }>;

/** How the localisation ended, as codes of `systems.conclusion`. */
export const conclusionCodes = {
  'single-site': 'A single site',
  'multiple-sites': 'More than one site',
  'diffuse-process': 'A diffuse process',
  'no-abnormality': 'No abnormality',
  'not-anatomical': 'No anatomical explanation',
  insufficient: 'Not enough findings to localise',
} as const satisfies Record<Conclusion, string>;

/** The groups of causes, as codes of `systems.cause` that causes stand below. */
export const causeGroupNames = {
  hereditary: 'Hereditary cause',
  metabolic: 'Metabolic cause',
  toxic: 'Toxic cause',
  nutritional: 'Nutritional cause',
  immune: 'Immune-mediated cause',
  infective: 'Infective cause',
  paraneoplastic: 'Paraneoplastic cause',
  paraprotein: 'Paraprotein-associated cause',
  compressive: 'Compressive cause',
  traumatic: 'Traumatic cause',
  vascular: 'Vascular cause',
  neoplastic: 'Neoplastic cause',
  degenerative: 'Degenerative cause',
  'critical-illness': 'Cause in critical illness',
  paroxysmal: 'Paroxysmal cause',
  functional: 'Functional cause',
} as const satisfies Record<CauseGroup, string>;

/** The kinds of site, as codes of `systems.localisation` that sites stand below. */
export const siteKindNames = {
  none: 'No site',
  muscle: 'Disease of muscle',
  junction: 'Disorder of the neuromuscular junction',
  nerve: 'Peripheral nerve',
  'multiple-nerves': 'Several peripheral nerves',
  polyneuropathy: 'Polyneuropathy',
  polyradiculoneuropathy: 'Polyradiculoneuropathy',
  ganglion: 'Dorsal root ganglia',
  plexus: 'Nerve plexus',
  root: 'Nerve roots',
  'cauda-equina': 'Cauda equina',
  'anterior-horn': 'Anterior horn',
  'motor-neuron-system': 'Motor neuron system',
  cord: 'Spinal cord',
  brainstem: 'Brainstem',
  cerebellum: 'Cerebellum',
  hemisphere: 'Cerebral hemisphere',
  'visual-pathway': 'Visual pathway',
  'cranial-nerve': 'Cranial nerve',
  'basal-ganglia': 'Basal ganglia',
  meninges: 'Meninges',
  'intracranial-pressure': 'Intracranial pressure',
  encephalopathy: 'Encephalopathy',
  'multiple-sites': 'Several sites',
} as const satisfies Record<SiteKind, string>;
