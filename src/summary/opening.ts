import { historyReason } from '../causes/exam-query.ts';
import type { Course, Exam, OnsetPace } from '../exam/exam.ts';
import { joinWords, sentence } from './join-words.ts';

const onsetWords: Readonly<Record<OnsetPace, string>> = {
  hyperacute: 'sudden onset',
  acute: 'onset over days',
  subacute: 'onset over weeks',
  chronic: 'onset over months to years',
};
const courseWords: Readonly<Record<Course, string>> = {
  progressive: 'progressive since',
  static: 'static since',
  improving: 'improving since',
  'relapsing-remitting': 'with a relapsing and remitting course',
  fluctuating: 'fluctuating',
  monophasic: 'a single episode',
};

/** Who it is, how it began and went on, what was told and what was denied. */
export function openingSentences(exam: Exam): readonly string[] {
  const told = exam.history.filter((statement) => statement.present).map((statement) => historyReason(statement).text);
  const denied = exam.history
    .filter((statement) => !statement.present)
    .map((statement) => historyReason(statement).text.replace(/^no /, ''));
  const report = told.length > 0 ? `the history includes ${joinWords(told)}` : '';
  const denial = denied.length > 0 ? `there is no ${joinWords(denied, 'or')}` : '';
  return [sentence(personAndTempo(exam)), sentence([report, denial].filter((part) => part !== '').join('; '))];
}

function personAndTempo(exam: Exam): string {
  const person = personWords(exam.person);
  const { pace, durationDays } = exam.onset;
  const parts = [
    ...(pace === undefined ? [] : [onsetWords[pace]]),
    ...(durationDays === undefined ? [] : [`${durationWords(durationDays)} ago`]),
  ].join(' ');
  const course = exam.course === undefined ? '' : courseWords[exam.course];
  if (parts === '' && course === '') return `${person}; onset and course are not stated`;
  if (parts === '') return `${person}, ${course.replace(' since', ' course')}`;
  const onset = `${parts}${course === '' ? '' : `, ${course}`}`;
  return `${person} with ${onset}`;
}

/** "a 46-year-old woman", "a man of unstated age", "a 3-year-old girl", "a person of 30". */
export function personWords({ ageYears, sex }: Exam['person']): string {
  const child = ageYears !== undefined && ageYears < 16;
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

/** Days up to two weeks, then weeks, months, years, in whole numbers. */
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
            : [Math.round(days / 365.25), 'year'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
