import type { RankedCause, Reason } from '../causes/ranked-cause.ts';
import type { Evidence, RankedLocalisation } from '../localisation/localisation.ts';
import type { Assessment, RedFlag } from '../workup/assessment.ts';

/** Numbers are rounded so that the answer is the same to the byte wherever it is computed. */
const decimals = 4;

/**
 * The assessment in the shape that callers depend on. Absent red flags are left out, present ones come before those that
 * could not be decided, and each says which it is. Beside the contract's own properties it says which tests guidance
 * finds needless.
 */
export function localisationAnswer(assessment: Assessment) {
  return {
    localisations: assessment.localisations.map(siteAnswer),
    pattern: assessment.pattern,
    conclusion: assessment.conclusion,
    causes: assessment.causes.map(causeAnswer),
    redFlags: assessment.redFlags.filter((flag) => flag.state !== 'absent').map(flagAnswer),
    workup: assessment.workup,
    nextExamination: assessment.nextExamination.map((next) => ({ ...next, gainBits: round(next.gainBits) })),
    presentation: assessment.presentation,
    caution: assessment.caution,
    modelVersion: assessment.modelVersion,
    needless: assessment.needless,
  };
}

function siteAnswer(site: RankedLocalisation) {
  return {
    site: site.site,
    label: site.label,
    side: site.side,
    level: site.level,
    levelRange: site.levelRange,
    kind: site.kind,
    code: site.code,
    probability: round(site.probability),
    fit: round(site.fit),
    supporting: site.supporting.map(evidenceAnswer),
    against: site.against.map(evidenceAnswer),
    unexplained: site.unexplained.map(evidenceAnswer),
  };
}

function evidenceAnswer({ finding, side, text, weight, because }: Evidence) {
  return { finding, side, text, weight: round(weight), because };
}

function causeAnswer(cause: RankedCause) {
  return {
    key: cause.key,
    label: cause.label,
    code: cause.code,
    probability: round(cause.probability),
    supporting: cause.supporting.map(reasonAnswer),
    against: cause.against.map(reasonAnswer),
    source: cause.source,
  };
}

function flagAnswer(flag: RedFlag) {
  return {
    key: flag.key,
    label: flag.label,
    state: flag.state,
    urgency: flag.urgency,
    because: flag.because.map(reasonAnswer),
    action: flag.action,
    source: flag.source,
  };
}

function reasonAnswer({ pointer, text }: Reason) {
  return { finding: pointer, text };
}

function round(value: number): number {
  return Number(value.toFixed(decimals));
}
