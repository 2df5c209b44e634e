export type Comparator = '<' | '<=' | '>=' | '>';

export type NumberRead =
  | { readonly value: number; readonly comparator?: Comparator; readonly unit?: string }
  | {
      readonly problem: string;
      /** What it may mean, each as it would be typed. */
      readonly meanings?: readonly string[];
    };

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
  if (digits === undefined) return commaProblem(sign, body);
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

function commaProblem(sign: string, body: string): NumberRead {
  const [whole = '', fraction = '', ...more] = body.split(',');
  if (more.length > 0 || body.includes('.'))
    return { problem: `${body} is not a number: write it with one point at most.` };
  const withPoint = `${/\d/.test(whole) ? whole : `${whole}0`}.${fraction}`;
  const meanings = /\d/.test(whole) ? [withPoint, `${whole}${fraction}`] : [withPoint];
  return {
    problem: `${body} may mean ${meanings.join(' or ')}: write decimals with a point and thousands without a comma.`,
    meanings: meanings.map((meaning) => `${sign}${meaning}`),
  };
}
