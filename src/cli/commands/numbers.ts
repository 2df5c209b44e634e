import { InvalidArgumentError } from 'commander';

/** Reads the value of an option that takes a whole number. */
export function wholeNumber(least: number, most: number): (value: string) => number {
  return (value) => {
    if (/^\d{1,12}$/.test(value) && Number(value) >= least && Number(value) <= most) return Number(value);
    throw new InvalidArgumentError(`Expected a whole number from ${least} to ${most}.`);
  };
}
