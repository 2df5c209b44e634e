/** The examination as it is being written down, before it is sent. Plain data: it is kept as JSON. */
import type { Exam } from '../../client/generated/api-types.ts';
import type { PlaceKind } from '../catalogue.ts';

export type Side = 'left' | 'right';
/** `midline` for an item of the midline, and for one whose side is not stated. */
export type CellSide = Side | 'midline';
export type NotTestedReason = 'pain' | 'declined' | 'unable' | 'not-done' | 'limb-absent' | 'other';

/** What is examined, where, on which side: one cell of the record. */
export interface CellAddress {
  readonly section: string;
  readonly item: string;
  readonly place?: { readonly kind: PlaceKind; readonly key: string };
  readonly side: CellSide;
}

/** What was found there: a value, or why there is none. A note alone is not a finding. */
export interface Cell {
  /** Key of a value, or a count of beats. */
  readonly value?: string | number;
  readonly notTested?: NotTestedReason;
  readonly note?: string;
  readonly reinforced?: boolean;
}

export type CellKey = string;

/** @example `power/ankle-dorsiflexion||left`, `sensation/pinprick|dermatome:L5|left` */
export function cellKey({ section, item, place, side }: CellAddress): CellKey {
  return `${section}/${item}|${place === undefined ? '' : `${place.kind}:${place.key}`}|${side}`;
}

export function addressOf(key: CellKey): CellAddress {
  const [what = '', where = '', side = 'midline'] = key.split('|');
  const [section = '', item = ''] = what.split('/');
  const colon = where.indexOf(':');
  const place = colon < 0 ? undefined : { kind: where.slice(0, colon) as PlaceKind, key: where.slice(colon + 1) };
  return { section, item, ...(place && { place }), side: side as CellSide };
}

export interface NormalStatement {
  readonly section: string;
  readonly region?: string;
  readonly side?: Side | 'both';
}

export const historyLists = ['symptoms', 'conditions', 'exposures', 'family', 'medications'] as const;
export type HistoryList = (typeof historyLists)[number];
type ExamHistory = NonNullable<Exam['history']>;

export interface HistoryEntry {
  readonly key: string;
  readonly present: boolean;
  readonly relation?: string;
  readonly side?: Side | 'both';
}

/** A result as an exam states it; what the page does not know of is carried along. */
export interface ResultEntry {
  readonly key?: string;
  readonly code?: { readonly system: string; readonly code: string };
  readonly valueQuantity?: {
    readonly value: number;
    readonly unit?: string;
    readonly system?: string;
    readonly code?: string;
    readonly comparator?: '<' | '<=' | '>=' | '>';
  };
  readonly value?: string;
  readonly note?: string;
}

export type ComaScore = { readonly score: number } | { readonly notTested: NotTestedReason };

export interface Draft {
  readonly identifier: { readonly system: string; readonly value: string };
  readonly status: 'preliminary' | 'final' | 'amended' | 'entered-in-error';
  /** Whom the exam is about, as typed: a FHIR reference such as `Patient/4711`, or a number. */
  readonly subject: string;
  readonly encounter: string;
  readonly performer: string;
  /** ISO 8601 with zone. */
  readonly examinedAt: string;
  readonly person: { readonly ageYears?: number; readonly sex?: 'male' | 'female' | 'other' | 'unknown' };
  readonly onset: {
    readonly pace?: NonNullable<ExamHistory['onset']>['pace'];
    readonly durationDays?: number;
  };
  readonly course?: ExamHistory['course'];
  readonly history: Readonly<Record<HistoryList, readonly HistoryEntry[]>>;
  readonly cells: Readonly<Record<CellKey, Cell>>;
  readonly comaScale: Readonly<Record<string, ComaScore>>;
  readonly comaNote?: string;
  readonly otherwiseNormal: readonly NormalStatement[];
  readonly results: readonly ResultEntry[];
  /** Keys of the suggested tests to propose; undefined: all of them. */
  readonly requests?: readonly string[];
  /** Keys of the tests that were on offer when they were chosen; one that comes later is new to the examiner. Not sent. */
  readonly offeredTests?: readonly string[];
  /** The exam that this corrects, with the version that it was read at. */
  readonly corrects?: { readonly id: string; readonly etag: string };
  /** References of a corrected exam that the fields above cannot hold, as they were. */
  readonly carried?: Readonly<Record<string, unknown>>;
}

export function emptyDraft(now: Date, newId: () => string): Draft {
  return {
    identifier: { system: 'urn:ietf:rfc:3986', value: `urn:uuid:${newId()}` },
    status: 'final',
    subject: '',
    encounter: '',
    performer: '',
    examinedAt: withZone(now),
    person: {},
    onset: {},
    history: { symptoms: [], conditions: [], exposures: [], family: [], medications: [] },
    cells: {},
    comaScale: {},
    otherwiseNormal: [],
    results: [],
  };
}

/** Whether anything was written that a reader could reason from. */
export function saysAnything({ cells, comaScale, otherwiseNormal, history, results, onset, course }: Draft): boolean {
  return (
    Object.keys(cells).length > 0 ||
    Object.keys(comaScale).length > 0 ||
    otherwiseNormal.length > 0 ||
    results.length > 0 ||
    onset.pace !== undefined ||
    course !== undefined ||
    historyLists.some((list) => history[list].length > 0)
  );
}

/** Local time to the second with its offset, such as 2026-03-14T10:20:00+01:00. */
export function withZone(moment: Date): string {
  const two = (number: number): string => String(Math.trunc(Math.abs(number))).padStart(2, '0');
  const offset = -moment.getTimezoneOffset();
  const zone = `${offset < 0 ? '-' : '+'}${two(offset / 60)}:${two(offset % 60)}`;
  const day = `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
  return `${day}T${two(moment.getHours())}:${two(moment.getMinutes())}:${two(moment.getSeconds())}${zone}`;
}
