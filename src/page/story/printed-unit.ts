/** What UCUM writes otherwise than print does. */
const printed: Readonly<Record<string, string>> = {
  Cel: '°C',
  '[degF]': '°F',
  '[lb_av]': 'lb',
  'mL/min/{1.73_m2}': 'mL/min/1.73 m²',
  '{count}': 'count',
  '[pH]': '',
  '{INR}': '',
  '{ratio}': '',
  '1': '',
};
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A UCUM code as laboratories print it, such as µmol/L, ×10⁹/L, mmHg; empty for a plain number. */
export function printedUnit(code: string): string {
  return (
    printed[code] ??
    code
      .replace(/\{[^}]*\}/g, '')
      .replace(
        /^10\*(\d+)/,
        (_, power: string) => `×10${[...power].map((digit) => superscripts[Number(digit)]).join('')}`,
      )
      .replace(/\[i?I?U\]/gi, 'IU')
      .replace(/\[(Hg|H2O)\]/g, '$1')
      .replace('H2O', 'H₂O')
      .replace('mm3', 'mm³')
      .replace(/(^|\/)u(?=[A-Za-z])/g, '$1µ')
      .replace(/^meq/, 'mEq')
  );
}

export interface OfferedUnit {
  readonly code: string;
  readonly print: string;
}

/** Units to choose from: of several codes that print alike the first. */
export function offeredUnits(codes: readonly string[]): readonly OfferedUnit[] {
  const byPrint = new Map<string, OfferedUnit>();
  for (const code of codes) {
    const print = printedUnit(code);
    if (!byPrint.has(print)) byPrint.set(print, { code, print });
  }
  return [...byPrint.values()];
}

/**
 * The UCUM code that a typed unit means among those known for a result; print and code are both understood, capitals are not
 * needed. A unit that is not among them goes as it was typed, for the service to judge.
 */
export function unitTyped(text: string, codes: readonly string[]): string {
  const wanted = plain(text);
  return (
    codes.find((code) => plain(code) === wanted || plain(printedUnit(code)) === wanted) ?? text.replace(/^[μµ]/, 'u')
  );
}

function plain(unit: string): string {
  return unit
    .toLowerCase()
    .replaceAll(/[µμ]/g, 'u')
    .replaceAll(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(superscripts.indexOf(digit)))
    .replaceAll('₂', '2')
    .replaceAll(/[×x^*°\s]/g, '');
}
