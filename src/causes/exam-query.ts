import { lowerFirst } from '../exam/describe.ts';
import type { Exam, FamilyRelation, HistoryStatement, InvestigationResult } from '../exam/exam.ts';
import { idOf } from '../exam/expand.ts';
import type { Finding } from '../exam/finding.ts';
import { powerOf } from '../exam/power.ts';
import { rememberedWith } from '../kernel/remembered.ts';
import type { Side } from '../kernel/side.ts';
import { withImplied } from './implied-history.ts';
import { withImpliedResults } from './implied-results.ts';
import type { Reason } from './ranked-cause.ts';

/** What the examiner can have said about a sign; `unknown` covers both "not tested" and "not mentioned". */
export type SignState = 'abnormal' | 'normal' | 'unknown';

/** A number that came as a result, with where it stands in the request. */
export interface Measurement {
  readonly value: number;
  readonly label: string;
  readonly pointer: string;
  /** The number is a bound, not the value itself. */
  readonly comparator?: InvestigationResult['comparator'];
}

/** Whether a measurement is at a threshold or above; null when it came as a bound that leaves it open. */
export function isFrom(
  { value, comparator }: Pick<Measurement, 'value' | 'comparator'>,
  threshold: number,
): boolean | null {
  if (comparator === undefined) return value >= threshold;
  if (comparator.startsWith('>')) return value >= threshold ? true : null;
  const isBelow = comparator === '<' ? value <= threshold : value < threshold;
  return isBelow ? false : null;
}

/** Questions that causes, red flags and tests put to one exam; every answer is in catalogue order. */
export interface ExamQuery {
  readonly exam: Exam;
  /** Findings of an item, tested or not: `power/ankle-dorsiflexion`. */
  findings(itemId: string, side?: Side): readonly Finding[];
  /** Abnormal findings of any of the items. */
  abnormal(itemIds: readonly string[], side?: Side): readonly Finding[];
  hasAbnormal(itemId: string, side?: Side): boolean;
  /** Findings of any of the items that were tested, normal or not. */
  tested(itemIds: readonly string[], side?: Side): readonly Finding[];
  /** Abnormal wins over normal, normal over unknown. */
  sign(itemId: string, side?: Side): SignState;
  /** Lowest power recorded for a movement on a side, as the ordinal of its grade (4- is 3.67); null when not tested. */
  power(movement: string, side: Side): number | null;
  /** Abnormal findings that meet a condition. */
  abnormalWhere(condition: (finding: Finding) => boolean): readonly Finding[];
  /** Tested findings that meet a condition. */
  testedWhere(condition: (finding: Finding) => boolean): readonly Finding[];
  /** A statement of the history; what is told of relatives has the key `family/...`. */
  history(key: string): HistoryStatement | undefined;
  result(key: string): InvestigationResult | undefined;
  /** Number of a result, if it was given in this UCUM unit; no unit is ever guessed. */
  quantity(key: string, unit: string): Measurement | undefined;
}

/** The questions to an exam; prepared once for each exam, because causes and red flags both ask. */
export const queryExam: (exam: Exam) => ExamQuery = rememberedWith(prepared);

function prepared(exam: Exam): ExamQuery {
  const byItem = new Map<string, Finding[]>();
  for (const finding of exam.findings) {
    const id = idOf(finding.item);
    const list = byItem.get(id);
    if (list === undefined) byItem.set(id, [finding]);
    else list.push(finding);
  }
  const history = new Map<string, HistoryStatement>();
  // A symptom and a condition may share a key; a positive statement is never hidden by a negative one.
  for (const statement of withImplied(exam.history)) {
    const key = statement.kind === 'family' ? `family/${statement.key}` : statement.key;
    if (!history.get(key)?.present) history.set(key, statement);
  }
  const results = new Map(withImpliedResults(exam).map((result) => [result.key, result]));

  const findings = (id: string, side?: Side): readonly Finding[] =>
    (byItem.get(id) ?? []).filter((finding) => side === undefined || finding.side === side);
  const abnormal = (ids: readonly string[], side?: Side): readonly Finding[] =>
    ids.flatMap((id) => findings(id, side).filter((finding) => finding.abnormal));
  const tested = (ids: readonly string[], side?: Side): readonly Finding[] =>
    ids.flatMap((id) => findings(id, side).filter((finding) => finding.value !== null));

  return {
    exam,
    findings,
    abnormal,
    hasAbnormal: (id, side) => abnormal([id], side).length > 0,
    tested,
    sign: (id, side) => {
      const seen = tested([id], side);
      if (seen.length === 0) return 'unknown';
      return seen.some((finding) => finding.abnormal) ? 'abnormal' : 'normal';
    },
    power: (movement, side) => {
      const grades = findings(`power/${movement}`, side)
        .map(powerOf)
        .filter((grade) => grade !== null);
      return grades.length === 0 ? null : Math.min(...grades);
    },
    abnormalWhere: (condition) => exam.findings.filter((finding) => finding.abnormal && condition(finding)),
    testedWhere: (condition) => exam.findings.filter((finding) => finding.value !== null && condition(finding)),
    history: (key) => history.get(key),
    result: (key) => results.get(key),
    quantity: (key, unit) => {
      const result = results.get(key);
      if (result?.quantity?.unit !== unit) return undefined;
      const { label, pointer, comparator } = result;
      return { value: result.quantity.value, label, pointer, ...(comparator === undefined ? {} : { comparator }) };
    },
  };
}

/** Relatives as they are spoken of; the others are the family. */
export const relationWords: Readonly<Partial<Record<FamilyRelation, string>>> = {
  parent: 'a parent',
  child: 'a child',
  sibling: 'a brother or sister',
  grandparent: 'a grandparent',
  'aunt-or-uncle': 'an aunt or uncle',
  cousin: 'a cousin',
};

/** A label of the history without the examples in brackets, which are for who picks the row. */
export function withoutExamples(label: string): string {
  return label.replace(/ \([^)]*,[^)]*\)/, '');
}

/** A history statement as a reason. */
export function historyReason(statement: HistoryStatement, text?: string): Reason {
  const who = statement.relation === undefined ? undefined : relationWords[statement.relation];
  const label = statement.kind === 'family' ? `${statement.label} in ${who ?? 'the family'}` : statement.label;
  const said = text ?? lowerFirst(withoutExamples(label)).replace(/^A /, 'a ');
  return { pointer: statement.pointer, text: statement.present ? said : `no ${said.replace(/^an? /, '')}` };
}
