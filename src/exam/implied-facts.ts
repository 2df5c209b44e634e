import { itemNamed } from './catalogue/catalogue.ts';
import { isGradeOfConsciousness } from './catalogue/cooperation.ts';
import { findHistoryRow } from './catalogue/history.ts';
import type { SectionKey } from './catalogue/item.ts';
import type { Exam, HistoryStatement, InvestigationResult } from './exam.ts';
import { findingsOf, inExamOrder } from './expand.ts';
import type { Finding, ScoredScale } from './finding.ts';

/** A sign that something else in the exam stands for. */
interface Implied {
  readonly section: SectionKey;
  readonly sign: string;
  readonly present: boolean;
  /** JSON Pointer of what implies it. */
  readonly pointer: string;
}

/** Score from which downwards a patient is called comatose whatever the parts are. Common practice. */
const comatose = 8;

/**
 * What the parts of the coma scale say in signs. Coma is to open no eye, to say no word and to follow no request: Teasdale and
 * Jennett 1974 (recalled). The lower grades are common practice.
 */
function impliedByScale({ parts: { eye, verbal, motor }, total, pointer }: ScoredScale): readonly Implied[] {
  const higher = (sign: string, present = true): Implied => ({ section: 'higherFunction', sign, present, pointer });
  const isComatose =
    (total !== null && total <= comatose) ||
    (eye === 1 && motor !== null && motor <= 5 && (verbal === null || verbal <= 2));
  return [
    ...(isComatose ? [higher('coma')] : []),
    ...(!isComatose && eye !== null ? [eye <= 2 ? higher('stupor') : higher('drowsiness', eye === 3)] : []),
    ...(verbal === 4 ? [higher('confusion')] : []),
    ...(verbal === 5 ? [higher('disorientation', false)] : []),
    ...(motor === 2 || motor === 3
      ? [{ section: 'involuntaryMovements', sign: 'posturing', present: true, pointer } as const]
      : []),
  ];
}

/**
 * Signs that a measurement says, in the unit of the catalogue: from when on it is called so, or up to when. Common practice;
 * what lies between them says nothing.
 */
const measuredSigns: readonly {
  readonly key: string;
  readonly sign: string;
  readonly from?: number;
  readonly upTo?: number;
}[] = [
  { key: 'body-temperature', sign: 'fever', from: 38 },
  { key: 'heart-rate', sign: 'resting-tachycardia', from: 101 },
  { key: 'heart-rate', sign: 'bradycardia', upTo: 49 },
];

function impliedByResult({ key, quantity, comparator, pointer }: InvestigationResult): readonly Implied[] {
  // A bound leaves open on which side of the threshold the value lies.
  if (quantity === undefined || comparator !== undefined) return [];
  return measuredSigns
    .filter(
      (one) => one.key === key && quantity.value >= (one.from ?? -Infinity) && quantity.value <= (one.upTo ?? Infinity),
    )
    .map(({ sign }) => ({ section: 'autonomic', sign, present: true, pointer }));
}

/** The signs that the scores and measurements of an exam stand for, where the examiner did not record them for themselves. */
export function impliedFindings({
  scales,
  findings,
  results,
}: Pick<Exam, 'scales' | 'findings' | 'results'>): readonly Finding[] {
  const recorded = new Set(findings.flatMap(({ item, value }) => (value === null ? [] : [item])));
  const isGraded = [...recorded].some(isGradeOfConsciousness);
  return [...scales.flatMap(impliedByScale), ...results.flatMap(impliedByResult)].flatMap(
    ({ section, sign, present, pointer }) => {
      const item = itemNamed(section, { sign });
      if (item === undefined || recorded.has(item) || (isGraded && isGradeOfConsciousness(item))) return [];
      return findingsOf(item, { present }, pointer);
    },
  );
}

/** Signs that are complaints of the illness whether or not the history tells of them, with the keys of both. */
const foundAndSuffered = [
  ['fever', 'fever'],
  ['seizure-seen', 'seizure'],
  ['postural-tremor', 'tremor'],
  ['action-tremor', 'tremor'],
] as const;

function impliedHistory(
  history: readonly HistoryStatement[],
  findings: readonly Finding[],
): readonly HistoryStatement[] {
  const told = new Map<string, HistoryStatement>();
  for (const [sign, symptom] of foundAndSuffered) {
    const found = findings.find(({ item, abnormal }) => abnormal && item.key === sign);
    const row = findHistoryRow('symptoms', symptom);
    if (found === undefined || row === undefined || history.some(({ key }) => key === symptom)) continue;
    if (!told.has(symptom))
      told.set(symptom, { key: symptom, label: row.label, kind: 'symptom', present: true, pointer: found.pointer });
  }
  return [...told.values()];
}

/**
 * The exam as it is reasoned about: whoever only scored consciousness has recorded how awake the patient is, and a measured
 * temperature is a fever. What is said again, or sent on, is the exam as it was stated.
 */
export function withImpliedFacts(exam: Exam): Exam {
  const implied = impliedFindings(exam);
  const findings = implied.length === 0 ? exam.findings : inExamOrder([...exam.findings, ...implied]);
  const told = impliedHistory(exam.history, findings);
  if (implied.length + told.length === 0) return exam;
  return { ...exam, findings, history: [...exam.history, ...told] };
}
