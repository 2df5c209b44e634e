import { createRequire } from 'node:module';

/** The part of the UCUM library that is used; it ships no types. */
interface UcumUtils {
  convertUnitTo(
    from: string,
    value: number,
    to: string,
    options: { readonly molecularWeight?: number },
  ): {
    readonly status: 'succeeded' | 'failed' | 'error';
    readonly toVal: number | null;
    readonly msg: readonly string[];
  };
}

let loaded: UcumUtils | undefined;

/** The unit tables take some 20 ms to load, and most exams carry no results, so they wait for the first one. */
function ucum(): UcumUtils {
  if (loaded === undefined) {
    const library: { UcumLhcUtils: { getInstance(): UcumUtils } } = createRequire(import.meta.url)('@lhncbc/ucum-lhc');
    loaded = library.UcumLhcUtils.getInstance();
  }
  return loaded;
}

/**
 * UCUM calls the international unit arbitrary and never converts it, since it means another amount for each substance.
 * Between two units of one substance only prefixes and volumes differ, so both sides take a base unit in its stead.
 */
const internationalUnit = /\[[iI]U\]/;

/** Names that every object inherits: the library finds them where it looks for units. */
const inherited = Object.getOwnPropertyNames(Object.prototype);

/**
 * Whether the library may be asked. It fails at inherited names and at some brackets without a unit in them, and writes what
 * it failed at to standard output, where nothing of a request may appear. UCUM (section 2) knows printable ASCII only.
 */
function mayBeUnit(unit: string): boolean {
  const isPlain = /^[!-~]+$/.test(unit) && !/\([^A-Za-z%[]*\)|\{[^}]*[()]/.test(unit);
  return isPlain && !inherited.some((name) => unit.includes(name));
}

/**
 * A number in another UCUM unit; null if either code is not UCUM or the units are of different kinds.
 * @param molarMass g/mol of the substance; without it mass and amount of substance are different kinds
 */
export function convertUnit(value: number, from: string, to: string, molarMass?: number): number | null {
  if (from === to) return value;
  if (!mayBeUnit(from)) return null;
  const isInternational = internationalUnit.test(from) && internationalUnit.test(to);
  const plain = (unit: string): string => (isInternational ? unit.replace(internationalUnit, 'cd') : unit);
  const options = molarMass === undefined ? {} : { molecularWeight: molarMass };
  const answer = ucum().convertUnitTo(plain(from), value, plain(to), options);
  // A message on success means that the library guessed at another unit than was written.
  if (answer.status !== 'succeeded' || answer.toVal === null || answer.msg.length > 0) return null;
  return Number.isFinite(answer.toVal) ? significant(answer.toVal) : null;
}

/** Ten significant digits: no measurement has more, and 126000.00000000001 is not what was sent. */
export function significant(value: number): number {
  return Number(value.toPrecision(10));
}
