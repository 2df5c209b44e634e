import fhirpath from 'fhirpath';

/** No FHIR element has such a name, and what stands under it is checked again below. */
const marker = '\u0000decimal';
const decimalText = /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;

/** Strings are matched whole, so a number inside one is never taken for a number. */
const stringOrDecimal = /"(?:[^"\\]|\\.)*"|-?\d+(?:\.\d+(?:[eE][+-]?\d+)?|[eE][+-]?\d+)/g;

/**
 * JSON with every decimal kept as written, since 1.0 states another precision than 1 (FHIR R4, datatypes, decimal).
 * Decimals become FHIRPath decimals, which become plain numbers again in JSON.
 * @throws SyntaxError when the text is not JSON
 */
export function parseLossless(text: string): unknown {
  const marked = text.replaceAll(stringOrDecimal, (token) =>
    token.startsWith('"') ? token : `{"\\u0000decimal":"${token}"}`,
  );
  return JSON.parse(marked, (_key, value) => {
    const written = typeof value === 'object' && value !== null ? value[marker] : undefined;
    return typeof written === 'string' && decimalText.test(written) ? fhirpath.FP_Decimal.getDecimal(written) : value;
  });
}
