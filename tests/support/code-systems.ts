import type { CodeSystemConcept } from 'fhir/r4.js';

/** The concepts and all that stand below them. */
export function flat(concepts: readonly CodeSystemConcept[] = []): CodeSystemConcept[] {
  return concepts.flatMap((concept) => [concept, ...flat(concept.concept)]);
}

/**
 * Modulus-10 check digit of a LOINC code's number; 12345 gives 5. Source: LOINC Users' Guide, appendix "Calculating Mod 10
 * check digits".
 */
export function loincCheckDigit(number: string): number {
  const digits = [...number].reverse().map(Number);
  const sum = digits.reduce((total, digit, index) => {
    const weighed = index % 2 === 0 ? digit * 2 : digit;
    return total + (weighed > 9 ? weighed - 9 : weighed);
  }, 0);
  return (10 - (sum % 10)) % 10;
}
