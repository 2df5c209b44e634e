/** Mean length of a year of the calendar, in days. */
export const daysPerYear = 365.25;
