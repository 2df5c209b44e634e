import { historyReason } from '../causes/exam-query.ts';
import type { Course, Exam, HistoryStatement, OnsetPace } from '../exam/exam.ts';
import { daysPerYear } from '../kernel/days.ts';
import { joinWords, sentence } from '../kernel/words.ts';
import type { Detail } from './detail.ts';

const onsetWords: Readonly<Record<OnsetPace, string>> = {
  hyperacute: 'sudden onset',
  acute: 'onset over days',
  subacute: 'onset over weeks',
  chronic: 'onset over months to years',
};
const courseWords: Readonly<Record<Course, string>> = {
  progressive: 'progressive since then',
  static: 'static since then',
  improving: 'improving since then',
  'relapsing-remitting': 'with a relapsing and remitting course',
  fluctuating: 'fluctuating',
  monophasic: 'a single episode',
};

/** The course where it stands before "history". */
const courseOfHistory: Readonly<Record<Course, string>> = {
  progressive: 'progressive ',
  static: 'static ',
  improving: 'improving ',
  'relapsing-remitting': 'relapsing and remitting ',
  fluctuating: 'fluctuating ',
  monophasic: '',
};

/** Days of history from which so slow an onset goes without saying. */
const saidByDuration: Readonly<Partial<Record<OnsetPace, number>>> = { subacute: 21, chronic: 60 };

/** A complaint that another one says more exactly is not said twice. */
const saidBy: Readonly<Record<string, readonly string[]>> = {
  headache: ['thunderclap-headache', 'new-headache', 'morning-headache', 'orthostatic-headache'],
  weakness: [
    'leg-weakness',
    'arm-weakness',
    'fatigable-weakness',
    'ascending-weakness',
    'descending-weakness',
    'episodic-weakness',
  ],
  'back-pain': ['thoracic-back-pain'],
  'leg-pain': ['radicular-leg-pain', 'bilateral-leg-pain'],
  'arm-pain': ['radicular-arm-pain'],
  'facial-pain': ['triggered-facial-pain'],
};

function isSaidByAnother(statement: HistoryStatement, told: readonly HistoryStatement[]): boolean {
  const closer = saidBy[statement.key] ?? [];
  return told.some(
    (other) =>
      closer.includes(other.key) || (other.kind === statement.kind && other.label.startsWith(`${statement.label} `)),
  );
}

/**
 * Who it is, how it began and went on, what was told and what was denied.
 * @param leading pointers of what first causes and red flags rest on: where not all is said, these are
 */
export function openingSentences(
  exam: Exam,
  most: Pick<Detail, 'told' | 'denied'>,
  leading: ReadonlySet<string> = new Set(),
): readonly string[] {
  const present = exam.history.filter((statement) => statement.present);
  const said = present.filter((statement) => !isSaidByAnother(statement, present));
  const facts = said.filter(({ kind }) => kind !== 'medication');
  // A single fact is said, for "1 more" is no shorter.
  const chosen = facts.length === most.told + 1 ? facts : mostTelling(facts, most.told, leading);
  const unsaid = facts.length - chosen.length;
  const told = [...chosen.map(wordsOf), ...(unsaid === 0 ? [] : [`${unsaid} more facts`])];
  const taken = said.filter(({ kind }) => kind === 'medication').map(wordsOf);
  const absent = exam.history.filter((statement) => !statement.present);
  const denied = mostTelling(absent, most.denied, leading).map((one) => wordsOf(one).replace(/^no (?:an? )?/, ''));
  const report = told.length > 0 ? `the history includes ${joinWords(told)}` : '';
  const medicines = taken.length > 0 ? `medicines: ${joinWords(taken)}` : '';
  // "No falls" and "no fever" both read well; "there is no falls" does not.
  const denial = denied.length > 0 ? `no ${joinWords(denied, 'or')}` : '';
  return [
    sentence(personAndTempo(exam)),
    sentence([report, medicines, denial].filter((part) => part !== '').join('; ')),
  ];
}

function wordsOf(statement: HistoryStatement): string {
  return historyReason(statement).text;
}

/** As many as are said, in their order, those that conclusions rest on before others. */
function mostTelling(
  statements: readonly HistoryStatement[],
  most: number,
  leading: ReadonlySet<string>,
): readonly HistoryStatement[] {
  const byWorth = statements.toSorted((a, b) => Number(leading.has(b.pointer)) - Number(leading.has(a.pointer)));
  const chosen = new Set(byWorth.slice(0, most));
  return statements.filter((statement) => chosen.has(statement));
}

function personAndTempo(exam: Exam): string {
  const person = personWords(exam.person);
  const { pace, durationDays } = exam.onset;
  const tempo = [
    ...(pace === undefined ? [] : [onsetWords[pace]]),
    ...(exam.course === undefined ? [] : [courseWords[exam.course]]),
  ].join(', ');
  if (durationDays === undefined)
    return tempo === '' ? `${person}; onset and course are not stated` : `${person}, ${tempo}`;
  // "8-month" out of "8 months".
  const length = durationWords(durationDays).replace(/ (\w+?)s?$/, '-$1');
  if (durationDays >= (saidByDuration[pace ?? 'hyperacute'] ?? Number.POSITIVE_INFINITY)) {
    const adjective = exam.course === undefined ? '' : courseOfHistory[exam.course];
    const single = exam.course === 'monophasic' ? ', a single episode' : '';
    return `${person} with ${articleFor(length)} ${length} ${adjective}history${single}`;
  }
  const history = durationDays === 0 ? 'history of less than a day' : `${length} history`;
  return `${person} with ${articleFor(history)} ${history}${tempo === '' ? '' : `: ${tempo}`}`;
}

/** "an 8-month", "a 3-day". */
function articleFor(text: string): string {
  return /^(?:8|11|18)\b/.test(text) ? 'an' : 'a';
}

/** "a 46-year-old woman", "a man of unstated age", "a 3-year-old girl", "a person of 30". */
export function personWords({ ageYears, sex }: Exam['person']): string {
  const child = ageYears !== undefined && ageYears < 18;
  const noun =
    sex === 'female'
      ? child
        ? 'girl'
        : 'woman'
      : sex === 'male'
        ? child
          ? 'boy'
          : 'man'
        : child
          ? 'child'
          : 'person';
  if (ageYears === undefined)
    return sex === 'female' || sex === 'male' ? `A ${noun} of unstated age` : 'A person of unstated age and sex';
  const years = Math.floor(ageYears);
  if (years < 1) return `An infant ${noun === 'child' ? '' : noun}`.trim();
  const article = /^(?:8|11|18)(?:\d\d)?$|^8\d$/.test(String(years)) ? 'An' : 'A';
  return `${article} ${years}-year-old ${noun}`;
}

/** Hours within the first day, days up to two weeks, then weeks, months, years, in whole numbers. */
export function durationWords(days: number): string {
  const [count, unit] =
    days < 1
      ? [Math.max(1, Math.round(days * 24)), 'hour']
      : days <= 14
        ? [Math.round(days), 'day']
        : days < 70
          ? [Math.round(days / 7), 'week']
          : days < 730
            ? [Math.round(days / 30.4), 'month']
            : [Math.round(days / daysPerYear), 'year'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
