import type { HistoryStatement } from '../exam/exam.ts';

/** What is told with a narrower statement though nobody says it: who is on dialysis has a kidney disease. */
const wider: ReadonlyMap<string, string> = new Map([
  ['dialysis', 'chronic-kidney-disease'],
  ['pre-eclampsia', 'pregnancy'],
  ['hyperemesis-gravidarum', 'pregnancy'],
  ['difficult-delivery', 'pregnancy'],
  ['antithyroid-drug', 'hyperthyroidism'],
  ['sound-induced-vertigo', 'vertigo'],
  ['pernicious-anaemia', 'vitamin-b12-deficiency'],
  ['macroglobulinaemia', 'monoclonal-gammopathy'],
  ['rapid-glucose-control', 'diabetes-mellitus'],
  ['insulin-or-sulfonylurea', 'diabetes-mellitus'],
]);

/**
 * A history with what its statements imply and no statement of its own speaks of. The implied statement keeps label and
 * pointer of the one that implies it, so that a reason names what was told.
 */
export function withImplied(history: readonly HistoryStatement[]): readonly HistoryStatement[] {
  const stated = new Set(history.filter(({ kind }) => kind !== 'family').map(({ key }) => key));
  const implied = new Map<string, HistoryStatement>();
  for (const statement of history) {
    const key = statement.kind !== 'family' && statement.present ? wider.get(statement.key) : undefined;
    if (key !== undefined && !stated.has(key) && !implied.has(key)) implied.set(key, { ...statement, key });
  }
  return implied.size === 0 ? history : [...history, ...implied.values()];
}
