import { regions } from '../anatomy/body-parts.ts';
import { resultRows } from '../exam/catalogue/results.ts';
import { lowerFirst } from '../exam/describe.ts';
import { courses, familyRelations, type OnsetPace, onsetPaces } from '../exam/exam.ts';
import { capitalised } from '../kernel/words.ts';

/** One code of the form that no other code system has. */
export interface AnswerCode {
  readonly code: string;
  readonly display: string;
}

const paceTexts = {
  hyperacute: 'Within seconds to hours',
  acute: 'Over days',
  subacute: 'Over weeks',
  chronic: 'Over months to years',
} as const satisfies Record<OnsetPace, string>;

const inWords = (key: string): string => capitalised(key.replaceAll('-', ' '));

/** Codes of answers about history, regions, results and requests; those about findings are in the systems of the scales. */
export const answerCodes: readonly AnswerCode[] = [
  ...onsetPaces.map((key) => ({ code: answerCode('pace', key), display: paceTexts[key] })),
  ...courses.map((key) => ({ code: answerCode('course', key), display: inWords(key) })),
  ...familyRelations.map((key) => ({ code: answerCode('relation', key), display: inWords(key) })),
  ...regions.map((key) => ({ code: answerCode('region', key), display: inWords(key) })),
  { code: answerCode('side', 'both'), display: 'Both sides' },
  ...resultRows.flatMap((row) =>
    row.kind === 'coded'
      ? row.values.map(({ key, label }) => ({
          code: answerCode('result', row.key, key),
          display: `${row.label}: ${lowerFirst(label)}`,
        }))
      : [],
  ),
  { code: answerCode('requests', 'none'), display: 'None' },
];

export function answerCode(...parts: readonly string[]): string {
  return parts.join('/');
}
