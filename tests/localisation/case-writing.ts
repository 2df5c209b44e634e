/** Short forms for writing an examination as data: pairs are [left, right], null is not examined. */
type Pair<T> = readonly [T | null, T | null];
type Finding = Record<string, unknown>;

const sides = ['left', 'right'] as const;

function sided<T>(
  rows: Readonly<Record<string, Pair<T> | T>>,
  toFinding: (key: string, value: T) => Finding,
): Finding[] {
  return Object.entries(rows).flatMap(([key, value]) => {
    const pair = (Array.isArray(value) ? value : [value, value]) as Pair<T>;
    return sides.flatMap((side, index) => {
      const one = pair[index] ?? null;
      return one === null ? [] : [{ ...toFinding(key, one), side }];
    });
  });
}

export const power = (rows: Readonly<Record<string, Pair<string> | string>>) =>
  sided(rows, (movement, grade) => ({ movement, grade }));
export const reflexes = (rows: Readonly<Record<string, Pair<string> | string>>) =>
  sided(rows, (reflex, grade) => ({ reflex, grade }));
export const plantars = (left: string | null, right: string | null = left) =>
  sided({ plantar: [left, right] as const }, (_, response) => ({ response }));
export const tone = (rows: Readonly<Record<string, Pair<string> | string>>) =>
  sided(rows, (site, value) => ({ site, tone: value }));
export const clonus = (rows: Readonly<Record<string, Pair<number> | number>>) =>
  sided(rows, (site, beats) => ({ site, beats }));
export const coordination = (rows: Readonly<Record<string, Pair<string> | string>>) =>
  sided(rows, (test, result) => ({ test, result }));
export const tests = (rows: Readonly<Record<string, Pair<string> | string>>) =>
  sided(rows, (test, result) => ({ test, result }));
export const signs = (rows: Readonly<Record<string, Pair<boolean> | boolean>>) =>
  sided(rows, (sign, present) => ({ sign, present }));
export const midline = (rows: Readonly<Record<string, boolean>>) =>
  Object.entries(rows).map(([sign, present]) => ({ sign, present }));
export const wasting = (rows: Readonly<Record<string, Pair<boolean> | boolean>>) =>
  sided(rows, (site, present) => ({ sign: 'wasting', site, present }));

/** Keys: `L5` a dermatome, `below:T10` a level, `territory:sural-nerve`, anything else a landmark. */
export function sensation(modality: string, rows: Readonly<Record<string, Pair<string> | string>>): Finding[] {
  return sided(rows, (key, result) => {
    const [kind, rest] = key.includes(':') ? key.split(':') : [/^[CTLS]\d/.test(key) ? 'dermatome' : 'site', key];
    return { modality, [kind === 'below' ? 'levelBelow' : (kind ?? 'site')]: rest, result };
  });
}

export interface ExamDraft {
  readonly age?: number;
  readonly onset?: { readonly pace?: string; readonly durationDays?: number };
  readonly history?: Record<string, unknown>;
  readonly findings: Record<string, Finding[]>;
  readonly otherwiseNormal?: readonly Record<string, unknown>[];
}

/** The body of a localisation request. */
export function examBody({ age = 45, onset, history, findings, otherwiseNormal }: ExamDraft): Record<string, unknown> {
  return {
    status: 'final',
    examinedAt: '2026-03-14T10:20:00+01:00',
    person: { ageYears: age, sex: 'female' },
    ...(onset === undefined && history === undefined
      ? {}
      : { history: { ...(onset === undefined ? {} : { onset }), ...history } }),
    findings,
    ...(otherwiseNormal === undefined ? {} : { otherwiseNormal }),
  };
}

/** Pain and vibration that were tested and kept. */
export const feelingKept = [
  ...sensation('pinprick', { thumb: 'normal', 'great-toe': 'normal' }),
  ...sensation('vibration', { 'great-toe': 'normal' }),
];

/** Twitching seen at some places. */
export const fasciculation = (...where: readonly (readonly [string, 'left' | 'right'])[]) =>
  where.map(([site, side]) => ({ sign: 'fasciculation', site, side, present: true }));
