import { itemNamed } from './catalogue/catalogue.ts';
import type { SectionKey } from './catalogue/item.ts';
import type { Exam } from './exam.ts';
import { findingsOf, inExamOrder } from './expand.ts';
import type { Finding, ScoredScale } from './finding.ts';

type Implied = readonly [section: SectionKey, sign: string, present: boolean];

const grades = ['coma', 'stupor', 'drowsiness', 'fluctuating-consciousness'];

/** Score from which downwards a patient is called comatose whatever the parts are. Common practice. */
const comatose = 8;

/**
 * What the parts of the coma scale say in signs. Coma is to open no eye, to say no word and to follow no request: Teasdale and
 * Jennett 1974 (recalled). The lower grades are common practice.
 */
function impliedBy({ parts: { eye, verbal, motor }, total }: ScoredScale): readonly Implied[] {
  const isComatose =
    (total !== null && total <= comatose) ||
    (eye === 1 && motor !== null && motor <= 5 && (verbal === null || verbal <= 2));
  return [
    ...(isComatose ? [sign('coma')] : []),
    ...(!isComatose && eye !== null ? [eye <= 2 ? sign('stupor') : sign('drowsiness', eye === 3)] : []),
    ...(verbal === 4 ? [sign('confusion')] : []),
    ...(verbal === 5 ? [sign('disorientation', false)] : []),
    ...(motor === 2 || motor === 3 ? [['involuntaryMovements', 'posturing', true] as const] : []),
  ];
}

const sign = (key: string, present = true): Implied => ['higherFunction', key, present];

/** The signs that the coma scale of an exam stands for, where the examiner did not record them for themselves. */
export function scoredFindings({ scales, findings }: Pick<Exam, 'scales' | 'findings'>): readonly Finding[] {
  const recorded = new Set(findings.filter(({ value }) => value !== null).map(({ item }) => item.key));
  const isGraded = grades.some((grade) => recorded.has(grade));
  return scales.flatMap((scale) =>
    impliedBy(scale).flatMap(([section, key, present]) => {
      const item = itemNamed(section, { sign: key });
      const isKnown = recorded.has(key) || (isGraded && grades.includes(key));
      return item === undefined || isKnown ? [] : findingsOf(item, { present }, scale.pointer);
    }),
  );
}

/** The exam as it is reasoned about: whoever only scored consciousness has recorded how awake the patient is. */
export function withScoredFindings(exam: Exam): Exam {
  const scored = scoredFindings(exam);
  return scored.length === 0 ? exam : { ...exam, findings: inExamOrder([...exam.findings, ...scored]) };
}
