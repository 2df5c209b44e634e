export type Comparator = '<' | '<=' | '>=' | '>';

export type NumberRead =
  | { readonly value: number; readonly comparator?: Comparator; readonly unit?: string }
  | { readonly problem: string };

const comparators: Readonly<Record<string, Comparator>> = {
  '<': '<',
  '>': '>',
  '<=': '<=',
  '>=': '>=',
  '=<': '<=',
  '=>': '>=',
  '≤': '<=',
  '≥': '>=',
};

/**
 * A number as it is typed or pasted from a report: "5.3", "<0.5", "≥ 1,200,000", "98 mg/dL". A single comma is not guessed at,
 * since it is a decimal sign in some countries and parts thousands in others.
 */
export function readNumber(text: string): NumberRead {
  const [, sign = '', body = '', rest = ''] =
    /^\s*([<>]=?|=[<>]|[≤≥])?\s*([+-]?[\d.,]*\d\.?)\s*(.*?)\s*$/.exec(text.replace('−', '-')) ?? [];
  if (body === '') return { problem: 'Write a number, such as 5.3 or <0.5.' };
  const digits = plainDigits(body);
  if (digits === undefined) return { problem: commaProblem(body) };
  if (/^(-|–|to\b|\.\.)\s*\d/.test(rest)) return { problem: 'Write one number; a range cannot be recorded.' };
  if (/^[\d.,]/.test(rest)) return { problem: 'Write one number, without spaces inside it.' };
  const comparator = comparators[sign];
  return { value: Number(digits), ...(comparator && { comparator }), ...(rest !== '' && { unit: rest }) };
}

/** Digits with a point at most; undefined where a comma leaves the meaning open. */
function plainDigits(body: string): string | undefined {
  if (/^[+-]?(\d+\.?\d*|\.\d+)$/.test(body)) return body;
  // Two groups, or a point after one, say that commas part thousands.
  if (/^[+-]?\d{1,3}(,\d{3}){2,}(\.\d+)?$|^[+-]?\d{1,3},\d{3}\.\d+$/.test(body)) return body.replaceAll(',', '');
  return undefined;
}

function commaProblem(body: string): string {
  const parts = body.split(',');
  if (parts.length !== 2 || body.includes('.')) return `${body} is not a number: write it with one point at most.`;
  const [whole = '', fraction = ''] = parts;
  const withPoint = `${whole === '' ? '0' : whole}.${fraction}`;
  return fraction.length === 3 && whole !== ''
    ? `${body} may mean ${withPoint} or ${whole}${fraction}: write it with a point or without the comma.`
    : `${body} may mean ${withPoint} or ${whole}${fraction}: write decimals with a point.`;
}
