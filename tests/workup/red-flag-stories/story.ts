import type { site } from '../../support/bedside.ts';

export type Parts = Record<string, unknown>;

/** A red flag with an exam that must raise it and one that is nearly the same and must not. All invented. */
export interface Story {
  readonly flag: string;
  /** Work or rule that says so. */
  readonly by: string;
  readonly raised: Parts;
  readonly not: Parts;
  /** Where the lesion is held to lie; a nerve of the leg when the rule does not ask. */
  readonly at?: ReturnType<typeof site>;
}

export const hours = { pace: 'hyperacute', durationDays: 0.3 };
export const days = { pace: 'acute', durationDays: 3 };
export const weeks = { pace: 'subacute', durationDays: 30 };
export const months = { pace: 'chronic', durationDays: 240 };
export const years = { pace: 'chronic', durationDays: 2000 };

/** Statements of the history that hold. */
export const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
/** Signs that are there, without a side or on one. */
export const signs = (...keys: readonly string[]) => keys.map((sign) => ({ sign, present: true }));
export const on = (side: string, ...keys: readonly string[]) => keys.map((sign) => ({ sign, side, present: true }));

export const measured = (key: string, value: number, unit: string) => ({
  key,
  valueQuantity: { value, unit, code: unit, system: 'http://unitsofmeasure.org' },
});

export const power = (side: string, grade: string, ...movements: readonly string[]) =>
  movements.map((movement) => ({ movement, side, grade }));
export const reflexes = (grade: string, ...names: readonly string[]) =>
  names.map((reflex) => ({ reflex, side: 'both', grade }));
