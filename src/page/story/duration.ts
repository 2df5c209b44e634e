/** How long something has lasted, as clinicians say it and as the service counts it, in days. */
export const durationUnits = ['hours', 'days', 'weeks', 'months', 'years'] as const;
export type DurationUnit = (typeof durationUnits)[number];

/** Mean lengths of the Gregorian calendar. */
const daysIn: Readonly<Record<DurationUnit, number>> = {
  hours: 1 / 24,
  days: 1,
  weeks: 7,
  months: 365.2425 / 12,
  years: 365.2425,
};

export interface Duration {
  readonly count: number;
  readonly unit: DurationUnit;
}

/** Days, whole ones for months and years, since nobody means a fraction of a day by them. */
export function daysOf({ count, unit }: Duration): number {
  const days = count * daysIn[unit];
  return unit === 'months' || unit === 'years' ? Math.round(days) : Number(days.toFixed(4));
}

/** The largest unit that says the days in whole numbers, hours below a day; days where none does. */
export function durationOf(days: number): Duration {
  for (const unit of [...durationUnits].reverse()) {
    const count = Math.round(days / daysIn[unit]);
    if (count > 0 && daysOf({ count, unit }) === days) return { count, unit };
  }
  return { count: days, unit: 'days' };
}

/** The days in a unit: the whole number that `daysOf` made them of, or two decimals. */
export function countIn(days: number, unit: DurationUnit): number {
  const count = Math.round(days / daysIn[unit]);
  return daysOf({ count, unit }) === days ? count : Number((days / daysIn[unit]).toFixed(2));
}
