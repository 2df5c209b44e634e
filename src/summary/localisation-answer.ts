import type { RankedCause, Reason } from '../causes/ranked-cause.ts';
import type { Evidence, RankedLocalisation } from '../localisation/localisation.ts';
import type { Assessment, RedFlag } from '../workup/assessment.ts';

/** Numbers are rounded so that the answer is the same to the byte wherever it is computed. */
const decimals = 4;

/**
 * The assessment in the shape that callers depend on. Absent red flags are left out, present ones come before those that
 * could not be decided, and each says which it is. Beside the contract's own properties it says which tests guidance
 * finds needless.
 * @param originOf where in what was sent the value at a pointer into the exam stands; in an exam's own JSON it is the same
 */
export function localisationAnswer(assessment: Assessment, originOf: OriginOf = (pointer) => pointer) {
  return {
    localisations: assessment.localisations.map((site) => siteAnswer(site, originOf)),
    pattern: assessment.pattern,
    conclusion: assessment.conclusion,
    causes: assessment.causes.map((cause) => causeAnswer(cause, originOf)),
    redFlags: assessment.redFlags.filter((flag) => flag.state !== 'absent').map((flag) => flagAnswer(flag, originOf)),
    workup: assessment.workup,
    nextExamination: assessment.nextExamination.map((next) => ({ ...next, gainBits: round(next.gainBits) })),
    presentation: assessment.presentation,
    caution: assessment.caution,
    modelVersion: assessment.modelVersion,
    needless: assessment.needless,
  };
}

type OriginOf = (pointer: string) => string;

function siteAnswer(site: RankedLocalisation, originOf: OriginOf) {
  const evidence = (one: Evidence) => evidenceAnswer(one, originOf);
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
    supporting: site.supporting.map(evidence),
    against: site.against.map(evidence),
    unexplained: site.unexplained.map(evidence),
  };
}

function evidenceAnswer({ finding, side, text, weight, because }: Evidence, originOf: OriginOf) {
  return { finding: originOf(finding), side, text, weight: round(weight), because };
}

function causeAnswer(cause: RankedCause, originOf: OriginOf) {
  const reason = (one: Reason) => reasonAnswer(one, originOf);
  return {
    key: cause.key,
    label: cause.label,
    code: cause.code,
    probability: round(cause.probability),
    supporting: cause.supporting.map(reason),
    against: cause.against.map(reason),
    source: cause.source,
  };
}

function flagAnswer(flag: RedFlag, originOf: OriginOf) {
  return {
    key: flag.key,
    label: flag.label,
    state: flag.state,
    urgency: flag.urgency,
    because: flag.because.map((one) => reasonAnswer(one, originOf)),
    action: flag.action,
    source: flag.source,
  };
}

function reasonAnswer({ pointer, text }: Reason, originOf: OriginOf) {
  return { finding: pointer === null ? null : originOf(pointer), text };
}

function round(value: number): number {
  return Number(value.toFixed(decimals));
}
